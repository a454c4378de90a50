### One message for each kind of finding: the sentence for a shopper, `.short` for cards and lists,
### `.workshop` with the figures.
###
### Variables: the figures of the code; a figure that is not there has the value "none". A figure
### that is a coded word only chooses a variant; its name to show is the variable with `-name` behind it.
### $a and $b are the items the finding is about (carrier and carried of a joint), $roles-name the joints'
### names, $missing-of the item that lacks the value.
access-unknown = Whether the machine gets into the site is not known, because something it depends on is not stated.
    .short = Access not known
    .workshop = Access: { $missing-name } of { $item } not stated.
adapter-goes-in = { $item } goes in between.
    .short = Needs { $item }
    .workshop = Fit { $item }{ $work ->
        [none] .
       *[other] : { $work } of workshop time.
    }
adapter-not-needed = { $item } is not needed here.
    .short = { $item } is not needed
    .workshop = { $item } joins nothing in this build and can be left out.
arm-on-hitch = A digging arm on a bare three-point hitch can be forced up towards the operator. Ask whether its maker offers a stay for it.
    .short = Digging arm on a bare hitch
    .workshop = { $item } hangs on the bare three-point hitch and can be forced up and over towards the operator. Use a frame, or the maker’s own stay where the manual allows it.
axle-overloaded = { $axle ->
    [front] The front axle would carry more than it is rated for.
   *[rear] The rear axle would carry more than it is rated for.
}
    .short = { $axle ->
        [front] Front axle overloaded
       *[rear] Rear axle overloaded
    }
    .workshop = { $axle ->
        [front] Front axle
       *[rear] Rear axle
    }: load { $load }, rated { $rated }, over by { $over }.
axle-within-rating = { $axle ->
    [front] The front axle carries its load within its rating.
   *[rear] The rear axle carries its load within its rating.
}
    .short = { $axle ->
        [front] Front axle within its rating
       *[rear] Rear axle within its rating
    }
    .workshop = { $axle ->
        [front] Front axle
       *[rear] Rear axle
    }: load { $load }, rated { $rated }, { $left } left.
bar-in-the-way = { $bar ->
    [stays-up] With { $item } on, the roll-over bar cannot be folded down.
   *[up] The roll-over bar and { $item } are in each other’s way.
}
    .short = { $bar ->
        [stays-up] Roll-over bar stays up
       *[up] Roll-over bar in the way
    }
    .workshop = { $bar ->
        [stays-up] Folded, the roll-over bar would overlap
        [folded] The folded roll-over bar overlaps
       *[up] The standing roll-over bar overlaps
    } { $item } by { $overlap }.
bolts-unknown = Bolts go through { $bolts } of { $holes } holes, and it is not stated whether that is enough.
    .short = Number of bolts not stated
    .workshop = One plate has { $holes } holes, the other { $bolts }. Ask the maker how many bolts this joint needs.
clearance-hit = { $item } and { $other } are in each other’s way.
    .short = { $item } hits { $other }
    .workshop = { $shape-name } of { $item } overlaps { $other-shape-name } of { $other } by { $overlap }.
clearance-tight = { $item } comes close to { $other }.
    .short = { $item } close to { $other }
    .workshop = { $shape-name } of { $item } to { $other-shape-name } of { $other }: { $gap } between them, { $wanted } wanted.
clearance-unknown = Nothing is drawn of one of the two, so nobody can say yet whether they keep clear of each other.
    .short = Outline not stated
    .workshop = { $missing-of }: { $missing-name } not stated.
closure-meets = Bolted at the rear axle, { $b } also meets the front anchor of { $a }.
    .short = Meets the front anchor
    .workshop = Front anchor: off by { $off-by }, margin { $margin }, worst case ±{ $worst-case }{ $slot ->
        [none] .
       *[other] ; the slot gives { $slot }.
    }
closure-misses = Bolted at the rear axle, { $b } does not meet the front anchor of { $a }.
    .short = Misses the front anchor
    .workshop = Front anchor: off by { $off-by }, margin { $margin }, worst case ±{ $worst-case }. Between its anchors the frame is { $longer-way ->
        [shorter] { $longer } shorter
       *[longer] { $longer } longer
    } than the machine’s mounting.
