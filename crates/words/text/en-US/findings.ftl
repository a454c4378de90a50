### What is written otherwise in the United States.

clearance-unknown = One of the two has no outline in the catalog, so the clearance between them is unknown.
corner-tight = The machine cannot turn the corner behind the gate in one go. It may work with some backing and turning; try it.
coupling-weak = The trailer’s coupling may carry { $most }; loaded, the trailer needs a tongue weight of at least { $least }.
    .workshop = Coupling rated { $most }; least tongue weight of the loaded trailer { $least }.
deck-close = { $way ->
    [length] The machine’s wheelbase is just about as long as the trailer’s deck. Measure both before you load it.
   *[width] Over its tires the machine is just about as wide as the trailer’s deck. Measure both before you load it.
}
    .workshop = { $way ->
        [length] Wheelbase
       *[width] Over the tires
    } { $size }, deck { $deck }: the two together may be off by { $off }.
front-axle-heavy-enough =
    .workshop = The front axle carries { $share } of the machine’s empty weight; at least { $least } is needed (German road rule, and most manuals).
front-axle-light =
    .workshop = The front axle carries { $share } of the machine’s empty weight; at least { $least } is needed (German road rule, and most manuals). For that, fit at least { $ballast } of ballast { $ballast-at } ahead of the rear axle.
hitch-other-span =
    .workshop = Hitch category { $carrier } on { $a }, { $carried } on { $b }: the pins are the same, their spacing is not. Move the lower links and set their stabilizers.
load-near-rating = { $bearer ->
    [front-axle] The front axle is so near to its rating that it has to be weighed.
    [rear-axle] The rear axle is so near to its rating that it has to be weighed.
    [front-tyre] The front tires are so near to their rating that the axle has to be weighed.
    [rear-tyre] The rear tires are so near to their rating that the axle has to be weighed.
   *[hitch] The implement is so near to what the hitch can lift that it has to be weighed.
}
    .short = { $bearer ->
        [front-axle] Weigh the front axle
        [rear-axle] Weigh the rear axle
        [front-tyre] Weigh for the front tires
        [rear-tyre] Weigh for the rear tires
       *[hitch] Weigh the implement
    }
nose-load-in-range = { $heading ->
    [backward] Facing backwards on the trailer, the machine can stand so that the tongue weight is right.
   *[forward] Facing forwards on the trailer, the machine can stand so that the tongue weight is right.
}
    .short = Tongue weight { $nose }
    .workshop = Tongue weight { $nose }, allowed { $most-way ->
        [same] { $least }
       *[range] { $least } to { $most }
    }, with the machine facing { $heading ->
        [backward] backwards
       *[forward] forwards
    } and its rear axle { $to-way ->
        [same] { $from }
       *[range] { $from } to { $to }
    } ahead of the deck’s rear edge.
nose-load-out-of-range = Nowhere on the trailer’s deck is the tongue weight right.
    .short = Tongue weight { $nose } is wrong
    .workshop = Tongue weight { $nose } at the best place on the deck, allowed { $most-way ->
        [same] { $least }
       *[range] { $least } to { $most }
    }.
number-read-differs = The part number read on { $item } is not the one the catalog lists there{ $rests ->
    [listed] , but a set with the part that was read is listed.
    [measured] . What was measured on it decides.
   *[nothing] . What the catalog says of this joint may not hold on this unit.
}
    .workshop = { $item }, { $port }: { $read } read on the unit, { $listed } in the catalog. { $rests ->
        [listed] The number read decides: it is part of a listed set.
        [measured] What was measured on the unit decides.
       *[nothing] Nothing the row states of this piece counts until it is measured.
    }
thread-depth-unknown =
    .workshop = { $roles-name }: find out depth and metal of the tapped holes of { $side }. { $least } of thread holds in steel, cast iron and aluminum alike; less may do in the harder ones (common practice).
trailer-narrow = Over its tires the machine is { $beyond } wider than the trailer’s deck.
    .workshop = Over the tires { $width }, deck { $deck }: { $beyond } too wide.
tyre-overloaded = { $axle ->
    [front] Each front tire would carry { $over } more than it is rated for.
   *[rear] Each rear tire would carry { $over } more than it is rated for.
}
    .short = { $axle ->
        [front] Each front tire { $over } over its rating
       *[rear] Each rear tire { $over } over its rating
    }
    .workshop = { $axle ->
        [front] Each front tire
       *[rear] Each rear tire
    }: load { $load }, rated { $rated }, over by { $over }.
