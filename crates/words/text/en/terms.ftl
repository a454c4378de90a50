### Words for the answer itself. The sentences are read by shoppers and by workshops:
### plain, honest, sentence case, no exclamation marks.

verdict-bolts-up = Bolts up
    .meaning = It goes on and may be worked as it is.
verdict-bolts-up-with-work = Bolts up with work
    .meaning = It goes on once the listed parts are fitted or the listed work is done.
verdict-check-first = Check first
    .meaning = Something has to be looked at or measured before anyone can say.
verdict-wont-mount = Won’t mount
    .meaning = This way it does not go on, or must not be worked.

# The four questions, each with its answers, and the word before a single finding.
question-fit = Fit
question-work = Work
question-travel = Travel
question-site = Site
question-open = not decided yet
question-in-order = { $count ->
    [one] { $count } point in order
   *[other] { $count } points in order
}
question-tightest = { $tightest } ({ $count })
headline-open = Not decided yet
headline-at-best = At best: { $verdict }

fit-yes = Bolts up
fit-with = { $what ->
    [none] Bolts up with work
   *[other] Bolts up with work: { $what }
}
fit-check = Check first
fit-no = Won’t mount
work-yes = Fit to work
work-with = { $what ->
    [none] Fit to work with changes
   *[other] Fit to work with { $what }
}
work-check = Check first
work-no = Not fit to work
travel-yes = Loads up
travel-with = { $what ->
    [none] Loads up with changes
   *[other] Loads up with { $what }
}
travel-check = Check first
travel-no = Won’t load
site-yes = Gets in
site-with = { $what ->
    [none] Gets in with changes
   *[other] Gets in with { $what }
}
site-check = Check first
site-no = Won’t get in

finding-in-order = In order
finding-with-work = To do
finding-check = Check first
finding-no = Won’t do

standing-listed = Listed
    .meaning = The maker’s guide lists this set.
standing-off-guide = Not listed
    .meaning = The maker’s guide does not list this set. The answer is worked out here from parts and dimensions.

grade-listed = listed
    .meaning = The maker lists the two together.
grade-same-part = same part
    .meaning = The same part number makes the joint in a set that the maker lists.
grade-replaced-part = replaced part
    .meaning = A replacement record links the part to one in a set that the maker lists.
grade-measured = measured
    .meaning = It rests on what was measured on the unit.
grade-drawing = drawing
    .meaning = It rests on drawings or literature, not on the unit itself.
grade-none = no evidence yet
    .meaning = Nothing is known yet.

role-axle-anchor = axle anchor
role-front-anchor = front anchor
role-rack = implement carrier
role-hitch = three-point hitch
role-seat-deck = seat deck
role-power-take-off = power take-off
role-pressure = pressure line
role-return = return line
role-case-drain = case drain line
role-wiring = wiring

kind-machine = machine
kind-frame = frame
kind-seat = seat
kind-implement = implement
kind-adapter = adapter
kind-equipment = equipment

tool-caliper = caliper
tool-tape = tape
tool-photograph = photograph

caution-planning-aid = Fit-up is a planning aid. The maker’s manuals, the rated loads, local law and the judgement of a qualified workshop come first.
    .title = Planning aid
caution-arm-on-hitch = A digging arm (backhoe) on the three-point hitch alone can be forced up and over and crush the operator. Do not dig with it so. Fit a frame or the maker’s own brace, whichever the manual requires.
    .title = Digging arm on the hitch
caution-roll-over-bar-up = Work with the roll-over bar up and the belt fastened. Fold the bar only to pass under something, for transport or for storage, as the machine’s manual allows, and raise it again at once. Do not wear the belt while the bar is folded.
    .title = Roll-over bar up
caution-drilling-or-welding = Drilling or welding a frame, a roll-over structure or the machine itself (axle housing, gearbox, cab) is for the maker or an engineer to decide. Ask before you drill or weld.
    .title = Drilling and welding
caution-light-front-axle = A front axle that is too light does not steer or brake safely. Follow the machine’s manual on ballast and on the greatest axle loads.
    .title = Light front axle
caution-hydraulic-pressure = Oil under pressure can pierce the skin. Never feel for leaks by hand; an injury needs a doctor at once, even a small one. Stop the engine, lower everything and let the pressure off before you touch a coupler.
    .title = Hydraulic pressure
caution-raised-parts = Do not work under raised parts that are held by hydraulics alone. Prop them as the manual shows.
    .title = Raised parts
caution-slopes = A static tip angle is not a safe working slope. Bumps, braking, turning and a raised load tip a machine much earlier; the manual’s limits apply.
    .title = Slopes
caution-excavations = Call before you dig: have buried cables and pipes located. Shore or slope trench walls as local rules require.
    .title = Digging
caution-loading-ramps = Ramps have to be rated for the weight of the machine with its implement, fixed to the trailer, and dry. Follow the manuals of ramps and trailer.
    .title = Loading ramps
caution-tie-down = Tie the machine down with chains or straps of sufficient working load limit, at the points its manual names, at all four corners where it says so. Local law sets the least number and strength.
    .title = Tie-down
caution-road-limits = Limits of mass, width, length and speed on the road differ by place. Check the local ones before you drive.
    .title = Road limits
caution-rotating-shafts = A turning shaft pulls in clothing, hair and limbs in an instant. Run the PTO shaft and the implement only with every guard in place and whole. Stop the engine, take the key out and wait until everything stands still before you go near.
    .title = Turning shafts and guards
caution-hoisting = While the implement hangs from a hoist, nobody stands under or beside it. Use a hoist and slings rated for its weight, at the lifting points its manual names. Prop implement and machine before you put a hand between them, and before you drive a pin or a bolt.
    .title = Hoisting and propping

shape-rear-tyre = rear tyre
shape-front-tyre = front tyre