closure-open = Whether { $b } meets the front anchor of { $a } is too close to call from the drawings.
    .short = Front anchor too close to call
    .workshop = Front anchor: off by { $off-by }, margin { $margin }, worst case ±{ $worst-case }; chance of meeting { $probability }{ $settles ->
        [none] .
       *[other] . One figure known to ±{ $settles } would settle it.
    }
closure-unknown = It is not stated where the front anchor sits, so nobody can say yet whether { $b } meets it.
    .short = Front anchor not stated
    .workshop = Front anchor of { $missing-of }: { $missing-name } not stated.
corner-clears = The machine gets round the corner behind the gate in one sweep.
    .short = Gets round the corner
    .workshop = Gate { $gate }, then square into a path of { $path }: { $wanted } of path is enough.
corner-tight = The machine does not get round the corner behind the gate in one sweep. Try whether a few moves to and fro do.
    .short = Corner is tight
    .workshop = Gate { $gate }, then square into a path of { $path }: { $wanted ->
        [none] no width of path is enough for one sweep, because the tail swings out against the gate.
       *[other] one sweep wants a path of { $wanted }.
    }
coupler-differs = The hydraulic couplings differ, so a hose needs another end.
    .short = Hose needs another end
    .workshop = { $roles-name }: { $carrier } on { $a }, { $carried } on { $b }. Change the hose end.
coupler-fits = The hydraulic couplings match.
    .short = Couplings match
    .workshop = { $roles-name }: { $standard } size { $size } on both sides.
coupler-unknown = One of the hydraulic couplings is not stated.
    .short = Coupling not stated
    .workshop = { $roles-name } of { $missing-of }: { $missing-name } not stated.
frame-idle = { $item } stays empty: { $other } hangs on the three-point hitch behind it.
    .short = Nothing hangs on { $item }
    .workshop = { $other } hangs on the hitch and nothing on { $item }. Take the frame off, or choose an implement or adapter that its rack carries.
frame-in-the-ground = { $item } would reach into the ground.
    .short = Reaches into the ground
    .workshop = The lowest point of { $item } lies { $below } below the ground.
frame-low = { $item } hangs low over the ground.
    .short = Low over the ground
    .workshop = The lowest point of { $item } is { $height } over the ground; { $wanted } is wanted.
front-axle-heavy-enough = Enough weight stays on the front wheels to steer.
    .short = Front axle heavy enough
    .workshop = The front axle carries { $share } of the machine’s unladen mass; { $least } is the least.
front-axle-lifts = The front wheels would come off the ground.
    .short = Front wheels lift
    .workshop = The front axle is { $lift } short of staying on the ground. { $ballast } placed { $ballast-at } ahead of the rear axle brings it up to the least share.
front-axle-light = The front wheels get too light to steer safely. About { $ballast } of front ballast would bring them up.
    .short = Needs front ballast
    .workshop = The front axle carries { $share } of the machine’s unladen mass; { $least } is the least. { $ballast } placed { $ballast-at } ahead of the rear axle reaches it.
front-seat-in-the-way = { $need ->
    [flips-forward] The operator’s seat would have to fold forward, and on this machine it does not.
    [comes-off] The operator’s seat has to come off to make room.
   *[other] The operator’s seat would have to slide forward farther than it can.
}
    .short = { $need ->
        [flips-forward] Front seat does not fold
        [comes-off] Front seat comes off
       *[other] Front seat in the way
    }
    .workshop = { $need ->
        [flips-forward] Operator’s seat: has to fold forward; this one does not.
        [comes-off] Operator’s seat: unbolt it and take it off.
       *[other] Operator’s seat: has to slide forward { $need }; it slides { $has }.
    }
gate-low = { $folded ->
    [none] The machine is too high for the gate.
   *[other] With its roll-over bar up the machine is too high for the gate; with the bar folded it goes through.
}
    .short = Gate too low
    .workshop = Height { $height }, gate { $gate }, { $beyond } too high{ $folded ->
        [none] .
       *[other] ; with the roll-over bar folded { $folded }.
    }
gate-narrow = The machine is { $beyond } wider than the gate.
    .short = Gate too narrow
    .workshop = Width { $width }, gate { $gate }: { $beyond } too wide.
gate-passes = The machine goes through the gate with { $left } left on each side.
    .short = Goes through the gate
    .workshop = Width { $width }, gate { $gate }: { $left } left on each side.
ground-carries = The site’s ground takes the machine’s heaviest axle.
    .short = Ground takes it
    .workshop = { $axle ->
        [front] Front axle
       *[rear] Rear axle
    }: load { $load }, the ground takes { $most }, { $left } left.
