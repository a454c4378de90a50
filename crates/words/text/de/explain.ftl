same-missing = Es fehlen Angaben zu { $item }: { $missing-name }.{ $risk ->
    [yes] {" "}Schließen Sie das Anbaugerät nicht an, heben und fahren Sie nicht damit, bevor sie bekannt sind.
   *[no] {""}
}
    .workshop = Es fehlen Angaben zu { $item }: { $missing-name }. Ohne sie nicht zu beantworten: { $areas-name }.{ $risk ->
        [yes] {" "}Das Anbaugerät nicht anschließen, nicht heben und nicht damit fahren, bevor sie bekannt sind.
       *[no] {""}
    }

area-loads = Achslasten
area-lift = Heben
area-hydraulics = Hydraulik
area-drive = Antrieb
area-operator = Sitz
area-wiring = Elektrik
area-loading = Verladen
area-site = Einsatzort
area-digging = Graben
area-clearance = Freiräume
area-build = die ganze Zusammenstellung

evidence-listed = { $row ->
    [none] Beleg: vom Hersteller zusammen aufgeführt, außerhalb der Liste.
   *[other] Beleg: Herstellerliste, Zeile { $row }.
}
evidence-same-part = Beleg: gleiches Teil wie in der aufgeführten Kombination „{ $witness }“ + „{ $witness-other }“{ $row ->
    [none] .
   *[other] {""} (Zeile { $row } der Liste).
}
evidence-replaced-part = Beleg: ersetztes Teil, ausgehend von der aufgeführten Kombination „{ $witness }“ + „{ $witness-other }“{ $row ->
    [none] .
   *[other] {""} (Zeile { $row } der Liste).
}
evidence-measured = Beleg: gemessen mit { $tools-name }.
evidence-drawing = Beleg: Zeichnung.
evidence-none = Beleg: noch keiner.
evidence-stated = Beleg: Unterlagen des Herstellers.
evidence-looked = Beleg: am Gerät nachgesehen.
evidence-read = Am Gerät abgelesen: { $item }, { $port }: { $parts }{ $by ->
    [none] {""}
   *[other] , von { $by }
}{ $when ->
    [none] .
   *[other] , { $when }.
}

explain-rest = { $count ->
    [one] { $count } weiterer Punkt ist in Ordnung.
   *[other] { $count } weitere Punkte sind in Ordnung.
}
explain-nothing = Noch ist nichts gewählt, das sich beurteilen lässt.

chain-same = { $item } hat an dieser Verbindung { $parts }, genau wie { $stands-for }.
chain-replaced = { $item } hat an dieser Verbindung { $parts } und zählt deshalb wie { $stands-for }:
step-forward = { $new } ersetzt { $old } { $ways ->
    [both] (jedes passt anstelle des anderen).
   *[forward] (das neue Teil passt anstelle des alten, nicht umgekehrt).
}
step-backward = { $new } ersetzt { $old }, und laut Teileersetzung passt jedes anstelle des anderen.
joint-parts = Teile: { $a-parts } an { $a }; { $b-parts } an { $b }.
no-parts = nicht bekannt

check-compare-parts = Teilenummern vergleichen: { $a }, { $a-port }, mit { $b }, { $b-port }.
check-measure = Messen: { $item }, { $port }, { $value-name }{ $within ->
    [none] .
   *[other] , auf ±{ $within } { $tool ->
        [tape] (ein Bandmaß genügt).
        [caliper] (mit dem Messschieber).
       *[finer] (feiner als ein Messschieber).
    }
}
check-measure-all = Alles messen: { $item }, { $port }: { $value-name }{ $within ->
    [none] .
   *[other] , auf ±{ $within } { $tool ->
        [tape] (ein Bandmaß genügt).
        [caliper] (mit dem Messschieber).
       *[finer] (feiner als ein Messschieber).
    }
}
check-read-parts = Teilenummern ablesen: { $item }, { $port }. Jede davon wäre der Nachweis: { $numbers } (aufgeführt mit { $witness }).
check-read-off = Herausfinden: { $item }, { $port }, { $value-name }.
check-look = Nachsehen, ob vorhanden: { $item }, { $what }.
check-find-out = Herausfinden: { $item }, { $value-name }.
check-ask = Hersteller oder Händler fragen: { $a } mit { $b }.
check-gap = Abstand messen: { $a }, { $a-shape }, bis { $b }, { $b-shape }, wenn beide an ihrem Platz sind; gewünscht sind mindestens { $wanted }.
check-stakes = Könnte { $question } von „{ $now }“ zu „{ $best }“ ändern{ $worst ->
    [none] .
   *[other] {" "}oder zu „{ $worst }“.
}
quoted = „{ $title }“

