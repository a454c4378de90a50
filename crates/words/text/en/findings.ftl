### One message for each kind of finding: the sentence for a shopper, `.short` for cards and lists,
### `.workshop` with the figures.
###
### Variables: the figures of the code; a figure that is not there has the value "none". A figure
### that is a coded word only chooses a variant; its name to show is the variable with `-name` behind it.
### $a and $b are the items the finding is about (carrier and carried of a joint), $roles-name the joints'
### names, $missing-of the item that lacks the value.
access-unknown = Some data are missing, so it is not known whether the machine gets into the site.
    .short = Access not known
    .workshop = Access: data missing for { $item }: { $missing-name }.
adapter-goes-in = { $item } goes in between.
    .short = Needs { $item }
    .workshop = Fit { $item }{ $work ->
        [none] .
       *[other] : { $work } of workshop time.
    }
adapter-not-needed = { $item } is not needed here.
    .short = { $item } is not needed
    .workshop = { $item } joins nothing in this build and can be left out.
arm-on-hitch = Do not dig with { $item } hung on the three-point hitch alone: it can be forced up and over and crush the operator. Fit a frame, or the maker’s own brace where the manual allows it.
    .short = Digging arm on a bare hitch
    .workshop = { $item } hangs on the three-point hitch alone and can be forced up and over onto the operator. Do not dig with it so. Fit a frame, or the maker’s own brace where the manual allows it.
axle-overloaded = { $axle ->
    [front] The front axle would carry { $over } more than it is rated for.
   *[rear] The rear axle would carry { $over } more than it is rated for.
}
    .short = { $axle ->
        [front] Front axle { $over } over its rating
       *[rear] Rear axle { $over } over its rating
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
        [front] Front axle: { $left } to spare
       *[rear] Rear axle: { $left } to spare
    }
    .workshop = { $axle ->
        [front] Front axle
       *[rear] Rear axle
    }: load { $load }, rated { $rated }, { $left } to spare.
bar-in-the-way = { $bar ->
    [stays-up] The roll-over bar has to stay up: folded, it would hit { $item } ({ $overlap } overlap).
    [folded] The folded roll-over bar hits { $item } ({ $overlap } overlap).
   *[up] The roll-over bar hits { $item } ({ $overlap } overlap).
}
    .short = { $bar ->
        [stays-up] Roll-over bar has to stay up
       *[up] Roll-over bar hits by { $overlap }
    }
    .workshop = { $bar ->
        [stays-up] Keep the roll-over bar up: folded, it would overlap { $item } by { $overlap }.
        [folded] The folded roll-over bar overlaps { $item } by { $overlap }.
       *[up] The raised roll-over bar overlaps { $item } by { $overlap }.
    }
bolt-not-for-tapped = Bolts of { $bolt } do not go into the holes of { $side }, which are tapped { $tapped }.
    .short = Bolts do not match the tapped holes
    .workshop = { $roles-name }: bolts of { $bolt }, holes of { $side } tapped { $tapped }. They do not screw in; never force or re-tap them without the maker’s word.
bolt-too-thick = Bolts of { $bolt } do not enter the { $hole } holes of { $side }.
    .short = Bolts too thick for the holes
    .workshop = { $roles-name }: holes of { $side } { $hole }, bolts { $bolt }: { $over } too thick, and more than holes are opened up.
bolts-stated-differently = The bolts between { $b } and { $a } are stated in two sizes: { $least } and { $most }. Ask which is meant.
    .short = Bolts stated in two sizes
    .workshop = { $roles-name }: bolts of { $least } on one side, of { $most } on the other. Judged with { $most }; ask which is right before anything is bought.
bolts-unknown = Bolts go through only { $bolts } of { $holes } holes. The maker has to say whether that is enough.
    .short = Enough bolts?
    .workshop = One plate has { $holes } holes, the other { $bolts }. Ask the maker how many bolts this joint needs.
bolts-will-not-hold = The { $hole } holes of { $side } are far too wide for { $bolt } bolts: head and washer fall through.
    .short = Holes too wide for the bolts
    .workshop = { $roles-name }: holes of { $side } { $hole } on { $bolt } bolts; the plain washer does not cover them (common practice).
clearance-hit = { $item } hits { $other }.
    .short = { $item } hits { $other } by { $overlap }
    .workshop = { $item }, { $shape-name }, overlaps { $other }, { $other-shape-name }, by { $overlap }.
clearance-tight = { $item } comes too close to { $other }.
    .short = { $item } only { $gap } from { $other }
    .workshop = { $item }, { $shape-name }, to { $other }, { $other-shape-name }: { $gap } between them, { $wanted } needed (common practice).
clearance-unknown = One of the two has no outline in the catalogue, so the clearance between them is unknown.
    .short = Outline missing
    .workshop = Data missing for { $missing-of }: { $missing-name }.
closure-meets = Bolted at the rear axle, { $b } also meets the front anchor of { $a }.
    .short = Meets the front anchor
    .workshop = Front anchor: off by { $off-by }, { $margin } { $margin-way ->
        [short] too much
       *[spare] to spare
    }; the drawings may be out by ±{ $worst-case } in all{ $slot ->
        [none] .
       *[other] ; the slot gives { $slot }.
    }
closure-misses = Bolted at the rear axle, { $b } does not meet the front anchor of { $a }: it is { $longer } { $longer-way ->
    [shorter] too short
   *[longer] too long
}.
    .short = Misses the front anchor by { $off-by }
    .workshop = Front anchor: off by { $off-by }, { $margin } { $margin-way ->
        [short] too much
       *[spare] to spare
    }; the drawings may be out by ±{ $worst-case } in all. Between its anchors the frame is { $longer-way ->
        [shorter] { $longer } shorter
       *[longer] { $longer } longer
    } than the machine’s mounting.
closure-height-off = Bolted at the rear axle, { $b } does not meet the front anchor of { $a }: its front comes { $higher } { $higher-way ->
    [lower] too low
   *[higher] too high
}.
    .short = Misses the front anchor by { $off-by }
    .workshop = Front anchor: the frame’s front comes { $higher } { $higher-way ->
        [lower] too low
       *[higher] too high
    }, off by { $off-by } in all, { $margin } { $margin-way ->
        [short] too much
       *[spare] to spare
    }; the drawings may be out by ±{ $worst-case } in all. The bolts at the axle let it turn by no more than their play.
closure-aside = Bolted at the rear axle, { $b } does not meet the front anchor of { $a }: the plates { $aside-way ->
    [crossing] cross by { $off-by }
   *[apart] lie { $off-by } apart
}.
    .short = Misses the front anchor by { $off-by }
    .workshop = Front anchor: sideways the plates { $aside-way ->
        [crossing] cross by { $off-by }; the frame springs by up to { $limit }
       *[apart] lie { $off-by } apart; shims make up for { $limit }
    } (common practice).
closure-faces-apart = Bolted at the rear axle, { $b } does not meet the front anchor of { $a }: the plates do not look at each other.
    .short = Front plates face the wrong way
    .workshop = Front anchor: the frame’s plate does not face the machine’s, or not the same way up.
closure-open = The drawings cannot tell whether { $b } meets the front anchor of { $a }. Measure first.
    .short = Front anchor: { $probability } likely to meet
    .workshop = Front anchor: off by { $off-by }, { $margin } { $margin-way ->
        [short] too much
       *[spare] to spare
    }; the drawings may be out by ±{ $worst-case } in all; { $probability } likely to meet{ $settles ->
        [none] .
       *[other] . One figure known to ±{ $settles } would settle it.
    }
