problem-line-column = Zeile { $line }, Spalte { $column }
problem-cell = { $table }, Zeile { $row }{ $column ->
    [none] {""}
   *[other] , Spalte { $column }
}
problem-suggestion = Ist „{ $suggestion }“ gemeint?

sort-value = ein Wert
sort-null = null
sort-flag = true oder false
sort-number = eine Zahl
sort-whole-number = eine ganze Zahl
sort-number-or-stated = eine Zahl oder ein Datensatz mit value, plus_minus und source
sort-text = Text
sort-list = eine Liste
sort-record = ein Datensatz
sort-word-or-record = ein Wort oder ein Datensatz
sort-field-name = ein Feldname in doppelten Anführungszeichen
sort-colon = ein Doppelpunkt
sort-comma-or-close-bracket = ein Komma oder ]
sort-comma-or-close-brace = ein Komma oder {"}"}
sort-end-of-file = das Ende der Datei

problem-not-text = Das ist kein UTF-8-Text: Byte { $byte } gehört zu keinem Zeichen.
    .mend = Die Datei als UTF-8 speichern.
problem-syntax = Das ist kein JSON; gefunden: { $found ->
    [end-of-file] das Ende der Datei
   *[other] „{ $found }“
}, erwartet: { $expected }.
    .mend = Hier die Satzzeichen berichtigen; JSON kennt keine Kommentare und kein Komma vor einer schließenden Klammer.
problem-too-large = Die Datei hat { $found } Bytes; gelesen werden höchstens { $greatest }.
    .mend = Den Katalog auf mehrere aufteilen.
problem-too-many-values = Die Datei enthält mehr als { $greatest } Werte.
    .mend = Den Katalog auf mehrere aufteilen.
problem-too-deep = Listen und Datensätze sind mehr als { $greatest } Stufen tief verschachtelt.
    .mend = So tief braucht es kein Katalog: mit der Beschreibung des Formats vergleichen.
problem-more-problems = Es gibt weitere Fehler; gezeigt sind die ersten { $shown }.
    .mend = Zuerst diese beheben.
problem-missing-format = Die Datei sagt nicht, welches Format sie hat.
    .mend = Mit "format": { $expected } beginnen.
problem-newer-format = Die Datei hat Format { $found }, neuer als Format { $expected }, das dieses Programm liest.
    .mend = Eine neuere Version dieses Programms verwenden.
problem-unknown-format = Ein Format „{ $found }“ gibt es nicht.
    .mend = Das Format ist die Zahl { $expected }.
problem-unknown-table = Eine Tabelle „{ $found }“ gibt es im Format nicht.
    .mend = Den Namen berichtigen, oder ihn mit # und einem Leerzeichen beginnen, wenn es ein eigenes Blatt ist.
problem-missing-table = Die Tabelle „{ $table }“ fehlt.
    .mend = Die Tabelle ergänzen.
problem-duplicate-table = „{ $found }“ ist ein zweites Blatt für eine Tabelle, die schon da ist; gelesen wurde nichts davon.
    .mend = Seine Zeilen ins erste Blatt setzen, oder den Namen mit # und einem Leerzeichen beginnen.
problem-unknown-column = Die Tabelle hat keine Spalte „{ $found }“.
    .mend = Die Überschrift berichtigen, oder sie mit # und einem Leerzeichen beginnen, wenn es eine eigene Spalte ist.
problem-no-heading = „{ $found }“ steht in einer Spalte ohne Überschrift und fiele weg.
    .mend = Die Überschrift in Zeile 1 schreiben; „remarks“, wenn es eine eigene Notiz ist.
problem-unit-in-heading = Die Überschrift sagt { $found }, der Kopf aber { $expected }.
    .mend = Alle Zahlen in { $expected } schreiben und so alle Überschriften; oder den Kopf berichtigen.
problem-merged-cells = Die Zellen { $found } sind verbunden: nur die erste davon enthält etwas.
    .mend = Die Verbindung aufheben und jede Zelle ausfüllen.
