access-unknown = Ob die Maschine auf das Gelände kommt, ist nicht bekannt, weil etwas fehlt, wovon es abhängt.
    .short = Zufahrt nicht bekannt
    .workshop = Zufahrt: { $missing-name } von { $item } nicht angegeben.
adapter-goes-in = { $item } kommt dazwischen.
    .short = Braucht { $item }
    .workshop = { $item } montieren{ $work ->
        [none] .
       *[other] : { $work } Werkstattzeit.
    }
adapter-not-needed = { $item } wird hier nicht gebraucht.
    .short = { $item } wird nicht gebraucht
    .workshop = { $item } verbindet in dieser Zusammenstellung nichts und kann wegbleiben.
arm-on-hitch = Ein Baggerarm am bloßen Dreipunktanbau kann gegen den Fahrer hochgedrückt werden. Fragen Sie, ob der Hersteller eine Abstützung dafür anbietet.
    .short = Baggerarm am bloßen Dreipunktanbau
    .workshop = { $item } hängt am bloßen Dreipunktanbau und kann nach oben und gegen den Fahrer gedrückt werden. Einen Rahmen nehmen oder, wo die Anleitung es erlaubt, die Abstützung des Herstellers.
axle-overloaded = { $axle ->
    [front] Die Vorderachse müsste mehr tragen, als für sie zulässig ist.
   *[rear] Die Hinterachse müsste mehr tragen, als für sie zulässig ist.
}
    .short = { $axle ->
        [front] Vorderachse überlastet
       *[rear] Hinterachse überlastet
    }
    .workshop = { $axle ->
        [front] Vorderachse
       *[rear] Hinterachse
    }: Last { $load }, zulässig { $rated }, { $over } zu viel.
axle-within-rating = { $axle ->
    [front] Die Vorderachse bleibt unter ihrer zulässigen Last.
   *[rear] Die Hinterachse bleibt unter ihrer zulässigen Last.
}
    .short = { $axle ->
        [front] Vorderachse im zulässigen Bereich
       *[rear] Hinterachse im zulässigen Bereich
    }
    .workshop = { $axle ->
        [front] Vorderachse
       *[rear] Hinterachse
    }: Last { $load }, zulässig { $rated }, { $left } frei.
bar-in-the-way = { $bar ->
    [stays-up] Mit { $item } lässt sich der Überrollbügel nicht klappen.
   *[up] Überrollbügel und { $item } sind einander im Weg.
}
    .short = { $bar ->
        [stays-up] Überrollbügel bleibt oben
       *[up] Überrollbügel im Weg
    }
    .workshop = { $bar ->
        [stays-up] Geklappt würde der Überrollbügel { $item } um { $overlap } überschneiden.
        [folded] Der geklappte Überrollbügel überschneidet { $item } um { $overlap }.
       *[up] Der aufgestellte Überrollbügel überschneidet { $item } um { $overlap }.
    }
bolts-unknown = Durch { $bolts } von { $holes } Löchern gehen Schrauben; ob das reicht, ist nicht angegeben.
    .short = Anzahl der Schrauben nicht angegeben
    .workshop = Die eine Platte hat { $holes } Löcher, die andere { $bolts }. Den Hersteller fragen, wie viele Schrauben diese Verbindung braucht.
clearance-hit = { $item } und { $other } sind einander im Weg.
    .short = { $item } stößt an { $other }
    .workshop = { $shape-name } von { $item } überschneidet { $other-shape-name } von { $other } um { $overlap }.
clearance-tight = { $item } kommt { $other } nahe.
    .short = { $item } nahe an { $other }
    .workshop = { $shape-name } von { $item } zu { $other-shape-name } von { $other }: { $gap } Abstand, gewünscht { $wanted }.
clearance-unknown = Eines der beiden ist nicht gezeichnet; ob sie einander frei lassen, kann noch niemand sagen.
    .short = Umriss nicht angegeben
    .workshop = { $missing-of }: { $missing-name } nicht angegeben.
closure-meets = An der Hinterachse angeschraubt, trifft { $b } auch die vordere Befestigung von { $a }.
    .short = Trifft die vordere Befestigung
    .workshop = Vordere Befestigung: Abweichung { $off-by }, Reserve { $margin }, ungünstigster Fall ±{ $worst-case }{ $slot ->
        [none] .
       *[other] ; das Langloch gibt { $slot }.
    }
closure-misses = An der Hinterachse angeschraubt, trifft { $b } die vordere Befestigung von { $a } nicht.
    .short = Verfehlt die vordere Befestigung
    .workshop = Vordere Befestigung: Abweichung { $off-by }, Reserve { $margin }, ungünstigster Fall ±{ $worst-case }. Zwischen seinen Befestigungen ist der Rahmen { $longer-way ->
        [shorter] { $longer } kürzer
       *[longer] { $longer } länger
    } als die Aufnahme der Maschine.
closure-open = Ob { $b } die vordere Befestigung von { $a } trifft, ist nach den Zeichnungen zu knapp, um es zu sagen.
    .short = Vordere Befestigung zu knapp
    .workshop = Vordere Befestigung: Abweichung { $off-by }, Reserve { $margin }, ungünstigster Fall ±{ $worst-case }; Wahrscheinlichkeit { $probability }{ $settles ->
        [none] .
       *[other] . Ein Maß auf ±{ $settles } genau würde es klären.
    }
closure-unknown = Es ist nicht angegeben, wo die vordere Befestigung sitzt; ob { $b } sie trifft, kann noch niemand sagen.
    .short = Vordere Befestigung nicht angegeben
    .workshop = Vordere Befestigung von { $missing-of }: { $missing-name } nicht angegeben.