point-value = { $value-name } (Punkt { $number })
hole-value = Loch { $number }, { $value-name }
hole-to-hole = Loch { $a } bis Loch { $b }, Mitte zu Mitte
point-to-point = Punkt { $a } bis Punkt { $b }, Mitte zu Mitte
hole-named = { $port }, Loch { $number }

value-across = Abstand quer
value-at-x = Lage längs der Maschine
value-at-z = Höhenlage
value-ballast-place = Platz für Ballast
value-beaver-angle = Winkel der Auffahrschräge
value-bolt = Schraubendurchmesser
value-bore = Bohrung
value-cab-rear = Rückwand der Kabine
value-category = Dreipunktkategorie
value-centre-of-gravity = Schwerpunkt
value-console = Lage der Hebel
value-coupling = Abstand von der Anhängekupplung zur Achse
value-deck-height = Höhe der Ladefläche
value-deck-length = Länge der Ladefläche
value-deck-rear = Hinterkante der Ladefläche
value-deck-width = Breite der Ladefläche
value-diameter = Durchmesser
value-drop = Hakenmitte bis Verriegelungsbolzen
value-edge = Abstand der äußersten Löcher vom Rand
value-flow = Ölstrom
value-from-axle-along = vom ersten Loch oder Bolzen der Achsaufnahme bis zum ersten hier, längs der Maschine
value-from-axle-height = Höhe des ersten Lochs oder Bolzens hier über dem ersten der Achsaufnahme
value-front-axle = Vorderachse starr oder pendelnd
value-front-axle-load = Vorderachslast
value-front-bore = vordere Bohrung
value-gap = Gabelweite
value-gate-height = Höhe des Tors
value-gate-width = Breite des Tors
value-greatest-flow = größter zulässiger Ölstrom
value-greatest-power = größte zulässige Zapfwellenleistung
value-greatest-pressure = größter zulässiger Hydraulikdruck
value-ground-load = größte Achslast, die der Boden trägt
value-height = Höhe
value-hitch-stay = ob der Hersteller eine Verstrebung für den Dreipunkt anbietet
value-holes = Schraubenlöcher
value-hydraulic-need = was es von der Hydraulik braucht
value-index-point = Sitzindexpunkt
value-latch = Durchmesser des Verriegelungsbolzens
value-least-flow = kleinster nötiger Ölstrom
value-least-power = kleinste nötige Zapfwellenleistung
value-least-pressure = kleinster nötiger Hydraulikdruck
value-lift = Hubkraft des Krafthebers
value-link-mass = Massen von Ausleger, Stiel und Löffel
value-lower-pin = Unterlenkerbolzen
value-mass = Masse
value-mast = Koppelhöhe
value-metal = Werkstoff der Platte
value-nose-load = zulässige Stützlast
value-outlets = Hydraulikanschlüsse
value-outline = Umriss
value-overall-radius = Außenradius des Reifens
value-own-seat = eigener Sitz
value-pair-width = Breite über die Flächen oder zwischen den Seitenplatten
value-path-turn = ob der Weg rechtwinklig abbiegt
value-path-width = Breite des Wegs
value-plate = Dicke der Platte
value-pose = Lage der Verbindung
value-power = Zapfwellenleistung
value-power-beyond = Druckweiterleitung (Power Beyond)
value-presence-switch = Sitzkontaktschalter
value-pressure = Hydraulikdruck
value-ramp = Rampe
value-rated-axle = zulässige Achslast des Anhängers
value-rated-load = zulässige Achslast
value-rated-nose = größte Stützlast der Kupplung
value-rated-total = zulässiges Gesamtgewicht
value-reach = Reichweite
value-rear-axle-load = Hinterachslast
value-roll-over-bar = Überrollbügel
value-room-behind = nötiger Platz hinter dem Sitz
value-rotation = Drehrichtung der Zapfwelle
value-seat-off = ob der Sitz abgebaut werden kann
value-serials = Seriennummern
value-setback = Hakenmitte bis Anlagefläche
value-shaft-type = Zapfwellenprofil
value-size = Größe
value-span = Unterlenkerabstand
value-speed = Zapfwellendrehzahl
value-spread = Abstand links–rechts
value-standard = Norm
value-static-loaded-radius = statischer Halbmesser des Reifens
value-stations = offen oder Kabine
value-supplier = womit er geliefert wird
value-swivel-radius = Radius, in dem sich der Sitz dreht
value-thread = Gewinde
value-tolerance = Toleranz
value-track = Spurweite
value-transport-width = Breite beim Transport
value-turning-radius = Wenderadius
value-tyre-rating = Tragfähigkeit eines Reifens
value-tyre-width = Reifenbreite
value-u = Lage quer, ab Nullpunkt der Zeichnung
value-upper-pin = Oberlenkerbolzen
value-v = Lage in der Höhe, ab Nullpunkt der Zeichnung
value-wheelbase = Radstand
value-width = Breite