problem-hidden-rows = { $last ->
    [none] Zeile { $first } ist ausgeblendet und wird
   *[other] Die Zeilen { $first } bis { $last } sind ausgeblendet und werden
} trotzdem gelesen.
    .mend = Die Zeilen einblenden und löschen, was nicht mehr gilt.
problem-cell-error = Die Zelle enthält den Fehler { $found }, keinen Wert.
    .mend = Die Formel berichtigen oder den Wert selbst schreiben.
problem-formula-without-value = Die Zelle enthält eine Formel, aber nicht deren Wert.
    .mend = Die Arbeitsmappe in einer Tabellenkalkulation öffnen, rechnen lassen und speichern; oder den Wert selbst schreiben.
problem-date-instead = Die Zelle enthält das Datum { $found }, das die Tabellenkalkulation aus der Eingabe gemacht hat.
    .mend = Der Zelle das Format „Text“ geben und neu eingeben.
problem-blanks-around = „{ $found }“ hat davor oder dahinter Leerzeichen.
    .mend = Die Leerzeichen entfernen.
problem-comma-in-list = „{ $found }“ hat ein Komma, wo eine Liste gelesen wird: es wäre ein einziger Eintrag.
    .mend = Die Einträge durch Semikolon trennen; ein Eintrag mit eigenem Komma kommt in gerade Anführungszeichen.

problem-wrong-type = Gefunden: { $found }, erwartet: { $expected }.
    .mend = Einen Wert der erwarteten Art schreiben oder ein entbehrliches Feld weglassen.
problem-not-number = „{ $found }“ ist keine Zahl.
    .mend = Nur die Zahl schreiben, mit Dezimalpunkt und ohne Tausenderzeichen; weglassen, wenn sie nicht bekannt ist.
problem-number-with-unit = „{ $found }“ hat „{ $unit }“ neben der Zahl.
    .mend = Nur { $number } schreiben, wenn das in der Einheit des Kopfes ist; sonst erst umrechnen.
problem-not-flag = „{ $found }“ ist weder ja noch nein.
    .mend = In einer Tabelle yes oder no schreiben, in JSON true oder false; weglassen, wenn es nicht bekannt ist.
problem-unknown-field = Ein Feld „{ $found }“ gibt es hier nicht.
    .mend = Möglich sind: { $expected }.
problem-missing-field = Das Feld „{ $field }“ fehlt.
    .mend = Das Feld ergänzen.
problem-duplicate-field = Das Feld „{ $field }“ steht zweimal da.
    .mend = Eines davon entfernen.
problem-unknown-word = „{ $found }“ gehört nicht zu den Wörtern, die hier stehen dürfen.
    .mend = Möglich sind: { $expected }.
problem-not-exactly-one = { $found ->
    [none] Hier steht nichts; verlangt ist genau eines.
   *[other] Hier stehen mehrere ({ $found }); verlangt ist genau eines.
}
    .mend = Möglich sind: { $expected }.
problem-wrong-count = Werte in der Liste: { $found }; verlangt: { $expected }.
    .mend = So viele Werte schreiben, wie verlangt sind.
problem-empty-list = Die Liste ist leer; sie braucht mindestens einen Eintrag.
    .mend = Einen Eintrag ergänzen oder eine entbehrliche Liste weglassen.
problem-number-not-finite = { $found } ist keine endliche Zahl.
    .mend = Die Zahl berichtigen oder das Feld weglassen, wenn sie nicht bekannt ist.
problem-number-out-of-range = { $found } liegt außerhalb des Bereichs von { $least } bis { $greatest }.
    .mend = Die Zahl berichtigen oder das Feld weglassen, wenn sie nicht bekannt ist.
problem-number-not-whole = { $found } ist keine ganze Zahl.
    .mend = Die Zahl berichtigen oder das Feld weglassen, wenn sie nicht bekannt ist.
problem-unsafe-character = Der Text enthält das Zeichen { $found }; es ist unsichtbar oder kehrt die Schreibrichtung um.
    .mend = Das Zeichen entfernen.