corner-clears = Die Maschine kommt in einem Zug um die Ecke hinter dem Tor.
    .short = Kommt um die Ecke
    .workshop = Tor { $gate }, danach rechtwinklig in einen Weg von { $path }: { $wanted } Wegbreite genügen.
corner-tight = Die Maschine kommt nicht in einem Zug um die Ecke hinter dem Tor. Bitte versuchen, ob es mit Rangieren geht.
    .short = Ecke ist eng
    .workshop = Tor { $gate }, danach rechtwinklig in einen Weg von { $path }: { $wanted ->
        [none] keine Wegbreite genügt für einen Zug, weil das Heck gegen das Tor ausschwenkt.
       *[other] ein Zug braucht einen Weg von { $wanted }.
    }
coupler-differs = Die Hydraulikkupplungen sind verschieden; ein Schlauch braucht ein anderes Ende.
    .short = Schlauch braucht anderes Ende
    .workshop = { $roles-name }: { $carrier } an { $a }, { $carried } an { $b }. Schlauchende tauschen.
coupler-fits = Die Hydraulikkupplungen passen zusammen.
    .short = Kupplungen passen
    .workshop = { $roles-name }: { $standard }, Größe { $size }, auf beiden Seiten.
coupler-unknown = Eine der Hydraulikkupplungen ist nicht angegeben.
    .short = Kupplung nicht angegeben
    .workshop = { $roles-name } von { $missing-of }: { $missing-name } nicht angegeben.
frame-idle = { $item } bleibt leer: { $other } hängt dahinter am Dreipunktanbau.
    .short = An { $item } hängt nichts
    .workshop = { $other } hängt am Dreipunktanbau und nichts an { $item }. Den Rahmen abnehmen oder ein Anbaugerät oder einen Adapter für seine Geräteaufnahme wählen.
frame-in-the-ground = { $item } würde in den Boden reichen.
    .short = Reicht in den Boden
    .workshop = Der tiefste Punkt von { $item } liegt { $below } unter dem Boden.
frame-low = { $item } hängt tief über dem Boden.
    .short = Tief über dem Boden
    .workshop = Der tiefste Punkt von { $item } liegt { $height } über dem Boden; gewünscht sind { $wanted }.
front-axle-heavy-enough = Auf den Vorderrädern bleibt genug Gewicht zum Lenken.
    .short = Vorderachse schwer genug
    .workshop = Die Vorderachse trägt { $share } der Leermasse der Maschine; mindestens { $least } sind nötig.
front-axle-lifts = Die Vorderräder würden vom Boden abheben.
    .short = Vorderräder heben ab
    .workshop = Der Vorderachse fehlen { $lift }, um am Boden zu bleiben. { $ballast }, { $ballast-at } vor der Hinterachse, bringen sie auf den Mindestanteil.
front-axle-light = Die Vorderräder werden zu leicht, um sicher zu lenken. Etwa { $ballast } Frontballast würden genügen.
    .short = Braucht Frontballast
    .workshop = Die Vorderachse trägt { $share } der Leermasse der Maschine; mindestens { $least } sind nötig. { $ballast }, { $ballast-at } vor der Hinterachse, erreichen das.
front-seat-in-the-way = { $need ->
    [flips-forward] Der Fahrersitz müsste nach vorn klappen; an dieser Maschine tut er das nicht.
    [comes-off] Der Fahrersitz muss herunter, um Platz zu machen.
   *[other] Der Fahrersitz müsste weiter nach vorn rücken, als er kann.
}
    .short = { $need ->
        [flips-forward] Fahrersitz klappt nicht
        [comes-off] Fahrersitz muss herunter
       *[other] Fahrersitz im Weg
    }
    .workshop = { $need ->
        [flips-forward] Fahrersitz: muss nach vorn klappen; dieser klappt nicht.
        [comes-off] Fahrersitz: losschrauben und abnehmen.
       *[other] Fahrersitz: muss { $need } nach vorn rücken; er rückt { $has }.
    }
gate-low = { $folded ->
    [none] Die Maschine ist zu hoch für das Tor.
   *[other] Mit aufgestelltem Überrollbügel ist die Maschine zu hoch für das Tor; mit geklapptem passt sie durch.
}
    .short = Tor zu niedrig
    .workshop = Höhe { $height }, Tor { $gate }, { $beyond } zu hoch{ $folded ->
        [none] .
       *[other] ; mit geklapptem Überrollbügel { $folded }.
    }
gate-narrow = Die Maschine ist { $beyond } breiter als das Tor.
    .short = Tor zu schmal
    .workshop = Breite { $width }, Tor { $gate }: { $beyond } zu breit.
gate-passes = Die Maschine passt durch das Tor, auf jeder Seite bleiben { $left }.
    .short = Passt durch das Tor
    .workshop = Breite { $width }, Tor { $gate }: auf jeder Seite bleiben { $left }.
ground-carries = Der Boden des Geländes trägt die schwerste Achse der Maschine.
    .short = Boden trägt
    .workshop = { $axle ->
        [front] Vorderachse
       *[rear] Hinterachse
    }: Last { $load }, der Boden trägt { $most }, { $left } bleiben.
ground-overloaded = Die schwerste Achse der Maschine ist { $over } schwerer, als der Boden des Geländes trägt.
    .short = Zu schwer für den Boden
    .workshop = { $axle ->
        [front] Vorderachse
       *[rear] Hinterachse
    }: Last { $load }, der Boden trägt { $most }, { $over } zu viel.
