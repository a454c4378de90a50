### Getippte Längen, die nicht gelten können, jeweils mit dem, was stattdessen zu schreiben ist. $typed ist das Geschriebene.

misread-nothing = Es steht keine Länge da. Schreiben Sie sie mit ihrer Einheit, etwa 51,6 mm oder 2 1/32 in.
misread-no-length = „{ $typed }“ ist keine Länge. Schreiben Sie eine Zahl und ihre Einheit, etwa 51,6 mm oder 2 1/32 in.
misread-thousands = „{ $typed }“ kann zweierlei heißen. Lassen Sie Zeichen zwischen Tausendern weg oder schreiben Sie Dezimalen wie 1,2.
misread-metric-fraction = „{ $typed }“ ist ein Bruch, und Millimeter haben keine. Sind es Zoll, schreiben Sie es dazu: 2 1/32 in.
misread-not-above-zero = „{ $typed }“ liegt nicht über null, ein Maß an der Maschine aber schon. Schreiben Sie, was das Messgerät zeigt.
misread-too-long = „{ $typed }“ ist länger als 100 m. Prüfen Sie Zahl und Einheit.
misread-plus-minus = In „{ $typed }“ liegt das ± unter null oder über der Länge selbst. Schreiben Sie, wie weit die Ablesung abweichen kann, etwa ± 0,5.

identify-candidate = { $item }, { $port }: { $likelihood }
identify-measured = { $count ->
    [one] { $count } gemessenes Maß stimmt mit den Angaben überein.
   *[other] { $count } gemessene Maße stimmen mit den Angaben überein.
}
identify-measured-not = Das Gemessene weicht stärker von den Angaben ab, als beide ungenau sein können.
identify-bears = Es trägt die abgelesene Nummer.
identify-bears-not = Es trägt eine andere Nummer.
identify-counts = Es hat ebenso viele Löcher oder Punkte.
identify-counts-not = Es hat eine andere Zahl von Löchern oder Punkten.
identify-more = { $count ->
    [one] { $count } weiteres ist weniger wahrscheinlich.
   *[other] { $count } weitere sind weniger wahrscheinlich.
}
identify-none = Nichts in diesem Katalog gibt an, was beobachtet wurde.
identify-next-measure = Als Nächstes messen: { $what }. { $first } spricht für { $a }, { $second } für { $b }.
identify-next-read = Als Nächstes die Teilenummer ablesen. { $first } spricht für { $a }, { $second } für { $b }.
identify-next-count = Als Nächstes Löcher oder Punkte zählen. { $first } sprechen für { $a }, { $second } für { $b }.
