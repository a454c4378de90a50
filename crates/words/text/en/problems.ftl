### What is wrong with a catalogue, for those who keep it: a sentence for each code, and what mends it.
### What a file holds is shown as it is written there.

problem-line-column = line { $line }, column { $column }
problem-cell = { $table }, row { $row }{ $column ->
    [none] {""}
   *[other] , column { $column }
}
problem-suggestion = Did you mean “{ $suggestion }”?

sort-value = a value
sort-null = null
sort-flag = true or false
sort-number = a number
sort-whole-number = a whole number
sort-number-or-stated = a number, or a record with value, plus_minus and source
sort-text = text
sort-list = a list
sort-record = a record
sort-word-or-record = a word or a record
sort-field-name = a field’s name in double quotes
sort-colon = a colon
sort-comma-or-close-bracket = a comma or ]
sort-comma-or-close-brace = a comma or {"}"}
sort-end-of-file = the end of the file

problem-not-text = This is not UTF-8 text: byte { $byte } belongs to no character.
    .mend = Save the file as UTF-8.
problem-syntax = This is not JSON: found { $found ->
    [end-of-file] the end of the file
   *[other] “{ $found }”
}, expected { $expected }.
    .mend = Correct the punctuation here; JSON has no comments and no comma before a closing bracket.
problem-too-large = The file has { $found } bytes; the most that is read is { $greatest }.
    .mend = Split the catalogue into several.
problem-too-many-values = The file holds more than { $greatest } values.
    .mend = Split the catalogue into several.
problem-too-deep = Lists and records are nested more than { $greatest } deep.
    .mend = A catalogue needs no such nesting: compare with the format’s description.
problem-more-problems = There are more problems; the first { $shown } are shown.
    .mend = Fix these first.
problem-missing-format = The file does not say which format it is in.
    .mend = Begin with "format": { $expected }.
problem-newer-format = The file is in format { $found }, newer than format { $expected } that this program reads.
    .mend = Use a newer version of this program.
problem-unknown-format = There is no format “{ $found }”.
    .mend = The format is the number { $expected }.
problem-unknown-table = There is no table “{ $found }” in the format.
    .mend = Correct its name, or begin it with # and a blank if it is a sheet of your own.
problem-missing-table = The table “{ $table }” is missing.
    .mend = Add it.
problem-duplicate-table = “{ $found }” is a second sheet for a table that is there already; nothing of it was read.
    .mend = Put its rows into the first sheet, or begin its name with # and a blank.
problem-unknown-column = The table has no column “{ $found }”.
    .mend = Correct the heading, or begin it with # and a blank if the column is your own.
problem-no-heading = “{ $found }” stands in a column without a heading and would be left out.
    .mend = Write the heading into row 1; “remarks” if it is a note of your own.
problem-unit-in-heading = The heading says { $found }, but the header says { $expected }.
    .mend = Write every number in { $expected }, and so all headings; or correct the header.
problem-merged-cells = The cells { $found } are merged: only the first of them holds anything.
    .mend = Unmerge them and fill in each cell.
problem-hidden-rows = { $last ->
    [none] Row { $first } is hidden
   *[other] Rows { $first } to { $last } are hidden
} and read like any other.
    .mend = Show the rows, and delete what no longer holds.
problem-cell-error = The cell holds the error { $found }, not a value.
    .mend = Mend the formula, or write the value itself.
problem-formula-without-value = The cell holds a formula, but not its value.
    .mend = Open the workbook in a spreadsheet, let it calculate, and save it; or write the value itself.
problem-date-instead = The cell holds the date { $found }, which the spreadsheet made of what was typed.
    .mend = Give the cell the format “text” and type it again.
problem-blanks-around = “{ $found }” has blanks before or after it.
    .mend = Remove the blanks.
problem-comma-in-list = “{ $found }” has a comma where a list is read: it would be one entry.
    .mend = Put semicolons between the entries; an entry that has a comma of its own goes in double quotes.

problem-wrong-type = Found { $found }, expected { $expected }.
    .mend = Write a value of the expected sort, or leave an optional field out.
problem-not-number = “{ $found }” is not a number.
    .mend = Write the number alone, with a decimal point and nothing between thousands; leave it out if it is not known.