closure-unknown = It is not known where the front anchor sits, so nobody can say yet whether { $b } meets it.
    .short = Front anchor data missing
    .workshop = Front anchor: data missing for { $missing-of }: { $missing-name }.
corner-clears = The machine gets round the corner behind the gate in one go.
    .short = Gets round the corner, { $wanted } is enough
    .workshop = Gate { $gate }, then square into a path of { $path }: a path of { $wanted } is enough.
corner-tight = The machine cannot turn the corner behind the gate in one go. It may work with some shunting; try it.
    .short = { $wanted ->
        [none] Corner is tight
       *[other] Corner needs a path of { $wanted }
    }
    .workshop = Gate { $gate }, then square into a path of { $path }: { $wanted ->
        [none] no path is wide enough to turn in one go, because the tail swings out against the gate.
       *[other] to turn in one go it needs a path of { $wanted }.
    }
coupler-differs = The hydraulic couplers differ, so the hose needs a different coupler.
    .short = Hose needs a different coupler
    .workshop = { $roles-name }: { $carrier } on { $a }, { $carried } on { $b }. Change the coupler on the hose.
coupler-fits = The hydraulic couplers match.
    .short = Couplers match
    .workshop = { $roles-name }: { $standard } size { $size } on both sides.
coupler-unknown = It is not known which hydraulic coupler one side has.
    .short = Coupler data missing
    .workshop = { $roles-name }: data missing for { $missing-of }: { $missing-name }.
coupling-weak = The trailer’s coupling may carry { $most }; laden, the trailer needs a nose weight (tongue weight) of at least { $least }.
    .short = Coupling takes { $most } of { $least }
    .workshop = Coupling rated { $most }; least nose weight of the laden trailer { $least }.
driver-seat-cannot = The operator’s seat cannot stand as you chose: { $state ->
    [folded] it does not fold forward.
    [slid] it does not slide forward far enough.
    [turned] it does not turn.
   *[other] nothing says so.
}
    .short = Operator’s seat does not move so
    .workshop = Operator’s seat: { $state ->
        [folded] it has to fold forward; this one does not.
        [slid] it has to slide forward; this one does not slide far enough.
        [turned] it has to turn round; this one does not.
       *[other] nothing says that it can stand so.
    }
driver-seat-moves = { $state ->
    [folded] To work from the seat behind, fold the operator’s seat forward.
    [slid] To work from the seat behind, slide the operator’s seat { $by } forward.
    [turned] To work, turn the operator’s seat round.
   *[off] To work from the seat behind, the operator’s seat has to come off.
}
    .short = { $state ->
        [folded] Fold the operator’s seat
        [slid] Slide the operator’s seat forward
        [turned] Turn the operator’s seat
       *[off] Operator’s seat has to come off
    }
    .workshop = Operator’s seat while the implement is worked: { $state ->
        [folded] fold it forward, by hand.
        [slid] slide it { $by } forward, by hand.
        [turned] turn it round, by hand.
       *[off] take it off{ $hours ->
            [none] .
           *[other] , { $hours }.
        }
    }
deck-close = { $way ->
    [length] The machine’s wheelbase is just about as long as the trailer’s deck. Measure both before you load it.
   *[width] Over its tyres the machine is just about as wide as the trailer’s deck. Measure both before you load it.
}
    .short = Deck: measure first
    .workshop = { $way ->
        [length] Wheelbase
       *[width] Over the tyres
    } { $size }, deck { $deck }: the two together may be off by { $off }.
equipment-answers = { $a } joins to { $what } at “{ $port }”, and that is not on the machine. Without it the joint is not proven.
    .short = Not on the machine: { $what }
    .workshop = Port “{ $port }” of { $a } joins to { $what }, which is not on the machine. Put it on, or enter that it is there.
equipment-in-the-way = { $what } is in the way of { $item } and comes off.
    .short = In the way: { $what }
    .workshop = { $what } ({ $shape }) and { $item } ({ $other-shape }) overlap by { $overlap }. Take it off.
equipment-lacks = { $item } has nothing on the machine to go on: “{ $what }” is missing.
    .short = Missing for { $item }: { $what }
    .workshop = { $item } needs the port “{ $what }”, which the machine does not have as it stands.
equipment-may-be-in-the-way = { $what } may be in the way of { $item }.
    .short = Perhaps in the way: { $what }
    .workshop = { $what } ({ $shape }) and { $item } ({ $other-shape }) overlap by { $overlap } from the side. Look whether one passes beside the other.
faces-turned = Joined face to face with { $a }, { $b } would stand { $way ->
    [half-round] turned half round
    [tipped] tipped over
   *[on-its-side] askew, on its side or on its head
}.
    .short = Faces look the wrong way
    .workshop = { $roles-name }: the two faces cannot look at each other with { $b } { $way ->
        [half-round] the right way round
       *[other] upright
    }.
frame-idle = { $item } stays empty: { $other } hangs on the three-point hitch behind it.
    .short = Nothing hangs on { $item }
    .workshop = { $other } hangs on the hitch and nothing on { $item }. Take the frame off, or choose an implement or adapter that its implement carrier takes.
frame-in-the-ground = { $item } would reach { $below } into the ground.
    .short = Reaches { $below } into the ground
    .workshop = The lowest point of { $item } lies { $below } below the ground.
frame-low = { $item } hangs only { $height } over the ground; it needs { $wanted }.
    .short = Only { $height } over the ground
    .workshop = The lowest point of { $item } is { $height } over the ground; { $wanted } is needed (common practice).
front-axle-heavy-enough = Enough weight stays on the front wheels to steer: { $share }, at least { $least } is needed.
    .short = Front axle carries { $share }, needs { $least }
    .workshop = The front axle carries { $share } of the machine’s unladen weight; at least { $least } is needed (German road rule, and most manuals).
front-axle-lifts = The front wheels would lift off the ground. Do not drive it so: at least { $ballast } of front ballast is needed.
    .short = Front wheels lift: { $ballast } of ballast
    .workshop = The front wheels lift: { $lift } more is needed just to keep them down. For the least share, fit at least { $ballast } of ballast { $ballast-at } ahead of the rear axle.
front-axle-light = The front wheels get too light to steer safely. At least { $ballast } of front ballast is needed.
    .short = Needs { $ballast } of front ballast
    .with = front ballast
    .workshop = The front axle carries { $share } of the machine’s unladen weight; at least { $least } is needed (German road rule, and most manuals). For that, fit at least { $ballast } of ballast { $ballast-at } ahead of the rear axle.
front-axle-near-least = The front wheels may get too light to steer safely: the masses may be off by more than is left. Weigh the front axle, or fit at least { $ballast } of front ballast.
    .short = Weigh the front axle
    .workshop = The front axle carries { $share } of the machine’s unladen weight; at least { $least } is needed, and its load may be off by { $off }. At least { $ballast } of ballast { $ballast-at } ahead of the rear axle settles it.
front-share-of-total-low = The front wheels carry { $share } of everything that stands on the wheels. Common practice, without a source, is { $least }: at least { $ballast } of front ballast reaches it.
    .short = Little of all the weight in front
    .workshop = The front axle carries { $share } of the total weight; common practice, no source: { $least }. At least { $ballast } of ballast { $ballast-at } ahead of the rear axle reaches it.