problem-text-too-long = Der Text hat { $found } Bytes; erlaubt sind höchstens { $greatest }.
    .mend = Den Text kürzen.
problem-blank-text = Der Text ist leer.
    .mend = Den Text ausfüllen.
problem-empty-record = Der Datensatz sagt nichts aus.
    .mend = Weglassen.
problem-unknown-unit = „{ $found }“ ist hier keine bekannte Einheit.
    .mend = Möglich sind: { $expected }.
problem-unknown-currency = „{ $found }“ ist kein Währungscode aus drei Großbuchstaben.
    .mend = Den Code nach ISO 4217 schreiben, etwa USD, EUR oder GBP.
problem-bad-date = „{ $found }“ ist kein Datum wie 2014-02-01.
    .mend = Jahr, Monat und Tag mit Bindestrichen schreiben.

problem-bad-id = „{ $found }“ ist keine Kennung: Kleinbuchstaben, Ziffern und Bindestriche.
    .mend = Anders benennen.
problem-reserved-id = Die Kennung „{ $found }“ hat in der Herstellerliste eine eigene Bedeutung.
    .mend = Anders benennen.
problem-duplicate-id = Die Kennung „{ $found }“ ist schon vergeben an { $other }.
    .mend = Anders benennen.
problem-duplicate-part = Die Teilenummer „{ $found }“ ist schon vergeben an { $other }.
    .mend = Für jede Teilenummer nur eine Zeile behalten.
problem-duplicate-port = Eine andere Anschlussstelle dieses Artikels heißt „{ $found }“.
    .mend = Anders benennen.
problem-unknown-reference = „{ $found }“ steht nicht { $table ->
    [items] in den Artikeltabellen
   *[other] in der Tabelle „{ $table }“
}.
    .mend = Die Schreibweise berichtigen oder die Zeile ergänzen.
problem-unknown-part = Die Teilenummer „{ $found }“ steht nicht in der Teiletabelle.
    .mend = Die Schreibweise berichtigen oder die Zeile ergänzen.
problem-named-twice = „{ $found }“ steht zweimal in dieser Liste.
    .mend = Nur einmal stehen lassen.
problem-listed-with-itself = Ein Artikel ist mit sich selbst aufgeführt.
    .mend = Die Artikel nennen, mit denen er aufgeführt ist, oder den Eintrag weglassen.

problem-mass-not-positive = Eine Masse von { $found } ist nicht möglich: Sie muss über null liegen.
    .mend = Die Zahl berichtigen oder das Feld weglassen, wenn sie nicht bekannt ist.
problem-not-positive = { $found } ist nicht möglich: Der Wert muss über null liegen.
    .mend = Die Zahl berichtigen oder das Feld weglassen, wenn sie nicht bekannt ist.
problem-negative = { $found } ist nicht möglich: Der Wert darf nicht unter null liegen.
    .mend = Die Zahl berichtigen oder das Feld weglassen, wenn sie nicht bekannt ist.
problem-range-upside-down = Der Bereich ist verkehrt herum: Er endet bei { $greatest }, unter seinem Anfang bei { $least }.
    .mend = Beide vertauschen oder den falschen Wert berichtigen.
problem-outside-own-range = { $found } liegt außerhalb des eigenen Bereichs von { $least } bis { $greatest }.
    .mend = Die Zahl berichtigen oder das Feld weglassen, wenn sie nicht bekannt ist.
problem-share-out-of-range = Ein Anteil von { $found } ist nicht möglich: Er liegt zwischen 0 und 1.
    .mend = Die Zahl berichtigen oder das Feld weglassen, wenn sie nicht bekannt ist.
problem-folded-seat-not-outlined = Der Sitz klappt, aber nichts zeigt seinen Umriss geklappt.
    .mend = Formen mit der Rolle seat_folded ergänzen, die ihn geklappt zeigen, oder angeben, dass er nicht klappt.
problem-folded-seat-not-stated = Ein geklappter Sitz ist umrissen, aber nichts sagt, dass dieser Sitz klappt.
    .mend = Angeben, dass der Sitz klappt, oder die Formen mit der Rolle seat_folded entfernen.