hitch-differs = Die Dreipunktanbauten sind verschieden groß; { $b } lässt sich nicht anhängen.
    .short = Dreipunktkategorien verschieden
    .workshop = Dreipunktkategorie { $carrier } an { $a }, { $carried } an { $b }: Die Bolzen sind zu dick.
hitch-dimension-misfits = Ein Maß des Dreipunktanbaus passt nicht zu { $b }; es lässt sich nicht anhängen.
    .short = Dreipunktmaß passt nicht
    .workshop = { $dimension-name }: { $carrier } an { $a }, { $carried } an { $b }, { $over } zu viel.
hitch-dimension-open = Ob { $b } an den Dreipunktanbau passt, ist nach den Maßen zu knapp, um es zu sagen.
    .short = Dreipunktanbau zu knapp
    .workshop = { $dimension-name }: { $carrier } an { $a }, { $carried } an { $b }; Wahrscheinlichkeit { $probability }{ $settles ->
        [none] .
       *[other] . Auf ±{ $settles } genau bekannt, wäre es entschieden.
    }
hitch-fits = Der Dreipunktanbau hat die richtige Größe.
    .short = Dreipunktkategorie passt
    .workshop = Dreipunktkategorie { $category } (ISO 730) auf beiden Seiten.
hitch-frame-stiff = Die Haken des Schnellkuppelrahmens haben einen anderen Abstand als { $b }.
    .short = Schnellkuppelrahmen passt nicht
    .workshop = Dreipunktkategorie { $carrier } an { $a } mit Schnellkuppelrahmen, { $carried } an { $b }: Die Haken lassen sich nicht versetzen. Den Rahmen abnehmen.
hitch-needs-bushings = Der Dreipunktanbau ist eine Größe größer, als { $b } braucht; Reduzierhülsen gleichen das aus.
    .short = Braucht Reduzierhülsen
    .workshop = Dreipunktkategorie { $carrier } an { $a }, { $carried } an { $b }: Reduzierhülsen einsetzen.
hitch-other-span = Die Unterlenker müssen auf den Abstand von { $b } gestellt werden.
    .short = Unterlenker zu verstellen
    .workshop = Dreipunktkategorie { $carrier } an { $a }, { $carried } an { $b }: Die Bolzen sind gleich, der Abstand nicht. Unterlenker verstellen und ihre Stabilisatoren einstellen.
hitch-unknown = Die Größe eines Dreipunktanbaus ist nicht angegeben.
    .short = Dreipunktgröße nicht angegeben
    .workshop = Dreipunktanbau von { $missing-of }: { $missing-name } nicht angegeben.
holes-drilled = { $drill ->
    [one] In { $side } wird { $drill } Loch gebohrt, wie beschlossen.
   *[other] In { $side } werden { $drill } Löcher gebohrt, wie beschlossen.
}
    .short = { $drill ->
        [one] { $drill } Loch wird gebohrt
       *[other] { $drill } Löcher werden gebohrt
    }
    .workshop = { $roles-name }: { $drill ->
        [one] { $drill } Loch
       *[other] { $drill } Löcher
    } auf { $port } von { $side } durchzeichnen und bohren; dann { $bolts ->
        [one] passt { $bolts } Schraube
       *[other] passen { $bolts } Schrauben
    } mit einer Reserve von { $margin }. Arbeitszeit { $work }.
holes-may-meet = Ob die Schraubenlöcher von { $b } und { $a } übereinanderliegen, ist nach den Zeichnungen zu knapp, um es zu sagen.
    .short = Schraubenlöcher zu knapp
    .workshop = { $roles-name }: { $bolts ->
        [one] { $bolts } Schraube
       *[other] { $bolts } Schrauben
    }, Reserve { $margin }, ungünstigster Fall ±{ $worst-case }; Wahrscheinlichkeit { $probability }{ $settles ->
        [none] .
       *[other] . Ein Maß auf ±{ $settles } genau würde es klären.
    }
holes-meet = Die Schraubenlöcher von { $b } und { $a } liegen übereinander.
    .short = Schraubenlöcher passen
    .workshop = { $roles-name }: { $bolts ->
        [one] { $bolts } Schraube geht
       *[other] { $bolts } Schrauben gehen
    } hinein, Reserve { $margin }, ungünstigster Fall ±{ $worst-case }.
holes-miss = Die Schraubenlöcher von { $b } und { $a } liegen nicht übereinander.
    .short = Schraubenlöcher passen nicht
    .workshop = { $roles-name }: { $bolts ->
        [one] { $bolts } Schraube ist
       *[other] { $bolts } Schrauben sind
    } nötig, und keine Lage nimmt sie auf, auch nicht mit aufgebohrten oder neuen Löchern{ $margin ->
        [none] .
       *[other] ; bestenfalls ist die Reserve { $margin }, ungünstigster Fall ±{ $worst-case }.
    }
holes-need-drilling = { $drill ->
    [one] In { $side } muss { $drill } Loch gebohrt werden.
   *[other] In { $side } müssen { $drill } Löcher gebohrt werden.
}
    .short = { $drill ->
        [one] { $drill } Loch zu bohren
       *[other] { $drill } Löcher zu bohren
    }
    .workshop = { $roles-name }: { $drill ->
        [one] { $drill } Loch
       *[other] { $drill } Löcher
    } in { $side } bohren; dann { $bolts ->
        [one] geht { $bolts } Schraube
       *[other] gehen { $bolts } Schrauben
    } mit einer Reserve von { $margin } hinein.
holes-need-opening = Die Schraubenlöcher müssen etwas aufgebohrt werden.
    .short = Schraubenlöcher aufzubohren
    .workshop = { $roles-name }: Löcher um bis zu { $open-by } im Durchmesser aufbohren; dann { $bolts ->
        [one] geht { $bolts } Schraube
       *[other] gehen { $bolts } Schrauben
    } mit einer Reserve von { $margin } hinein.