gate-close = { $way ->
    [height] The machine is just about as high as the gate. Measure both before you drive through.
    [folded] With its roll-over bar folded the machine is just about as high as the gate. Measure both before you drive through, and fold the bar only as the manual allows.
   *[width] The machine is just about as wide as the gate. Measure both before you drive through.
}
    .short = Gate: measure first
    .workshop = { $way ->
        [height] Height
        [folded] Height with the roll-over bar folded
       *[width] Width
    } { $size }, gate { $gate }: the two together may be off by { $off }.
gate-low = { $folded ->
    [none] The machine is { $beyond } too high for the gate.
   *[other] With its roll-over bar up the machine is { $beyond } too high for the gate. Fold the bar only to pass, on level ground, at walking pace, as the manual allows; then raise it again. Do not wear the belt while the bar is folded.
}
    .short = Gate { $beyond } too low
    .with = the roll-over bar folded
    .workshop = Height { $height }, gate { $gate }, { $beyond } too high{ $folded ->
        [none] .
       *[other] ; with the roll-over bar folded { $folded }. Fold it only to pass, on level ground, at walking pace, as the manual allows; then raise it again.
    }
gate-narrow = The machine is { $beyond } wider than the gate.
    .short = Gate { $beyond } too narrow
    .workshop = Width { $width }, gate { $gate }: { $beyond } too wide.
gate-passes = The machine goes through the gate with { $left } to spare on each side.
    .short = Gate: { $left } to spare on each side
    .workshop = Width { $width }, gate { $gate }: { $left } to spare on each side.
ground-carries = The site’s ground bears the machine’s heaviest axle.
    .short = Ground: { $left } to spare
    .workshop = { $axle ->
        [front] Front axle
       *[rear] Rear axle
    }: load { $load }, the ground bears { $most }, { $left } to spare.
ground-load-near = The machine’s heaviest axle is so near to what the site’s ground bears that it has to be weighed.
    .short = Weigh the axle for the ground
    .workshop = { $axle ->
        [front] Front axle
       *[rear] Rear axle
    }: load { $load }, off by { $off } at most, the ground bears { $most }.
ground-overloaded = The machine’s heaviest axle is { $over } more than the site’s ground bears.
    .short = { $over } too heavy for the ground
    .workshop = { $axle ->
        [front] Front axle
       *[rear] Rear axle
    }: load { $load }, the ground bears { $most }, over by { $over }.
hitch-differs = The three-point hitch is too small for { $b }: its pins do not go in.
    .short = Hitch categories differ
    .workshop = Hitch category { $carrier } on { $a }, { $carried } on { $b }: the pins are too large.
hitch-dimension-misfits = { $b } does not go on the three-point hitch: one dimension is wrong.
    .short = Hitch dimension { $over } off
    .workshop = { $dimension-name }: { $carrier } on { $a }, { $carried } on { $b }, { $over } too much.
hitch-dimension-open = The dimensions cannot tell whether { $b } goes on the three-point hitch. Measure first.
    .short = Hitch: { $probability } likely to fit
    .workshop = { $dimension-name }: { $carrier } on { $a }, { $carried } on { $b }; { $probability } likely to fit{ $settles ->
        [none] .
       *[other] . Known to ±{ $settles } it would be settled.
    }
hitch-fits = The three-point hitch is of the right size.
    .short = Hitch category fits
    .workshop = Hitch category { $category } (ISO 730) on both sides.
hitch-frame-stiff = The hooks of the quick hitch are not at the pin spacing of { $b }.
    .short = Quick hitch does not fit
    .workshop = Hitch category { $carrier } on { $a } with a quick hitch, { $carried } on { $b }: its hooks cannot be moved. Take the quick hitch off.
hitch-needs-bushings = The hitch is one size larger than { $b } needs: fit reducing bushings.
    .short = Needs hitch bushings
    .workshop = Hitch category { $carrier } on { $a }, { $carried } on { $b }: fit reducing bushings.
hitch-other-span = The lower links have to be set to the pin spacing of { $b }.
    .short = Lower links to be set
    .workshop = Hitch category { $carrier } on { $a }, { $carried } on { $b }: the pins are the same, their spacing is not. Move the lower links and set their stabilisers.
hitch-unknown = The size of a three-point hitch is not known.
    .short = Hitch data missing
    .workshop = Three-point hitch: data missing for { $missing-of }: { $missing-name }.
holes-drilled = { $drill ->
    [one] You chose to drill { $drill } hole in { $side }. Ask the maker before you drill.
   *[other] You chose to drill { $drill } holes in { $side }. Ask the maker before you drill.
}
    .short = { $drill ->
        [one] { $drill } hole to drill (you chose this)
       *[other] { $drill } holes to drill (you chose this)
    }
    .workshop = { $roles-name }, if the maker agrees: mark { $drill ->
        [one] { $drill } hole
       *[other] { $drill } holes
    } through onto { $side }, { $port }, and drill; then { $bolts ->
        [one] { $bolts } bolt goes in
       *[other] { $bolts } bolts go in
    } with { $margin } to spare. { $work } of workshop time.
holes-may-meet = The drawings cannot tell whether the bolt holes of { $b } and { $a } line up. Measure first.
    .short = Bolt holes: { $probability } likely to line up
    .workshop = { $roles-name }: { $bolts ->
        [one] { $bolts } bolt
       *[other] { $bolts } bolts
    }, { $margin } { $margin-way ->
        [short] short
       *[spare] to spare
    }; the drawings may be out by ±{ $worst-case } in all; { $probability } likely that all bolts go in{ $settles ->
        [none] .
       *[other] . One figure known to ±{ $settles } would settle it.
    }
holes-meet = The bolt holes of { $b } and { $a } line up.
    .short = Bolt holes: { $margin } to spare
    .workshop = { $roles-name }: { $bolts ->
        [one] { $bolts } bolt goes in
       *[other] { $bolts } bolts go in
    }, { $margin } to spare; the drawings may be out by ±{ $worst-case } in all.
holes-miss = The bolt holes of { $b } and { $a } do not line up.
    .short = { $margin ->
        [none] Bolt holes do not line up
       *[other] { $margin-way ->
            [short] Bolt holes miss by { $margin }
           *[spare] Bolt holes do not line up
        }
    }
    .workshop = { $roles-name }: { $bolts ->
        [one] { $bolts } bolt is
       *[other] { $bolts } bolts are
    } needed, and in no position do they go in, not even with holes opened up or drilled{ $margin ->
        [none] .
       *[other] ; at best they are { $margin } { $margin-way ->
            [short] short
           *[spare] to spare
        }, and the drawings may be out by ±{ $worst-case } in all.
    }
holes-need-drilling = { $drill ->
    [one] { $drill } hole has to be drilled in { $side }.
   *[other] { $drill } holes have to be drilled in { $side }.
}
    .short = { $drill ->
        [one] { $drill } hole to drill
       *[other] { $drill } holes to drill
    }
    .workshop = { $roles-name }, if the maker agrees: { $drill ->
        [one] drill { $drill } hole in { $side }
       *[other] drill { $drill } holes in { $side }
    }{ $port ->
        [none] {""}
       *[other] {" "}({ $port })
    }; { $bolts ->
        [one] then { $bolts } bolt goes in
       *[other] then { $bolts } bolts go in
    } with { $margin } to spare.{ $work ->
        [none] {""}
       *[other] {" "}{ $work } of workshop time.
    }