ground-overloaded = The machine’s heaviest axle is { $over } more than the site’s ground takes.
    .short = Too heavy for the ground
    .workshop = { $axle ->
        [front] Front axle
       *[rear] Rear axle
    }: load { $load }, the ground takes { $most }, over by { $over }.
hitch-differs = The three-point hitches are of different sizes, and { $b } does not go on.
    .short = Hitch categories differ
    .workshop = Hitch category { $carrier } on { $a }, { $carried } on { $b }: the pins are too large.
hitch-dimension-misfits = A dimension of the three-point hitch is wrong for { $b }: it does not go on.
    .short = Hitch dimension does not fit
    .workshop = { $dimension-name }: { $carrier } on { $a }, { $carried } on { $b }, { $over } too much.
hitch-dimension-open = Whether { $b } goes on the three-point hitch is too close to call from its dimensions.
    .short = Hitch too close to call
    .workshop = { $dimension-name }: { $carrier } on { $a }, { $carried } on { $b }; chance of fitting { $probability }{ $settles ->
        [none] .
       *[other] . Known to ±{ $settles } it would be settled.
    }
hitch-fits = The three-point hitch is of the right size.
    .short = Hitch category fits
    .workshop = Hitch category { $category } (ISO 730) on both sides.
hitch-frame-stiff = The hooks of the quick-attach frame stand at another span than { $b } has.
    .short = Quick-attach frame does not fit
    .workshop = Hitch category { $carrier } on { $a } with a quick-attach frame, { $carried } on { $b }: the hooks cannot be moved. Take the frame off.
hitch-needs-bushings = The hitch is one size larger than { $b } needs; bushings take that up.
    .short = Needs hitch bushings
    .workshop = Hitch category { $carrier } on { $a }, { $carried } on { $b }: fit reducing bushings.
hitch-other-span = The lower links have to be moved to the span of { $b }.
    .short = Lower links to be moved
    .workshop = Hitch category { $carrier } on { $a }, { $carried } on { $b }: the pins are the same, the span is not. Move the lower links and set their stabilisers.
hitch-unknown = The size of a three-point hitch is not stated.
    .short = Hitch size not stated
    .workshop = Hitch of { $missing-of }: { $missing-name } not stated.
holes-drilled = { $drill ->
    [one] { $drill } hole is drilled in { $side }, as decided.
   *[other] { $drill } holes are drilled in { $side }, as decided.
}
    .short = { $drill ->
        [one] { $drill } hole drilled
       *[other] { $drill } holes drilled
    }
    .workshop = { $roles-name }: mark { $drill ->
        [one] { $drill } hole
       *[other] { $drill } holes
    } through onto { $port } of { $side } and drill; then { $bolts ->
        [one] { $bolts } bolt goes in
       *[other] { $bolts } bolts go in
    } with a margin of { $margin }. { $work } of workshop time.
holes-may-meet = Whether the bolt holes of { $b } and { $a } line up is too close to call from the drawings.
    .short = Bolt holes too close to call
    .workshop = { $roles-name }: { $bolts ->
        [one] { $bolts } bolt
       *[other] { $bolts } bolts
    }, margin { $margin }, worst case ±{ $worst-case }; chance of meeting { $probability }{ $settles ->
        [none] .
       *[other] . One figure known to ±{ $settles } would settle it.
    }
holes-meet = The bolt holes of { $b } and { $a } line up.
    .short = Bolt holes line up
    .workshop = { $roles-name }: { $bolts ->
        [one] { $bolts } bolt goes in
       *[other] { $bolts } bolts go in
    }, margin { $margin }, worst case ±{ $worst-case }.
holes-miss = The bolt holes of { $b } and { $a } do not line up.
    .short = Bolt holes do not line up
    .workshop = { $roles-name }: { $bolts ->
        [one] { $bolts } bolt is
       *[other] { $bolts } bolts are
    } needed, and no position takes them, not even with holes opened up or drilled{ $margin ->
        [none] .
       *[other] ; at best the margin is { $margin }, worst case ±{ $worst-case }.
    }