holes-opened = Die Schraubenlöcher von { $side } werden aufgebohrt, wie beschlossen.
    .short = Schraubenlöcher werden aufgebohrt
    .workshop = { $roles-name }: die Löcher von { $port } an { $side } um { $open-by } im Durchmesser aufbohren; dann { $bolts ->
        [one] passt { $bolts } Schraube
       *[other] passen { $bolts } Schrauben
    } mit einer Reserve von { $margin }. Arbeitszeit { $work }.
holes-plan-not-needed = { $kind ->
    [opening] Die Schraubenlöcher von { $item } müssen hier nicht aufgebohrt werden.
   *[drilling] An { $item } muss hier nicht gebohrt werden.
}
    .short = { $kind ->
        [opening] Aufbohren nicht nötig
       *[drilling] Bohren nicht nötig
    }
    .workshop = { $kind ->
        [opening] Das Aufbohren von { $port } an { $item } ist beschlossen, doch keine Verbindung dieser Zusammenstellung braucht es.
       *[drilling] Das Bohren von { $port } an { $item } ist beschlossen, doch keine Verbindung dieser Zusammenstellung braucht es.
    }
holes-plan-not-possible = { $kind ->
    [opening] An { $item } ist ein Aufbohren beschlossen, das so nicht geht.
   *[drilling] An { $item } ist ein Bohren beschlossen, das so nicht geht.
}
    .short = { $kind ->
        [opening] Aufbohren nicht möglich
       *[drilling] Bohren nicht möglich
    }
    .workshop = { $reason ->
        [no-port] An { $item } gibt es { $port } nicht.
        [no-holes] { $port } von { $item } hat keine Schraubenlöcher.
       *[too-much] { $port } von { $item }: Löcher werden um mehr als nichts und höchstens 1 mm aufgebohrt.
    } Neu beschließen.
holes-too-many = Es sind zu viele Schraubenlöcher, um jede Lage von { $b } auf { $a } zu prüfen. Legen Sie eines auf das andere oder vergleichen Sie die Teilenummern.
    .short = Zu viele Schraubenlöcher zum Vergleichen
    .workshop = { $roles-name }: { $holes } Löcher; bis zu { $most } werden verglichen, weniger, wo sie unregelmäßig liegen.
holes-unknown = Die Schraubenlöcher sind auf einer Seite nicht angegeben; ob sie übereinanderliegen, kann noch niemand sagen.
    .short = Schraubenlöcher nicht angegeben
    .workshop = { $roles-name } von { $missing-of }: { $missing-name } nicht angegeben.
hooks-hold = Die Haken von { $b } sitzen auf der Stange von { $a }, und der Sicherungsbolzen geht hinein.
    .short = Haken und Bolzen passen
    .workshop = { $roles-name }: Haken und Sicherungsbolzen innerhalb von { $limit }; Spiel { $play }.
hooks-may-hold = Ob die Haken von { $b } zu { $a } passen, ist nach den Zeichnungen zu knapp, um es zu sagen.
    .short = Haken zu knapp
    .workshop = { $roles-name }: { $dimension-name }, { $play } zwischen beiden, bis { $limit } geht es; Wahrscheinlichkeit { $probability }{ $settles ->
        [none] .
       *[other] . Auf ±{ $settles } genau bekannt, wäre es geklärt.
    }
hooks-misfit = Die Haken von { $b } passen nicht zu { $a }.
    .short = Haken passen nicht
    .workshop = { $roles-name }: { $dimension-name } { $carrier } an { $a }, { $carried } an { $b }: { $off-by } auseinander, bis { $limit } geht es.
hooks-unknown = Ein Maß der Haken ist nicht angegeben.
    .short = Haken nicht angegeben
    .workshop = { $roles-name } von { $missing-of }: { $missing-name } nicht angegeben.
hydraulics-flow-high = Die Maschine fördert mehr Öl, als das Anbaugerät verträgt.
    .short = Zu viel Ölstrom
    .workshop = Ölstrom { $flow }; das Anbaugerät verträgt höchstens { $most }. Stromteiler einbauen oder den Hersteller fragen.
hydraulics-flow-short = Die Maschine fördert weniger Öl, als das Anbaugerät möchte; es arbeitet langsam.
    .short = Wenig Ölstrom
    .workshop = Ölstrom { $flow }; das Anbaugerät möchte { $least }. Jeder Hub dauert { $time-ratio }-mal so lange.
hydraulics-match = Die Hydraulik der Maschine passt zum Anbaugerät.
    .short = Hydraulik passt
    .workshop = Ölstrom { $flow } bei { $pressure }: { $power } hydraulische Leistung.
hydraulics-no-power-beyond = Das Anbaugerät möchte eine eigene Speisung von der Pumpe (Druckweiterleitung), und die Maschine hat noch keine.
    .short = Braucht Druckweiterleitung
    .workshop = Druckweiterleitung: vom Anbaugerät verlangt, an der Maschine nicht vorhanden. Nachrüstsatz einbauen.
hydraulics-outlets-short = Die Maschine hat zu wenige Hydraulikanschlüsse.
    .short = Zu wenige Hydraulikanschlüsse
    .workshop = Anschlüsse: { $has } vorhanden, { $need } nötig. Steuerventil oder Umschalter ergänzen.
hydraulics-pressure-high = Der Hydraulikdruck der Maschine ist höher, als das Anbaugerät verträgt.
    .short = Zu viel Hydraulikdruck
    .workshop = Eingestellter Druck { $pressure }; das Anbaugerät verträgt { $most }.