problem-own-seat-not-there = Ein eigener Sitz ist beschrieben, aber nichts sagt, dass das Anbaugerät einen mitbringt.
    .mend = own_seat auf true setzen oder dies weglassen.
problem-price-too-fine = Der Preis { $found } ist feiner als Hundertstel und wird gerundet.
    .mend = Selbst runden.
problem-half-range-too-great = Die halbe Spanne { $found } ist nicht kleiner als der Wert { $value }, zu dem sie gehört.
    .mend = Angeben, wie weit der wahre Wert vom genannten abweichen kann, in derselben Einheit.
problem-unlikely-size = { $found } kann hier kaum stimmen: üblich ist { $least } bis { $greatest }.
    .mend = Prüfen, ob die Zahl in der Einheit des Kopfs steht und ob keine Ziffer und kein Komma verrutscht ist.
problem-loads-not-mass = Die Achsen tragen zusammen { $loads }, die Masse ist aber { $found }.
    .mend = Nachwiegen, oder die Masse oder eine der Leerlasten berichtigen.
problem-load-above-rating = Die Achse trägt schon leer { $found }, mehr als die zulässigen { $rated }.
    .mend = Die Last oder die zulässige Last berichtigen.
problem-wheels-overlap = Die Räder stehen ineinander: Halbmesser von { $rear } und { $front } passen nicht in einen Radstand von { $found }.
    .mend = Den falschen Halbmesser berichtigen; vielleicht steht ein Durchmesser da.
problem-tyre-above-machine = Das Rad ist { $found } hoch, höher als alles, was von der Maschine gezeichnet ist ({ $top }).
    .mend = Den Halbmesser berichtigen; vielleicht steht ein Durchmesser da.
problem-parts-outweigh-whole = Der Arm wiegt { $found }, seine Glieder allein aber { $parts }.
    .mend = Die Masse berichtigen: die Einheit des Kopfes und das Dezimalzeichen prüfen.
problem-far-from-its-kind = { $found } liegt weit von seinesgleichen: in deren Mitte steht { $usual }.
    .mend = Prüfen, ob die Zahl in der Einheit des Kopfes steht und keine Ziffer und kein Dezimalzeichen verrutscht ist.
problem-port-far-away = Der Anschluss liegt bei x = { $found }, weit weg von der Maschine.
    .mend = Die Lage berichtigen: x zählt von der Hinterachse nach vorn, in der Einheit des Kopfes.
problem-unlikely-year = { $found } ist kaum ein Baujahr.
    .mend = Das Jahr berichtigen, oder es weglassen, wenn es nicht bekannt ist.
problem-future-date = Das Datum { $found } liegt in der Zukunft: heute ist { $today }.
    .mend = Das Datum berichtigen.
problem-long-label = Die Bezeichnung hat { $found } Zeichen und passt nicht dorthin, wo Bezeichnungen stehen.
    .mend = Auf { $greatest } kürzen, den Rest in die Notiz setzen.
problem-same-label = „{ $found }“ heißt auch { $other }, und weder Baujahre noch Seriennummern noch Baureihe unterscheiden die beiden.
    .mend = Jeder Zeile eine eigene Bezeichnung geben, oder angeben, was sie unterscheidet.
problem-rare-word = „{ $found }“ steht nur hier.
    .mend = Die Schreibung berichtigen, wenn ein anderes Wort gemeint ist.
problem-similar-part = „{ $found }“ und „{ $like }“ ({ $other }) sind bis auf die Schreibweise dieselbe Nummer.
    .mend = Eine Zeile behalten und die Nummer überall gleich schreiben.
problem-line-twice = Die Zeile steht schon bei { $other }.
    .mend = Eine entfernen, oder die Position berichtigen.
problem-sleeve-inside-out = Der Innendurchmesser { $inner } der Hülse ist nicht kleiner als ihr Außendurchmesser { $outer }.
    .mend = Die beiden Durchmesser vertauschen.