holes-need-drilling = { $drill ->
    [one] { $drill } hole has to be drilled in { $side }.
   *[other] { $drill } holes have to be drilled in { $side }.
}
    .short = { $drill ->
        [one] { $drill } hole to drill
       *[other] { $drill } holes to drill
    }
    .workshop = { $roles-name }: drill { $drill ->
        [one] { $drill } hole
       *[other] { $drill } holes
    } in { $side }; then { $bolts ->
        [one] { $bolts } bolt goes in
       *[other] { $bolts } bolts go in
    } with a margin of { $margin }.
holes-need-opening = The bolt holes have to be opened up a little.
    .short = Bolt holes to open up
    .workshop = { $roles-name }: open the holes by up to { $open-by } in diameter; then { $bolts ->
        [one] { $bolts } bolt goes in
       *[other] { $bolts } bolts go in
    } with a margin of { $margin }.
holes-opened = The bolt holes of { $side } are opened up, as decided.
    .short = Bolt holes opened up
    .workshop = { $roles-name }: open the holes of { $port } on { $side } by { $open-by } in diameter; then { $bolts ->
        [one] { $bolts } bolt goes in
       *[other] { $bolts } bolts go in
    } with a margin of { $margin }. { $work } of workshop time.
holes-plan-not-needed = { $kind ->
    [opening] The bolt holes of { $item } need no opening up here.
   *[drilling] { $item } needs no drilling here.
}
    .short = { $kind ->
        [opening] Opening up not needed
       *[drilling] Drilling not needed
    }
    .workshop = { $kind ->
        [opening] Opening up { $port } of { $item } is decided, and no joint of this build makes use of it.
       *[drilling] Drilling { $port } of { $item } is decided, and no joint of this build makes use of it.
    }
holes-plan-not-possible = { $kind ->
    [opening] Opening up holes of { $item } is decided, but not as it can be done.
   *[drilling] Drilling { $item } is decided, but not as it can be done.
}
    .short = { $kind ->
        [opening] Opening up not possible
       *[drilling] Drilling not possible
    }
    .workshop = { $reason ->
        [no-port] { $item } has no { $port }.
        [no-holes] { $port } of { $item } has no bolt holes.
       *[too-much] { $port } of { $item }: holes are opened up by more than nothing and by 1 mm at most.
    } Decide again.
holes-too-many = There are too many bolt holes to try every way of laying { $b } on { $a }. Lay one on the other, or compare the part numbers.
    .short = Too many bolt holes to compare
    .workshop = { $roles-name }: { $holes } holes; up to { $most } are compared, fewer where they lie irregularly.
holes-unknown = The bolt holes are not stated on one side, so nobody can say yet whether they line up.
    .short = Bolt holes not stated
    .workshop = { $roles-name } of { $missing-of }: { $missing-name } not stated.
hooks-hold = The hooks of { $b } sit on the bar of { $a }, and the latch pin goes in.
    .short = Hooks and latch fit
    .workshop = { $roles-name }: hooks and latch within { $limit }; play { $play }.
hooks-may-hold = Whether the hooks of { $b } fit { $a } is too close to call from the drawings.
    .short = Hooks too close to call
    .workshop = { $roles-name }: { $dimension-name }, { $play } between the two, up to { $limit } is allowed; chance of holding { $probability }{ $settles ->
        [none] .
       *[other] . Known to ±{ $settles } it would be settled.
    }
hooks-misfit = The hooks of { $b } do not fit { $a }.
    .short = Hooks do not fit
    .workshop = { $roles-name }: { $dimension-name } { $carrier } on { $a }, { $carried } on { $b }: { $off-by } apart, up to { $limit } is allowed.
hooks-unknown = A dimension of the hooks is not stated.
    .short = Hooks not stated
    .workshop = { $roles-name } of { $missing-of }: { $missing-name } not stated.
hydraulics-flow-high = The machine pumps more oil than the implement is made for.
    .short = Too much oil flow
    .workshop = Flow { $flow }; the implement takes { $most } at most. Fit a flow divider or ask its maker.
hydraulics-flow-short = The machine pumps less oil than the implement wants, so it works slowly.
    .short = Little oil flow
    .workshop = Flow { $flow }; the implement wants { $least }. Each stroke takes { $time-ratio } times as long.
hydraulics-match = The machine’s hydraulics suit the implement.
    .short = Hydraulics suit
    .workshop = Flow { $flow } at { $pressure }: { $power } of hydraulic power.
hydraulics-no-power-beyond = The implement wants its own feed from the pump (power beyond), and the machine has none yet.
    .short = Needs a power-beyond kit
    .workshop = Power beyond: wanted by the implement, not on the machine. Fit a kit.
