verdict-bolts-up = Passt
    .meaning = Lässt sich anbauen und einsetzen, wie es ist.
verdict-bolts-up-with-work = Passt mit Nacharbeit
    .meaning = Lässt sich anbauen, sobald die genannten Teile montiert oder die genannten Arbeiten erledigt sind.
verdict-check-first = Erst prüfen
    .meaning = Bevor jemand es sagen kann, muss etwas angesehen oder gemessen werden.
verdict-wont-mount = Passt nicht
    .meaning = So lässt es sich nicht anbauen oder darf nicht eingesetzt werden.

question-fit = Anbau
question-work = Arbeit
question-travel = Transport
question-site = Einsatzort
question-open = noch nicht entschieden
question-in-order = { $count ->
    [one] { $count } Punkt in Ordnung
   *[other] { $count } Punkte in Ordnung
}
question-tightest = { $tightest } ({ $count })
headline-open = Noch nicht entschieden
headline-at-best = Bestenfalls: { $verdict }

fit-yes = Passt
fit-with = { $what ->
    [none] Passt mit Nacharbeit
   *[other] Passt mit Nacharbeit: { $what }
}
fit-check = Erst prüfen
fit-no = Passt nicht
work-yes = Einsetzbar
work-with = { $what ->
    [none] Einsetzbar mit Änderungen
   *[other] Einsetzbar mit { $what }
}
work-check = Erst prüfen
work-no = Nicht einsetzbar
travel-yes = Verladbar
travel-with = { $what ->
    [none] Verladbar mit Änderungen
   *[other] Verladbar mit { $what }
}
travel-check = Erst prüfen
travel-no = Nicht verladbar
site-yes = Kommt hinein
site-with = { $what ->
    [none] Kommt hinein mit Änderungen
   *[other] Kommt hinein mit { $what }
}
site-check = Erst prüfen
site-no = Kommt nicht hinein

finding-in-order = In Ordnung
finding-with-work = Zu tun
finding-check = Erst prüfen
finding-no = Geht nicht

standing-listed = In der Liste
    .meaning = Die Herstellerliste führt diese Kombination auf.
standing-off-guide = Nicht in der Liste
    .meaning = Die Herstellerliste führt diese Kombination nicht auf. Das Ergebnis ist hier aus Teilen und Maßen ermittelt.

grade-listed = Herstellerliste
    .meaning = Der Hersteller führt beide zusammen auf.
grade-same-part = gleiches Teil
    .meaning = Dieselbe Teilenummer stellt die Verbindung in einer Kombination her, die der Hersteller aufführt.
grade-replaced-part = ersetztes Teil
    .meaning = Eine Teileersetzung verbindet das Teil mit einem aus einer Kombination, die der Hersteller aufführt.
grade-measured = gemessen
    .meaning = Beruht auf Messungen am Gerät.
grade-drawing = Zeichnung
    .meaning = Beruht auf Zeichnungen oder Unterlagen, nicht auf dem Gerät selbst.
grade-none = kein Beleg
    .meaning = Noch ist nichts bekannt.

role-axle-anchor = Achsbefestigung
role-front-anchor = vordere Befestigung
role-rack = Geräteaufnahme
role-hitch = Dreipunkt
role-seat-deck = Sitzkonsole
role-power-take-off = Zapfwelle
role-pressure = Druckleitung
role-return = Rücklaufleitung
role-case-drain = Leckölleitung
role-wiring = Elektrik

kind-machine = Maschine
kind-frame = Rahmen
kind-seat = Sitz
kind-implement = Anbaugerät
kind-adapter = Adapter
kind-equipment = Ausrüstung

tool-caliper = Messschieber
tool-tape = Bandmaß
tool-photograph = Foto

caution-planning-aid = Fit-up ist eine Planungshilfe. Die Betriebsanleitungen des Herstellers, die zulässigen Lasten, das örtliche Recht und das Urteil einer Fachwerkstatt gehen vor.
    .title = Planungshilfe