holes-need-opening = The bolt holes have to be opened up by up to { $open-by }.
    .short = Open up bolt holes by { $open-by }
    .workshop = { $roles-name }, if the maker agrees: enlarge the hole diameter by no more than { $open-by }{ $open-carrier ->
        [none] {""}
       *[other] ; { $a }, { $carrier-port }: { $open-carrier }
    }{ $open-carried ->
        [none] {""}
       *[other] ; { $b }, { $carried-port }: { $open-carried }
    }; { $bolts ->
        [one] then { $bolts } bolt goes in
       *[other] then { $bolts } bolts go in
    }.{ $margin-way ->
        [short] {" "}As they are, they miss by { $margin }.
       *[spare] {""}
    }{ $work ->
        [none] {""}
       *[other] {" "}{ $work } of workshop time.
    }
holes-need-washers = The { $hole } holes of { $side } are wide for { $bolt } bolts: fit plate washers.
    .short = Needs plate washers
    .workshop = { $roles-name }: holes of { $side } { $hole } on { $bolt } bolts, wider than the coarse series; fit plate washers under head and nut (common practice).
holes-opened = You chose to open up the bolt holes of { $side } by { $open-by }.
    .short = Open up holes by { $open-by } (you chose this)
    .workshop = { $roles-name }: on { $side }, { $port }, enlarge the hole diameter by { $open-by }; then { $bolts ->
        [one] { $bolts } bolt goes in
       *[other] { $bolts } bolts go in
    } with { $margin } to spare. { $work } of workshop time.
holes-plan-not-needed = { $kind ->
    [opening] The bolt holes of { $item } need no opening up here.
   *[drilling] { $item } needs no drilling here.
}
    .short = { $kind ->
        [opening] Opening up not needed
       *[drilling] Drilling not needed
    }
    .workshop = { $kind ->
        [opening] You chose to open up holes ({ $item }, { $port }), but no joint of this build needs it.
       *[drilling] You chose to drill ({ $item }, { $port }), but no joint of this build needs it.
    }
holes-plan-not-possible = { $kind ->
    [opening] The opening up you chose for { $item } cannot be done.
   *[drilling] The drilling you chose for { $item } cannot be done.
}
    .short = { $kind ->
        [opening] Opening up not possible
       *[drilling] Drilling not possible
    }
    .workshop = { $reason ->
        [no-port] { $item } has no { $port }.
        [no-holes] { $item }, { $port }: no bolt holes there.
       *[too-much] { $item }, { $port }: holes can be opened up by 1 mm at most (common practice).
    } Choose again.
holes-too-many = There are too many bolt holes to try every way of laying { $b } on { $a }. Lay one on the other, or compare the part numbers.
    .short = Too many bolt holes to compare
    .workshop = { $roles-name }: { $holes } holes; up to { $most } are compared, fewer where they lie irregularly.
holes-unknown = The bolt holes of one side are not known, so nobody can say yet whether they line up.
    .short = Bolt hole data missing
    .workshop = { $roles-name }: data missing for { $missing-of }: { $missing-name }.
hooks-hold = The hooks of { $b } sit on the bar of { $a }, and the latch pin goes in.
    .short = Hooks and latch fit
    .workshop = { $roles-name }: hooks and latch pin within the { $limit } of common practice; play { $play }.
hooks-may-hold = The drawings cannot tell whether the hooks of { $b } fit { $a }. Measure first.
    .short = Hooks: { $probability } likely to fit
    .workshop = { $roles-name }: { $dimension-name }, { $play } between the two, up to { $limit } is common practice; { $probability } likely to hold{ $settles ->
        [none] .
       *[other] . Known to ±{ $settles } it would be settled.
    }
hooks-misfit = The hooks of { $b } do not fit { $a }.
    .short = Hooks do not fit: { $off-by } off
    .workshop = { $roles-name }: { $dimension-name } { $carrier } on { $a }, { $carried } on { $b }: { $off-by } apart, up to { $limit } is common practice.
hooks-need-bush = The joint of { $b } and { $a } is { $play } loose. A bush or sleeve takes that up.
    .short = Needs a bush
    .workshop = { $roles-name }: { $dimension-name } { $carrier } on { $a }, { $carried } on { $b }: play { $play }, at most { $limit } (common practice). Fit a bush or sleeve as the maker allows.
hooks-unknown = A dimension of the hooks is not known.
    .short = Hook data missing
    .workshop = { $roles-name }: data missing for { $missing-of }: { $missing-name }.
hydraulic-lines-unknown = It is not known whether the hydraulic lines can be joined, because data are missing.
    .short = Hydraulic lines not known
    .workshop = Hydraulic lines: data missing for { $missing-of }: { $missing-name }.
hydraulics-flow-high = The machine pumps more oil than the implement may take.
    .short = Oil flow { $flow }, at most { $most }
    .workshop = Flow { $flow }; the implement takes { $most } at most. Fit a flow divider, or ask its maker.
hydraulics-flow-short = The machine pumps { $flow } of oil, less than the { $least } with which the implement works.
    .short = Little oil flow
    .workshop = Flow { $flow }; the implement needs { $least }. Each stroke takes { $time-ratio } times as long.
hydraulics-match = The machine’s hydraulics suit the implement.
    .short = Hydraulics: { $flow } at { $pressure }
    .workshop = Flow { $flow } at { $pressure }: { $power } of hydraulic power.
hydraulics-no-power-beyond = The implement needs its own feed from the pump (power beyond), and the machine has none yet.
    .short = Needs a power-beyond kit
    .workshop = Power beyond: the implement needs it, the machine has none. Fit a kit.
hydraulics-outlets-short = The machine has too few remote outlets.
    .short = Remote outlets: { $has }, needs { $need }
    .workshop = Remote outlets: it has { $has }, it needs { $need }. Add another spool valve or a diverter.
hydraulics-pressure-high = The machine’s hydraulic pressure is higher than the implement may take. Do not connect it before a workshop has set the relief valve lower.
    .short = Pressure { $pressure }, at most { $most }
    .workshop = Relief pressure { $pressure }; the implement takes { $most } at most. Do not connect it before the relief valve is set lower.
hydraulics-pressure-short = The machine’s hydraulic pressure is { $pressure }, less than the { $least } with which the implement works.
    .short = Low hydraulic pressure
    .workshop = Relief pressure { $pressure }; the implement needs { $least }.
hydraulics-unknown = Hydraulic data are missing. Do not connect the implement before pressure and flow are known.
    .short = Hydraulics data missing
    .workshop = Hydraulics: data missing for { $missing-of }: { $missing-name }.
implement-own-seat = You chose the implement’s own seat, and this implement has none.
    .short = Implement has no seat of its own
    .workshop = Seat: the implement’s own is chosen; this implement has none.
joint-listed = The maker lists { $a } and { $b } together.
    .short = Listed together
    .workshop = { $roles-name }: listed together { $guide ->
        [none] by the maker, outside the guide.
       *[other] in { $guide } of { $date }.
    }
joint-replaced-part = By the maker’s replacement records, { $a } and { $b } join by the same parts as a set in its list.
    .short = Replaced parts of a listed set
    .workshop = { $roles-name }: replacement records link { $part } to the listed set “{ $witness }” + “{ $witness-other }”.
joint-same-part = { $a } and { $b } join by the same parts as a set that the maker lists.
    .short = Same parts as a listed set
    .workshop = { $roles-name }: the same part, { $part }, makes this joint in the listed set “{ $witness }” + “{ $witness-other }”.