hydraulics-pressure-short = Der Hydraulikdruck der Maschine ist für das Anbaugerät niedrig; es gräbt oder hebt mit weniger Kraft.
    .short = Wenig Hydraulikdruck
    .workshop = Eingestellter Druck { $pressure }; das Anbaugerät möchte { $least }.
hydraulics-unknown = Zur Hydraulik der Maschine ist nicht alles angegeben.
    .short = Hydraulik nicht angegeben
    .workshop = Hydraulik von { $missing-of }: { $missing-name } nicht angegeben.
implement-own-seat = Dieser Sitz gehört zu einem Anbaugerät, und das gewählte bringt keinen mit.
    .short = Anbaugerät bringt keinen Sitz mit
    .workshop = Sitz: der eigene des Anbaugeräts ist gewählt; dieses hat keinen.
joint-listed = Der Hersteller führt { $a } und { $b } zusammen auf.
    .short = Zusammen aufgeführt
    .workshop = { $roles-name }: { $guide ->
        [none] vom Hersteller zusammen aufgeführt, außerhalb der Liste.
       *[other] zusammen aufgeführt in { $guide } vom { $date }.
    }
joint-replaced-part = Die Ersatzvermerke des Herstellers führen von den Teilen, die { $a } und { $b } verbinden, zu einer Zusammenstellung, die er aufführt.
    .short = Über ersetzte Teile verbunden
    .workshop = { $roles-name }: { $part } hängt über Ersatzvermerke mit { $witness } und { $witness-other } zusammen, die der Hersteller aufführt.
joint-same-part = { $a } und { $b } verbinden sich über dieselben Teile wie eine Zusammenstellung, die der Hersteller aufführt.
    .short = Gleiche Teile wie aufgeführt
    .workshop = { $roles-name }: { $part } trägt auch die Verbindung von { $witness } und { $witness-other }, die der Hersteller aufführt.
kinds-differ = { $b } wird anders verbunden, als { $a } es bietet.
    .short = Verschiedene Verbindungsarten
    .workshop = { $roles-name }: { $carrier-name } an { $a }, { $carried-name } an { $b }.
lift-enough = Der Dreipunktanbau kann das Anbaugerät heben.
    .short = Hubkraft genügt
    .workshop = Hubkraft { $lift }, wo das Anbaugerät hängt, Masse { $mass }: { $left } frei.
lift-short = Der Dreipunktanbau kann das Anbaugerät nicht heben.
    .short = Zu schwer für den Dreipunktanbau
    .workshop = Hubkraft { $lift }, wo das Anbaugerät hängt, Masse { $mass }: { $over } zu viel.
lift-unknown = Ob der Dreipunktanbau das Anbaugerät heben kann, ist nicht angegeben.
    .short = Hubkraft nicht angegeben
    .workshop = Heben: { $missing-name } von { $missing-of } nicht angegeben.
listing-and-dimensions-disagree = Der Hersteller führt { $a } und { $b } zusammen auf, aber nach den Maßen gehen sie nicht zusammen. Eines von beiden stimmt nicht.
    .short = Liste und Maße widersprechen sich
    .workshop = { $roles-name }: zusammen aufgeführt, doch die Maße sagen nein{ $margin ->
        [none] .
       *[other] : Reserve { $margin }, ungünstigster Fall ±{ $worst-case }.
    } Vor jedem Kauf die Teilenummern an den Geräten vergleichen.
loading-unknown = Wie die Maschine auf dem Anhänger fährt, ist nicht bekannt, weil etwas fehlt, wovon es abhängt.
    .short = Verladen nicht bekannt
    .workshop = Verladen: { $missing-name } von { $item } nicht angegeben.
loads-unknown = Die Achslasten sind nicht bekannt, weil etwas fehlt, wovon sie abhängen.
    .short = Achslasten nicht bekannt
    .workshop = Achslasten: { $missing-name } von { $item } nicht angegeben.
measurement-not-used = Eine Messung an { $item } lässt sich nicht verwenden. Bitte neu messen.
    .short = Messung nicht verwendet
    .workshop = { $port } von { $item }, { $dimension-name }: { $reason ->
        [no-port] an { $item } gibt es { $port } nicht.
        [no-dimension] { $port } hat kein solches Maß.
       *[impossible] kein Gerät hat diesen Wert.
    }
must-come-off = { $what } muss von der Maschine herunter.
    .short = { $what } muss herunter
    .workshop = Für { $item } muss { $what } von der Maschine herunter.
must-go-on = { $what } muss an der Maschine sein.
    .short = Braucht { $what }
    .workshop = Für { $item } muss { $what } an der Maschine sein.
needs-frame = { $item } braucht einen Anbaurahmen.
    .short = Braucht einen Rahmen
    .workshop = { $item } hängt an einer Geräteaufnahme; der bloße Dreipunktanbau hat keine.
nose-load-in-range = { $heading ->
    [backward] Mit dem Heck nach vorn kann die Maschine so auf dem Anhänger stehen, dass die Stützlast stimmt.
   *[forward] Mit der Front nach vorn kann die Maschine so auf dem Anhänger stehen, dass die Stützlast stimmt.
}
    .short = Stützlast stimmt
    .workshop = Stützlast { $nose }, Bereich { $least } bis { $most }, mit der Hinterachse { $from } bis { $to } vor der Hinterkante der Ladefläche und { $heading ->
        [backward] dem Heck nach vorn.
       *[forward] der Front nach vorn.
    }