problem-number-with-unit = “{ $found }” has “{ $unit }” beside the number.
    .mend = Write { $number } alone if that is in the unit of the header; else convert it first.
problem-not-flag = “{ $found }” is neither yes nor no.
    .mend = Write yes or no in a table, true or false in JSON; leave it out if it is not known.
problem-unknown-field = There is no field “{ $found }” here.
    .mend = Allowed here: { $expected }.
problem-missing-field = The field “{ $field }” is missing.
    .mend = Add it.
problem-duplicate-field = The field “{ $field }” stands twice.
    .mend = Remove one.
problem-unknown-word = “{ $found }” is not one of the words that may stand here.
    .mend = Allowed here: { $expected }.
problem-not-exactly-one = { $found ->
    [none] Nothing stands here; exactly one is needed.
   *[other] Several stand here ({ $found }); exactly one is needed.
}
    .mend = Allowed here: { $expected }.
problem-wrong-count = Values in the list: { $found }; needed: { $expected }.
    .mend = Write as many values as are needed.
problem-empty-list = The list is empty; it has to have an entry.
    .mend = Add an entry, or leave an optional list out.
problem-number-not-finite = { $found } is not a finite number.
    .mend = Correct the number, or leave the field out if it is not known.
problem-number-out-of-range = { $found } is out of range: from { $least } to { $greatest }.
    .mend = Correct the number, or leave the field out if it is not known.
problem-number-not-whole = { $found } is not a whole number.
    .mend = Correct the number, or leave the field out if it is not known.
problem-unsafe-character = The text has the character { $found }, which is invisible or turns text round.
    .mend = Remove the character.
problem-text-too-long = The text has { $found } bytes; the most is { $greatest }.
    .mend = Shorten the text.
problem-blank-text = The text is empty.
    .mend = Fill it in.
problem-empty-record = The record says nothing.
    .mend = Leave it out.
problem-unknown-unit = “{ $found }” is not a unit that is known here.
    .mend = Allowed here: { $expected }.
problem-unknown-currency = “{ $found }” is not a currency code of three capital letters.
    .mend = Write the code of ISO 4217, such as USD, EUR or GBP.
problem-bad-date = “{ $found }” is not a date like 2014-02-01.
    .mend = Write year, month and day with hyphens.

problem-bad-id = “{ $found }” is not an id: lower-case letters, digits and hyphens.
    .mend = Give it another.
problem-reserved-id = The id “{ $found }” has a meaning of its own in the guide.
    .mend = Give it another.
problem-duplicate-id = The id “{ $found }” is taken by { $other }.
    .mend = Give it another.
problem-duplicate-part = The part number “{ $found }” is taken by { $other }.
    .mend = Keep one row for each part number.
problem-duplicate-port = Another port of this item is called “{ $found }”.
    .mend = Give it another.
problem-unknown-reference = There is no “{ $found }” in the table of { $table ->
    [items] items
   *[other] { $table }
}.
    .mend = Correct the spelling, or add the row.
problem-unknown-part = Part number “{ $found }” is not in the table of parts.
    .mend = Correct the spelling, or add the row.
problem-named-twice = “{ $found }” is named twice in this list.
    .mend = Keep it once.
problem-listed-with-itself = An item is listed with itself.
    .mend = Name the items that it comes with, or leave the entry out.

problem-mass-not-positive = A mass of { $found } is not possible: it has to be above zero.
    .mend = Correct the number, or leave the field out if it is not known.
problem-not-positive = { $found } is not possible: it has to be above zero.
    .mend = Correct the number, or leave the field out if it is not known.
problem-negative = { $found } is not possible: it has to be zero or more.
    .mend = Correct the number, or leave the field out if it is not known.
problem-range-upside-down = The range is upside down: it ends at { $greatest }, below its start at { $least }.
    .mend = Exchange the two, or correct the wrong one.
problem-outside-own-range = { $found } is outside its own range, from { $least } to { $greatest }.
    .mend = Correct the number, or leave the field out if it is not known.
problem-share-out-of-range = A share of { $found } is not possible: it lies between 0 and 1.
    .mend = Correct the number, or leave the field out if it is not known.
problem-folded-seat-not-outlined = The seat folds, and nothing outlines it folded.
    .mend = Add shapes of the role seat_folded that show it folded, or say that it does not fold.