problem-no-holes = Das Lochbild hat keine Löcher.
    .mend = Ergänzen oder die Anschlussstelle weglassen, wenn sie nicht bekannt sind.
problem-too-many-holes = Das Lochbild hat { $found } Löcher; erlaubt sind höchstens { $greatest }.
    .mend = Löcher weglassen, die keine Schraube der Verbindung nutzt.
problem-holes-coincide = Die Löcher { $first } und { $second } liegen an derselben Stelle.
    .mend = Eines entfernen oder seine Lage berichtigen.
problem-holes-overlap = Die Löcher { $first } und { $second } liegen { $apart } auseinander und schneiden sich.
    .mend = Die Lage des einen berichtigen, oder aus beiden ein Langloch machen.
problem-bolt-above-hole = Eine Schraube von { $bolt } geht nicht durch ein Loch von { $found }.
    .mend = Das Loch oder die Schraube des Anschlusses berichtigen.
problem-holes-off-reference = Alle Löcher liegen weit vom Bezugspunkt des Anschlusses, ihre Mitte bei u = { $u }, v = { $v }.
    .mend = u und v von dem Punkt aus zählen, den die Lage nennt, oder die Lage zu den Löchern verlegen.
problem-more-bolts-than-holes = Mehr Schrauben verlangt als Löcher vorhanden: { $required } Schrauben, { $holes } Löcher.
    .mend = Die Anzahl berichtigen oder die Löcher ergänzen.
problem-thread-not-read = { $found } ist kein Gewinde, das hier bekannt ist.
    .mend = Schreiben Sie es als M12, M12x1.25 oder 1/2-13 UNC.
problem-no-points = Die Anschlussstelle mit Bolzen hat keine Punkte.
    .mend = Ergänzen oder die Anschlussstelle weglassen, wenn sie nicht bekannt sind.
problem-pose-not-square = Eine Fläche mit Blickrichtung „{ $faces }“ kann nicht „{ $up }“ als Richtung nach oben haben.
    .mend = Eine Richtung nach oben wählen, die im rechten Winkel zur Blickrichtung der Fläche steht.
problem-pose-missing = Die Anschlussstelle sagt nicht, wo sie liegt; nach ihr lässt sich nichts anordnen.
    .mend = Die Lage (pose) ergänzen.
problem-looks-away = Der Anschluss ({ $role }) schaut nach { $found }, weg von dem, was er treffen soll.
    .mend = Ihn nach { $expected } schauen lassen; von dort aus sind seine Löcher gesehen.
problem-kind-not-of-role = Eine Anschlussstelle der Art „{ $kind }“ kann nicht als „{ $role }“ dienen.
    .mend = Möglich sind: { $expected }.
problem-machine-carried = Eine Maschine kann nicht die getragene Seite sein.
    .mend = Als Ende (end) der Anschlussstelle "carrier" eintragen.
problem-adapter-leads-nowhere = Der Adapter führt nicht von einer Anschlussstelle zu einer anderen.
    .mend = Ihm eine getragene und eine tragende Anschlussstelle geben oder eine Hülse.
problem-mount-without-port = Das Anbaugerät hat keine Anschlussstelle, an der es getragen wird ({ $mount }).
    .mend = Eine getragene Anschlussstelle dieser Rolle ergänzen oder den Anbau (mount) berichtigen.
problem-frame-without-port = Der Rahmen hat keinen Anschluss „{ $role }“ ({ $end }), den jeder Rahmen braucht.
    .mend = Den Anschluss ergänzen; mit dem, was bekannt ist, wenn nicht alles es ist.
problem-equipment-for-nothing = Die Ausrüstung ist für keine Maschine.
    .mend = Die Maschinen nennen, für die sie ist.
problem-equipment-blocks-own = Die Ausrüstung sperrt eine Anschlussstelle, die sie selbst mitbringt ({ $port }).
    .mend = Die Anschlussstelle aus einer der beiden Listen nehmen.
problem-equipment-names-nothing = Keine der Maschinen, für die die Ausrüstung ist, hat „{ $found }“.
    .mend = Den Namen berichtigen oder die Maschinen.