kinds-differ = { $b } and { $a } connect in different ways.
    .short = Different kinds of joint
    .workshop = { $roles-name }: { $carrier-name } on { $a }, { $carried-name } on { $b }.
lift-enough = The hitch can lift the implement, with { $left } to spare.
    .short = Hitch lift: { $left } to spare
    .workshop = Lift capacity { $lift } where the implement hangs, mass { $mass }: { $left } to spare.
lift-short = The hitch cannot lift the implement: it is { $over } too heavy.
    .short = { $over } too heavy for the hitch
    .workshop = Lift capacity { $lift } where the implement hangs, mass { $mass }: { $over } too heavy.
lift-unknown = It is not known whether the hitch can lift the implement.
    .short = Lift data missing
    .workshop = Lift: data missing for { $missing-of }: { $missing-name }.
listing-and-dimensions-disagree = The maker lists { $a } and { $b } together, but by their dimensions they do not join. One of the two is wrong. Buy nothing before that is settled.
    .short = List and dimensions disagree
    .workshop = { $roles-name }: listed together, yet by the dimensions it does not join{ $margin ->
        [none] .
       *[other] : { $margin } { $margin-way ->
            [short] short
           *[spare] to spare
        }{ $worst-case ->
            [none] .
           *[other] ; the drawings may be out by ±{ $worst-case } in all.
        }
    } Compare the part numbers on the units before anything is bought.
load-long = The load reaches farther behind the trailer than a road limit. Ask the road authority before you travel with it.
    .short = Load reaches far behind
    .workshop = Reaches { $overhang } behind the trailer, limit { $most } ({ $limit-name }): { $beyond } beyond.
load-near-rating = { $bearer ->
    [front-axle] The front axle is so near to its rating that it has to be weighed.
    [rear-axle] The rear axle is so near to its rating that it has to be weighed.
    [front-tyre] The front tyres are so near to their rating that the axle has to be weighed.
    [rear-tyre] The rear tyres are so near to their rating that the axle has to be weighed.
   *[hitch] The implement is so near to what the hitch can lift that it has to be weighed.
}
    .short = { $bearer ->
        [front-axle] Weigh the front axle
        [rear-axle] Weigh the rear axle
        [front-tyre] Weigh for the front tyres
        [rear-tyre] Weigh for the rear tyres
       *[hitch] Weigh the implement
    }
    .workshop = { $bearer-name }: load { $load }, off by { $off } at most, rated { $rated }.
load-wide = The load is wider than a road limit. Ask the road authority before you travel with it.
    .short = Load { $beyond } over a road limit
    .workshop = Width { $width }, limit { $most } ({ $limit-name }): { $beyond } beyond.
loading-unknown = Some data are missing, so it is not known how the machine travels on the trailer.
    .short = Loading not known
    .workshop = Loading: data missing for { $item }: { $missing-name }.
loads-unknown = Some data are missing, so the axle loads are not known. Do not lift or drive with the implement before they are known.
    .short = Axle loads not known
    .workshop = Axle loads: data missing for { $item }: { $missing-name }.
measured-against-listing = The maker lists { $a } and { $b } together, but what was measured on { $unit } says that they do not join{ $margin ->
    [none] .
   *[other] : { $margin } { $margin-way ->
        [short] short
       *[spare] to spare
    }.
}
    .short = Measured: does not join, though listed
    .workshop = { $roles-name }: listed together, but measured on the unit it does not join{ $margin ->
        [none] .
       *[other] : { $margin } { $margin-way ->
            [short] short
           *[spare] to spare
        }.
    } What was measured decides about this unit. Measure again before anything is bought.
measurement-not-used = A measurement of { $item } cannot be used. Take it again.
    .short = Measurement not used
    .workshop = { $item }, { $port }, { $dimension-name }: { $reason ->
        [no-port] { $item } has no { $port }.
        [no-dimension] { $port } has no such dimension.
        [half-range] it cannot be off by so much.
       *[impossible] that value cannot be right.
    }
metal-too-little = A { $hole } hole in { $side } would leave too little metal: { $metal } to the { $towards ->
    [hole] next hole
   *[edge] edge
}, and { $least } is needed.
    .short = Too little metal round the hole
    .workshop = { $roles-name }: { $side }, { $port }: from the middle of a { $hole } hole { $metal } to the { $towards ->
        [hole] middle of the next
       *[edge] edge of the plate
    }, at least { $least } needed (after the European rules for structural steel, as a guideline).
metal-unknown = Before a { $hole } hole is made in { $side }, see how far the plate reaches: { $least } of metal is needed from its middle to the edge.
    .short = Distance to the plate’s edge not known
    .workshop = { $roles-name }: { $side }, { $port }: measure from the outermost holes to the edge of the plate. A { $hole } hole needs { $least } from its middle (after the European rules for structural steel, as a guideline).
must-come-off = To come off the machine: { $what }.
    .short = To come off: { $what }
    .workshop = For { $item }, to come off the machine: { $what }.
must-go-on = The machine needs: { $what }.
    .short = Needs: { $what }
    .workshop = For { $item }, to go on the machine: { $what }.
needs-frame = { $item } needs a mounting frame.
    .short = Needs a frame
    .workshop = { $item } hooks onto an implement carrier; the three-point hitch alone has none.
nose-load-in-range = { $heading ->
    [backward] Facing backwards on the trailer, the machine can stand so that the nose weight (tongue weight) is right.
   *[forward] Facing forwards on the trailer, the machine can stand so that the nose weight (tongue weight) is right.
}
    .short = Nose weight { $nose }
    .workshop = Nose weight { $nose }, allowed { $most-way ->
        [same] { $least }
       *[range] { $least } to { $most }
    }, with the machine facing { $heading ->
        [backward] backwards
       *[forward] forwards
    } and its rear axle { $to-way ->
        [same] { $from }
       *[range] { $from } to { $to }
    } ahead of the deck’s rear edge.
nose-load-near = What the masses may be off decides whether the nose weight (tongue weight) can be brought into range on this deck. Weigh it at the coupling before you drive.
    .short = Weigh at the coupling
    .workshop = Nose weight { $nose }, off by { $off } at most, allowed { $most-way ->
        [same] { $least }
       *[range] { $least } to { $most }
    }, with the machine facing { $heading ->
        [backward] backwards
       *[forward] forwards
    }.
nose-load-out-of-range = Nowhere on the trailer’s deck is the nose weight (tongue weight) right.
    .short = Nose weight { $nose } is wrong
    .workshop = Nose weight { $nose } at the best place on the deck, allowed { $most-way ->
        [same] { $least }
       *[range] { $least } to { $most }
    }.
nothing-answers = { $role ->
    [axle-anchor] { $a } has nothing to bolt to at the rear axle.
    [front-anchor] { $a } has nothing to bolt to at the front.
    [rack] { $a } has no implement carrier to hook onto.
    [hitch] { $a } has no three-point hitch to go on.
    [seat-deck] { $a } has no seat deck to stand on.
    [power-take-off] { $a } has no power take-off to drive it.
    [pressure] { $a } needs a pressure line that is not there yet.
    [return] { $a } needs a return line that is not there yet.
    [case-drain] { $a } needs a case drain line that is not there yet.
   *[wiring] { $a } needs wiring that is not there yet.
}
    .short = { $role ->
        [axle-anchor] No axle anchor for it
        [front-anchor] No front anchor for it
        [rack] No implement carrier for it
        [hitch] No three-point hitch for it
        [seat-deck] No seat deck for it
        [power-take-off] No power take-off for it
        [pressure] Pressure line to run
        [return] Return line to run
        [case-drain] Case drain line to run
       *[wiring] Wiring to run
    }
    .workshop = { $a }, { $port }: nothing for it in this build ({ $role-name }).
