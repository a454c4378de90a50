### What stands around a finding: shared causes, evidence, checks, names of values.

same-missing = Not stated for { $item }: { $missing-name }.
    .workshop = { $item }: { $missing-name } not stated. Open because of it: { $areas-name }.

area-loads = axle loads
area-lift = lift
area-hydraulics = hydraulics
area-drive = drive
area-operator = seat
area-wiring = wiring
area-loading = loading
area-site = site
area-digging = digging
area-clearance = clearances
area-build = whole build

evidence-listed = { $row ->
    [none] Evidence: listed together by the maker, outside the guide.
   *[other] Evidence: listed, row { $row } of the guide.
}
evidence-same-part = Evidence: same part as in the listed set { $witness } with { $witness-other }{ $row ->
    [none] .
   *[other] {""} (row { $row } of the guide).
}
evidence-replaced-part = Evidence: replaced part, from the listed set { $witness } with { $witness-other }{ $row ->
    [none] .
   *[other] {""} (row { $row } of the guide).
}
evidence-measured = Evidence: measured with { $tools-name }.
evidence-drawing = Evidence: drawing.
evidence-none = Evidence: none yet.
evidence-stated = Evidence: stated by the maker’s literature.
evidence-looked = Evidence: looked at on the unit.

explain-rest = { $count ->
    [one] { $count } other point is in order.
   *[other] { $count } other points are in order.
}
explain-nothing = Nothing has been chosen yet that could be judged.

chain-same = { $item } bears { $parts }, the same as { $stands-for }.
chain-replaced = { $item } bears { $parts } and stands for { $stands-for }:
step-forward = { $old } was replaced by { $new } { $ways ->
    [both] (both ways).
   *[forward] (forward only: the new serves for the old).
}
step-backward = { $new } replaced { $old }, and the record says the old one also serves for the new (both ways).
joint-parts = Parts: { $a-parts } on { $a }; { $b-parts } on { $b }.
no-parts = not known

check-compare-parts = Compare the part numbers at { $a-port } of { $a } and at { $b-port } of { $b }.
check-measure = Measure at { $port } of { $item }: { $value-name }{ $within ->
    [none] .
   *[other] , to ±{ $within } { $tool ->
        [tape] (a tape will do).
        [caliper] (use a caliper).
       *[finer] (finer than a caliper).
    }
}
check-look = See whether { $item } has this: { $what }.
check-find-out = Find out for { $item }: { $value-name }.
check-ask = Ask the maker or dealer about { $a } with { $b }.
check-stakes = Could move the answer from { $best } to { $worst }.

point-value = { $value-name } (point { $number })
hole-value = hole { $number }, { $value-name }
hole-named = hole { $number } of { $port }

value-at-x = place along the machine
value-at-z = height
value-ballast-place = place for ballast
value-beaver-angle = angle of the beaver tail
value-bolt = bolt diameter
value-bore = bore
value-category = hitch category
value-centre-of-gravity = centre of gravity
value-console = place of the levers
value-coupling = distance from the coupling to the axle
value-deck-height = height of the deck
value-deck-length = length of the deck
value-deck-rear = rear edge of the deck
value-deck-width = width of the deck
value-diameter = diameter
value-drop = drop to the latch pin
value-flow = oil flow
value-front-axle = how the front axle is held
value-front-axle-load = front axle load
value-front-bore = front bore
value-gap = gap
value-gate-width = width of the gate
value-height = height
value-hitch-stay = whether its maker offers a stay for the hitch
value-holes = bolt holes
value-index-point = seat index point
value-latch = latch pin diameter
value-lift = lift capacity
value-link-mass = masses of boom, dipper and bucket
value-lower-pin = lower hitch pin
value-mass = mass
value-mast = mast height
value-nose-load = range of the nose load
value-outlets = hydraulic outlets
value-outline = outline
value-overall-radius = overall tyre radius
value-path-width = width of the path
value-pose = place of the joint
value-power = take-off power
value-power-beyond = power beyond
value-presence-switch = operator-presence switch
value-pressure = hydraulic pressure
value-ramp = ramp
value-rated-load = rated axle load
value-rated-total = rated total mass
value-reach = reach
value-rear-axle-load = rear axle load
value-room-behind = room needed behind the seat
value-rotation = direction of rotation
value-serials = serial numbers
value-setback = setback
value-shaft-type = shaft type
value-size = size
value-span = span of the lower hitch points
value-speed = speed
value-spread = spread
value-standard = standard
value-static-loaded-radius = static loaded tyre radius
value-stations = open station or cab
value-supplier = what it comes with
value-tolerance = tolerance
value-track = track
value-turning-radius = turning radius
value-tyre-width = tyre width
value-u = distance across
value-upper-pin = upper hitch pin
value-v = distance up
value-wheelbase = wheelbase
value-width = width

port-kind-bar = bar
port-kind-bolt-pattern = bolt holes
port-kind-clevis = clevis
port-kind-electric = plug
port-kind-hook = hooks
port-kind-hook-rack = hooks
port-kind-lug = lug
port-kind-pins = pins
port-kind-power-take-off = power take-off
port-kind-seat-base = seat base
port-kind-three-point = three-point hitch
port-kind-coupler = hydraulic coupling

rotation-clockwise = clockwise
rotation-counter-clockwise = counter-clockwise
station-open = open
station-cab = cab
axle-front = front
axle-rear = rear

footprint-length = Overall length
footprint-width = Overall width
footprint-height = Overall height
footprint-wheelbase = Wheelbase
footprint-rear-overhang = Rear overhang
footprint-front-overhang = Front overhang
footprint-ground-clearance = Ground clearance
footprint-departure = Departure angle
footprint-approach = Approach angle
footprint-breakover = Breakover angle
footprint-mass = Mass with operator
footprint-front-load = Front axle load
footprint-rear-load = Rear axle load
footprint-to-buy = To buy
footprint-work = Workshop time
footprint-items-to-buy = Items to buy

remedy-adapter = Put in { $item }
remedy-seat = Take { $item } as the seat
remedy-frame = Take { $item } as the frame
remedy-hitch = Hang it on the three-point hitch
remedy-drill = Drill the missing holes at { $port } of { $item }
remedy-open-up = Open the holes at { $port } of { $item } by { $by }
remedy-front-seat-forward = Fold the operator’s seat forward
remedy-fold-roll-over-bar = Fold the roll-over bar, for transport and storage only
remedy-take-off = Take off { $what }
remedy-put-on = Put on { $what }
remedy-ramps = Use ramps of { $length }
remedy-gateway = Take a gateway of { $width }
remedy-path = Take a path of { $width }
remedy-ballast = Hang { $mass } of ballast { $x } ahead of the rear axle
remedy-ballast-behind = Hang { $mass } of ballast { $x } behind the rear axle
remedy-leads-to = Then: { $verdict }
remedy-costs = { $money } to buy
remedy-saves = saves { $money }
remedy-price-open = price on request
remedy-takes = { $work } of work
remedy-length = { $length } in length
remedy-departure = { $change } of departure angle
remedy-settles = Settles: { $findings }
remedy-leaves = Still open: { $findings }
remedy-same-price = nothing more to buy
remedy-price-elsewhere = its price is not in this catalogue
remedy-same-size = same length and departure angle
remedy-with-first = With the first of these
remedy-as-before = { $value }, as before

come-by-buy = to buy
come-by-on-hand = on hand
come-by-elsewhere = not in this catalogue
come-by-comes-with = comes with { $item }