caution-arm-on-hitch = Ein Heckbagger (Anbaubagger) nur am Dreipunkt, ohne Rahmen, kann nach oben und über den Fahrer gedrückt werden und ihn quetschen. Graben Sie so nicht. Nötig ist ein Rahmen oder die Verstrebung des Herstellers; was von beiden, sagt die Anleitung.
    .title = Heckbagger am Dreipunkt
caution-roll-over-bar-up = Arbeiten Sie mit aufgestelltem Überrollbügel und angelegtem Gurt. Klappen Sie den Bügel nur zum Durchfahren, für Transport oder Abstellen, soweit die Anleitung der Maschine es erlaubt, und stellen Sie ihn sofort wieder auf. Legen Sie bei geklapptem Bügel keinen Gurt an.
    .title = Überrollbügel aufgestellt
caution-drilling-or-welding = Ob an einem Rahmen, am Überrollschutz oder an der Maschine selbst (Achsgehäuse, Getriebe, Kabine) gebohrt oder geschweißt werden darf, entscheidet der Hersteller oder ein Ingenieur. Fragen Sie vor dem Bohren oder Schweißen.
    .title = Bohren und Schweißen
caution-light-front-axle = Mit zu leichter Vorderachse lässt sich nicht sicher lenken und bremsen. Beachten Sie die Anleitung der Maschine zu Ballast und zulässigen Achslasten.
    .title = Leichte Vorderachse
caution-hydraulic-pressure = Hydrauliköl unter Druck kann in die Haut eindringen. Suchen Sie Lecks nie mit der Hand; bei einer Verletzung, auch einer kleinen, sofort zum Arzt. Stellen Sie den Motor ab, senken Sie alles ab und lassen Sie den Druck ab, bevor Sie eine Hydraulikkupplung anfassen.
    .title = Hydraulikdruck
caution-raised-parts = Arbeiten Sie nicht unter angehobenen Teilen, die nur die Hydraulik hält. Stützen Sie sie ab, wie es die Anleitung zeigt.
    .title = Angehobene Teile
caution-slopes = Ein statischer Kippwinkel ist keine sichere Hangneigung. Unebenheiten, Bremsen, Kurven und gehobene Last kippen eine Maschine viel früher; es gelten die Grenzen der Anleitung.
    .title = Hänge
caution-excavations = Lassen Sie vor dem Graben Kabel und Leitungen im Boden orten. Grabenwände sind nach den örtlichen Vorschriften zu verbauen oder abzuböschen.
    .title = Graben
caution-loading-ramps = Rampen müssen für das Gewicht der Maschine mit Anbaugerät zugelassen, am Anhänger befestigt und trocken sein. Beachten Sie die Anleitungen von Rampe und Anhänger.
    .title = Auffahrrampen
caution-tie-down = Zurren Sie die Maschine mit Ketten oder Gurten ausreichender zulässiger Zurrkraft an den Punkten fest, die ihre Anleitung nennt, wo sie es verlangt, an allen vier Ecken. Mindestzahl und Festigkeit regelt das örtliche Recht.
    .title = Ladungssicherung
caution-road-limits = Grenzen für Masse, Breite, Länge und Tempo auf der Straße sind von Ort zu Ort verschieden. Prüfen Sie vor der Fahrt die örtlichen.
    .title = Straßenverkehr
caution-rotating-shafts = Eine drehende Welle zieht Kleidung, Haare und Gliedmaßen im Nu ein. Betreiben Sie Gelenkwelle und Anbaugerät nur, wenn alle Schutzvorrichtungen angebracht und heil sind. Stellen Sie den Motor ab, ziehen Sie den Schlüssel und warten Sie, bis alles stillsteht, bevor Sie herangehen.
    .title = Drehende Wellen und ihr Schutz
caution-hoisting = Solange das Anbaugerät am Hebezeug hängt, steht niemand darunter oder daneben. Nehmen Sie Hebezeug und Anschlagmittel, die für sein Gewicht zugelassen sind, an den Anschlagpunkten, die seine Anleitung nennt. Stützen Sie Anbaugerät und Maschine ab, bevor Sie dazwischengreifen und bevor Sie einen Bolzen oder eine Schraube einsetzen.
    .title = Heben und Abstützen

shape-rear-tyre = Hinterreifen
shape-front-tyre = Vorderreifen