problem-folded-seat-not-stated = A folded seat is outlined, and nothing says that this seat folds.
    .mend = Say that the seat folds, or take the shapes of the role seat_folded out.
problem-own-seat-not-there = An own seat is described, and the implement is not said to bring one.
    .mend = Set own_seat to true, or leave this out.
problem-price-too-fine = The price { $found } is finer than hundredths and is rounded.
    .mend = Round it yourself.
problem-half-range-too-great = The half range { $found } is not less than the value { $value } it belongs to.
    .mend = State how far the true value may lie from the one given, in the same unit.
problem-unlikely-size = { $found } is hardly right here: { $least } to { $greatest } is usual.
    .mend = See that the number is in the unit of the header and that no digit or decimal point has slipped.
problem-loads-not-mass = The axles bear { $loads } together, but the mass is { $found }.
    .mend = Weigh again, or correct the mass or one of the bare loads.
problem-load-above-rating = The axle bears { $found } as the machine stands bare, more than the { $rated } it is rated for.
    .mend = Correct the load or the rating.
problem-wheels-overlap = The wheels stand in one another: { $rear } and { $front } of radius do not fit into a wheelbase of { $found }.
    .mend = Correct the radius that is wrong; a diameter may stand in its place.
problem-tyre-above-machine = The wheel stands { $found } high, above everything outlined of the machine ({ $top }).
    .mend = Correct the radius; a diameter may stand in its place.
problem-parts-outweigh-whole = The arm weighs { $found }, but its links alone weigh { $parts }.
    .mend = Correct the mass: see the unit of the header, and whether a decimal point has slipped.
problem-far-from-its-kind = { $found } is far from the rest of its kind: { $usual } stands in their middle.
    .mend = See that the number is in the unit of the header and that no digit or decimal point has slipped.
problem-port-far-away = The port lies at x = { $found }, well away from the machine.
    .mend = Correct its place: x counts forward from the rear axle, in the unit of the header.
problem-unlikely-year = { $found } is hardly a year of making.
    .mend = Correct the year, or leave it out if it is not known.
problem-future-date = The date { $found } is still to come: today is { $today }.
    .mend = Correct the date.
problem-long-label = The label has { $found } characters and does not fit where labels are shown.
    .mend = Shorten it to { $greatest }, and put the rest into the note.
problem-same-label = “{ $found }” is also the label of { $other }, and neither years, serial numbers nor series tell the two apart.
    .mend = Give each a label of its own, or state what tells them apart.
problem-rare-word = “{ $found }” stands only here.
    .mend = Correct the spelling if another word is meant.
problem-similar-part = “{ $found }” and “{ $like }” ({ $other }) are one number but for how they are written.
    .mend = Keep one row, and write the number the same way everywhere.
problem-line-twice = The line stands already at { $other }.
    .mend = Remove one, or correct its position.
problem-sleeve-inside-out = The sleeve’s inner diameter { $inner } is not less than its outer diameter { $outer }.
    .mend = Exchange the two diameters.

problem-no-holes = The bolt pattern has no holes.
    .mend = Add them, or leave the port out if they are not known.
problem-too-many-holes = The bolt pattern has { $found } holes; the most is { $greatest }.
    .mend = Leave out holes that no bolt of the joint uses.
problem-holes-coincide = Holes { $first } and { $second } are at the same place.
    .mend = Remove one, or correct its place.
problem-holes-overlap = Holes { $first } and { $second } are { $apart } apart and cut into one another.
    .mend = Correct the place of one, or make the two a slot.
problem-bolt-above-hole = A bolt of { $bolt } does not go through a hole of { $found }.
    .mend = Correct the hole or the port’s bolt.
problem-holes-off-reference = All holes lie far off the port’s reference, their middle at u = { $u }, v = { $v }.
    .mend = Count u and v from the point that the pose names, or move the pose to the holes.
problem-more-bolts-than-holes = { $required } bolts are required, but there are { $holes } holes.
    .mend = Correct the number, or add the holes.
problem-thread-not-read = { $found } is no thread that is known here.
    .mend = Write it as M12, M12x1.25 or 1/2-13 UNC.
problem-no-points = The pinned port has no points.
    .mend = Add them, or leave the port out if they are not known.