port-kind-bar = Stange
port-kind-bolt-pattern = Schraubenlöcher
port-kind-clevis = Gabel
port-kind-electric = Stecker
port-kind-hook = Haken
port-kind-hook-rack = Haken
port-kind-lug = Lasche
port-kind-pins = Bolzen
port-kind-power-take-off = Zapfwelle
port-kind-seat-base = Sitzfuß
port-kind-three-point = Dreipunkt
port-kind-coupler = Hydraulikkupplung

rotation-clockwise = im Uhrzeigersinn
rotation-counter-clockwise = gegen den Uhrzeigersinn
station-open = offen
station-cab = Kabine
axle-front = vorn
axle-rear = hinten
bearer-front-axle = Vorderachse
bearer-front-tyre = Ein Vorderreifen
bearer-hitch = Kraftheber
bearer-rear-axle = Hinterachse
bearer-rear-tyre = Ein Hinterreifen
limit-de-stvzo-22 = StVZO § 22 Absatz 4, Deutschland
limit-eu-96-53 = Richtlinie 96/53/EG der EU
limit-us-23-cfr-658 = 23 CFR 658.15 der Vereinigten Staaten
limit-us-49-cfr-393-87 = 49 CFR 393.87 der Vereinigten Staaten, ab da kenntlich zu machen

footprint-length = Gesamtlänge
footprint-width = Gesamtbreite
footprint-height = Gesamthöhe
footprint-wheelbase = Radstand
footprint-rear-overhang = Überhang hinten
footprint-front-overhang = Überhang vorn
footprint-ground-clearance = Bodenfreiheit
footprint-departure = Böschungswinkel hinten
footprint-approach = Böschungswinkel vorn
footprint-breakover = Rampenwinkel
footprint-mass = Masse mit Fahrer
footprint-front-load = Vorderachslast
footprint-rear-load = Hinterachslast
footprint-to-buy = Zu kaufen
footprint-work = Werkstattzeit
footprint-items-to-buy = Zu kaufende Teile