nose-load-out-of-range = Nirgends auf der Ladefläche steht die Maschine so, dass die Stützlast stimmt.
    .short = Stützlast stimmt nicht
    .workshop = Stützlast { $nose } am besten Platz auf der Ladefläche, Bereich { $least } bis { $most }.
nothing-answers = { $role ->
    [axle-anchor] { $a } findet an der Hinterachse nichts zum Anschrauben.
    [front-anchor] { $a } findet vorn nichts zum Anschrauben.
    [rack] { $a } findet keine Geräteaufnahme.
    [hitch] { $a } findet keinen Dreipunktanbau.
    [seat-deck] { $a } findet keine Sitzkonsole.
    [power-take-off] { $a } findet keine Zapfwelle.
    [pressure] { $a } braucht eine Hydraulikleitung, die noch fehlt.
    [return] { $a } braucht eine Rücklaufleitung, die noch fehlt.
    [case-drain] { $a } braucht eine Leckölleitung, die noch fehlt.
   *[wiring] { $a } braucht ein Kabel, das noch fehlt.
}
    .short = { $role ->
        [axle-anchor] Keine Achsbefestigung dafür
        [front-anchor] Keine vordere Befestigung dafür
        [rack] Keine Geräteaufnahme dafür
        [hitch] Kein Dreipunktanbau dafür
        [seat-deck] Keine Sitzkonsole dafür
        [power-take-off] Keine Zapfwelle dafür
        [pressure] Druckleitung zu legen
        [return] Rücklaufleitung zu legen
        [case-drain] Leckölleitung zu legen
       *[wiring] Kabel zu legen
    }
    .workshop = { $a }, { $port }: Nichts in dieser Zusammenstellung passt dazu ({ $role-name }).
pins-enter = Die Bolzen von { $b } und { $a } passen.
    .short = Bolzen passen
    .workshop = { $roles-name }, { $point }: Spiel { $running }, bis { $limit } geht es.
pins-may-enter = Ob die Bolzen von { $b } und { $a } passen, ist nach den Zeichnungen zu knapp, um es zu sagen.
    .short = Bolzen zu knapp
    .workshop = { $roles-name }{ $point ->
        [none] {""}
       *[other] , { $point }
    }: { $dimension-name } lässt { $running } Spiel, bis { $limit } geht es; Wahrscheinlichkeit { $probability }{ $settles ->
        [none] .
       *[other] . Auf ±{ $settles } genau bekannt, wäre es geklärt.
    }
pins-need-sleeve = Der Bolzen ist dünner als seine Bohrung. Eine Hülse gleicht das aus.
    .short = Braucht eine Hülse
    .workshop = { $roles-name }, { $point }: Bohrung { $bore }, Bolzen { $pin }, Spiel { $running }; über { $limit } braucht es eine Hülse.
pins-side-play = Die Verbindung hat seitlich Spiel. Scheiben gleichen das aus.
    .short = Braucht Scheiben
    .workshop = { $roles-name }, { $point }: seitliches Spiel { $play }; über { $limit } braucht es Scheiben.
pins-sleeved = { $item } passt den Bolzen an die Bohrung an.
    .short = Mit Hülse { $item }
    .workshop = { $roles-name }: { $item } kleidet die Bohrung { $bore } für den Bolzen { $pin } aus.
pins-spread-off = Die Laschen von { $b } stehen für { $a } um { $off-by } zu weit oder zu eng.
    .short = Abstand passt nicht
    .workshop = { $roles-name }: Abstand { $carrier } an { $a }, { $carried } an { $b }: { $off-by } auseinander, bis { $limit } geht es.
pins-unknown = Ein Maß der Bolzen ist nicht angegeben.
    .short = Bolzen nicht angegeben
    .workshop = { $roles-name } von { $missing-of }: { $missing-name } nicht angegeben.
pins-will-not-enter = { $dimension ->
    [width] Eine Lasche ist zu breit für die Gabel, in die sie gehört.
   *[diameter] Ein Bolzen ist zu dick für seine Bohrung.
}
    .short = { $dimension ->
        [width] Lasche zu breit
       *[diameter] Bolzen zu dick
    }
    .workshop = { $roles-name }, { $point }: { $dimension-name } { $carrier } an { $a }, { $carried } an { $b }: { $over } zu viel.
port-looked-missing = Was die Verbindung braucht, ist an diesem Gerät nicht vorhanden.
    .short = Fehlt an diesem Gerät
    .workshop = { $roles-name }: { $port } gesucht und nicht gefunden.
port-not-on-serial = Geräte mit dieser Seriennummer haben nicht, was die Verbindung braucht.
    .short = Nicht bei dieser Seriennummer
    .workshop = { $roles-name }: Seriennummer { $serial } kommt ohne { $port }.
port-serial-unknown = Nur manche Geräte haben, was die Verbindung braucht. Sehen Sie an Ihrem nach oder geben Sie seine Seriennummer ein.
    .short = Hängt von der Seriennummer ab
    .workshop = { $roles-name }: { $port } gibt es nur bei manchen Seriennummern.
place-unknown = Wo { $item } an der Maschine sitzt, ist nicht angegeben; was davon abhängt, lässt sich nicht ausrechnen.
    .short = Lage nicht bekannt
    .workshop = Keine Verbindung in den Daten sagt, wo { $item } sitzt. Nachmessen oder beim Hersteller erfragen.
power-high = Die Maschine hat mehr Leistung, als das Anbaugerät verträgt.
    .short = Zu viel Leistung
    .workshop = Zapfwellenleistung { $power }; das Anbaugerät verträgt { $most }.
power-short = Die Maschine hat zu wenig Leistung für das Anbaugerät.
    .short = Zu wenig Leistung
    .workshop = Zapfwellenleistung { $power }; das Anbaugerät braucht { $least }.