nothing-to-put-on = The machine needs: { $what }. None is listed for it.
    .short = Needs: { $what }
    .workshop = { $item } needs { $what } on the machine, and none is listed for this machine. Ask the maker.
own-seat-comes-off = The implement’s own seat is not the one you chose. It has to come off.
    .short = Implement’s own seat to come off
    .workshop = Take the implement’s own seat off: { $hours }.
own-seat-unknown = It is not known whether the implement carries a seat of its own, or whether that comes off.
    .short = Implement’s own seat not known
    .workshop = Implement’s own seat: data missing for { $missing-of }: { $missing-name }.
number-read-differs = The part number read on { $item } is not the one the catalogue lists there{ $rests ->
    [listed] , but a set with the part that was read is listed.
    [measured] . What was measured on it decides.
   *[nothing] . What the catalogue says of this joint may not hold on this unit.
}
    .short = Another part number than listed
    .workshop = { $item }, { $port }: { $read } read on the unit, { $listed } in the catalogue. { $rests ->
        [listed] The number read decides: it is part of a listed set.
        [measured] What was measured on the unit decides.
       *[nothing] Nothing the row states of this piece counts until it is measured.
    }
pins-count-differs = { $a } has { $carrier } pinned points, { $b } has { $carried }.
    .short = Pinned points: { $carrier } and { $carried }
    .workshop = { $roles-name }: { $carrier } points on { $a }, { $carried } on { $b }. Every lug needs its clevis.
pins-heights-off = The pinned points of { $b } are not at the heights of those of { $a }.
    .short = Pin heights { $over } off
    .workshop = { $roles-name }: the heights of the points differ by { $off-by } against each other, { $over } more than the pins have play.
pins-enter = The pins of { $b } and { $a } fit.
    .short = Pins fit
    .workshop = { $roles-name }, { $point }: clearance { $running }, up to { $limit } is common practice.
pins-may-enter = The drawings cannot tell whether the pins of { $b } and { $a } fit. Measure first.
    .short = Pins: { $probability } likely to fit
    .workshop = { $roles-name }{ $point ->
        [none] {""}
       *[other] , { $point }
    }: { $dimension-name } leaves { $running } of clearance, up to { $limit } is common practice; { $probability } likely to fit{ $settles ->
        [none] .
       *[other] . Known to ±{ $settles } it would be settled.
    }
pins-need-sleeve = The pin is thinner than its bore. A sleeve takes that up.
    .short = Needs a sleeve: { $running } of play
    .workshop = { $roles-name }, { $point }: bore { $bore }, pin { $pin }, clearance { $running }; over { $limit } it needs a sleeve (common practice).
pins-side-play = The joint has side play. Shims or washers take that up.
    .short = Needs shims: { $play } of side play
    .workshop = { $roles-name }, { $point }: side play { $play }; over { $limit } it needs shims or washers (common practice).
pins-sleeved = { $item } fits the pin to its bore.
    .short = Sleeved with { $item }
    .workshop = { $roles-name }: { $item } lines the { $bore } bore for the { $pin } pin.
pins-spread-off = The lugs of { $b } are { $off-by } too { $carried-way ->
    [narrow] close together
   *[wide] far apart
} for { $a }.
    .short = Lug spacing { $off-by } off
    .workshop = { $roles-name }: lug spacing { $carrier } on { $a }, { $carried } on { $b }: { $off-by } too { $carried-way ->
        [narrow] narrow
       *[wide] wide
    }, up to { $limit } is common practice.
pins-unknown = A dimension of the pins is not known.
    .short = Pin sizes missing
    .workshop = { $roles-name }: data missing for { $missing-of }: { $missing-name }.
pins-will-not-enter = { $dimension ->
    [width] A lug is too wide for its clevis.
   *[diameter] A pin is too thick for its bore.
}
    .short = { $dimension ->
        [width] Lug { $over } too wide
       *[diameter] Pin { $over } too thick
    }
    .workshop = { $roles-name }, { $point }: { $dimension-name } { $carrier } on { $a }, { $carried } on { $b }: { $over } too much.
plates-may-fit = The drawings cannot tell whether the side plates of { $b } go over { $a }. Measure first.
    .short = Width of the side plates: too close to call
    .workshop = { $roles-name }: { $between } between the plates, { $over } over the machine’s faces, gap { $gap }; it has to be from 0 to { $limit }, and the figures may be out by ±{ $worst-case } in all; { $probability } likely to go on{ $settles ->
        [none] .
       *[other] . One width known to ±{ $settles } would settle it.
    }
plates-need-shims = { $b } is { $gap } wider between its side plates than { $a }. Shims fill that.
    .short = Needs shims at the side plates
    .workshop = { $roles-name }: { $between } between the plates, { $over } over the machine’s faces: { $gap } of shims, half on each side; up to { $limit } is shimmed (common practice).
plates-too-narrow = { $b } does not go over { $a }: its side plates are { $short } too close together.
    .short = Side plates too close together
    .workshop = { $roles-name }: { $between } between the plates, { $over } over the machine’s faces: { $short } short. Do not spread the frame.
plates-too-wide = { $b } is too wide for { $a }: { $gap } of gap between its side plates and the machine.
    .short = Side plates too wide apart
    .workshop = { $roles-name }: { $between } between the plates, { $over } over the machine’s faces: a gap of { $gap }; shims make up { $limit } (common practice).
plates-unknown = How wide { $a } is over its faces, or { $b } between its side plates, is not known.
    .short = Width of the side plates not known
    .workshop = { $roles-name }: data missing for { $missing-of }: { $missing-name }.
port-looked-missing = This unit lacks what the joint needs.
    .short = Missing on this unit
    .workshop = { $roles-name }: looked for and not there: { $port }.
port-not-on-serial = Units with this serial number do not have what the joint needs.
    .short = Not on this serial number
    .workshop = { $roles-name }: not on serial number { $serial }: { $port }.
port-serial-unknown = Only some units have what the joint needs. Look at yours, or enter its serial number.
    .short = Depends on the serial number
    .workshop = { $roles-name }: only on some serial numbers: { $port }.
place-unknown = It is not known where { $item } sits on the machine, so nothing that depends on it can be worked out.
    .short = Where it sits is not known
    .workshop = No joint in the data says where { $item } sits. Measure it, or ask the maker.
power-high = The machine has more power than the implement may take.
    .short = Power { $power }, at most { $most }
    .workshop = PTO power { $power }; the implement takes { $most } at most.
power-short = The machine has too little power for the implement.
    .short = Power { $power }, needs { $least }
    .workshop = PTO power { $power }; the implement needs { $least }.
power-unknown = The machine’s PTO power is not known.
    .short = PTO power missing
    .workshop = Data missing for { $missing-of }: { $missing-name }.
