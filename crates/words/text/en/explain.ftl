### What stands around a finding: shared causes, evidence, checks, names of values.

same-missing = Data missing for { $item }: { $missing-name }.{ $risk ->
    [yes] {" "}Do not connect, lift or drive with the implement before they are known.
   *[no] {""}
}
    .workshop = Data missing for { $item }: { $missing-name }. Cannot be answered without it: { $areas-name }.{ $risk ->
        [yes] {" "}Do not connect, lift or drive with the implement before they are known.
       *[no] {""}
    }

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
evidence-same-part = Evidence: same part as in the listed set “{ $witness }” + “{ $witness-other }”{ $row ->
    [none] .
   *[other] {""} (row { $row } of the guide).
}
evidence-replaced-part = Evidence: replaced part, from the listed set “{ $witness }” + “{ $witness-other }”{ $row ->
    [none] .
   *[other] {""} (row { $row } of the guide).
}
evidence-measured = Evidence: measured with a { $tools-name }.
evidence-drawing = Evidence: drawing.
evidence-none = Evidence: none yet.
evidence-stated = Evidence: stated by the maker’s literature.
evidence-looked = Evidence: looked at on the unit.
evidence-read = Read off the unit: { $item }, { $port }: { $parts }{ $by ->
    [none] {""}
   *[other] , by { $by }
}{ $when ->
    [none] .
   *[other] , { $when }.
}

explain-rest = { $count ->
    [one] { $count } other point is in order.
   *[other] { $count } other points are in order.
}
explain-nothing = Nothing that could be judged has been chosen yet.

chain-same = { $item } carries { $parts } at this joint, the same as { $stands-for }.
chain-replaced = { $item } carries { $parts } at this joint, so it counts like { $stands-for }:
step-forward = { $new } replaces { $old } { $ways ->
    [both] (either fits in place of the other).
   *[forward] (the new part fits in place of the old, not the other way round).
}
step-backward = { $new } replaces { $old }, and the record says that either fits in place of the other.
joint-parts = Parts: { $a-parts } on { $a }; { $b-parts } on { $b }.
no-parts = not known

check-compare-parts = Compare the part numbers: { $a }, { $a-port }, with { $b }, { $b-port }.
check-measure = Measure: { $item }, { $port }, { $value-name }{ $within ->
    [none] .
   *[other] , to ±{ $within } { $tool ->
        [tape] (a tape will do).
        [caliper] (use a caliper).
       *[finer] (finer than a caliper).
    }
}
check-measure-all = Measure all of these: { $item }, { $port }: { $value-name }{ $within ->
    [none] .
   *[other] , to ±{ $within } { $tool ->
        [tape] (a tape will do).
        [caliper] (use a caliper).
       *[finer] (finer than a caliper).
    }
}
check-read-parts = Read the part numbers: { $item }, { $port }. Any of these would prove it: { $numbers } (listed with { $witness }).
check-read-off = Find out: { $item }, { $port }, { $value-name }.
check-look = See whether it is there: { $item }, { $what }.
check-find-out = Find out: { $item }, { $value-name }.
check-ask = Ask the maker or dealer about { $a } with { $b }.
check-gap = Measure the gap: { $a }, { $a-shape }, to { $b }, { $b-shape }, when both are in place; at least { $wanted } is wanted.
check-stakes = Could move { $question } from “{ $now }” to “{ $best }”{ $worst ->
    [none] .
   *[other] {" "}or to “{ $worst }”.
}
quoted = “{ $title }”

point-value = { $value-name } (point { $number })
hole-value = hole { $number }, { $value-name }
hole-to-hole = hole { $a } to hole { $b }, centre to centre
point-to-point = point { $a } to point { $b }, centre to centre
hole-named = { $port }, hole { $number }