remedy-adapter = Dazwischensetzen: { $item }
remedy-seat = { $item } als Sitz nehmen
remedy-frame = { $item } als Rahmen nehmen
remedy-hitch = Am Dreipunkt anhängen
remedy-drill = Die fehlenden Löcher bohren lassen, wenn der Hersteller zustimmt: { $item }, { $port }
remedy-open-up = Die Löcher um { $by } aufbohren lassen, wenn der Hersteller zustimmt: { $item }, { $port }
remedy-driver-seat = { $state ->
    [folded] Zum Arbeiten den Fahrersitz nach vorn klappen
    [slid] Zum Arbeiten den Fahrersitz nach vorn schieben
    [turned] Zum Arbeiten den Fahrersitz umdrehen
    [off] Zum Arbeiten den Fahrersitz abbauen
   *[driving] Den Fahrersitz lassen, wie er ist
}
remedy-rear-seat = { $state ->
    [folded] Zum Fahren den hinteren Sitz umklappen
    [slid] Zum Fahren den hinteren Sitz nach vorn schieben
    [turned] Zum Fahren den hinteren Sitz umdrehen
    [off] Zum Fahren den hinteren Sitz abbauen
   *[driving] Den hinteren Sitz lassen, wie er ist
}
remedy-fold-roll-over-bar = Den Überrollbügel klappen, nur zum Durchfahren, für Transport oder Abstellen, nie zum Arbeiten; sofort wieder aufstellen
remedy-take-off = Abbauen: { $what }
remedy-put-on = Anbauen: { $what }
remedy-ramps = Rampen von { $length } nehmen
remedy-gateway = Eine mindestens { $width } breite Zufahrt nehmen
remedy-path = Einen mindestens { $width } breiten Weg nehmen
remedy-ballast = { $mass } Ballast { $x } vor der Hinterachse anbringen
remedy-ballast-behind = { $mass } Ballast { $x } hinter der Hinterachse anbringen
strip-title = Was ab-, um- und anzubauen ist
strip-stays = Dranlassen: { $what }
strip-own-seat = Eigenen Sitz abbauen: { $item }
strip-fit = { $item } anbauen
strip-hours-unknown = Stunden nicht angegeben
strip-at-least = mindestens { $work }
bolts-title = Schrauben
bolts-joint = { $carrier } + { $carried } ({ $role })
bolts-number = { $number } × { $thread }
bolts-thread = { $thread }, Anzahl nach Handbuch
bolts-number-alone = { $number } Schrauben, welche: siehe Handbuch
bolts-as-in-manual = welche Schrauben und wie viele: siehe Handbuch
bolts-on-both-sides = ebenso viele auf der anderen Seite der Maschine
bolts-length = { $length } lang für { $grip } Blech
bolts-grip = für { $grip } Blech, Länge: siehe Handbuch
bolts-length-unknown = Länge: siehe Handbuch
bolts-nuts = mit je einer Mutter
bolts-tapped = ins Gewinde von { $item }
bolts-washers = { $count ->
    [one] je { $count } Scheibe
   *[other] je { $count } Scheiben
}
bolts-plate-washer = auf { $item } je eine große, dicke Scheibe
bolts-class = Festigkeitsklasse { $class }
bolts-class-unknown = Festigkeitsklasse: siehe Handbuch
bolts-torque = mit { $torque } anziehen
bolts-torque-unknown = Anziehmoment: siehe Handbuch
bolts-class-and-torque-unknown = Festigkeitsklasse und Anziehmoment: siehe Handbuch
bolts-drill = { $count ->
    [one] { $count } Loch von { $diameter } in { $item }, „{ $port }“, bohren
   *[other] { $count } Löcher von { $diameter } in { $item }, „{ $port }“, bohren
}
bolts-open = { $count ->
    [one] { $count } Loch von { $item }, „{ $port }“, auf { $diameter } aufbohren
   *[other] { $count } Löcher von { $item }, „{ $port }“, auf { $diameter } aufbohren
}
bolts-edge = von der Lochmitte zum Rand { $edge }, mindestens { $least } nötig
bolts-edge-unknown = darauf achten, dass von der Lochmitte zum Rand mindestens { $least } bleiben
sets-unbeaten = nichts schlägt es
sets-items-to-buy = Teile zu kaufen
sets-all-kept = Alle vier Schritte bleiben, wie sie sind: das ist der eine Satz. Einen frei geben, um zu sehen, was noch passt.
sets-says = Die besten vollständigen Sätze, das beste Ergebnis zuerst.
sets-none = Kein vollständiger Satz passt.
sets-not-all = Es sind zu viele Sätze, um alle anzusehen; dies sind die besten der angesehenen.
lists-read = { $count ->
    [one] { $count } Zeile gelesen
   *[other] { $count } Zeilen gelesen
}
lists-says = Zwei Teilelisten wählen oder einfügen. Von jeder Baugruppe steht dann da, ob sie gleich, ersetzt oder anders ist, und was daraus für ihre Verbindung folgt.
lists-without-heading = Ohne Überschrift
lists-same = gleich
    .joint = Was von der einen an dieser Verbindung bewiesen ist, gilt für die andere.
lists-replaced-both-ways = Nummern ersetzt, jede dient für die andere
    .joint = Was von der einen an dieser Verbindung bewiesen ist, gilt für die andere.
lists-second-serves-for-first = die zweite Liste hat, was Teile der ersten ersetzt
    .joint = Die zweite dient, wo die erste dient. Umgekehrt ist es nicht bewiesen.
lists-first-serves-for-second = die erste Liste hat, was Teile der zweiten ersetzt
    .joint = Die erste dient, wo die zweite dient. Umgekehrt ist es nicht bewiesen.
lists-quantities-differ = dieselben Nummern in anderer Anzahl
    .joint = Nicht bewiesen, solange offen ist, welche Anzahl stimmt.
lists-hardware-differs = nur Schrauben, Muttern oder Scheiben weichen ab
    .joint = Die tragenden Teile sind gleich. Schrauben, Muttern und Scheiben der Liste verwenden, mit der die Verbindung bewiesen ist.
