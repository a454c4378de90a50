### What the widget says around the answer. Every key begins with "ui-".

ui-step-machine = Machine
ui-step-frame = Frame
ui-step-seat = Seat
ui-step-implement = Implement
ui-step-choose = Choose one
ui-on-hitch = On the three-point hitch, without a frame
ui-answer = Answer
ui-joints = Joints
ui-evidence = Evidence
ui-footprint = Footprint
ui-parts = Parts to buy
ui-loading = Loading
ui-site = Site
ui-digging = Digging
ui-weight = Weight
ui-compare = Compare
ui-saved = Saved builds
ui-share = Share
ui-fit-sheet = Fit sheet
ui-print = Print
ui-undo = Undo
ui-redo = Redo
ui-clear = Clear all
ui-start-again = Start again
ui-close = Close
ui-back = Back
ui-next = Next
ui-take = Take
ui-taken = Chosen
ui-take-off = Remove
ui-search = Search
ui-sort = Sort by
ui-sort-verdict = Verdict
ui-sort-price = Price
ui-sort-length = Length
ui-units = Units
ui-units-metric = Metric
ui-units-us = US
ui-language = Language
ui-language-missing = The texts for { $language } could not be loaded. English is shown instead.
ui-theme = Theme
ui-theme-light = Light
ui-theme-dark = Dark
ui-theme-outdoor = Outdoor
ui-on-hand = On hand
ui-to-buy = To buy
ui-price-on-request = Price on request
ui-total = Total
ui-quantity = Quantity
ui-price = Price
ui-work-time = Workshop time
ui-part-numbers = Part numbers
ui-hole-patterns = Hole patterns
ui-margin = Margin
ui-measure = Enter what you measured
ui-checks = What would settle it
ui-remedies = What would help
ui-try-remedy = Try it
ui-cautions = Cautions
ui-details = Details
ui-for-shopper = In short
ui-for-workshop = For the workshop
ui-bare-machine = Bare machine
ui-side-view = Side view
ui-plan-view = Plan view
ui-rear-view = Rear view
ui-loading-catalogue = Loading the catalogue
ui-try-again = Try again
ui-not-known = not known
ui-copy-link = Copy link
ui-copied = Copied
ui-offline = Works offline
ui-new-version = A new version is ready. It starts when you reload.
ui-catalogue-slow = The catalogue is taking long to load.
ui-catalogue-missing = The catalogue could not be loaded.
ui-catalogue-broken = The catalogue has mistakes and cannot be used yet.
ui-storage-full = The device has no room to save. Everything still works; export the build to keep it.
ui-link-cut-off = The link is cut off or has been changed. Ask for it again.
ui-link-newer = The link was made by a newer version. Reload the page to get it.
ui-link-not-ours = This address holds no build.

ui-not-in-catalogue = { $id } is not in this catalogue
ui-options = { $count ->
    [one] { $count } option
   *[other] { $count } options
}
ui-open-checks = { $count ->
    [one] { $count } check open
   *[other] { $count } checks open
}
ui-against-bare = { $change } against the bare machine
ui-reaches = Best still reachable: { $verdict }
ui-comes-with = Comes with { $item }

ui-verdict-open = Not started
    .meaning = Start with whatever you have: a machine, a frame, a seat or an implement.
ui-so-far = Nothing against it so far. The other steps are still open.
ui-item-list = Item list
ui-steps = Steps
ui-settings = Settings
ui-views = Views
ui-view-fit = Fit
ui-view-parts = Parts
ui-view-loading = Loading
ui-view-weight = Weight
ui-view-digging = Digging
ui-view-site = Site
ui-look-from = Seen from
ui-look-side = Side
ui-look-plan = Above
ui-drawing = Drawing
ui-drawing-none = Choose a machine, a frame, a seat or an implement. It is drawn here to scale.
ui-short-length = Length
ui-short-width = Width
ui-short-height = Height
ui-short-ground-clearance = Clearance
ui-short-departure = Departure
ui-short-mass = Mass
ui-short-front-load = Front axle
ui-theme-system = As the device
ui-sort-name = Name
ui-nothing-found = Nothing here answers the search.
ui-take-out = Take out
ui-details-none = What joins what, and what comes of it, stands here as soon as two things that meet are chosen.
ui-remedies-none = No adapter, seat, frame or work in this catalogue helps.
ui-remedies-more = { $count ->
    [one] { $count } more
   *[other] { $count } more
}
ui-beyond-joints = Beyond the joints
ui-no-part-number = part number not known
ui-forget = Forget
ui-measure-what = What was measured
ui-measure-value = Value
ui-measure-tool = Measured with
ui-measure-enter = Enter
ui-measure-wrong = Enter a length, such as 412.5, 41.2 cm or 1 1/8 in.
ui-item = Item
ui-link-missing = Not everything in the link is in this catalogue. The rest is open.
ui-catalogue-no-address = No catalogue is named. Give the element a catalogue attribute.
ui-catalogue-newer = The catalogue is of a newer format than this version reads. Reload the page to get the new version.
ui-catalogue-kept = The catalogue that was there before stays in use.
ui-more-problems = { $count ->
    [one] and { $count } more mistake
   *[other] and { $count } more mistakes
}
ui-standing = Standing

ui-incomplete = Not all four steps are answered yet

ui-also = Also in the build

ui-failed = Something has gone wrong in this widget
    .meaning = What you have chosen is kept in the address. Load the page again to go on.
ui-reload = Load again