value-across = distance across
value-at-x = position along the machine
value-at-z = position in height
value-ballast-place = place for ballast
value-beaver-angle = angle of the beaver tail
value-bolt = bolt diameter
value-bore = bore
value-cab-rear = rear wall of the cab
value-category = hitch category
value-centre-of-gravity = centre of gravity
value-console = position of the levers
value-coupling = distance from the trailer coupling to the axle
value-deck-height = height of the deck
value-deck-length = length of the deck
value-deck-rear = rear edge of the deck
value-deck-width = width of the deck
value-diameter = diameter
value-drop = hook centre down to latch pin
value-edge = distance from the outermost holes to the edge
value-flow = oil flow
value-from-axle-along = from the first hole or pin of the axle anchor to the first one here, along the machine
value-from-axle-height = height of the first hole or pin here above the first one of the axle anchor
value-front-axle = front axle: fixed or oscillating
value-front-axle-load = front axle load
value-front-bore = front bore
value-gap = clevis opening
value-gate-height = gate height
value-gate-width = gate width
value-greatest-flow = greatest oil flow it stands
value-greatest-power = greatest PTO power it stands
value-greatest-pressure = greatest hydraulic pressure it stands
value-ground-load = greatest axle load on the ground
value-height = height
value-hitch-stay = whether its maker offers a brace for the three-point hitch
value-holes = bolt holes
value-hydraulic-need = what it needs of the hydraulics
value-index-point = seat index point
value-latch = latch pin diameter
value-least-flow = least oil flow it needs
value-least-power = least PTO power it needs
value-least-pressure = least hydraulic pressure it needs
value-lift = hitch lift capacity
value-link-mass = masses of boom, dipper and bucket
value-lower-pin = lower link pin
value-mass = mass
value-mast = mast height
value-metal = metal of the plate
value-nose-load = allowed nose weight (tongue weight)
value-outlets = remote outlets
value-outline = outline
value-overall-radius = overall tyre radius
value-own-seat = its own seat
value-pair-width = width over the faces or between the side plates
value-path-turn = whether the path turns a right angle
value-path-width = path width
value-plate = thickness of the plate
value-pose = position of the joint
value-power = PTO power
value-power-beyond = power beyond
value-presence-switch = seat switch
value-pressure = hydraulic pressure
value-ramp = ramp
value-rated-axle = trailer axle rating
value-rated-load = rated axle load
value-rated-nose = greatest nose weight of the coupling
value-rated-total = rated total mass
value-reach = reach
value-rear-axle-load = rear axle load
value-roll-over-bar = roll-over bar
value-room-behind = room needed behind the seat
value-rotation = PTO direction of rotation
value-seat-off = whether the seat comes off
value-serials = serial numbers
value-setback = hook centre to plate
value-shaft-type = PTO shaft type
value-size = size
value-span = lower link pin spacing
value-speed = PTO speed
value-spread = spacing left to right
value-standard = standard
value-static-loaded-radius = static loaded tyre radius
value-stations = open station or cab
value-supplier = what it comes with
value-swivel-radius = radius in which the seat turns
value-thread = thread
value-tolerance = tolerance
value-track = track width
value-transport-width = width in transport
value-turning-radius = turning radius
value-tyre-rating = rated load of a tyre
value-tyre-width = tyre width
value-u = position across, from the drawing’s zero point
value-upper-pin = top link pin
value-v = position up, from the drawing’s zero point
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
port-kind-coupler = hydraulic coupler

rotation-clockwise = clockwise
rotation-counter-clockwise = counter-clockwise
station-open = open
station-cab = cab
axle-front = front
axle-rear = rear
bearer-front-axle = Front axle
bearer-front-tyre = One front tyre
bearer-hitch = Hitch
bearer-rear-axle = Rear axle
bearer-rear-tyre = One rear tyre
limit-de-stvzo-22 = StVZO section 22 (4) of Germany
limit-eu-96-53 = Directive 96/53/EC of the EU
limit-us-23-cfr-658 = 23 CFR 658.15 of the United States
limit-us-49-cfr-393-87 = 49 CFR 393.87 of the United States, from which it has to be marked

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