pto-differs = { $dimension ->
    [speed] The power take-off (PTO) does not turn at the speed that the implement needs.
    [rotation] The power take-off (PTO) turns the other way.
   *[shaft-type] The PTO shaft needs a different yoke.
}
    .short = { $dimension ->
        [speed] PTO speed differs
        [rotation] PTO turns the other way
       *[shaft-type] PTO shaft needs a different yoke
    }
    .workshop = { $dimension ->
        [speed] { $dimension-name }: { $carrier-name } rpm on { $a }, { $carried-name } rpm on { $b }.
       *[other] { $dimension-name }: { $carrier-name } on { $a }, { $carried-name } on { $b }.
    }
pto-fits = The power take-off (PTO) suits the implement.
    .short = PTO suits
    .workshop = PTO: type { $shaft-type } (ISO 500-1), { $speed } rpm on both sides.
pto-unknown = Some data of the power take-off (PTO) are missing.
    .short = PTO data missing
    .workshop = Data missing for { $missing-of }: { $missing-name }.
ramp-axle-light = On the way up the ramp the { $axle ->
        [front] front axle
       *[rear] rear axle
    } is left with little weight: { $load }, at least { $least } is needed. It may not steer, and a jolt may lift it.
    .short = { $axle ->
        [front] Only { $load } on the front axle on the ramp
       *[rear] Only { $load } on the rear axle on the ramp
    }
    .workshop = On the ramp, { $way ->
        [forward] forwards
       *[backward] backwards
    }: { $axle ->
        [front] front axle
       *[rear] rear axle
    } { $load }, needed { $least } (own proposal, no published figure).
ramp-clears = { $way ->
    [forward] Forwards, the machine gets up the trailer’s ramp without dragging.
    [backward] Backwards, the machine gets up the trailer’s ramp without dragging.
   *[either] The machine gets up the trailer’s ramp without dragging.
}
    .short = Ramp: { $clearance } to spare
    .workshop = Ramp { $ramp }: { $item } comes nearest, with { $clearance } to spare.
ramp-drags = { $item } drags by { $drags-by } on the trailer’s ramp. { $shortest ->
    [none] No ramp short enough to carry along is long enough.
   *[other] Ramps of at least { $shortest } clear it.
}
    .short = Drags by { $drags-by } on the ramp
    .with = longer ramps
    .workshop = Ramp { $ramp }, { $way ->
        [backward] backwards
       *[forward] forwards
    }: { $item } is { $drags-by } too low, { $distance } { $place ->
        [ahead] ahead of the rear axle, in front of the front wheels
        [between] ahead of the rear axle, between the wheels
       *[behind] behind the rear axle
    }. { $shortest ->
        [none] No ramp short enough to carry along leaves the { $wanted } needed (common practice).
       *[other] Ramps of at least { $shortest } leave the { $wanted } needed (common practice).
    }
ramp-near = { $item } comes so near the trailer’s ramp that measuring decides, and no ramp short enough to carry along leaves the { $wanted } needed for certain. Measure before you load; then drive up at a crawl while somebody watches from the side, away from the ramp.
    .short = Ramp: measure first
    .workshop = Ramp { $ramp }, { $way ->
        [backward] backwards
       *[forward] forwards
    }: { $item } { $clearance } above the ramp as drawn, { $wanted } needed (common practice); lengths may be off by { $off }.
ramp-steep = The trailer’s ramp rises at { $angle }: nothing drives up that. { $shortest ->
    [none] Take another trailer.
   *[other] Take ramps of at least { $shortest }.
}
    .short = Ramp far too steep
    .with = longer ramps
    .workshop = Ramp or beaver tail at { $angle }; from 60° on it is no ramp (common practice).
ramp-tight = Only { $clearance } between { $item } and the trailer’s ramp; { $wanted } is needed. { $shortest ->
    [none] No ramp short enough to carry along is long enough.
   *[other] Ramps of at least { $shortest } give that.
}
    .short = Only { $clearance } over the ramp
    .with = longer ramps
    .workshop = Ramp { $ramp }, { $way ->
        [backward] backwards
       *[forward] forwards
    }: { $clearance } under { $item }, { $distance } { $place ->
        [ahead] ahead of the rear axle, in front of the front wheels
        [between] ahead of the rear axle, between the wheels
       *[behind] behind the rear axle
    }. { $shortest ->
        [none] No ramp short enough to carry along leaves the { $wanted } needed (common practice).
       *[other] Ramps of at least { $shortest } leave the { $wanted } needed (common practice).
    }
ramp-tips = The machine tips over on the ramp: the { $axle ->
        [front] front axle
       *[rear] rear axle
    } lifts on the way up.
    .short = Tips on the ramp
    .workshop = On the ramp ({ $ramp }), { $way ->
        [forward] forwards
       *[backward] backwards
    }: the { $axle ->
        [front] front axle
       *[rear] rear axle
    } lifts.
rear-seat-cannot = { $item } cannot stand as you chose while the machine is driven.
    .short = { $item } does not move so
    .workshop = { $item } while the machine is driven: { $state ->
        [folded] it has to fold; this one does not.
        [slid] it has to slide; this one does not.
        [turned] it has to turn; this one does not.
       *[other] nothing says that it can stand so.
    }
rear-seat-moves = { $state ->
    [folded] To drive, fold { $item } down.
    [slid] To drive, slide { $item } { $by } forward.
   *[off] To drive, { $item } has to come off.
}
    .short = { $state ->
        [folded] Fold { $item } to drive
        [slid] Slide { $item } to drive
       *[off] { $item } off to drive
    }
    .workshop = { $item } while the machine is driven: { $state ->
        [folded] fold it down, by hand.
        [slid] slide it { $by } forward, by hand.
       *[off] take it off{ $hours ->
            [none] .
           *[other] , { $hours }.
        }
    }
room-close = The room between seat and levers is just about what is needed: { $room }, at least { $least }. Measure it.
    .short = Room at the seat: measure first
    .workshop = Seat index point to levers { $room }, off by { $off } at most; at least { $least }.
seat-faces-forward = The implement is worked facing the rear, and this seat faces forward only.
    .short = Seat faces forward only
    .workshop = Seat: faces forward; the implement’s levers are behind it.
seat-reach-far = The levers are too far from the seat to be reached well: { $distance }, at most { $most }.
    .short = Levers { $distance } away, at most { $most }
    .workshop = Seat index point to levers { $distance }; at most { $most }.
seat-reach-unknown = It is not known how far the levers are from the seat.
    .short = Reach to the levers not known
    .workshop = Reach to the levers: data missing for { $missing-of }: { $missing-name }.
seat-room = There is room for the knees between seat and levers: { $room }, at least { $least } is needed.
    .short = Room at the seat
    .workshop = Seat index point to levers { $room }; at least { $least }.
seat-room-short = There is { $short } too little room between seat and levers.
    .short = Seat room { $short } short
    .workshop = Seat index point to levers { $room }; at least { $least }: { $short } short.
seat-room-unknown = It is not known how much room there is at the seat.
    .short = Seat room data missing
    .workshop = Seat room: data missing for { $missing-of }: { $missing-name }.
seat-station-differs = { $station ->
    [cab] This seat is not made for a machine with a cab.
   *[open] This seat is not made for an open machine.
}
    .short = { $station ->
        [cab] Seat is not for cabs
       *[open] Seat is not for open machines
    }
    .workshop = { $a }: not made for this station ({ $station-name }).
seat-station-unknown = It is not known whether this seat is for open machines or for cabs.
    .short = Seat: open or cab?
    .workshop = { $a }: open station or cab: data missing.