hydraulics-outlets-short = The machine has too few hydraulic outlets.
    .short = Too few hydraulic outlets
    .workshop = Outlets: { $has } there, { $need } needed. Add a valve or a diverter.
hydraulics-pressure-high = The machine’s hydraulic pressure is more than the implement stands.
    .short = Too much hydraulic pressure
    .workshop = Relief pressure { $pressure }; the implement stands { $most }.
hydraulics-pressure-short = The machine’s hydraulic pressure is low for the implement, so it digs or lifts with less force.
    .short = Low hydraulic pressure
    .workshop = Relief pressure { $pressure }; the implement wants { $least }.
hydraulics-unknown = Not everything is stated about the machine’s hydraulics.
    .short = Hydraulics not stated
    .workshop = Hydraulics of { $missing-of }: { $missing-name } not stated.
implement-own-seat = This seat comes with an implement, and the chosen implement brings none.
    .short = The implement brings no seat
    .workshop = Seat: the implement’s own is chosen; this implement has none.
joint-listed = The maker lists { $a } and { $b } together.
    .short = Listed together
    .workshop = { $roles-name }: listed together { $guide ->
        [none] by the maker, outside the guide.
       *[other] in { $guide } of { $date }.
    }
joint-replaced-part = The maker’s replacement records link the parts that join { $a } and { $b } to a set it lists.
    .short = Linked by replaced parts
    .workshop = { $roles-name }: { $part } is linked by replacement to the set { $witness } with { $witness-other }, which the maker lists.
joint-same-part = { $a } and { $b } join by the same parts as a set that the maker lists.
    .short = Same parts as a listed set
    .workshop = { $roles-name }: { $part } also bears the joint of { $witness } with { $witness-other }, which the maker lists.
kinds-differ = { $b } joins in another way than { $a } offers.
    .short = Different kinds of joint
    .workshop = { $roles-name }: { $carrier-name } on { $a }, { $carried-name } on { $b }.
lift-enough = The hitch can lift the implement.
    .short = The hitch lifts it
    .workshop = Lift capacity { $lift } where the implement hangs, mass { $mass }: { $left } left.
lift-short = The hitch cannot lift the implement.
    .short = Too heavy for the hitch
    .workshop = Lift capacity { $lift } where the implement hangs, mass { $mass }: { $over } too much.
lift-unknown = It is not stated whether the hitch can lift the implement.
    .short = Lift not stated
    .workshop = Lift: { $missing-name } of { $missing-of } not stated.
listing-and-dimensions-disagree = The maker lists { $a } and { $b } together, but by their dimensions they do not join. One of the two is wrong.
    .short = List and dimensions disagree
    .workshop = { $roles-name }: listed together, yet the dimensions say no{ $margin ->
        [none] .
       *[other] : margin { $margin }, worst case ±{ $worst-case }.
    } Compare the part numbers on the units before anything is bought.
loading-unknown = How the machine travels on the trailer is not known, because something it depends on is not stated.
    .short = Loading not known
    .workshop = Loading: { $missing-name } of { $item } not stated.
loads-unknown = The axle loads are not known, because something they depend on is not stated.
    .short = Axle loads not known
    .workshop = Axle loads: { $missing-name } of { $item } not stated.
measurement-not-used = A measurement of { $item } cannot be used. Take it again.
    .short = Measurement not used
    .workshop = { $port } of { $item }, { $dimension-name }: { $reason ->
        [no-port] { $item } has no { $port }.
        [no-dimension] { $port } has no such dimension.
       *[impossible] no unit has that value.
    }
must-come-off = { $what } has to come off the machine.
    .short = { $what } has to come off
    .workshop = For { $item }: { $what } comes off the machine.
must-go-on = { $what } has to be on the machine.
    .short = Needs { $what }
    .workshop = For { $item }: { $what } goes on the machine.
needs-frame = { $item } needs a mounting frame.
    .short = Needs a frame
    .workshop = { $item } hangs on a rack; the bare three-point hitch has none.
nose-load-in-range = { $heading ->
    [backward] Facing backwards on the trailer, the machine can stand so that the nose load is in range.
   *[forward] Facing forwards on the trailer, the machine can stand so that the nose load is in range.
}
    .short = Nose load in range
    .workshop = Nose load { $nose }, range { $least } to { $most }, with the rear axle { $from } to { $to } ahead of the deck’s rear edge and the machine facing { $heading ->
        [backward] backwards.
       *[forward] forwards.
    }