remedy-adapter = Fit in between: { $item }
remedy-seat = Use { $item } as the seat
remedy-frame = Use { $item } as the frame
remedy-hitch = Hang it on the three-point hitch
remedy-drill = Have the missing holes drilled, if the maker agrees: { $item }, { $port }
remedy-open-up = Have the holes opened up by { $by }, if the maker agrees: { $item }, { $port }
remedy-driver-seat = { $state ->
    [folded] Fold the operator’s seat forward to work
    [slid] Slide the operator’s seat forward to work
    [turned] Turn the operator’s seat round to work
    [off] Take the operator’s seat off to work
   *[driving] Leave the operator’s seat as it is
}
remedy-rear-seat = { $state ->
    [folded] Fold the seat behind to drive
    [slid] Slide the seat behind forward to drive
    [turned] Turn the seat behind to drive
    [off] Take the seat behind off to drive
   *[driving] Leave the seat behind as it is
}
remedy-fold-roll-over-bar = Fold the roll-over bar only to pass, for transport or for storage, never to work; raise it again at once
remedy-take-off = Take off: { $what }
remedy-put-on = Fit: { $what }
remedy-ramps = Use ramps of { $length }
remedy-gateway = Use an entrance at least { $width } wide
remedy-path = Use a path at least { $width } wide
remedy-ballast = Fit { $mass } of ballast { $x } ahead of the rear axle
remedy-ballast-behind = Fit { $mass } of ballast { $x } behind the rear axle
strip-title = What comes off, moves and goes on
strip-stays = Leave on: { $what }
strip-own-seat = Take off the own seat of { $item }
strip-fit = Fit { $item }
strip-hours-unknown = hours not stated
strip-at-least = at least { $work }
bolts-title = Bolts
bolts-joint = { $carrier } + { $carried } ({ $role })
bolts-number = { $number } × { $thread }
bolts-thread = { $thread }, as many as the manual says
bolts-number-alone = { $number } bolts, which ones see the manual
bolts-as-in-manual = which bolts and how many: see the manual
bolts-on-both-sides = as many on the other side of the machine
bolts-length = { $length } long for { $grip } of plates
bolts-grip = for { $grip } of plates, length: see the manual
bolts-length-unknown = length: see the manual
bolts-nuts = with a nut each
bolts-tapped = into the thread of { $item }
bolts-washers = { $count ->
    [one] { $count } washer each
   *[other] { $count } washers each
}
bolts-plate-washer = a plate washer each on { $item }
bolts-class = class { $class }
bolts-class-unknown = class: see the manual
bolts-torque = tighten to { $torque }
bolts-torque-unknown = torque: see the manual
bolts-class-and-torque-unknown = class and torque: see the manual
bolts-drill = { $count ->
    [one] Drill { $count } hole of { $diameter } into { $item }, “{ $port }”
   *[other] Drill { $count } holes of { $diameter } into { $item }, “{ $port }”
}
bolts-open = { $count ->
    [one] Open up { $count } hole of { $item }, “{ $port }”, to { $diameter }
   *[other] Open up { $count } holes of { $item }, “{ $port }”, to { $diameter }
}
bolts-edge = { $edge } from the middle to the edge of the plate, at least { $least } needed
bolts-edge-unknown = see that it is at least { $least } from the middle to the edge of the plate
sets-unbeaten = nothing beats it
sets-items-to-buy = Items to buy
sets-all-kept = You keep all four choices, so this is the one set. Leave one open to see what else goes on.
sets-says = The best complete sets, best answer first.
sets-none = No complete set goes on.
sets-not-all = There are too many sets to look at all of them; these are the best of those looked at.
lists-read = { $count ->
    [one] { $count } line read
   *[other] { $count } lines read
}
lists-says = Choose or paste two parts lists. Each assembly is told as the same, replaced or different, with what follows for the joint that it bears.
lists-without-heading = Without a heading
lists-same = the same
    .joint = What is proven of one at this joint holds for the other.
lists-replaced-both-ways = numbers replaced, either serves for the other
    .joint = What is proven of one at this joint holds for the other.