lists-differs = weicht ab
    .joint = Diese Listen beweisen diese Verbindung nicht.
lists-only-first = nur in der ersten Liste
    .joint = Für diese Verbindung folgt nichts: in der zweiten Liste fehlt sie.
lists-only-second = nur in der zweiten Liste
    .joint = Für diese Verbindung folgt nichts: in der ersten Liste fehlt sie.
lists-line-only-first = { $first }: { $of-first } in der ersten Liste, keines in der zweiten
lists-line-only-second = { $second }: keines in der ersten Liste, { $of-second } in der zweiten
lists-line-quantity = { $first }: { $of-first } in der ersten Liste, { $of-second } in der zweiten
lists-line-second-replaces = { $second } ersetzt { $first }, nicht umgekehrt
lists-line-second-replaces-both-ways = { $second } ersetzt { $first }, jedes dient für das andere
lists-line-first-replaces = { $first } ersetzt { $second }, nicht umgekehrt
lists-line-first-replaces-both-ways = { $first } ersetzt { $second }, jedes dient für das andere
lists-line-written-otherwise = { $first } steht in der zweiten Liste als { $second }
lists-line-same = { $of-first } × { $first } in beiden
lists-fault = Zeile { $line }: { $what }.
lists-fault-no-number = in „{ $text }“ steht keine Teilenummer; eine schreiben oder die Zeile weglassen
lists-fault-quantity = „{ $text }“ ist keine Anzahl; eine ganze Zahl ab 1 schreiben
lists-fault-doubled = { $text } steht auch in Zeile { $other }; die Anzahlen werden zusammengezählt
lists-fault-no-list = dies ist keine Teileliste; Zeilen mit Teilenummer und Anzahl angeben
lists-fault-too-long = die Liste hat mehr als { $other } Zeilen; bitte teilen
lists-fault-not-text = dies ist kein Text; die Liste als CSV in UTF-8 speichern
remedy-leads-to = Dann: { $verdict }
answer-to = { $answer } ({ $question })
remedy-costs = { $money } mehr zu kaufen
remedy-saves = spart { $money }
remedy-price-open = Preis auf Anfrage
remedy-takes = { $work } { $way ->
    [less] weniger Arbeit
   *[more] mehr Arbeit
}
remedy-length = { $length } { $way ->
    [less] kürzer
   *[more] länger
}
remedy-departure = Böschungswinkel hinten { $change } { $way ->
    [less] kleiner
   *[more] größer
}
remedy-settles = Behebt: { $findings }
remedy-leaves = Bleibt offen: { $findings }
remedy-same-price = nichts weiter zu kaufen
remedy-price-elsewhere = der Preis dafür steht nicht in diesem Katalog
remedy-same-size = Länge und Böschungswinkel hinten wie zuvor
remedy-with-first = Mit dem ersten Vorschlag
remedy-as-before = { $value }, wie zuvor

total-at-least = mindestens { $known }; { $open ->
    [one] { $open } Preis ist nicht bekannt
   *[other] { $open } Preise sind nicht bekannt
}
come-by-buy = zu kaufen
come-by-on-hand = vorhanden
come-by-elsewhere = nicht in diesem Katalog
come-by-comes-with = wird mitgeliefert mit { $item }

date = { $day }. { $month } { $year }
month-1 = Januar
month-2 = Februar
month-3 = März
month-4 = April
month-5 = Mai
month-6 = Juni
month-7 = Juli
month-8 = August
month-9 = September
month-10 = Oktober
month-11 = November
month-12 = Dezember

labelled = { $label }: { $value }
clauses = { $first }; { $second }

file-clean = { $file }: keine Fehler
file-warned = { $file }: { $warnings ->
    [one] { $warnings } Warnung
   *[other] { $warnings } Warnungen
}; der Katalog ist verwendbar
file-faulty = { $file }: { $errors ->
    [one] { $errors } Fehler
   *[other] { $errors } Fehler
}, { $warnings ->
    [one] { $warnings } Warnung
   *[other] { $warnings } Warnungen
}
file-unusable = { $errors ->
    [one] Der Katalog hat { $errors } Fehler und ist nicht verwendbar; „{ $command }“ zeigt ihn mit der Abhilfe.
   *[other] Der Katalog hat { $errors } Fehler und ist nicht verwendbar; „{ $command }“ zeigt alle mit der Abhilfe.
}
file-error = Fehler
file-warning = Warnung
