same-missing = Für { $item } nicht angegeben: { $missing-name }.
    .workshop = { $item }: { $missing-name } nicht angegeben. Deshalb offen: { $areas-name }.

area-loads = Achslasten
area-lift = Heben
area-hydraulics = Hydraulik
area-drive = Antrieb
area-operator = Sitz
area-wiring = Elektrik
area-loading = Verladen
area-site = Baustelle
area-digging = Graben
area-clearance = Freiräume
area-build = das Ganze

evidence-listed = { $row ->
    [none] Beleg: vom Hersteller zusammen aufgeführt, außerhalb der Liste.
   *[other] Beleg: Herstellerliste, Zeile { $row }.
}
evidence-same-part = Beleg: gleiches Teil wie in { $witness } mit { $witness-other }, die der Hersteller aufführt{ $row ->
    [none] .
   *[other] {""} (Zeile { $row } der Liste).
}
evidence-replaced-part = Beleg: ersetztes Teil, ausgehend von { $witness } mit { $witness-other }, die der Hersteller aufführt{ $row ->
    [none] .
   *[other] {""} (Zeile { $row } der Liste).
}
evidence-measured = Beleg: gemessen mit { $tools-name }.
evidence-drawing = Beleg: Zeichnung.
evidence-none = Beleg: noch keiner.
evidence-stated = Beleg: Unterlagen des Herstellers.
evidence-looked = Beleg: am Gerät nachgesehen.

explain-rest = { $count ->
    [one] { $count } weiterer Punkt ist in Ordnung.
   *[other] { $count } weitere Punkte sind in Ordnung.
}
explain-nothing = Noch ist nichts gewählt, das sich beurteilen lässt.

chain-same = { $item } trägt { $parts }, genau wie { $stands-for }.
chain-replaced = { $item } trägt { $parts } und steht für { $stands-for }:
step-forward = { $old } wurde ersetzt durch { $new } { $ways ->
    [both] (in beide Richtungen).
   *[forward] (nur vorwärts: das neue Teil dient auch für das alte).
}
step-backward = { $new } hat { $old } ersetzt, und nach dem Vermerk dient das alte Teil auch für das neue (in beide Richtungen).
joint-parts = Teile: { $a-parts } an { $a }; { $b-parts } an { $b }.
no-parts = nicht bekannt

check-compare-parts = Teilenummern vergleichen: { $a-port } von { $a } und { $b-port } von { $b }.
check-measure = An { $port } von { $item } messen: { $value-name }{ $within ->
    [none] .
   *[other] , auf ±{ $within } { $tool ->
        [tape] (ein Bandmaß genügt).
        [caliper] (mit dem Messschieber).
       *[finer] (feiner als ein Messschieber).
    }
}
check-look = Nachsehen, ob { $item } das hat: { $what }.
check-find-out = Für { $item } herausfinden: { $value-name }.
check-ask = Den Hersteller oder Händler nach { $a } mit { $b } fragen.
check-stakes = Könnte das Ergebnis von { $best } bis { $worst } verschieben.

point-value = { $value-name } (Punkt { $number })
hole-value = Loch { $number }, { $value-name }
hole-named = Loch { $number } von { $port }

