### The fit sheet. Every key begins with "ui-".

ui-fit-sheet = Fit sheet
ui-print-sheet = Print the fit sheet
ui-date = Date
ui-catalogue = Catalogue
ui-no-trailer = No trailer is chosen, so nothing was looked at.
ui-no-site = No site is chosen, so nothing was looked at.
ui-joints = Joints
ui-joint = Joint
ui-carries = Carries
ui-carried = Is carried
ui-evidence = Evidence
ui-observed = Measured and read on the units
ui-dimension = Dimension
ui-measured = Measured
ui-serial = Serial number
ui-step = Step
ui-hours = Hours
ui-parts-all = Parts, to buy and on hand
ui-template = Template for the holes to drill
ui-template-of = Drill into { $port } of { $item }: { $count ->
    [one] { $count } hole, drawn with a full line
   *[other] { $count } holes, drawn with full lines
}. Dashed holes are there already. It is seen as you look at the face that lies against { $other }. Lay it on the holes that are there before you mark the new ones.
ui-template-joined = Cut the { $count } sheets along their edges and join them: the numbers are row and column.
ui-template-bar = The bar is 100 mm long: check it with a rule before use. Print at 100%, not fitted to the page.
ui-signed = Seen and agreed
    .meaning = This sheet says what was known on its date. It is a plan, not a release for work.
ui-sign-place = Place and date
ui-sign-name = Name
ui-sign = Signature