nose-load-out-of-range = Nowhere on the trailer’s deck does the machine stand with the nose load in range.
    .short = Nose load out of range
    .workshop = Nose load { $nose } at the best place on the deck, range { $least } to { $most }.
nothing-answers = { $role ->
    [axle-anchor] { $a } finds nothing to bolt to at the rear axle.
    [front-anchor] { $a } finds nothing to bolt to at the front.
    [rack] { $a } finds no rack to hang on.
    [hitch] { $a } finds no three-point hitch.
    [seat-deck] { $a } finds no deck to stand on.
    [power-take-off] { $a } finds no power take-off.
    [pressure] { $a } needs a hydraulic line that is not there yet.
    [return] { $a } needs a hydraulic return line that is not there yet.
    [case-drain] { $a } needs a drain line that is not there yet.
   *[wiring] { $a } needs a wire that is not there yet.
}
    .short = { $role ->
        [axle-anchor] No axle anchor for it
        [front-anchor] No front anchor for it
        [rack] No rack for it
        [hitch] No hitch for it
        [seat-deck] No seat deck for it
        [power-take-off] No power take-off for it
        [pressure] Pressure line to run
        [return] Return line to run
        [case-drain] Drain line to run
       *[wiring] Wire to run
    }
    .workshop = { $a }, { $port }: this build offers no { $role-name } for it.
pins-enter = The pins of { $b } and { $a } fit.
    .short = Pins fit
    .workshop = { $roles-name }, { $point }: clearance { $running }, up to { $limit } is allowed.
pins-may-enter = Whether the pins of { $b } and { $a } fit is too close to call from the drawings.
    .short = Pins too close to call
    .workshop = { $roles-name }{ $point ->
        [none] {""}
       *[other] , { $point }
    }: { $dimension-name } leaves { $running } of clearance, up to { $limit } is allowed; chance of fitting { $probability }{ $settles ->
        [none] .
       *[other] . Known to ±{ $settles } it would be settled.
    }
pins-need-sleeve = The pin is thinner than its bore. A sleeve takes that up.
    .short = Needs a sleeve
    .workshop = { $roles-name }, { $point }: bore { $bore }, pin { $pin }, clearance { $running }; over { $limit } it needs a sleeve.
pins-side-play = The joint has side play. Washers take that up.
    .short = Needs washers
    .workshop = { $roles-name }, { $point }: side play { $play }; over { $limit } it needs washers.
pins-sleeved = { $item } fits the pin to its bore.
    .short = Sleeved with { $item }
    .workshop = { $roles-name }: { $item } lines the { $bore } bore for the { $pin } pin.
pins-spread-off = The lugs of { $b } stand { $off-by } too wide or too narrow for { $a }.
    .short = Spread does not fit
    .workshop = { $roles-name }: spread { $carrier } on { $a }, { $carried } on { $b }: { $off-by } apart, up to { $limit } is allowed.
pins-unknown = A dimension of the pins is not stated.
    .short = Pins not stated
    .workshop = { $roles-name } of { $missing-of }: { $missing-name } not stated.
pins-will-not-enter = { $dimension ->
    [width] A lug is too wide to go between the cheeks it has to enter.
   *[diameter] A pin is too thick for its bore.
}
    .short = { $dimension ->
        [width] Lug too wide
       *[diameter] Pin too thick
    }
    .workshop = { $roles-name }, { $point }: { $dimension-name } { $carrier } on { $a }, { $carried } on { $b }: { $over } too much.
port-looked-missing = What the joint needs is not on this unit.
    .short = Missing on this unit
    .workshop = { $roles-name }: { $port } looked for and not there.
port-not-on-serial = Units with this serial number do not have what the joint needs.
    .short = Not on this serial number
    .workshop = { $roles-name }: serial number { $serial } comes without { $port }.
port-serial-unknown = Only some units have what the joint needs. Look at yours, or enter its serial number.
    .short = Depends on the serial number
    .workshop = { $roles-name }: only some serial numbers have { $port }.
place-unknown = Where { $item } stands on the machine is not stated, so nothing that depends on it can be worked out.
    .short = Where it sits is not known
    .workshop = No joint in the data says where { $item } sits. Measure it, or ask the maker.