power-unknown = Die Zapfwellenleistung der Maschine ist nicht angegeben.
    .short = Leistung nicht angegeben
    .workshop = Antrieb von { $missing-of }: { $missing-name } nicht angegeben.
pto-differs = { $dimension ->
    [speed] Die Zapfwelle dreht nicht mit der Drehzahl, die das Anbaugerät braucht.
    [rotation] Die Zapfwelle dreht andersherum.
   *[shaft-type] Die Gelenkwelle braucht ein anderes Ende.
}
    .short = { $dimension ->
        [speed] Zapfwellendrehzahl verschieden
        [rotation] Zapfwelle dreht andersherum
       *[shaft-type] Gelenkwelle braucht anderes Ende
    }
    .workshop = Zapfwelle: { $dimension-name } { $carrier-name } an { $a }, { $carried-name } an { $b }.
pto-fits = Die Zapfwelle passt zum Anbaugerät.
    .short = Zapfwelle passt
    .workshop = Zapfwelle: Form { $shaft-type } (ISO 500-1), { $speed } Umdrehungen je Minute auf beiden Seiten.
pto-unknown = Zur Zapfwelle ist nicht alles angegeben.
    .short = Zapfwelle nicht angegeben
    .workshop = Zapfwelle von { $missing-of }: { $missing-name } nicht angegeben.
ramp-clears = { $way ->
    [forward] Vorwärts kommt die Maschine die Rampe des Anhängers hinauf, ohne aufzusetzen.
    [backward] Rückwärts kommt die Maschine die Rampe des Anhängers hinauf, ohne aufzusetzen.
   *[either] Die Maschine kommt die Rampe des Anhängers hinauf, ohne aufzusetzen.
}
    .short = Kommt über die Rampe
    .workshop = Rampe { $ramp }: { $item } kommt am nächsten, { $clearance } bleiben.
ramp-drags = { $item } setzt um { $drags-by } auf der Rampe des Anhängers auf. { $shortest ->
    [none] Keine Rampe, die auf einem Anhänger mitfährt, reicht aus.
   *[other] Rampen von { $shortest } reichen aus.
}
    .short = Setzt auf der Rampe auf
    .workshop = Rampe { $ramp }, { $way ->
        [backward] rückwärts
       *[forward] vorwärts
    }: { $item } ist { $drags-by } zu tief, { $distance } { $place ->
        [ahead] vor der Hinterachse, vor den Vorderrädern
        [between] vor der Hinterachse, zwischen den Rädern
       *[behind] hinter der Hinterachse
    }. { $shortest ->
        [none] Keine Rampe, die auf einem Anhänger mitfährt, lässt { $wanted }.
       *[other] Eine Rampe von { $shortest } lässt { $wanted }.
    }
ramp-tight = { $item } kommt der Rampe des Anhängers auf { $clearance } nahe; gewünscht sind { $wanted }. { $shortest ->
    [none] Keine Rampe, die auf einem Anhänger mitfährt, lässt so viel.
   *[other] Rampen von { $shortest } lassen so viel.
}
    .short = Rampe ist knapp
    .workshop = Rampe { $ramp }, { $way ->
        [backward] rückwärts
       *[forward] vorwärts
    }: { $clearance } unter { $item }, { $distance } { $place ->
        [ahead] vor der Hinterachse, vor den Vorderrädern
        [between] vor der Hinterachse, zwischen den Rädern
       *[behind] hinter der Hinterachse
    }. { $shortest ->
        [none] Keine Rampe, die auf einem Anhänger mitfährt, lässt { $wanted }.
       *[other] Eine Rampe von { $shortest } lässt { $wanted }.
    }
seat-faces-forward = Das Anbaugerät wird mit Blick nach hinten bedient, und dieser Sitz schaut nur nach vorn.
    .short = Sitz schaut nur nach vorn
    .workshop = Sitz: nach vorn gerichtet; die Hebel des Anbaugeräts sind dahinter.
seat-reach-far = Die Hebel sind vom Sitz aus schlecht zu erreichen.
    .short = Hebel weit weg
    .workshop = Sitzindexpunkt bis Hebel { $distance }; höchstens { $most }.
seat-room = Zwischen Sitz und Hebeln ist Platz für die Knie.
    .short = Platz am Sitz
    .workshop = Sitzindexpunkt bis Hebel { $room }; mindestens { $least }.
seat-room-short = Zwischen Sitz und Hebeln ist zu wenig Platz.
    .short = Zu wenig Platz am Sitz
    .workshop = Sitzindexpunkt bis Hebel { $room }; mindestens { $least }: { $short } zu wenig.
seat-room-unknown = Wie viel Platz am Sitz ist, ist nicht angegeben.
    .short = Platz am Sitz nicht angegeben
    .workshop = Platz am Sitz: { $missing-name } von { $missing-of } nicht angegeben.
seat-station-differs = { $station ->
    [cab] Dieser Sitz ist nicht für eine Maschine mit Kabine gemacht.
   *[open] Dieser Sitz ist nicht für eine offene Maschine gemacht.
}
    .short = { $station ->
        [cab] Sitz nicht für Kabinen
       *[open] Sitz nicht für offene Maschinen
    }
    .workshop = { $a }: nicht für diesen Fahrerplatz gemacht ({ $station-name }).
seat-switch-missing = Dem Sitz fehlt der Schalter, der der Maschine meldet, dass jemand sitzt. Er ist nach der Anleitung des Herstellers nachzurüsten.
    .short = Sitzschalter nachzurüsten
    .workshop = Sitzkontaktschalter: am Sitz keiner. Nach der Anleitung der Maschine einbauen und verdrahten.
