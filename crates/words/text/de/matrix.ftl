### The table of every machine with every implement, on paper and on a page of its own.

matrix-title = Was woran passt
matrix-edition = Ausgabe { $edition }
matrix-lead = Für jede Maschine mit jedem Anbaugerät: die beste Antwort, die ein Anbaurahmen und ein Sitz ergeben, und warum sie nicht besser ist.
matrix-legend = Was die Antworten bedeuten
matrix-with = mit { $frame }, { $seat }
matrix-nearest = am nächsten: { $frame }, { $seat }
matrix-none = Der Katalog hat keinen Sitz, mit dem eine Kombination vollständig wäre.
matrix-progress = { $done } von { $machines } Maschinen fertig, noch etwa { $seconds } s

coverage-answers = Maschinen mit Anbaugeräten: { $count }; davon bestenfalls „erst prüfen“: { $open }. Was sie aufhält, und wie viele jeweils:
coverage-sets = Aufgeführte Kombinationen, die nicht einfach in Ordnung sind: { $count }
coverage-lists = Überschriften von Teilelisten, die kein Anschluss ihres Gegenstands als Namen hat, so dass sie keine Verbindung belegen: { $count }
diff-rows = Zeilen, die sich unterscheiden: { $count }
diff-added = neu
diff-removed = entfernt
diff-changed = geändert: { $fields }
diff-answers = Maschinen mit Anbaugeräten, deren beste Antwort sich unterscheidet: { $count }