power-high = The machine has more power than the implement is made for.
    .short = Too much power
    .workshop = Take-off power { $power }; the implement stands { $most }.
power-short = The machine has too little power for the implement.
    .short = Too little power
    .workshop = Take-off power { $power }; the implement needs { $least }.
power-unknown = The machine’s power at the take-off is not stated.
    .short = Power not stated
    .workshop = Drive of { $missing-of }: { $missing-name } not stated.
pto-differs = { $dimension ->
    [speed] The power take-off does not turn at the speed that the implement needs.
    [rotation] The power take-off turns the other way.
   *[shaft-type] The drive shaft needs another end.
}
    .short = { $dimension ->
        [speed] Take-off speed differs
        [rotation] Take-off turns the other way
       *[shaft-type] Drive shaft needs another end
    }
    .workshop = Power take-off: { $dimension-name } { $carrier-name } on { $a }, { $carried-name } on { $b }.
pto-fits = The power take-off suits the implement.
    .short = Power take-off suits
    .workshop = Power take-off: type { $shaft-type } (ISO 500-1), { $speed } revolutions per minute on both sides.
pto-unknown = Not everything is stated about the power take-off.
    .short = Power take-off not stated
    .workshop = Power take-off of { $missing-of }: { $missing-name } not stated.
ramp-clears = { $way ->
    [forward] Forwards the machine gets up the trailer’s ramp without dragging.
    [backward] Backwards the machine gets up the trailer’s ramp without dragging.
   *[either] The machine gets up the trailer’s ramp without dragging.
}
    .short = Clears the ramp
    .workshop = Ramp { $ramp }: { $item } comes nearest, with { $clearance } left.
ramp-drags = { $item } drags by { $drags-by } on the trailer’s ramp. { $shortest ->
    [none] No ramp that travels on a trailer clears it.
   *[other] Ramps of { $shortest } clear it.
}
    .short = Drags on the ramp
    .workshop = Ramp { $ramp }, { $way ->
        [backward] backwards
       *[forward] forwards
    }: { $item } is { $drags-by } too low, { $distance } { $place ->
        [ahead] ahead of the rear axle, in front of the front wheels
        [between] ahead of the rear axle, between the wheels
       *[behind] behind the rear axle
    }. { $shortest ->
        [none] No ramp that travels on a trailer leaves { $wanted }.
       *[other] A ramp of { $shortest } leaves { $wanted }.
    }
ramp-tight = { $item } comes within { $clearance } of the trailer’s ramp; { $wanted } are wanted. { $shortest ->
    [none] No ramp that travels on a trailer leaves them.
   *[other] Ramps of { $shortest } leave them.
}
    .short = Ramp is tight
    .workshop = Ramp { $ramp }, { $way ->
        [backward] backwards
       *[forward] forwards
    }: { $clearance } under { $item }, { $distance } { $place ->
        [ahead] ahead of the rear axle, in front of the front wheels
        [between] ahead of the rear axle, between the wheels
       *[behind] behind the rear axle
    }. { $shortest ->
        [none] No ramp that travels on a trailer leaves { $wanted }.
       *[other] A ramp of { $shortest } leaves { $wanted }.
    }
seat-faces-forward = The implement is worked facing the rear, and this seat faces forward only.
    .short = Seat faces forward only
    .workshop = Seat: faces forward; the implement’s levers are behind it.
seat-reach-far = The levers are too far from the seat to be reached well.
    .short = Levers far away
    .workshop = Seat index point to levers { $distance }; { $most } is the farthest.
seat-room = There is room for the knees between seat and levers.
    .short = Room at the seat
    .workshop = Seat index point to levers { $room }; { $least } is the least.
seat-room-short = There is too little room between seat and levers.
    .short = Too little room at the seat
    .workshop = Seat index point to levers { $room }; { $least } is the least: { $short } short.
seat-room-unknown = It is not stated how much room there is at the seat.
    .short = Room at the seat not stated
    .workshop = Seat room: { $missing-name } of { $missing-of } not stated.
seat-station-differs = { $station ->
    [cab] This seat is not made for a machine with a cab.
   *[open] This seat is not made for an open machine.
}
    .short = { $station ->
        [cab] Seat is not for cabs
       *[open] Seat is not for open machines
    }
    .workshop = { $a }: not made for this station ({ $station-name }).