seat-switch-missing = This seat has no seat switch, which tells the machine that somebody is sitting there. Have one fitted as the maker’s manual says. Do not bridge it.
    .short = Seat switch to fit
    .with = a seat switch
    .workshop = Seat switch: none on the seat. Fit and wire it as the machine’s manual says. Do not bridge it.
seat-switch-unknown = It is not known whether this seat has a seat switch, which tells the machine that somebody is sitting there.
    .short = Seat switch?
    .workshop = Seat switch: data missing for the seat. Do not run the machine with it bridged.
seat-turns-not = The operator’s seat of this machine does not turn round.
    .short = Seat does not turn
    .workshop = Seat: a turning one is chosen; the machine’s does not turn.
seat-without-its-supplier = { $supplier ->
    [machine] This seat comes only with another machine.
    [frame] This seat comes only with another frame.
   *[implement] This seat comes only with another implement.
}
    .short = { $supplier ->
        [machine] Only with another machine
        [frame] Only with another frame
       *[implement] Only with another implement
    }
    .workshop = { $a }: supplied with something that is not in this build ({ $supplier-name }). Find out whether it is sold by itself.
seats-clash = { $used ->
    [working] While somebody works, { $item } and the operator’s seat stand in each other’s place.
   *[driving] While somebody drives, { $item } and the operator’s seat stand in each other’s place.
}
    .short = Seats in each other’s place
    .workshop = { $item } overlaps the operator’s seat by { $overlap } { $used ->
        [working] while the implement is worked
       *[driving] while the machine is driven
    }{ $driver ->
        [folded] , with the operator’s seat folded.
        [slid] , with the operator’s seat slid forward.
        [turned] , with the operator’s seat turned round.
       *[other] { $behind ->
            [folded] , with { $item } folded.
            [slid] , with { $item } slid forward.
           *[other] .
        }
    }
seats-unknown = { $used ->
    [working] It is not known whether the operator’s seat leaves room for the seat behind while somebody works.
   *[driving] It is not known whether the seat behind leaves room for the operator’s seat while somebody drives.
}
    .short = Room for both seats not known
    .workshop = Both seats, { $used ->
        [working] while the implement is worked
       *[driving] while the machine is driven
    }: data missing for { $missing-of }: { $missing-name }.
site-unknown = Data missing for { $site }: { $missing-name }.
    .short = Site data missing
    .workshop = Data missing for { $site }: { $missing-name }.
serial-of-another = The serial number { $serial } does not belong to { $item } as listed here. Check which unit it is.
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
station-unknown = It is not known whether this frame is for open machines or for cabs.
    .short = Open or cab?
    .workshop = { $a }: open station or cab: data missing.
swivel-close = The seat may strike { $item } when it turns. Measure it.
    .short = Seat may strike when it turns
    .workshop = Turning seat: sweeps a radius of { $radius }; { $item } is { $room } away, off by { $off } at most.
swivel-hits = The seat strikes { $item } when it turns.
    .short = Seat strikes when it turns
    .workshop = Turning seat: sweeps a radius of { $radius }; { $item } is { $room } away.
swivel-unknown = It is not known whether there is room for the seat to turn.
    .short = Room to turn not known
    .workshop = Turning seat: data missing for { $missing-of }: { $missing-name }.
thread-depth-unknown = How deep the holes of { $side } are tapped, and in what metal, is not known. { $least } of thread is enough in any.
    .short = Depth of the thread not known
    .workshop = { $roles-name }: find out depth and metal of the tapped holes of { $side }. { $least } of thread holds in steel, cast iron and aluminium alike; less may do in the harder ones (common practice).
thread-too-short = The holes of { $side } are tapped { $depth } deep; the bolts need { $least } of thread.
    .short = Thread too short to hold
    .workshop = { $roles-name }: thread in { $side } { $depth }, at least { $least } needed (common practice). Short thread strips.
thread-unknown = The size alone ({ $size }) does not tell which thread the bolts of { $side } have: metric or inch, coarse or fine. Find out first.
    .short = Thread not known
    .workshop = { $roles-name }: { $side }, { $size }: find out the thread with a thread gauge or from the parts list. M12 and 1/2 in, M16 and 5/8 in look alike and do not screw together.
threads-differ = The bolts are { $bolt } and the holes of { $side } are tapped { $tapped }: they do not screw together.
    .short = Threads differ
    .workshop = { $roles-name }: bolts { $bolt }, holes of { $side } tapped { $tapped }. One size, two threads: they start and jam.
tie-downs-needed = { $count ->
    [one] Tie the machine down with at least { $count } chain or strap of { $each } working load limit (US rule). Where you drive, the local law counts.
   *[other] Tie the machine down with at least { $count } chains or straps of { $each } working load limit each (US rule). Where you drive, the local law counts.
}
    .short = { $count ->
        [one] { $count } tie-down of { $each }
       *[other] { $count } tie-downs of { $each } each
    }
    .workshop = US rule (49 CFR 393.106, 393.110): at least { $count ->
        [one] { $count } tie-down with a working load limit
       *[other] { $count } tie-downs, each with a working load limit
    } of { $each } or more; a straight tie counts half, so that makes the { $together } needed. Tie all four corners if the manual says so; your own law comes first.
trailer-carries = { $rating ->
    [axle] The trailer’s axles carry their load within their rating.
   *[total] Machine and trailer together are within the trailer’s rating.
}
    .short = { $rating ->
        [axle] Trailer axles: { $left } to spare
       *[total] Trailer: { $left } to spare
    }
    .workshop = { $rating ->
        [axle] Trailer axles
       *[total] Trailer with the machine
    }: { $load }, rated { $rated }, { $left } to spare.
trailer-load-near = { $rating ->
    [axle] The trailer’s axles are so near to their rating that they have to be weighed.
   *[total] Machine and trailer together are so near to the trailer’s rating that they have to be weighed.
}
    .short = Weigh before you load
    .workshop = { $rating ->
        [axle] Trailer axles
       *[total] Machine and trailer
    }: load { $load }, off by { $off } at most, rated { $rated }.
trailer-narrow = Over its tyres the machine is { $beyond } wider than the trailer’s deck.
    .short = Trailer { $beyond } too narrow
    .workshop = Over the tyres { $width }, deck { $deck }: { $beyond } too wide.
trailer-overloaded = { $rating ->
    [axle] The trailer’s axles would carry { $over } more than they are rated for.
   *[total] Machine and trailer together are { $over } heavier than the trailer is rated for.
}
    .short = { $rating ->
        [axle] Trailer axles { $over } overloaded
       *[total] Trailer { $over } overloaded
    }
    .workshop = { $rating ->
        [axle] Trailer axles
       *[total] Trailer with the machine
    }: { $load }, rated { $rated }, over by { $over }.
trailer-short = The trailer’s deck is shorter than the machine’s wheelbase.
    .short = Trailer deck only { $deck } long
    .workshop = Wheelbase { $wheelbase }, deck { $deck }.
trailer-unknown = Data missing for { $trailer }: { $missing-name }.
    .short = Trailer data missing
    .workshop = Data missing for { $trailer }: { $missing-name }.
tyre-overloaded = { $axle ->
    [front] Each front tyre would carry { $over } more than it is rated for.
   *[rear] Each rear tyre would carry { $over } more than it is rated for.
}
    .short = { $axle ->
        [front] Each front tyre { $over } over its rating
       *[rear] Each rear tyre { $over } over its rating
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