seat-switch-unknown = Es ist nicht angegeben, ob der Sitz einen Schalter hat, der der Maschine meldet, dass jemand sitzt.
    .short = Sitzschalter nicht angegeben
    .workshop = Sitzkontaktschalter: für den Sitz nicht angegeben.
seat-turns-not = Der Fahrersitz dieser Maschine lässt sich nicht drehen.
    .short = Sitz dreht nicht
    .workshop = Sitz: ein drehbarer ist gewählt; der Sitz der Maschine dreht nicht.
seat-without-its-supplier = { $supplier ->
    [machine] Diesen Sitz gibt es nur mit einer anderen Maschine.
    [frame] Diesen Sitz gibt es nur mit einem anderen Rahmen.
   *[implement] Diesen Sitz gibt es nur mit einem anderen Anbaugerät.
}
    .short = { $supplier ->
        [machine] Kommt mit einer anderen Maschine
        [frame] Kommt mit einem anderen Rahmen
       *[implement] Kommt mit einem anderen Anbaugerät
    }
    .workshop = { $a }: gehört zu etwas, das in dieser Zusammenstellung fehlt ({ $supplier-name }). Klären, ob es ihn einzeln gibt.
site-unknown = Für { $site } nicht angegeben: { $missing-name }.
    .short = Gelände ohne Angaben
    .workshop = { $site }: { $missing-name } nicht angegeben.
serial-of-another = Die Seriennummer { $serial } gehört nicht zu { $item }, wie hier geführt. Sehen Sie nach, welches Gerät es ist.
    .short = Seriennummer einer anderen Serie
    .workshop = { $item }: Seriennummer { $serial } liegt außerhalb des Bereichs dieses Eintrags.
station-differs = { $station ->
    [cab] Dieser Rahmen ist nicht für eine Maschine mit Kabine gemacht.
   *[open] Dieser Rahmen ist nicht für eine offene Maschine gemacht.
}
    .short = { $station ->
        [cab] Rahmen nicht für Kabinen
       *[open] Rahmen nicht für offene Maschinen
    }
    .workshop = { $a }: nicht für diesen Fahrerplatz gemacht ({ $station-name }).
station-unknown = Es ist nicht angegeben, ob dieser Rahmen für offene Maschinen oder für Kabinen ist.
    .short = Offen oder Kabine nicht angegeben
    .workshop = { $a }: Fahrerplätze nicht angegeben.
swivel-hits = Der Sitz stößt beim Drehen an { $item }.
    .short = Sitz stößt beim Drehen an
    .workshop = Drehsitz: braucht einen Radius von { $radius }; bis { $item } sind es { $room }.
tie-downs-needed = { $count ->
    [one] Die Maschine mit mindestens { $count } Zurrmittel sichern.
   *[other] Die Maschine mit mindestens { $count } Zurrmitteln sichern.
}
    .short = Zurrmittel nötig
    .workshop = Mindestens { $count } Zurrmittel, die zusammen { $together } halten: gerade vom Anhänger zur Maschine je { $each } (49 CFR 393.106, 393.110).
trailer-carries = { $rating ->
    [axle] Die Achsen des Anhängers tragen ihre Last im zulässigen Bereich.
   *[total] Maschine und Anhänger bleiben zusammen im zulässigen Gesamtgewicht.
}
    .short = Anhänger trägt
    .workshop = { $rating ->
        [axle] Achsen des Anhängers
       *[total] Anhänger mit Maschine
    }: { $load }, zulässig { $rated }, { $left } bleiben.
trailer-narrow = Die Reifen der Maschine stehen { $beyond } breiter als die Ladefläche des Anhängers.
    .short = Anhänger zu schmal
    .workshop = Über die Reifen { $width }, Ladefläche { $deck }: { $beyond } zu breit.
trailer-overloaded = { $rating ->
    [axle] Die Achsen des Anhängers würden { $over } mehr tragen als zulässig.
   *[total] Maschine und Anhänger sind zusammen { $over } schwerer als zulässig.
}
    .short = Anhänger überladen
    .workshop = { $rating ->
        [axle] Achsen des Anhängers
       *[total] Anhänger mit Maschine
    }: { $load }, zulässig { $rated }, { $over } zu viel.
trailer-short = Die Ladefläche des Anhängers ist kürzer als der Radstand der Maschine.
    .short = Anhänger zu kurz
    .workshop = Radstand { $wheelbase }, Ladefläche { $deck }.
trailer-unknown = Für { $trailer } nicht angegeben: { $missing-name }.
    .short = Anhänger ohne Angaben
    .workshop = { $trailer }: { $missing-name } nicht angegeben.
tyre-overloaded = { $axle ->
    [front] Die Vorderreifen müssten mehr tragen, als für sie zulässig ist.
   *[rear] Die Hinterreifen müssten mehr tragen, als für sie zulässig ist.
}
    .short = { $axle ->
        [front] Vorderreifen überlastet
       *[rear] Hinterreifen überlastet
    }
    .workshop = { $axle ->
        [front] Je Vorderreifen
       *[rear] Je Hinterreifen
    }: Last { $load }, zulässig { $rated }, { $over } zu viel.
wiring-differs = Die Stecker sind verschieden; einer muss getauscht werden.
    .short = Stecker zu tauschen
    .workshop = { $roles-name }: { $carrier } an { $a }, { $carried } an { $b }.
wiring-fits = Die Stecker passen zusammen.
    .short = Stecker passen
    .workshop = { $roles-name }: { $connector } auf beiden Seiten.