seat-switch-missing = The seat has no switch that tells the machine somebody is sitting there. One has to be fitted as the maker’s manual says.
    .short = Seat switch to fit
    .workshop = Operator-presence switch: none on the seat. Fit and wire it as the machine’s manual says.
seat-switch-unknown = It is not stated whether the seat has a switch that tells the machine somebody is sitting there.
    .short = Seat switch not stated
    .workshop = Operator-presence switch: not stated for the seat.
seat-turns-not = The operator’s seat of this machine does not turn round.
    .short = Seat does not turn
    .workshop = Seat: a turning one is chosen; the machine’s does not turn.
seat-without-its-supplier = { $supplier ->
    [machine] This seat comes only with another machine.
    [frame] This seat comes only with another frame.
   *[implement] This seat comes only with another implement.
}
    .short = { $supplier ->
        [machine] Comes with another machine
        [frame] Comes with another frame
       *[implement] Comes with another implement
    }
    .workshop = { $a }: comes with a { $supplier-name } that is not in this build. Find out whether it can be had by itself.
site-unknown = Not stated for { $site }: { $missing-name }.
    .short = Site not stated
    .workshop = { $site }: { $missing-name } not stated.
serial-of-another = The serial number { $serial } is not one of { $item } as listed here. Look again which one it is.
    .short = Serial number of another series
    .workshop = { $item }: serial number { $serial } lies outside the range of this entry.
station-differs = { $station ->
    [cab] This frame is not made for a machine with a cab.
   *[open] This frame is not made for an open machine.
}
    .short = { $station ->
        [cab] Frame is not for cabs
       *[open] Frame is not for open machines
    }
    .workshop = { $a }: not made for this station ({ $station-name }).
station-unknown = It is not stated whether this frame is for open machines or for cabs.
    .short = Open or cab not stated
    .workshop = { $a }: stations not stated.
swivel-hits = The seat strikes { $item } when it turns.
    .short = Seat strikes when it turns
    .workshop = Turning seat: sweeps a radius of { $radius }; up to { $item } there are { $room }.
tie-downs-needed = { $count ->
    [one] Tie the machine down with at least { $count } lashing.
   *[other] Tie the machine down with at least { $count } lashings.
}
    .short = Tie-downs needed
    .workshop = At least { $count } tie-downs that hold { $together } together: straight from trailer to machine, { $each } each (49 CFR 393.106, 393.110).
trailer-carries = { $rating ->
    [axle] The trailer’s axles carry their load within their rating.
   *[total] Machine and trailer together are within the trailer’s rating.
}
    .short = Trailer carries it
    .workshop = { $rating ->
        [axle] Trailer axles
       *[total] Trailer with the machine
    }: { $load }, rated { $rated }, { $left } left.
trailer-narrow = The machine’s tyres stand { $beyond } wider than the trailer’s deck.
    .short = Trailer too narrow
    .workshop = Over the tyres { $width }, deck { $deck }: { $beyond } too wide.
trailer-overloaded = { $rating ->
    [axle] The trailer’s axles would carry { $over } more than they are rated for.
   *[total] Machine and trailer together are { $over } heavier than the trailer is rated for.
}
    .short = Trailer overloaded
    .workshop = { $rating ->
        [axle] Trailer axles
       *[total] Trailer with the machine
    }: { $load }, rated { $rated }, over by { $over }.
trailer-short = The trailer’s deck is shorter than the machine’s wheelbase.
    .short = Trailer too short
    .workshop = Wheelbase { $wheelbase }, deck { $deck }.
trailer-unknown = Not stated for { $trailer }: { $missing-name }.
    .short = Trailer not stated
    .workshop = { $trailer }: { $missing-name } not stated.
tyre-overloaded = { $axle ->
    [front] The front tyres would carry more than they are rated for.
   *[rear] The rear tyres would carry more than they are rated for.
}
    .short = { $axle ->
        [front] Front tyres overloaded
       *[rear] Rear tyres overloaded
    }
    .workshop = { $axle ->
        [front] Each front tyre
       *[rear] Each rear tyre
    }: load { $load }, rated { $rated }, over by { $over }.
wiring-differs = The electric plugs differ, so one has to be changed.
    .short = Plug to change
    .workshop = { $roles-name }: { $carrier } on { $a }, { $carried } on { $b }.
wiring-fits = The electric plugs match.
    .short = Plugs match
    .workshop = { $roles-name }: { $connector } on both sides.
