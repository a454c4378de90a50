### The table of every machine with every implement, on paper and on a page of its own.

matrix-title = Qué va con qué
matrix-edition = Edición { $edition }
matrix-lead = Para cada máquina con cada implemento: la mejor respuesta que dan un bastidor de montaje y un asiento cualesquiera, y por qué no es mejor.
matrix-legend = Qué significan las respuestas
matrix-with = con { $frame }, { $seat }
matrix-nearest = lo más cercano: { $frame }, { $seat }
matrix-none = El catálogo no tiene ningún asiento para completar un conjunto.
matrix-progress = { $done } de { $machines } máquinas, quedan unos { $seconds } s

coverage-answers = Máquinas con aperos: { $count }; de ellas, como mucho «comprobar antes»: { $open }. Qué las retiene, y a cuántas cada cosa:
coverage-sets = Conjuntos de la guía que no están sin más en orden: { $count }
coverage-lists = Encabezados de listas de piezas que no son el nombre de ninguna conexión de su artículo, de modo que no prueban ninguna unión: { $count }
diff-rows = Filas que difieren: { $count }
diff-added = añadida
diff-removed = quitada
diff-changed = cambiado: { $fields }
diff-answers = Máquinas con aperos cuya mejor respuesta difiere: { $count }