problem-pose-not-square = A face that looks { $faces } cannot have its up direction { $up }.
    .mend = Choose an up direction at a right angle to the way the face looks.
problem-pose-missing = The port does not say where it is, so nothing can be placed by it.
    .mend = Add the pose.
problem-looks-away = The port ({ $role }) faces { $found }, away from what it is to meet.
    .mend = Let it face { $expected }; its holes are seen from there.
problem-kind-not-of-role = A port of kind “{ $kind }” cannot serve as “{ $role }”.
    .mend = Allowed here: { $expected }.
problem-machine-carried = A machine cannot be the carried side.
    .mend = Make the port’s end "carrier".
problem-adapter-leads-nowhere = The adapter does not lead from one port to another.
    .mend = Give it a carried and a carrier port, or a sleeve.
problem-mount-without-port = The implement has no port to be mounted by ({ $mount }).
    .mend = Add a carried port of that role, or correct the mount.
problem-frame-without-port = The frame has no port “{ $role }” ({ $end }), which every frame needs.
    .mend = Add the port; with what is known of it, if not all is.
problem-equipment-for-nothing = The equipment is for no machine.
    .mend = Name the machines it is for.
problem-equipment-blocks-own = The equipment blocks a port that it adds itself ({ $port }).
    .mend = Take the port out of the one list or the other.
problem-equipment-names-nothing = None of the machines that the equipment is for has “{ $found }”.
    .mend = Correct the name, or the machines.
problem-equipment-port-taken = The equipment adds a port “{ $port }” that { $machine } has already.
    .mend = Give the port another name, or block the machine’s own.
problem-fitted-not-for-machine = The machine is sold with { $found }, which is not for it.
    .mend = Add the machine to that equipment, or take it out here.
problem-kind-of-no-equipment = No equipment is of the kind “{ $found }”.
    .mend = Correct the word, or add equipment of that kind.

problem-path-unreadable = The path data cannot be read: “{ $found }”.
    .mend = Use the commands M L H V C Q A Z, the first an M.
problem-path-out-of-range = The path data has a coordinate beyond { $greatest }.
    .mend = Correct the coordinate.
problem-path-curved = An underside is made of straight lines; this one curves.
    .mend = Use M, L, H, V and Z only.
problem-draws-nothing = The path of “{ $shape }” has no two different points and draws nothing.
    .mend = Give it its points, or leave the shape out.
problem-outline-crosses-itself = The outline of “{ $shape }” crosses itself at ({ $x }, { $y }).
    .mend = Bring its points into order round the outline.
problem-outline-too-detailed = The outlines have too much detail to be checked, from “{ $shape }” on.
    .mend = Draw it with fewer points.
problem-centre-of-gravity-outside = The centre of gravity ({ $x }, { $y }) lies outside the outline in the { $view ->
    [side] side
   *[plan] plan
} view.
    .mend = Correct the centre of gravity, or draw what is missing of the outline.
problem-carrier-without-arm = The shape “{ $shape }” moves with the { $carrier }, but the item has no digging arm.
    .mend = Add the arm, or let the shape move with the item.

problem-lineage-circle = The parts replace each other in a circle: { $chain }.
    .mend = Remove the record that is wrong.
problem-lineage-contradictory = That { $by } replaced { $part } is recorded as both ways and as forward only; the other record is { $other }.
    .mend = Remove the record that is wrong.
problem-replaced-by-nothing = The part is replaced by nothing.
    .mend = Name what replaces it, or leave "replaced" out.

problem-set-names-nothing = The set names no item.
    .mend = Name at least one item by its id.
problem-duplicate-set = The set is listed already, at { $other }.
    .mend = Remove one.
problem-bolts-disagree = The set is listed, but at the { $role } “{ $a }” states a bolt of { $bolt_a } and “{ $b }” one of { $bolt_b }.
    .mend = Correct the side that is wrong.
problem-listed-blocked = The set is listed, but by its data it cannot be mounted so: { $reason }.
    .mend = Correct what is wrong; “fitup coverage” tells the reason in full.
problem-listed-cannot-mate = The set is listed, but “{ $a }” cannot carry “{ $b }” at the { $role } by the dimensions of their ports.
    .mend = Compare both ports with the drawings; one of the dimensions or the listing is wrong.
