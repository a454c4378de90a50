### Lengths that were typed and could not be taken, each with what to write instead. $typed is what was written.

misread-nothing = No length is written. Write it with its unit, such as 51.6 mm or 2 1/32 in.
misread-no-length = “{ $typed }” is not a length. Write a number and its unit, such as 51.6 mm or 2 1/32 in.
misread-thousands = “{ $typed }” may mean two things. Leave out marks between thousands, or write the decimals as 1.2.
misread-metric-fraction = “{ $typed }” is a fraction, and millimetres have none. If it is in inches, write so: 2 1/32 in.
misread-not-above-zero = “{ $typed }” is not above zero, and a size on a machine is. Write what the tool shows.
misread-too-long = “{ $typed }” is longer than 100 m. Check the number and its unit.
misread-plus-minus = In “{ $typed }” the ± is below zero or above the length itself. Write how far the reading may be off, such as ± 0.5.

identify-candidate = { $item }, { $port }: { $likelihood }
identify-measured = { $count ->
    [one] { $count } measured dimension agrees with what is stated.
   *[other] { $count } measured dimensions agree with what is stated.
}
identify-measured-not = What was measured differs from what is stated by more than both may be off.
identify-bears = It bears the number that was read.
identify-bears-not = It bears another number.
identify-counts = It has as many holes or points.
identify-counts-not = It has another number of holes or points.
identify-more = { $count ->
    [one] { $count } more is less likely.
   *[other] { $count } more are less likely.
}
identify-none = Nothing in this catalogue states what was observed.
identify-next-measure = Measure next: { $what }. { $first } speaks for { $a }, { $second } for { $b }.
identify-next-read = Read the part number next. { $first } speaks for { $a }, { $second } for { $b }.
identify-next-count = Count the holes or points next. { $first } speak for { $a }, { $second } for { $b }.
