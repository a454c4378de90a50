### Words for the answer itself. The sentences are read by shoppers and by workshops:
### plain, honest, sentence case, no exclamation marks.

verdict-bolts-up = Bolts up
    .meaning = It goes on as it is.
verdict-bolts-up-with-work = Bolts up with work
    .meaning = It goes on once the listed parts are fitted or the listed work is done.
verdict-check-first = Check first
    .meaning = Something has to be looked at or measured before anyone can say.
verdict-wont-mount = Won’t mount
    .meaning = It does not go on this way.

standing-listed = Listed
    .meaning = The maker’s guide lists this set.
standing-off-guide = Off-guide
    .meaning = The maker’s guide does not list this set. What is said here has been worked out from parts and dimensions.

grade-listed = listed
    .meaning = The maker lists the two together.
grade-same-part = same part
    .meaning = The same part number bears the joint in a set that the maker lists.
grade-replaced-part = replaced part
    .meaning = A replacement record links the part to one in a set that the maker lists.
grade-measured = measured
    .meaning = It rests on what was measured on the unit.
grade-drawing = drawing
    .meaning = It rests on drawings or literature, not on the unit itself.
grade-none = none
    .meaning = Nothing is known yet.

role-axle-anchor = axle anchor
role-front-anchor = front anchor
role-rack = rack
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

tool-caliper = caliper
tool-tape = tape

caution-planning-aid = Fit-up is a planning aid. The maker’s manuals, the rated loads, local law and the judgement of a qualified workshop come first.
    .title = Planning aid
caution-arm-on-hitch = A digging arm on a bare three-point hitch can be forced up and over towards the operator. It needs a frame or the maker’s own stay; the maker’s manual says which.
    .title = Digging arm on a hitch
caution-roll-over-bar-up = Work with the roll-over bar up and the belt worn. A bar that has to be folded is folded for transport and storage only, as the machine’s manual allows.
    .title = Roll-over bar up
caution-drilling-or-welding = Drilling or welding a frame or a roll-over structure is for the maker or an engineer to decide. Ask before the drill is set.
    .title = Drilling and welding
caution-light-front-axle = A front axle that is too light does not steer or brake safely. Follow the machine’s manual on ballast and on the greatest axle loads.
    .title = Light front axle
caution-hydraulic-pressure = Hydraulic oil under pressure can get under the skin. Stop the engine, lower everything and let the pressure off before a coupler is touched.
    .title = Hydraulic pressure
caution-raised-parts = Do not work under raised parts that are held by hydraulics alone. Prop them as the manual shows.
    .title = Raised parts
caution-slopes = A static tip angle is not a safe working slope. Bumps, braking, turning and a raised load tip a machine much earlier; the manual’s limits apply.
    .title = Slopes
caution-excavations = Before digging have buried cables and pipes located. Trench walls need protection as local rules ask.
    .title = Digging
caution-loading-ramps = Ramps have to be rated for the machine, fixed to the trailer and dry. Follow the manuals of ramps and trailer.
    .title = Loading ramps
caution-tie-down = Tie the machine down with lashings rated for it, at the points its manual names. Local law sets the least number and strength.
    .title = Tie-down
caution-road-limits = Limits of mass, width, length and speed on the road differ by place. Check the local ones before you drive.
    .title = Road limits

shape-rear-tyre = Rear tyre
shape-front-tyre = Front tyre
