### The table of every machine with every implement, on paper and on a page of its own.

matrix-title = Ce qui va avec quoi
matrix-edition = Édition { $edition }
matrix-lead = Pour chaque machine avec chaque outil : la meilleure réponse que donnent un châssis de montage et un siège quelconques, et pourquoi elle n’est pas meilleure.
matrix-legend = Ce que veulent dire les réponses
matrix-with = avec { $frame }, { $seat }
matrix-nearest = au plus près : { $frame }, { $seat }
matrix-none = Le catalogue n’a aucun siège pour compléter un ensemble.
matrix-progress = { $done } machines sur { $machines }, encore { $seconds } s environ
