### What is written otherwise in the United States.

bearer-front-tyre = One front tire
bearer-rear-tyre = One rear tire
hole-to-hole = hole { $a } to hole { $b }, center to center
point-to-point = point { $a } to point { $b }, center to center
value-centre-of-gravity = center of gravity
value-drop = hook center down to latch pin
value-nose-load = allowed tongue weight
value-overall-radius = overall tire radius
value-rated-nose = greatest tongue weight of the coupling
value-setback = hook center to plate
value-static-loaded-radius = static loaded tire radius
value-tyre-rating = rated load of a tire
value-tyre-width = tire width
rotation-counter-clockwise = counterclockwise
remedy-price-elsewhere = its price is not in this catalog
come-by-elsewhere = not in this catalog
file-warned = { $file }: { $warnings ->
    [one] { $warnings } warning
   *[other] { $warnings } warnings
}; the catalog can be used
file-unusable = { $errors ->
    [one] The catalog has { $errors } mistake and cannot be used; “{ $command }” shows it with its mend.
   *[other] The catalog has { $errors } mistakes and cannot be used; “{ $command }” shows all with their mends.
}
date = { $month } { $day }, { $year }