problem-equipment-port-taken = Die Ausrüstung bringt eine Anschlussstelle „{ $port }“ mit, die { $machine } schon hat.
    .mend = Der Anschlussstelle einen anderen Namen geben oder die der Maschine sperren.
problem-fitted-not-for-machine = Die Maschine wird mit { $found } verkauft, was nicht für sie ist.
    .mend = Die Maschine bei dieser Ausrüstung ergänzen oder die Ausrüstung hier streichen.
problem-kind-of-no-equipment = Keine Ausrüstung ist von der Art „{ $found }“.
    .mend = Das Wort berichtigen oder Ausrüstung dieser Art ergänzen.

problem-path-unreadable = Die Pfaddaten sind nicht lesbar: „{ $found }“.
    .mend = Die Befehle M L H V C Q A Z verwenden, als ersten ein M.
problem-path-out-of-range = Die Pfaddaten enthalten eine Koordinate über { $greatest } hinaus.
    .mend = Die Koordinate berichtigen.
problem-path-curved = Eine Unterseite besteht aus geraden Strecken; diese hat Bögen.
    .mend = Nur M, L, H, V und Z verwenden.
problem-draws-nothing = Der Pfad von „{ $shape }“ hat keine zwei verschiedenen Punkte und zeichnet nichts.
    .mend = Die Punkte angeben oder die Form weglassen.
problem-outline-crosses-itself = Der Umriss von „{ $shape }“ kreuzt sich selbst bei ({ $x }, { $y }).
    .mend = Die Punkte der Reihe nach um den Umriss ordnen.
problem-outline-too-detailed = Die Umrisse sind ab „{ $shape }“ zu fein, um geprüft zu werden.
    .mend = Mit weniger Punkten zeichnen.
problem-centre-of-gravity-outside = Der Schwerpunkt ({ $x }, { $y }) liegt in der { $view ->
    [side] Seitenansicht
   *[plan] Draufsicht
} außerhalb des Umrisses.
    .mend = Den Schwerpunkt berichtigen oder zeichnen, was am Umriss fehlt.
problem-carrier-without-arm = Die Form „{ $shape }“ bewegt sich mit „{ $carrier }“, aber der Artikel ist kein Heckbagger.
    .mend = Den Heckbagger (arm) ergänzen oder die Form sich mit dem Artikel bewegen lassen.

problem-lineage-circle = Die Teile ersetzen einander im Kreis: { $chain }.
    .mend = Die falsche Teileersetzung entfernen.
problem-lineage-contradictory = Dass { $by } das Teil { $part } ersetzt, ist einmal in beide Richtungen und einmal nur vorwärts eingetragen; der andere Eintrag ist { $other }.
    .mend = Den falschen Eintrag entfernen.
problem-replaced-by-nothing = Das Teil wird durch nichts ersetzt.
    .mend = Nennen, was es ersetzt, oder "replaced" weglassen.

problem-set-names-nothing = Die Kombination nennt keinen Artikel.
    .mend = Mindestens einen Artikel mit seiner Kennung nennen.
problem-duplicate-set = Die Kombination ist schon aufgeführt, bei { $other }.
    .mend = Eines davon entfernen.
problem-bolts-disagree = Die Kombination ist aufgeführt, aber am Anschluss ({ $role }) nennt „{ $a }“ eine Schraube von { $bolt_a } und „{ $b }“ eine von { $bolt_b }.
    .mend = Die falsche Seite berichtigen.
problem-listed-blocked = Die Kombination ist aufgeführt, nach ihren Daten geht sie so aber nicht: { $reason }.
    .mend = Berichtigen, was falsch ist; „fitup coverage“ nennt den Grund ausführlich.
problem-listed-cannot-mate = Die Kombination ist aufgeführt, aber nach den Maßen ihrer Anschlussstellen kann „{ $a }“ das Teil „{ $b }“ nicht tragen ({ $role }).
    .mend = Beide Anschlussstellen mit den Zeichnungen vergleichen; eines der Maße oder die Liste stimmt nicht.