lists-second-serves-for-first = the second list has what replaces parts of the first
    .joint = The second serves where the first does. The other way it is not proven.
lists-first-serves-for-second = the first list has what replaces parts of the second
    .joint = The first serves where the second does. The other way it is not proven.
lists-quantities-differ = the same numbers in other quantities
    .joint = Not proven as long as it is open which quantity is right.
lists-hardware-differs = nothing but bolts, nuts or washers differs
    .joint = The parts that bear the joint are the same. Fit the bolts, nuts and washers of the list that the joint is proven with.
lists-differs = differs
    .joint = These lists do not prove this joint.
lists-only-first = only in the first list
    .joint = Nothing follows for this joint: the second list lacks it.
lists-only-second = only in the second list
    .joint = Nothing follows for this joint: the first list lacks it.
lists-line-only-first = { $first }: { $of-first } in the first list, none in the second
lists-line-only-second = { $second }: none in the first list, { $of-second } in the second
lists-line-quantity = { $first }: { $of-first } in the first list, { $of-second } in the second
lists-line-second-replaces = { $second } replaces { $first }, not the other way
lists-line-second-replaces-both-ways = { $second } replaces { $first }, either serves
lists-line-first-replaces = { $first } replaces { $second }, not the other way
lists-line-first-replaces-both-ways = { $first } replaces { $second }, either serves
lists-line-written-otherwise = { $first } is written { $second } in the second list
lists-line-same = { $of-first } × { $first } in both
lists-fault = Line { $line }: { $what }.
lists-fault-no-number = no part number in “{ $text }”; write one or leave the line out
lists-fault-quantity = “{ $text }” is no quantity; write a whole number from 1
lists-fault-doubled = { $text } stands in line { $other } as well; the quantities are added up
lists-fault-no-list = this is no parts list; give lines with a part number and a quantity
lists-fault-too-long = the list has more than { $other } lines; split it
lists-fault-not-text = this is no text; save the list as CSV in UTF-8
remedy-leads-to = Then: { $verdict }
answer-to = { $answer } ({ $question })
remedy-costs = { $money } more to buy
remedy-saves = saves { $money }
remedy-price-open = price on request
remedy-takes = { $work } { $way ->
    [less] less work
   *[more] more work
}
remedy-length = { $length } { $way ->
    [less] shorter
   *[more] longer
}
remedy-departure = departure angle { $change } { $way ->
    [less] smaller
   *[more] larger
}
remedy-settles = Does away with: { $findings }
remedy-leaves = Still open: { $findings }
remedy-same-price = nothing more to buy
remedy-price-elsewhere = its price is not in this catalogue
remedy-same-size = same length and departure angle
remedy-with-first = With the first suggestion
remedy-as-before = { $value }, as before

total-at-least = at least { $known }; { $open ->
    [one] { $open } price is not known
   *[other] { $open } prices are not known
}
come-by-buy = to buy
come-by-on-hand = on hand
come-by-elsewhere = not in this catalogue
come-by-comes-with = supplied with { $item }

date = { $day } { $month } { $year }
month-1 = January
month-2 = February
month-3 = March
month-4 = April
month-5 = May
month-6 = June
month-7 = July
month-8 = August
month-9 = September
month-10 = October
month-11 = November
month-12 = December

labelled = { $label }: { $value }
clauses = { $first }; { $second }

file-clean = { $file }: no problems
file-warned = { $file }: { $warnings ->
    [one] { $warnings } warning
   *[other] { $warnings } warnings
}; the catalogue can be used
file-faulty = { $file }: { $errors ->
    [one] { $errors } error
   *[other] { $errors } errors
}, { $warnings ->
    [one] { $warnings } warning
   *[other] { $warnings } warnings
}
file-unusable = { $errors ->
    [one] The catalogue has { $errors } mistake and cannot be used; “{ $command }” shows it with its mend.
   *[other] The catalogue has { $errors } mistakes and cannot be used; “{ $command }” shows all with their mends.
}
file-error = error
file-warning = warning
