### The table of every machine with every implement, on paper and on a page of its own.

matrix-title = Ce qui va avec quoi
matrix-edition = Édition { $edition }
matrix-lead = Pour chaque machine avec chaque outil : la meilleure réponse que donnent un châssis de montage et un siège quelconques, et pourquoi elle n’est pas meilleure.
matrix-legend = Ce que veulent dire les réponses
matrix-with = avec { $frame }, { $seat }
matrix-nearest = au plus près : { $frame }, { $seat }
matrix-none = Le catalogue n’a aucun siège pour compléter un ensemble.
matrix-progress = { $done } machines sur { $machines }, encore { $seconds } s environ

coverage-answers = Machines avec outils : { $count } ; parmi elles, au mieux « à vérifier » : { $open }. Ce qui les retient, et combien chaque fois :
coverage-sets = Ensembles du guide qui ne sont pas simplement en ordre : { $count }
coverage-lists = En-têtes de listes de pièces qui ne sont le nom d’aucun raccord de leur article, si bien qu’elles ne prouvent aucune jonction : { $count }
diff-rows = Lignes qui diffèrent : { $count }
diff-added = ajoutée
diff-removed = retirée
diff-changed = changé : { $fields }
diff-answers = Machines avec outils dont la meilleure réponse diffère : { $count }