value-at-x = Lage längs der Maschine
value-at-z = Höhenlage
value-ballast-place = Platz für Ballast
value-beaver-angle = Winkel der Auffahrschräge
value-bolt = Schraubendurchmesser
value-bore = Bohrung
value-category = Dreipunktkategorie
value-centre-of-gravity = Schwerpunkt
value-console = Lage der Hebel
value-coupling = Abstand von der Kupplung zur Achse
value-deck-height = Höhe der Ladefläche
value-deck-length = Länge der Ladefläche
value-deck-rear = Hinterkante der Ladefläche
value-deck-width = Breite der Ladefläche
value-diameter = Durchmesser
value-drop = Abstand zum Sicherungsbolzen
value-flow = Ölstrom
value-front-axle = Aufhängung der Vorderachse
value-front-axle-load = Vorderachslast
value-front-bore = vordere Bohrung
value-gap = Spalt
value-gate-width = Breite des Tors
value-height = Höhe
value-hitch-stay = ob der Hersteller eine Abstützung für den Dreipunktanbau anbietet
value-holes = Schraubenlöcher
value-index-point = Sitzindexpunkt
value-latch = Durchmesser des Sicherungsbolzens
value-lift = Hubkraft
value-link-mass = Massen von Ausleger, Stiel und Löffel
value-lower-pin = unterer Koppelbolzen
value-mass = Masse
value-mast = Koppelhöhe
value-nose-load = Bereich der Stützlast
value-outlets = Hydraulikanschlüsse
value-outline = Umriss
value-overall-radius = Außenradius des Reifens
value-path-width = Breite des Wegs
value-pose = Lage der Verbindung
value-power = Zapfwellenleistung
value-power-beyond = Druckweiterleitung
value-presence-switch = Sitzkontaktschalter
value-pressure = Hydraulikdruck
value-ramp = Rampe
value-rated-load = zulässige Achslast
value-rated-total = zulässiges Gesamtgewicht
value-reach = Reichweite
value-rear-axle-load = Hinterachslast
value-room-behind = nötiger Platz hinter dem Sitz
value-rotation = Drehrichtung
value-serials = Seriennummern
value-setback = Abstand zur Aufnahme
value-shaft-type = Wellenform
value-size = Größe
value-span = Weite der unteren Koppelpunkte
value-speed = Drehzahl
value-spread = Abstand links–rechts
value-standard = Norm
value-static-loaded-radius = statischer Halbmesser des Reifens
value-stations = offen oder Kabine
value-supplier = womit er geliefert wird
value-tolerance = Toleranz
value-track = Spurweite
value-turning-radius = Wenderadius
value-tyre-width = Reifenbreite
value-u = Maß quer
value-upper-pin = oberer Koppelbolzen
value-v = Maß hoch
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
port-kind-three-point = Dreipunktanbau
port-kind-coupler = Hydraulikkupplung

rotation-clockwise = im Uhrzeigersinn
rotation-counter-clockwise = gegen den Uhrzeigersinn
station-open = offen
station-cab = Kabine
axle-front = vorn
axle-rear = hinten

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

remedy-adapter = { $item } einsetzen
remedy-seat = { $item } als Sitz nehmen
remedy-frame = { $item } als Rahmen nehmen
remedy-hitch = An den Dreipunktanbau hängen
remedy-drill = Die fehlenden Löcher an { $port } von { $item } bohren
remedy-open-up = Die Löcher an { $port } von { $item } um { $by } aufbohren
remedy-front-seat-forward = Den Fahrersitz nach vorn klappen
remedy-fold-roll-over-bar = Den Überrollbügel klappen, nur für Transport und Abstellen
remedy-take-off = { $what } abnehmen
remedy-put-on = { $what } anbauen
remedy-ramps = Rampen von { $length } nehmen
remedy-gateway = Tor von { $width } annehmen
remedy-path = Weg von { $width } annehmen
remedy-ballast = { $mass } Ballast { $x } vor der Hinterachse anbringen
remedy-ballast-behind = { $mass } Ballast { $x } hinter der Hinterachse anbringen
remedy-leads-to = Dann: { $verdict }
remedy-costs = { $money } zu kaufen
remedy-saves = spart { $money }
remedy-price-open = Preis auf Anfrage
remedy-takes = { $work } Arbeit
remedy-length = { $length } in der Länge
remedy-departure = { $change } Böschungswinkel hinten
remedy-settles = Erledigt: { $findings }
remedy-leaves = Bleibt offen: { $findings }
remedy-same-price = nichts weiter zu kaufen
remedy-price-elsewhere = der Preis dafür steht nicht in diesem Katalog
remedy-same-size = Länge und Böschungswinkel hinten wie zuvor
remedy-with-first = Mit dem ersten Vorschlag
remedy-as-before = { $value }, wie zuvor

come-by-buy = zu kaufen
come-by-on-hand = vorhanden
come-by-elsewhere = nicht in diesem Katalog
come-by-comes-with = kommt mit { $item }
