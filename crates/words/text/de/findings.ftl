access-unknown = Es fehlen Angaben; deshalb ist nicht bekannt, ob die Maschine am Einsatzort hineinkommt.
    .short = Zufahrt nicht bekannt
    .workshop = Zufahrt: Es fehlen Angaben zu { $item }: { $missing-name }.
adapter-goes-in = { $item } kommt dazwischen.
    .short = { $item } nötig
    .workshop = { $item } montieren{ $work ->
        [none] .
       *[other] : { $work } Werkstattzeit.
    }
adapter-not-needed = { $item } wird hier nicht gebraucht.
    .short = { $item } nicht nötig
    .workshop = { $item } verbindet in dieser Zusammenstellung nichts und kann wegbleiben.
arm-on-hitch = Graben Sie nicht mit { $item } nur am Dreipunkt: Das Gerät kann nach oben und über den Fahrer gedrückt werden und ihn quetschen. Bauen Sie einen Rahmen an oder, wo die Anleitung es erlaubt, die Verstrebung des Herstellers.
    .short = Heckbagger nur am Dreipunkt
    .workshop = { $item } hängt nur am Dreipunkt, ohne Rahmen, und kann nach oben und über den Fahrer gedrückt werden. So nicht graben. Einen Rahmen anbauen oder, wo die Anleitung es erlaubt, die Verstrebung des Herstellers.
axle-overloaded = { $axle ->
    [front] Die Vorderachse müsste { $over } mehr tragen, als für sie zulässig ist.
   *[rear] Die Hinterachse müsste { $over } mehr tragen, als für sie zulässig ist.
}
    .short = { $axle ->
        [front] Vorderachse { $over } zu hoch belastet
       *[rear] Hinterachse { $over } zu hoch belastet
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
        [front] Vorderachse: { $left } Reserve
       *[rear] Hinterachse: { $left } Reserve
    }
    .workshop = { $axle ->
        [front] Vorderachse
       *[rear] Hinterachse
    }: Last { $load }, zulässig { $rated }, Reserve { $left }.
bar-in-the-way = { $bar ->
    [stays-up] Der Überrollbügel muss aufgestellt bleiben: Geklappt stieße er an { $item } ({ $overlap }).
    [folded] Der geklappte Überrollbügel stößt an { $item } ({ $overlap }).
   *[up] Der Überrollbügel stößt an { $item } ({ $overlap }).
}
    .short = { $bar ->
        [stays-up] Überrollbügel muss oben bleiben
       *[up] Überrollbügel stößt um { $overlap } an
    }
    .workshop = { $bar ->
        [stays-up] Überrollbügel aufgestellt lassen: Geklappt stieße er um { $overlap } in { $item }.
        [folded] Der geklappte Überrollbügel stößt um { $overlap } in { $item }.
       *[up] Der aufgestellte Überrollbügel stößt um { $overlap } in { $item }.
    }
bolt-not-for-tapped = Schrauben { $bolt } gehen nicht in die Gewindelöcher von { $side }: Das Gewinde hat { $tapped }.
    .short = Schrauben passen nicht in die Gewindelöcher
    .workshop = { $roles-name }: Schrauben { $bolt }, Gewindelöcher von { $side } { $tapped }. Sie lassen sich nicht einschrauben; nichts mit Gewalt, kein neues Gewinde ohne Zustimmung des Herstellers.
bolt-too-thick = Schrauben { $bolt } gehen nicht durch die Löcher von { $side } ({ $hole }).
    .short = Schrauben zu dick für die Löcher
    .workshop = { $roles-name }: Löcher von { $side } { $hole }, Schrauben { $bolt }: { $over } zu dick, mehr als man Löcher aufbohrt.
bolts-stated-differently = Für die Schrauben zwischen { $b } und { $a } sind zwei Größen angegeben: { $least } und { $most }. Fragen Sie nach, welche gilt.
    .short = Zwei Schraubengrößen angegeben
    .workshop = { $roles-name }: auf einer Seite Schrauben { $least }, auf der anderen { $most }. Gerechnet mit { $most }; vor jedem Kauf klären, was stimmt.
bolts-unknown = Nur durch { $bolts } von { $holes } Löchern gehen Schrauben. Ob das reicht, muss der Hersteller sagen.
    .short = Genügend Schrauben?
    .workshop = Die eine Platte hat { $holes } Löcher, die andere { $bolts }. Den Hersteller fragen, wie viele Schrauben diese Verbindung braucht.
bolts-will-not-hold = Die Löcher von { $side } ({ $hole }) sind viel zu weit für Schrauben { $bolt }: Kopf und Scheibe fallen durch.
    .short = Löcher zu weit für die Schrauben
    .workshop = { $roles-name }: Löcher von { $side } { $hole } bei Schrauben { $bolt }; die gewöhnliche Scheibe deckt sie nicht (übliche Praxis).
clearance-hit = { $item } stößt an { $other }.
    .short = { $item } stößt um { $overlap } an { $other }
    .workshop = { $item }, { $shape-name }, stößt um { $overlap } in { $other }, { $other-shape-name }.
clearance-tight = { $item } kommt { $other } zu nahe.
    .short = { $item } nur { $gap } von { $other }
    .workshop = { $item }, { $shape-name }, zu { $other }, { $other-shape-name }: { $gap } Abstand, nötig { $wanted } (übliche Praxis).
clearance-unknown = Eines der beiden hat im Katalog keinen Umriss; der Abstand ist deshalb unbekannt.
    .short = Umriss fehlt
    .workshop = Es fehlen Angaben zu { $missing-of }: { $missing-name }.
closure-meets = An der Hinterachse angeschraubt, trifft { $b } auch die vordere Befestigung von { $a }.
    .short = Trifft die vordere Befestigung
    .workshop = Vordere Befestigung: Abweichung { $off-by }, { $margin-way ->
        [short] davon { $margin } zu viel
       *[spare] { $margin } Luft
    }; die Zeichnungen können zusammen ±{ $worst-case } abweichen{ $slot ->
        [none] .
       *[other] ; das Langloch gibt { $slot }.
    }
closure-misses = An der Hinterachse angeschraubt, verfehlt { $b } die vordere Befestigung von { $a }: { $longer } { $longer-way ->
    [shorter] zu kurz
   *[longer] zu lang
}.
    .short = Vordere Befestigung: { $off-by } daneben
    .workshop = Vordere Befestigung: Abweichung { $off-by }, { $margin-way ->
        [short] davon { $margin } zu viel
       *[spare] { $margin } Luft
    }; die Zeichnungen können zusammen ±{ $worst-case } abweichen. Zwischen seinen Befestigungen ist der Rahmen { $longer-way ->
        [shorter] { $longer } kürzer
       *[longer] { $longer } länger
    } als die Befestigung an der Maschine.
closure-height-off = An der Hinterachse angeschraubt, verfehlt { $b } die vordere Befestigung von { $a }: vorn { $higher } { $higher-way ->
    [lower] zu tief
   *[higher] zu hoch
}.
    .short = Vordere Befestigung: { $off-by } daneben
    .workshop = Vordere Befestigung: Der Rahmen liegt vorn { $higher } { $higher-way ->
        [lower] zu tief
       *[higher] zu hoch
    }, Abweichung insgesamt { $off-by }, { $margin-way ->
        [short] davon { $margin } zu viel
       *[spare] { $margin } Luft
    }; die Zeichnungen können zusammen ±{ $worst-case } abweichen. Die Schrauben an der Achse lassen ihn nur um ihr Spiel drehen.
closure-aside = An der Hinterachse angeschraubt, verfehlt { $b } die vordere Befestigung von { $a }: Die Platten { $aside-way ->
    [crossing] überschneiden sich um { $off-by }
   *[apart] liegen { $off-by } auseinander
}.
    .short = Vordere Befestigung: { $off-by } daneben
    .workshop = Vordere Befestigung: Seitlich { $aside-way ->
        [crossing] überschneiden sich die Platten um { $off-by }; der Rahmen federt bis zu { $limit }
       *[apart] liegen die Platten { $off-by } auseinander; Beilagen gleichen { $limit } aus
    } (übliche Praxis).
closure-faces-apart = An der Hinterachse angeschraubt, verfehlt { $b } die vordere Befestigung von { $a }: Die Platten liegen nicht aneinander an.
    .short = Vordere Platten falsch gerichtet
    .workshop = Vordere Befestigung: Die Platte des Rahmens zeigt nicht zu der der Maschine, oder nicht mit derselben Seite nach oben.
closure-open = Nach den Zeichnungen ist nicht zu entscheiden, ob { $b } die vordere Befestigung von { $a } trifft. Messen Sie zuerst.
    .short = Vordere Befestigung: zu { $probability } passend
    .workshop = Vordere Befestigung: Abweichung { $off-by }, { $margin-way ->
        [short] davon { $margin } zu viel
       *[spare] { $margin } Luft
    }; die Zeichnungen können zusammen ±{ $worst-case } abweichen; mit { $probability } Wahrscheinlichkeit trifft es{ $settles ->
        [none] .
       *[other] . Ein Maß auf ±{ $settles } genau würde es klären.
    }
closure-unknown = Es ist nicht bekannt, wo die vordere Befestigung sitzt; ob { $b } sie trifft, ist deshalb offen.
    .short = Vordere Befestigung: Angaben fehlen
    .workshop = Vordere Befestigung: Es fehlen Angaben zu { $missing-of }: { $missing-name }.
corner-clears = Die Maschine kommt in einem Zug um die Ecke hinter dem Tor.
    .short = Kommt um die Ecke, { $wanted } genügen
    .workshop = Tor { $gate }, danach rechtwinklig in einen Weg von { $path }: { $wanted } Wegbreite genügen.
corner-tight = Die Maschine kommt nicht in einem Zug um die Ecke hinter dem Tor. Versuchen Sie, ob es mit Rangieren geht.
    .short = { $wanted ->
        [none] Ecke ist eng
       *[other] Ecke braucht { $wanted } Wegbreite
    }
    .workshop = Tor { $gate }, danach rechtwinklig in einen Weg von { $path }: { $wanted ->
        [none] keine Wegbreite genügt für einen Zug, weil das Heck gegen das Tor ausschwenkt.
       *[other] ein Zug braucht einen Weg von { $wanted }.
    }
coupler-differs = Die Hydraulikkupplungen sind verschieden; der Schlauch braucht eine andere Kupplung.
    .short = Andere Kupplung am Schlauch nötig
    .workshop = { $roles-name }: { $carrier } an { $a }, { $carried } an { $b }. Kupplung am Schlauch tauschen.
coupler-fits = Die Hydraulikkupplungen passen zusammen.
    .short = Hydraulikkupplungen passen
    .workshop = { $roles-name }: { $standard }, Größe { $size }, auf beiden Seiten.
coupler-unknown = Von einer Seite ist die Hydraulikkupplung nicht bekannt.
    .short = Kupplung: Angaben fehlen
    .workshop = { $roles-name }: Es fehlen Angaben zu { $missing-of }: { $missing-name }.
coupling-weak = Die Kupplung des Anhängers trägt { $most } Stützlast; beladen braucht er mindestens { $least }.
    .short = Kupplung trägt { $most } von { $least }
    .workshop = Zulässige Stützlast der Kupplung { $most }; kleinste Stützlast des beladenen Anhängers { $least }.
driver-seat-cannot = Der Fahrersitz kann nicht so stehen wie gewählt: { $state ->
    [folded] Er klappt nicht nach vorn.
    [slid] Er rückt nicht weit genug nach vorn.
    [turned] Er dreht sich nicht.
   *[other] Nichts sagt, dass es geht.
}
    .short = Fahrersitz geht so nicht
    .workshop = Fahrersitz: { $state ->
        [folded] muss nach vorn klappen; dieser klappt nicht.
        [slid] muss nach vorn rücken; dieser rückt nicht weit genug.
        [turned] muss sich umdrehen lassen; dieser dreht sich nicht.
       *[other] nichts sagt, dass er so stehen kann.
    }
driver-seat-moves = { $state ->
    [folded] Zum Arbeiten vom hinteren Sitz den Fahrersitz nach vorn klappen.
    [slid] Zum Arbeiten vom hinteren Sitz den Fahrersitz { $by } nach vorn schieben.
    [turned] Zum Arbeiten den Fahrersitz umdrehen.
   *[off] Zum Arbeiten vom hinteren Sitz muss der Fahrersitz abgebaut werden.
}
    .short = { $state ->
        [folded] Fahrersitz klappen
        [slid] Fahrersitz nach vorn schieben
        [turned] Fahrersitz umdrehen
       *[off] Fahrersitz muss ab
    }
    .workshop = Fahrersitz während der Arbeit: { $state ->
        [folded] nach vorn klappen, von Hand.
        [slid] { $by } nach vorn schieben, von Hand.
        [turned] umdrehen, von Hand.
       *[off] abbauen{ $hours ->
            [none] .
           *[other] , { $hours }.
        }
    }
deck-close = { $way ->
    [length] Der Radstand der Maschine ist fast genau so lang wie die Ladefläche des Anhängers. Messen Sie beides, bevor Sie verladen.
   *[width] Über die Reifen gemessen ist die Maschine fast genau so breit wie die Ladefläche des Anhängers. Messen Sie beides, bevor Sie verladen.
}
    .short = Ladefläche: erst messen
    .workshop = { $way ->
        [length] Radstand
       *[width] Über die Reifen
    } { $size }, Ladefläche { $deck }: Beides zusammen kann um { $off } abweichen.
equipment-answers = { $a } wird bei „{ $port }“ mit { $what } verbunden, und das ist nicht an der Maschine. Ohne das ist die Verbindung nicht belegt.
    .short = Nicht an der Maschine: { $what }
    .workshop = Die Anschlussstelle „{ $port }“ von { $a } wird mit { $what } verbunden, das nicht an der Maschine ist. Anbauen oder eintragen, dass es da ist.
equipment-in-the-way = { $what } ist { $item } im Weg und muss ab.
    .short = Im Weg: { $what }
    .workshop = { $what } ({ $shape }) und { $item } ({ $other-shape }) überschneiden sich um { $overlap }. Abbauen.
equipment-lacks = Für { $item } fehlt an der Maschine „{ $what }“.
    .short = Fehlt für { $item }: { $what }
    .workshop = { $item } braucht die Anschlussstelle „{ $what }“, die die Maschine so, wie sie steht, nicht hat.
equipment-may-be-in-the-way = { $what } ist { $item } vielleicht im Weg.
    .short = Vielleicht im Weg: { $what }
    .workshop = { $what } ({ $shape }) und { $item } ({ $other-shape }) überschneiden sich von der Seite um { $overlap }. Nachsehen, ob eines am anderen vorbeigeht.
faces-turned = Fläche an Fläche mit { $a } stünde { $b } { $way ->
    [half-round] verkehrt herum
    [tipped] gekippt
   *[on-its-side] schief, auf der Seite oder auf dem Kopf
}.
    .short = Flächen schauen in die falsche Richtung
    .workshop = { $roles-name }: Die beiden Flächen können einander nicht ansehen, wenn { $b } { $way ->
        [half-round] richtig herum
       *[other] aufrecht
    } steht.
frame-idle = { $item } bleibt leer: { $other } hängt dahinter am Dreipunkt.
    .short = An { $item } hängt nichts
    .workshop = { $other } hängt am Dreipunkt und nichts an { $item }. Den Rahmen abnehmen oder ein Anbaugerät oder einen Adapter für seine Geräteaufnahme wählen.
frame-in-the-ground = { $item } würde { $below } tief in den Boden reichen.
    .short = Reicht { $below } in den Boden
    .workshop = Der tiefste Punkt von { $item } liegt { $below } unter dem Boden.
frame-low = { $item } hängt nur { $height } über dem Boden; nötig sind { $wanted }.
    .short = Nur { $height } über dem Boden
    .workshop = Der tiefste Punkt von { $item } liegt { $height } über dem Boden; nötig sind { $wanted } (übliche Praxis).
front-axle-heavy-enough = Auf den Vorderrädern bleibt genug Gewicht zum Lenken: { $share }, nötig sind mindestens { $least }.
    .short = Vorderachse { $share }, nötig { $least }
    .workshop = Die Vorderachse trägt { $share } des Leergewichts der Maschine; nötig sind mindestens { $least } (deutsche Straßenvorschrift, so auch die meisten Anleitungen).
front-axle-lifts = Die Vorderräder würden vom Boden abheben. Fahren Sie so nicht: Nötig sind mindestens { $ballast } Frontballast.
    .short = Vorderräder heben ab: { $ballast } Ballast
    .workshop = Die Vorderräder heben ab: Allein um sie am Boden zu halten, fehlen { $lift }. Für den Mindestanteil mindestens { $ballast } Ballast im Abstand von { $ballast-at } vor der Hinterachse anbringen.
front-axle-light = Die Vorderräder werden zu leicht, um sicher zu lenken. Nötig sind mindestens { $ballast } Frontballast.
    .short = { $ballast } Frontballast nötig
    .with = Frontballast
    .workshop = Die Vorderachse trägt { $share } des Leergewichts der Maschine; nötig sind mindestens { $least } (deutsche Straßenvorschrift, so auch die meisten Anleitungen). Dafür mindestens { $ballast } Ballast im Abstand von { $ballast-at } vor der Hinterachse anbringen.
front-axle-near-least = Die Vorderräder werden vielleicht zu leicht, um sicher zu lenken: Die Massen können um mehr abweichen, als übrig bleibt. Wiegen Sie die Vorderachse oder bringen Sie mindestens { $ballast } Frontballast an.
    .short = Vorderachse wiegen
    .workshop = Die Vorderachse trägt { $share } des Leergewichts der Maschine; nötig sind mindestens { $least }, und ihre Last kann um { $off } abweichen. Mindestens { $ballast } Ballast im Abstand von { $ballast-at } vor der Hinterachse klären es.
front-share-of-total-low = Die Vorderräder tragen { $share } von allem, was auf den Rädern steht. Üblich, aber ohne Quelle, sind { $least }: Mindestens { $ballast } Frontballast reichen dafür.
    .short = Vorn wenig vom Gesamtgewicht
    .workshop = Die Vorderachse trägt { $share } des Gesamtgewichts; übliche Praxis, ohne Quelle: { $least }. Dafür reichen mindestens { $ballast } Ballast im Abstand von { $ballast-at } vor der Hinterachse.
gate-close = { $way ->
    [height] Die Maschine ist fast genau so hoch wie das Tor. Messen Sie beides, bevor Sie hindurchfahren.
    [folded] Mit geklapptem Überrollbügel ist die Maschine fast genau so hoch wie das Tor. Messen Sie beides, bevor Sie hindurchfahren, und klappen Sie den Bügel nur, wie die Anleitung es erlaubt.
   *[width] Die Maschine ist fast genau so breit wie das Tor. Messen Sie beides, bevor Sie hindurchfahren.
}
    .short = Tor: erst messen
    .workshop = { $way ->
        [height] Höhe
        [folded] Höhe mit geklapptem Überrollbügel
       *[width] Breite
    } { $size }, Tor { $gate }: Beides zusammen kann um { $off } abweichen.
gate-low = { $folded ->
    [none] Die Maschine ist { $beyond } zu hoch für das Tor.
   *[other] Mit aufgestelltem Überrollbügel ist die Maschine { $beyond } zu hoch für das Tor. Klappen Sie den Bügel nur zum Durchfahren, auf ebenem Boden und im Schritttempo, soweit die Anleitung es erlaubt; stellen Sie ihn danach sofort wieder auf. Legen Sie bei geklapptem Bügel keinen Gurt an.
}
    .short = Tor { $beyond } zu niedrig
    .with = geklapptem Überrollbügel
    .workshop = Höhe { $height }, Tor { $gate }, { $beyond } zu hoch{ $folded ->
        [none] .
       *[other] ; mit geklapptem Überrollbügel { $folded }. Nur zum Durchfahren klappen, auf ebenem Boden, im Schritttempo, soweit die Anleitung es erlaubt; danach wieder aufstellen.
    }
gate-narrow = Die Maschine ist { $beyond } breiter als das Tor.
    .short = Tor { $beyond } zu schmal
    .workshop = Breite { $width }, Tor { $gate }: { $beyond } zu breit.
gate-passes = Die Maschine passt durch das Tor, auf jeder Seite bleiben { $left }.
    .short = Tor: je Seite { $left } Luft
    .workshop = Breite { $width }, Tor { $gate }: auf jeder Seite bleiben { $left }.
ground-carries = Der Boden am Einsatzort trägt die schwerste Achse der Maschine.
    .short = Boden: { $left } Reserve
    .workshop = { $axle ->
        [front] Vorderachse
       *[rear] Hinterachse
    }: Last { $load }, der Boden trägt { $most }, Reserve { $left }.
ground-load-near = Die schwerste Achse der Maschine kommt dem, was der Boden am Einsatzort trägt, so nahe, dass sie gewogen werden muss.
    .short = Achse für den Boden wiegen
    .workshop = { $axle ->
        [front] Vorderachse
       *[rear] Hinterachse
    }: Last { $load }, höchstens { $off } Abweichung, der Boden trägt { $most }.
ground-overloaded = Die schwerste Achse der Maschine ist { $over } schwerer, als der Boden am Einsatzort trägt.
    .short = { $over } zu schwer für den Boden
    .workshop = { $axle ->
        [front] Vorderachse
       *[rear] Hinterachse
    }: Last { $load }, der Boden trägt { $most }, { $over } zu viel.
hitch-differs = Der Dreipunkt ist zu klein für { $b }: Die Bolzen gehen nicht hinein.
    .short = Dreipunktkategorien verschieden
    .workshop = Dreipunktkategorie { $carrier } an { $a }, { $carried } an { $b }: Die Bolzen sind zu dick.
hitch-dimension-misfits = { $b } lässt sich nicht am Dreipunkt anhängen: Ein Maß passt nicht.
    .short = Dreipunktmaß { $over } daneben
    .workshop = { $dimension-name }: { $carrier } an { $a }, { $carried } an { $b }, { $over } zu viel.
hitch-dimension-open = Nach den Maßen ist nicht zu entscheiden, ob { $b } an den Dreipunkt passt. Messen Sie zuerst.
    .short = Dreipunkt: zu { $probability } passend
    .workshop = { $dimension-name }: { $carrier } an { $a }, { $carried } an { $b }; mit { $probability } Wahrscheinlichkeit passt es{ $settles ->
        [none] .
       *[other] . Auf ±{ $settles } genau bekannt, wäre es entschieden.
    }
hitch-fits = Der Dreipunkt hat die richtige Größe.
    .short = Dreipunktkategorie passt
    .workshop = Dreipunktkategorie { $category } (ISO 730) auf beiden Seiten.
hitch-frame-stiff = Die Haken des Dreipunkt-Schnellkupplers haben einen anderen Abstand als die Bolzen von { $b }.
    .short = Schnellkuppler passt nicht
    .workshop = Dreipunktkategorie { $carrier } an { $a } mit Dreipunkt-Schnellkuppler, { $carried } an { $b }: Die Haken lassen sich nicht versetzen. Den Schnellkuppler abnehmen.
hitch-needs-bushings = Der Dreipunkt ist eine Größe größer, als { $b } braucht; Reduzierhülsen gleichen das aus.
    .short = Reduzierhülsen nötig
    .workshop = Dreipunktkategorie { $carrier } an { $a }, { $carried } an { $b }: Reduzierhülsen einsetzen.
hitch-other-span = Die Unterlenker müssen auf den Bolzenabstand von { $b } gestellt werden.
    .short = Unterlenker zu verstellen
    .workshop = Dreipunktkategorie { $carrier } an { $a }, { $carried } an { $b }: Die Bolzen sind gleich, ihr Abstand nicht. Unterlenker verstellen und die Seitenstabilisatoren einstellen.
hitch-unknown = Die Größe eines Dreipunkts ist nicht bekannt.
    .short = Dreipunkt: Angaben fehlen
    .workshop = Dreipunkt: Es fehlen Angaben zu { $missing-of }: { $missing-name }.
holes-drilled = { $drill ->
    [one] Sie haben gewählt, { $drill } Loch in { $side } zu bohren. Fragen Sie vor dem Bohren den Hersteller.
   *[other] Sie haben gewählt, { $drill } Löcher in { $side } zu bohren. Fragen Sie vor dem Bohren den Hersteller.
}
    .short = { $drill ->
        [one] { $drill } Loch zu bohren (so gewählt)
       *[other] { $drill } Löcher zu bohren (so gewählt)
    }
    .workshop = { $roles-name }, wenn der Hersteller zustimmt: { $drill ->
        [one] { $drill } Loch
       *[other] { $drill } Löcher
    } auf { $side }, { $port }, durchzeichnen und bohren; dann { $bolts ->
        [one] passt { $bolts } Schraube
       *[other] passen { $bolts } Schrauben
    } mit { $margin } Luft. Arbeitszeit { $work }.
holes-may-meet = Nach den Zeichnungen ist nicht zu entscheiden, ob die Schraubenlöcher von { $b } und { $a } übereinanderliegen. Messen Sie zuerst.
    .short = Schraubenlöcher: zu { $probability } passend
    .workshop = { $roles-name }: { $bolts ->
        [one] { $bolts } Schraube
       *[other] { $bolts } Schrauben
    }, { $margin-way ->
        [short] es fehlen { $margin }
       *[spare] { $margin } Luft
    }; die Zeichnungen können zusammen ±{ $worst-case } abweichen; mit { $probability } Wahrscheinlichkeit gehen alle Schrauben hinein{ $settles ->
        [none] .
       *[other] . Ein Maß auf ±{ $settles } genau würde es klären.
    }
holes-meet = Die Schraubenlöcher von { $b } und { $a } liegen übereinander.
    .short = Schraubenlöcher: { $margin } Luft
    .workshop = { $roles-name }: { $bolts ->
        [one] { $bolts } Schraube geht
       *[other] { $bolts } Schrauben gehen
    } hinein, { $margin } Luft; die Zeichnungen können zusammen ±{ $worst-case } abweichen.
holes-miss = Die Schraubenlöcher von { $b } und { $a } liegen nicht übereinander.
    .short = { $margin ->
        [none] Schraubenlöcher passen nicht
       *[other] { $margin-way ->
            [short] Schraubenlöcher: es fehlen { $margin }
           *[spare] Schraubenlöcher passen nicht
        }
    }
    .workshop = { $roles-name }: { $bolts ->
        [one] { $bolts } Schraube ist
       *[other] { $bolts } Schrauben sind
    } nötig, und in keiner Lage gehen sie hinein, auch nicht mit aufgebohrten oder neuen Löchern{ $margin ->
        [none] .
       *[other] ; bestenfalls { $margin-way ->
            [short] fehlen { $margin }
           *[spare] bleiben { $margin } Luft
        }, und die Zeichnungen können zusammen ±{ $worst-case } abweichen.
    }
holes-need-drilling = { $drill ->
    [one] In { $side } muss { $drill } Loch gebohrt werden.
   *[other] In { $side } müssen { $drill } Löcher gebohrt werden.
}
    .short = { $drill ->
        [one] { $drill } Loch zu bohren
       *[other] { $drill } Löcher zu bohren
    }
    .workshop = { $roles-name }, wenn der Hersteller zustimmt: { $drill ->
        [one] { $drill } Loch in { $side } bohren
       *[other] { $drill } Löcher in { $side } bohren
    }{ $port ->
        [none] {""}
       *[other] {" "}({ $port })
    }; { $bolts ->
        [one] dann geht { $bolts } Schraube hinein
       *[other] dann gehen { $bolts } Schrauben hinein
    } mit { $margin } Luft.{ $work ->
        [none] {""}
       *[other] {" "}Arbeitszeit { $work }.
    }
holes-need-opening = Die Schraubenlöcher müssen um bis zu { $open-by } aufgebohrt werden.
    .short = Löcher um { $open-by } aufzubohren
    .workshop = { $roles-name }, wenn der Hersteller zustimmt: Löcher um höchstens { $open-by } im Durchmesser aufbohren{ $open-carrier ->
        [none] {""}
       *[other] ; { $a }, { $carrier-port }: { $open-carrier }
    }{ $open-carried ->
        [none] {""}
       *[other] ; { $b }, { $carried-port }: { $open-carried }
    }; { $bolts ->
        [one] dann geht { $bolts } Schraube hinein
       *[other] dann gehen { $bolts } Schrauben hinein
    }.{ $margin-way ->
        [short] {" "}So, wie sie sind, fehlen { $margin }.
       *[spare] {""}
    }{ $work ->
        [none] {""}
       *[other] {" "}Arbeitszeit { $work }.
    }
holes-need-washers = Die Löcher von { $side } ({ $hole }) sind weit für Schrauben { $bolt }: dicke, große Scheiben unterlegen.
    .short = Große Unterlegscheiben nötig
    .workshop = { $roles-name }: Löcher von { $side } { $hole } bei Schrauben { $bolt }, weiter als die grobe Reihe; dicke, große Scheiben unter Kopf und Mutter legen (übliche Praxis).
holes-opened = Sie haben gewählt, die Schraubenlöcher von { $side } um { $open-by } aufzubohren.
    .short = Löcher um { $open-by } aufzubohren (so gewählt)
    .workshop = { $roles-name }: Löcher an { $side }, { $port }, um { $open-by } im Durchmesser aufbohren; dann { $bolts ->
        [one] passt { $bolts } Schraube
       *[other] passen { $bolts } Schrauben
    } mit { $margin } Luft. Arbeitszeit { $work }.
holes-plan-not-needed = { $kind ->
    [opening] Die Schraubenlöcher von { $item } müssen hier nicht aufgebohrt werden.
   *[drilling] An { $item } muss hier nicht gebohrt werden.
}
    .short = { $kind ->
        [opening] Aufbohren nicht nötig
       *[drilling] Bohren nicht nötig
    }
    .workshop = { $kind ->
        [opening] Aufbohren gewählt ({ $item }, { $port }), doch keine Verbindung dieser Zusammenstellung braucht es.
       *[drilling] Bohren gewählt ({ $item }, { $port }), doch keine Verbindung dieser Zusammenstellung braucht es.
    }
holes-plan-not-possible = { $kind ->
    [opening] Das gewählte Aufbohren an { $item } ist nicht möglich.
   *[drilling] Die gewählte Bohrung an { $item } ist nicht möglich.
}
    .short = { $kind ->
        [opening] Aufbohren nicht möglich
       *[drilling] Bohren nicht möglich
    }
    .workshop = { $reason ->
        [no-port] An { $item } gibt es das nicht: { $port }.
        [no-holes] { $item }, { $port }: keine Schraubenlöcher.
       *[too-much] { $item }, { $port }: höchstens 1 mm aufbohren (übliche Praxis).
    } Neu wählen.
holes-too-many = Es sind zu viele Schraubenlöcher, um jede Lage von { $b } auf { $a } zu prüfen. Legen Sie die beiden Teile aufeinander oder vergleichen Sie die Teilenummern.
    .short = Zu viele Löcher zum Vergleichen
    .workshop = { $roles-name }: { $holes } Löcher; bis zu { $most } werden verglichen, weniger, wo sie unregelmäßig liegen.
holes-unknown = Von einer Seite sind die Schraubenlöcher nicht bekannt; ob sie übereinanderliegen, ist deshalb offen.
    .short = Schraubenlöcher: Angaben fehlen
    .workshop = { $roles-name }: Es fehlen Angaben zu { $missing-of }: { $missing-name }.
hooks-hold = Die Haken von { $b } sitzen auf der Stange von { $a }, und der Verriegelungsbolzen geht hinein.
    .short = Haken und Bolzen passen
    .workshop = { $roles-name }: Haken und Verriegelungsbolzen innerhalb der üblichen { $limit }; Spiel { $play }.
hooks-may-hold = Nach den Zeichnungen ist nicht zu entscheiden, ob die Haken von { $b } zu { $a } passen. Messen Sie zuerst.
    .short = Haken: zu { $probability } passend
    .workshop = { $roles-name }: { $dimension-name }, { $play } zwischen beiden, üblich bis { $limit }; mit { $probability } Wahrscheinlichkeit hält es{ $settles ->
        [none] .
       *[other] . Auf ±{ $settles } genau bekannt, wäre es entschieden.
    }
hooks-misfit = Die Haken von { $b } passen nicht zu { $a }.
    .short = Haken passen nicht: { $off-by } daneben
    .workshop = { $roles-name }: { $dimension-name } { $carrier } an { $a }, { $carried } an { $b }: { $off-by } auseinander, üblich bis { $limit }.
hooks-need-bush = { $b } hat an { $a } { $play } Spiel. Eine Buchse oder Hülse gleicht das aus.
    .short = Buchse nötig
    .workshop = { $roles-name }: { $dimension-name } { $carrier } an { $a }, { $carried } an { $b }: Spiel { $play }, höchstens { $limit } (übliche Praxis). Buchse oder Hülse einsetzen, soweit der Hersteller es zulässt.
hooks-unknown = Ein Maß der Haken ist nicht bekannt.
    .short = Haken: Angaben fehlen
    .workshop = { $roles-name }: Es fehlen Angaben zu { $missing-of }: { $missing-name }.
hydraulic-lines-unknown = Ob sich die Hydraulikleitungen anschließen lassen, ist nicht bekannt, weil Angaben fehlen.
    .short = Hydraulikleitungen unbekannt
    .workshop = Hydraulikleitungen: Es fehlen Angaben zu { $missing-of }: { $missing-name }.
hydraulics-flow-high = Die Maschine fördert mehr Öl, als für das Anbaugerät zulässig ist.
    .short = Ölstrom { $flow }, höchstens { $most }
    .workshop = Ölstrom { $flow }; für das Anbaugerät sind höchstens { $most } zulässig. Stromteiler einbauen oder den Hersteller fragen.
hydraulics-flow-short = Die Maschine fördert { $flow } Öl, weniger als die { $least }, mit denen das Anbaugerät arbeitet.
    .short = Wenig Ölstrom
    .workshop = Ölstrom { $flow }; das Anbaugerät braucht { $least }. Jeder Hub dauert { $time-ratio }-mal so lange.
hydraulics-match = Die Hydraulik der Maschine passt zum Anbaugerät.
    .short = Hydraulik: { $flow } bei { $pressure }
    .workshop = Ölstrom { $flow } bei { $pressure }: { $power } hydraulische Leistung.
hydraulics-no-power-beyond = Das Anbaugerät braucht eine eigene Speisung von der Pumpe (Druckweiterleitung, Power Beyond), und die Maschine hat noch keine.
    .short = Druckweiterleitung nötig
    .workshop = Druckweiterleitung (Power Beyond): Das Anbaugerät braucht sie, die Maschine hat keine. Nachrüstsatz einbauen.
hydraulics-outlets-short = Die Maschine hat zu wenige Hydraulikanschlüsse.
    .short = Hydraulikanschlüsse: { $has }, nötig { $need }
    .workshop = Hydraulikanschlüsse: { $has } vorhanden, { $need } nötig. Zusatzsteuergerät oder Umschaltventil ergänzen.
hydraulics-pressure-high = Der Hydraulikdruck der Maschine ist höher, als für das Anbaugerät zulässig ist. Schließen Sie es nicht an, bevor eine Werkstatt das Druckbegrenzungsventil niedriger eingestellt hat.
    .short = Druck { $pressure }, höchstens { $most }
    .workshop = Druckbegrenzung { $pressure }; für das Anbaugerät sind höchstens { $most } zulässig. Nicht anschließen, bevor das Druckbegrenzungsventil niedriger eingestellt ist.
hydraulics-pressure-short = Der Hydraulikdruck der Maschine ist { $pressure }, weniger als die { $least }, mit denen das Anbaugerät arbeitet.
    .short = Wenig Hydraulikdruck
    .workshop = Druckbegrenzung { $pressure }; das Anbaugerät braucht { $least }.
hydraulics-unknown = Es fehlen Angaben zur Hydraulik. Schließen Sie das Anbaugerät nicht an, bevor Druck und Ölstrom bekannt sind.
    .short = Hydraulik: Angaben fehlen
    .workshop = Hydraulik: Es fehlen Angaben zu { $missing-of }: { $missing-name }.
implement-own-seat = Gewählt ist der eigene Sitz des Anbaugeräts, und dieses hat keinen.
    .short = Anbaugerät hat keinen eigenen Sitz
    .workshop = Sitz: Der eigene des Anbaugeräts ist gewählt; dieses hat keinen.
joint-listed = Der Hersteller führt { $a } und { $b } zusammen auf.
    .short = Zusammen aufgeführt
    .workshop = { $roles-name }: { $guide ->
        [none] vom Hersteller zusammen aufgeführt, außerhalb der Liste.
       *[other] zusammen aufgeführt in { $guide } vom { $date }.
    }
joint-replaced-part = Nach den Teileersetzungen des Herstellers sind { $a } und { $b } durch die gleichen Teile verbunden wie eine Kombination seiner Liste.
    .short = Ersetzte Teile wie aufgeführt
    .workshop = { $roles-name }: Über Teileersetzung führt { $part } zur aufgeführten Kombination „{ $witness }“ + „{ $witness-other }“.
joint-same-part = { $a } und { $b } sind durch dieselben Teile verbunden wie eine Kombination der Herstellerliste.
    .short = Gleiche Teile wie aufgeführt
    .workshop = { $roles-name }: Dasselbe Teil, { $part }, stellt diese Verbindung in der aufgeführten Kombination „{ $witness }“ + „{ $witness-other }“ her.
kinds-differ = { $b } und { $a } haben verschiedene Anschlüsse.
    .short = Verschiedene Anschlüsse
    .workshop = { $roles-name }: { $carrier-name } an { $a }, { $carried-name } an { $b }.
lift-enough = Der Dreipunkt-Kraftheber kann das Anbaugerät heben, mit { $left } Reserve.
    .short = Hubkraft: { $left } Reserve
    .workshop = Hubkraft { $lift }, wo das Anbaugerät hängt, Masse { $mass }: Reserve { $left }.
lift-short = Der Dreipunkt-Kraftheber kann das Anbaugerät nicht heben: Es ist { $over } zu schwer.
    .short = { $over } zu schwer für den Kraftheber
    .workshop = Hubkraft { $lift }, wo das Anbaugerät hängt, Masse { $mass }: { $over } zu schwer.
lift-unknown = Ob der Dreipunkt-Kraftheber das Anbaugerät heben kann, ist nicht bekannt.
    .short = Hubkraft: Angaben fehlen
    .workshop = Heben: Es fehlen Angaben zu { $missing-of }: { $missing-name }.
listing-and-dimensions-disagree = Der Hersteller führt { $a } und { $b } zusammen auf, aber nach den Maßen passen sie nicht zusammen. Eines von beiden stimmt nicht. Kaufen Sie nichts, bevor das geklärt ist.
    .short = Liste und Maße widersprechen sich
    .workshop = { $roles-name }: zusammen aufgeführt, passt aber nach den Maßen nicht{ $margin ->
        [none] .
       *[other] : { $margin-way ->
            [short] es fehlen { $margin }
           *[spare] { $margin } Luft
        }{ $worst-case ->
            [none] .
           *[other] ; die Zeichnungen können zusammen ±{ $worst-case } abweichen.
        }
    } Vor jedem Kauf die Teilenummern an den Geräten vergleichen.
load-long = Die Ladung ragt hinten weiter über den Anhänger hinaus als eine Grenze im Straßenverkehr. Fragen Sie die Straßenbehörde, bevor Sie damit fahren.
    .short = Ladung ragt weit hinaus
    .workshop = Ragt hinten { $overhang } hinaus, Grenze { $most } ({ $limit-name }): { $beyond } darüber.
load-near-rating = { $bearer ->
    [front-axle] Die Vorderachse kommt ihrer zulässigen Last so nahe, dass sie gewogen werden muss.
    [rear-axle] Die Hinterachse kommt ihrer zulässigen Last so nahe, dass sie gewogen werden muss.
    [front-tyre] Die Vorderreifen kommen ihrer zulässigen Last so nahe, dass die Achse gewogen werden muss.
    [rear-tyre] Die Hinterreifen kommen ihrer zulässigen Last so nahe, dass die Achse gewogen werden muss.
   *[hitch] Das Anbaugerät kommt der Hubkraft des Krafthebers so nahe, dass es gewogen werden muss.
}
    .short = { $bearer ->
        [front-axle] Vorderachse wiegen
        [rear-axle] Hinterachse wiegen
        [front-tyre] Für die Vorderreifen wiegen
        [rear-tyre] Für die Hinterreifen wiegen
       *[hitch] Anbaugerät wiegen
    }
    .workshop = { $bearer-name }: Last { $load }, höchstens { $off } Abweichung, zulässig { $rated }.
load-wide = Die Ladung ist breiter als eine Grenze im Straßenverkehr. Fragen Sie die Straßenbehörde, bevor Sie damit fahren.
    .short = Ladung { $beyond } zu breit
    .workshop = Breite { $width }, Grenze { $most } ({ $limit-name }): { $beyond } darüber.
loading-unknown = Es fehlen Angaben; deshalb ist nicht bekannt, wie sich die Maschine verladen lässt.
    .short = Verladen nicht bekannt
    .workshop = Verladen: Es fehlen Angaben zu { $item }: { $missing-name }.
loads-unknown = Es fehlen Angaben; deshalb sind die Achslasten nicht bekannt. Heben Sie das Anbaugerät nicht und fahren Sie nicht damit, bevor sie bekannt sind.
    .short = Achslasten nicht bekannt
    .workshop = Achslasten: Es fehlen Angaben zu { $item }: { $missing-name }.
measured-against-listing = Der Hersteller führt { $a } und { $b } zusammen auf, aber nach dem, was an { $unit } gemessen wurde, passen sie nicht zusammen{ $margin ->
    [none] .
   *[other] : { $margin-way ->
        [short] Es fehlen { $margin }
       *[spare] { $margin } Luft
    }.
}
    .short = Gemessen: passt nicht, obwohl aufgeführt
    .workshop = { $roles-name }: zusammen aufgeführt, passt aber nach den Maßen am Gerät nicht{ $margin ->
        [none] .
       *[other] : { $margin-way ->
            [short] es fehlen { $margin }
           *[spare] { $margin } Luft
        }.
    } Für dieses Gerät gilt, was gemessen wurde. Vor jedem Kauf noch einmal messen.
measurement-not-used = Eine Messung an { $item } lässt sich nicht verwenden. Messen Sie bitte neu.
    .short = Messung nicht verwendet
    .workshop = { $item }, { $port }, { $dimension-name }: { $reason ->
        [no-port] { $port } gibt es an { $item } nicht.
        [no-dimension] { $port } hat kein solches Maß.
        [half-range] so ungenau kann sie nicht sein.
       *[impossible] dieser Wert kann nicht stimmen.
    }
metal-too-little = Ein Loch von { $hole } in { $side } ließe zu wenig Metall stehen: { $metal } bis zum { $towards ->
    [hole] nächsten Loch
   *[edge] Rand
}, nötig sind { $least }.
    .short = Zu wenig Metall um das Loch
    .workshop = { $roles-name }: { $side }, { $port }: von der Mitte eines Lochs von { $hole } { $metal } bis { $towards ->
        [hole] zur Mitte des nächsten
       *[edge] zum Rand der Platte
    }, mindestens { $least } nötig (nach den europäischen Regeln für den Stahlbau, als Richtwert).
metal-unknown = Bevor in { $side } ein Loch von { $hole } entsteht: nachsehen, wie weit die Platte reicht. Von der Mitte bis zum Rand sind { $least } nötig.
    .short = Abstand zum Rand nicht bekannt
    .workshop = { $roles-name }: { $side }, { $port }: von den äußersten Löchern bis zum Rand der Platte messen. Ein Loch von { $hole } braucht { $least } ab seiner Mitte (nach den europäischen Regeln für den Stahlbau, als Richtwert).
must-come-off = Von der Maschine abzubauen: { $what }.
    .short = Abzubauen: { $what }
    .workshop = Für { $item } von der Maschine abzubauen: { $what }.
must-go-on = Die Maschine braucht: { $what }.
    .short = Nötig: { $what }
    .workshop = Für { $item } an der Maschine nötig: { $what }.
needs-frame = { $item } braucht einen Anbaurahmen.
    .short = Anbaurahmen nötig
    .workshop = { $item } wird in eine Geräteaufnahme gehängt; der Dreipunkt allein hat keine.
nose-load-in-range = { $heading ->
    [backward] Rückwärts auf dem Anhänger kann die Maschine so stehen, dass die Stützlast stimmt.
   *[forward] Vorwärts auf dem Anhänger kann die Maschine so stehen, dass die Stützlast stimmt.
}
    .short = Stützlast { $nose }
    .workshop = Stützlast { $nose } (zulässig { $most-way ->
        [same] { $least }
       *[range] { $least } bis { $most }
    }), wenn die Maschine { $heading ->
        [backward] rückwärts
       *[forward] vorwärts
    } steht und ihre Hinterachse { $to-way ->
        [same] { $from }
       *[range] { $from } bis { $to }
    } vor der Hinterkante der Ladefläche.
nose-load-near = Ob sich die Stützlast auf dieser Ladefläche in den zulässigen Bereich bringen lässt, hängt davon ab, wie genau die Massen stimmen. Wiegen Sie an der Kupplung, bevor Sie fahren.
    .short = An der Kupplung wiegen
    .workshop = Stützlast { $nose }, höchstens { $off } Abweichung, zulässig { $most-way ->
        [same] { $least }
       *[range] { $least } bis { $most }
    }, Maschine { $heading ->
        [backward] rückwärts
       *[forward] vorwärts
    } stehend.
nose-load-out-of-range = Nirgends auf der Ladefläche kann die Maschine so stehen, dass die Stützlast stimmt.
    .short = Stützlast { $nose } stimmt nicht
    .workshop = Stützlast { $nose } am besten Platz auf der Ladefläche, zulässig { $most-way ->
        [same] { $least }
       *[range] { $least } bis { $most }
    }.
nothing-answers = { $role ->
    [axle-anchor] { $a } hat an der Hinterachse nichts zum Anschrauben.
    [front-anchor] { $a } hat vorn nichts zum Anschrauben.
    [rack] Für { $a } fehlt die Geräteaufnahme.
    [hitch] Für { $a } fehlt der Dreipunkt.
    [seat-deck] Für { $a } fehlt die Sitzkonsole.
    [power-take-off] Für { $a } fehlt die Zapfwelle.
    [pressure] { $a } braucht eine Druckleitung, die noch fehlt.
    [return] { $a } braucht eine Rücklaufleitung, die noch fehlt.
    [case-drain] { $a } braucht eine Leckölleitung, die noch fehlt.
   *[wiring] { $a } braucht ein Kabel, das noch fehlt.
}
    .short = { $role ->
        [axle-anchor] Achsbefestigung fehlt
        [front-anchor] Vordere Befestigung fehlt
        [rack] Geräteaufnahme fehlt
        [hitch] Dreipunkt fehlt
        [seat-deck] Sitzkonsole fehlt
        [power-take-off] Zapfwelle fehlt
        [pressure] Druckleitung zu legen
        [return] Rücklaufleitung zu legen
        [case-drain] Leckölleitung zu legen
       *[wiring] Kabel zu legen
    }
    .workshop = { $a }, { $port }: Nichts in dieser Zusammenstellung passt dazu ({ $role-name }).
nothing-to-put-on = Die Maschine braucht: { $what }. Im Katalog gibt es dafür nichts.
    .short = Nötig: { $what }
    .workshop = { $item } braucht { $what } an der Maschine, und im Katalog gibt es dafür nichts. Beim Hersteller fragen.
own-seat-comes-off = Der eigene Sitz des Anbaugeräts ist nicht der gewählte. Er muss abgebaut werden.
    .short = Sitz des Anbaugeräts muss ab
    .workshop = Den eigenen Sitz des Anbaugeräts abbauen: { $hours }.
own-seat-unknown = Es ist nicht bekannt, ob das Anbaugerät einen eigenen Sitz trägt oder ob er sich abbauen lässt.
    .short = Sitz des Anbaugeräts unbekannt
    .workshop = Eigener Sitz des Anbaugeräts: Es fehlen Angaben zu { $missing-of }: { $missing-name }.
number-read-differs = Die an { $item } abgelesene Teilenummer ist nicht die, die der Katalog dort führt{ $rests ->
    [listed] , aber eine Kombination mit dem abgelesenen Teil ist aufgeführt.
    [measured] . Es gilt, was daran gemessen wurde.
   *[nothing] . Was der Katalog über diese Verbindung sagt, gilt für dieses Gerät vielleicht nicht.
}
    .short = Andere Teilenummer als im Katalog
    .workshop = { $item }, { $port }: am Gerät { $read } abgelesen, im Katalog { $listed }. { $rests ->
        [listed] Die abgelesene Nummer gilt: Sie gehört zu einer aufgeführten Kombination.
        [measured] Es gilt, was am Gerät gemessen wurde.
       *[nothing] Was die Zeile über dieses Teil angibt, zählt erst, wenn es gemessen ist.
    }
pins-count-differs = { $a } hat { $carrier } Bolzenpunkte, { $b } hat { $carried }.
    .short = Bolzenpunkte: { $carrier } und { $carried }
    .workshop = { $roles-name }: { $carrier } Punkte an { $a }, { $carried } an { $b }. Jedes Auge braucht seine Gabel.
pins-heights-off = Die Bolzenpunkte von { $b } liegen nicht in den Höhen von { $a }.
    .short = Bolzenhöhen { $over } daneben
    .workshop = { $roles-name }: Die Höhen der Punkte weichen gegeneinander um { $off-by } ab, { $over } mehr, als die Bolzen Spiel haben.
pins-enter = Die Bolzen von { $b } und { $a } passen.
    .short = Bolzen passen
    .workshop = { $roles-name }, { $point }: Spiel { $running }, üblich bis { $limit }.
pins-may-enter = Nach den Zeichnungen ist nicht zu entscheiden, ob die Bolzen von { $b } und { $a } passen. Messen Sie zuerst.
    .short = Bolzen: zu { $probability } passend
    .workshop = { $roles-name }{ $point ->
        [none] {""}
       *[other] , { $point }
    }: { $dimension-name }: { $running } Spiel, üblich bis { $limit }; mit { $probability } Wahrscheinlichkeit passt es{ $settles ->
        [none] .
       *[other] . Auf ±{ $settles } genau bekannt, wäre es entschieden.
    }
pins-need-sleeve = Der Bolzen ist dünner als seine Bohrung. Eine Hülse gleicht das aus.
    .short = Hülse nötig: { $running } Spiel
    .workshop = { $roles-name }, { $point }: Bohrung { $bore }, Bolzen { $pin }, Spiel { $running }; über { $limit } ist eine Hülse nötig (übliche Praxis).
pins-side-play = Die Verbindung hat seitlich Spiel. Passscheiben gleichen das aus.
    .short = Passscheiben nötig: { $play } Spiel
    .workshop = { $roles-name }, { $point }: seitliches Spiel { $play }; über { $limit } sind Passscheiben nötig (übliche Praxis).
pins-sleeved = { $item } passt den Bolzen an die Bohrung an.
    .short = Mit Hülse { $item }
    .workshop = { $roles-name }: { $item } kleidet die Bohrung { $bore } für den Bolzen { $pin } aus.
pins-spread-off = Die Laschen von { $b } stehen für { $a } um { $off-by } zu { $carried-way ->
    [narrow] eng
   *[wide] weit
}.
    .short = Laschenabstand { $off-by } daneben
    .workshop = { $roles-name }: Laschenabstand { $carrier } an { $a }, { $carried } an { $b }: { $off-by } zu { $carried-way ->
        [narrow] eng
       *[wide] weit
    }, üblich bis { $limit }.
pins-unknown = Ein Maß der Bolzen ist nicht bekannt.
    .short = Bolzen: Angaben fehlen
    .workshop = { $roles-name }: Es fehlen Angaben zu { $missing-of }: { $missing-name }.
pins-will-not-enter = { $dimension ->
    [width] Eine Lasche ist zu breit für ihre Gabel.
   *[diameter] Ein Bolzen ist zu dick für seine Bohrung.
}
    .short = { $dimension ->
        [width] Lasche { $over } zu breit
       *[diameter] Bolzen { $over } zu dick
    }
    .workshop = { $roles-name }, { $point }: { $dimension-name } { $carrier } an { $a }, { $carried } an { $b }: { $over } zu viel.
plates-may-fit = Nach den Zeichnungen ist offen, ob die Seitenplatten von { $b } über { $a } gehen. Erst messen.
    .short = Weite der Seitenplatten: zu knapp
    .workshop = { $roles-name }: { $between } zwischen den Platten, { $over } über die Flächen der Maschine, Spalt { $gap }; er muss zwischen 0 und { $limit } liegen, und die Angaben können zusammen ±{ $worst-case } abweichen; zu { $probability } geht es{ $settles ->
        [none] .
       *[other] . Eine Weite auf ±{ $settles } genau würde es klären.
    }
plates-need-shims = { $b } ist zwischen den Seitenplatten { $gap } weiter als { $a }. Beilagen füllen das.
    .short = Beilagen an den Seitenplatten nötig
    .workshop = { $roles-name }: { $between } zwischen den Platten, { $over } über die Flächen der Maschine: { $gap } Beilagen, je die Hälfte auf jeder Seite; bis { $limit } wird beigelegt (übliche Praxis).
plates-too-narrow = { $b } geht nicht über { $a }: Die Seitenplatten stehen { $short } zu eng.
    .short = Seitenplatten zu eng
    .workshop = { $roles-name }: { $between } zwischen den Platten, { $over } über die Flächen der Maschine: es fehlen { $short }. Den Rahmen nicht aufspreizen.
plates-too-wide = { $b } ist zu weit für { $a }: Zwischen Seitenplatten und Maschine bleiben { $gap } Spalt.
    .short = Seitenplatten zu weit
    .workshop = { $roles-name }: { $between } zwischen den Platten, { $over } über die Flächen der Maschine: Spalt { $gap }; Beilagen gleichen { $limit } aus (übliche Praxis).
plates-unknown = Wie breit { $a } über die Flächen oder { $b } zwischen den Seitenplatten ist, ist nicht bekannt.
    .short = Weite der Seitenplatten nicht bekannt
    .workshop = { $roles-name }: Es fehlen Angaben zu { $missing-of }: { $missing-name }.
port-looked-missing = An diesem Gerät fehlt, was die Verbindung braucht.
    .short = Fehlt an diesem Gerät
    .workshop = { $roles-name }: gesucht und nicht gefunden: { $port }.
port-not-on-serial = Geräte mit dieser Seriennummer haben nicht, was die Verbindung braucht.
    .short = Nicht bei dieser Seriennummer
    .workshop = { $roles-name }: bei Seriennummer { $serial } nicht vorhanden: { $port }.
port-serial-unknown = Nur manche Geräte haben, was die Verbindung braucht. Sehen Sie an Ihrem nach oder geben Sie seine Seriennummer ein.
    .short = Hängt von der Seriennummer ab
    .workshop = { $roles-name }: nur bei manchen Seriennummern vorhanden: { $port }.
place-unknown = Wo { $item } an der Maschine sitzt, ist nicht bekannt; was davon abhängt, lässt sich nicht ausrechnen.
    .short = Lage nicht bekannt
    .workshop = Keine Verbindung in den Daten sagt, wo { $item } sitzt. Nachmessen oder beim Hersteller erfragen.
power-high = Die Maschine hat mehr Leistung, als für das Anbaugerät zulässig ist.
    .short = Leistung { $power }, höchstens { $most }
    .workshop = Zapfwellenleistung { $power }; für das Anbaugerät sind höchstens { $most } zulässig.
power-short = Die Maschine hat zu wenig Leistung für das Anbaugerät.
    .short = Leistung { $power }, nötig { $least }
    .workshop = Zapfwellenleistung { $power }; das Anbaugerät braucht { $least }.
power-unknown = Die Zapfwellenleistung der Maschine ist nicht bekannt.
    .short = Zapfwellenleistung fehlt
    .workshop = Es fehlen Angaben zu { $missing-of }: { $missing-name }.
pto-differs = { $dimension ->
    [speed] Die Zapfwelle dreht nicht mit der Drehzahl, die das Anbaugerät braucht.
    [rotation] Die Zapfwelle dreht andersherum.
   *[shaft-type] Die Gelenkwelle braucht eine andere Aufsteckgabel.
}
    .short = { $dimension ->
        [speed] Zapfwellendrehzahl verschieden
        [rotation] Zapfwelle dreht andersherum
       *[shaft-type] Andere Aufsteckgabel nötig
    }
    .workshop = { $dimension ->
        [speed] { $dimension-name }: { $carrier-name } U/min an { $a }, { $carried-name } U/min an { $b }.
       *[other] { $dimension-name }: { $carrier-name } an { $a }, { $carried-name } an { $b }.
    }
pto-fits = Die Zapfwelle passt zum Anbaugerät.
    .short = Zapfwelle passt
    .workshop = Zapfwelle: Profil { $shaft-type } (ISO 500-1), { $speed } U/min auf beiden Seiten.
pto-unknown = Es fehlen Angaben zur Zapfwelle.
    .short = Zapfwelle: Angaben fehlen
    .workshop = Es fehlen Angaben zu { $missing-of }: { $missing-name }.
ramp-axle-light = Auf der Rampe bleibt wenig Gewicht auf der { $axle ->
        [front] Vorderachse
       *[rear] Hinterachse
    }: { $load }, nötig sind mindestens { $least }. Sie lenkt dann kaum, und ein Ruck kann sie abheben.
    .short = { $axle ->
        [front] Rampe: nur { $load } auf der Vorderachse
       *[rear] Rampe: nur { $load } auf der Hinterachse
    }
    .workshop = Auf der Rampe, { $way ->
        [forward] vorwärts
       *[backward] rückwärts
    }: { $axle ->
        [front] Vorderachse
       *[rear] Hinterachse
    } { $load }, nötig { $least } (eigener Vorschlag, kein veröffentlichter Wert).
ramp-clears = { $way ->
    [forward] Vorwärts kommt die Maschine die Rampe des Anhängers hinauf, ohne aufzusetzen.
    [backward] Rückwärts kommt die Maschine die Rampe des Anhängers hinauf, ohne aufzusetzen.
   *[either] Die Maschine kommt die Rampe des Anhängers hinauf, ohne aufzusetzen.
}
    .short = Rampe: { $clearance } Luft
    .workshop = Rampe { $ramp }: { $item } kommt ihr am nächsten, { $clearance } Luft.
ramp-drags = { $item } setzt um { $drags-by } auf der Rampe des Anhängers auf. { $shortest ->
    [none] Auch mit der längsten Rampe, die sich mitführen lässt, reicht es nicht.
   *[other] Rampen von mindestens { $shortest } reichen aus.
}
    .short = Setzt um { $drags-by } auf der Rampe auf
    .with = längeren Rampen
    .workshop = Rampe { $ramp }, { $way ->
        [backward] rückwärts
       *[forward] vorwärts
    }: { $item } ist { $drags-by } zu tief, { $distance } { $place ->
        [ahead] vor der Hinterachse, vor den Vorderrädern
        [between] vor der Hinterachse, zwischen den Rädern
       *[behind] hinter der Hinterachse
    }. { $shortest ->
        [none] Auch mit der längsten Rampe, die sich mitführen lässt, bleiben die nötigen { $wanted } (übliche Praxis) nicht.
       *[other] Mit Rampen von mindestens { $shortest } bleiben die nötigen { $wanted } (übliche Praxis).
    }
ramp-near = { $item } kommt der Rampe des Anhängers so nahe, dass erst Messen entscheidet, und auch mit der längsten Rampe, die sich mitführen lässt, bleiben die nötigen { $wanted } nicht sicher. Messen Sie vor dem Verladen; fahren Sie dann im Kriechgang hinauf, während jemand von der Seite zusieht, nicht neben der Rampe.
    .short = Rampe: erst messen
    .workshop = Rampe { $ramp }, { $way ->
        [backward] rückwärts
       *[forward] vorwärts
    }: { $item } laut Zeichnung { $clearance } über der Rampe, nötig { $wanted } (übliche Praxis); Längen können um { $off } abweichen.
ramp-steep = Die Rampe des Anhängers steigt mit { $angle } an: Dort fährt nichts hinauf. { $shortest ->
    [none] Nehmen Sie einen anderen Anhänger.
   *[other] Nehmen Sie Rampen von mindestens { $shortest }.
}
    .short = Rampe viel zu steil
    .with = längeren Rampen
    .workshop = Rampe oder Heckschräge mit { $angle }; ab 60° ist es keine Rampe mehr (übliche Praxis).
ramp-tight = Zwischen { $item } und der Rampe des Anhängers bleiben nur { $clearance }; nötig sind { $wanted }. { $shortest ->
    [none] Auch mit der längsten Rampe, die sich mitführen lässt, reicht es nicht.
   *[other] Rampen von mindestens { $shortest } reichen aus.
}
    .short = Nur { $clearance } über der Rampe
    .with = längeren Rampen
    .workshop = Rampe { $ramp }, { $way ->
        [backward] rückwärts
       *[forward] vorwärts
    }: { $clearance } unter { $item }, { $distance } { $place ->
        [ahead] vor der Hinterachse, vor den Vorderrädern
        [between] vor der Hinterachse, zwischen den Rädern
       *[behind] hinter der Hinterachse
    }. { $shortest ->
        [none] Auch mit der längsten Rampe, die sich mitführen lässt, bleiben die nötigen { $wanted } (übliche Praxis) nicht.
       *[other] Mit Rampen von mindestens { $shortest } bleiben die nötigen { $wanted } (übliche Praxis).
    }
ramp-tips = Die Maschine kippt auf der Rampe: Die { $axle ->
        [front] Vorderachse
       *[rear] Hinterachse
    } hebt beim Hinauffahren ab.
    .short = Kippt auf der Rampe
    .workshop = Auf der Rampe ({ $ramp }), { $way ->
        [forward] vorwärts
       *[backward] rückwärts
    }: { $axle ->
        [front] Vorderachse
       *[rear] Hinterachse
    } hebt ab.
rear-seat-cannot = { $item } kann beim Fahren nicht so stehen wie gewählt.
    .short = { $item } geht so nicht
    .workshop = { $item } beim Fahren: { $state ->
        [folded] muss klappen; dieser Sitz klappt nicht.
        [slid] muss rücken; dieser Sitz rückt nicht.
        [turned] muss sich drehen; dieser Sitz dreht sich nicht.
       *[other] nichts sagt, dass er so stehen kann.
    }
rear-seat-moves = { $state ->
    [folded] Zum Fahren { $item } umklappen.
    [slid] Zum Fahren { $item } { $by } nach vorn schieben.
   *[off] Zum Fahren abzubauen: { $item }.
}
    .short = { $state ->
        [folded] Zum Fahren klappen: { $item }
        [slid] Zum Fahren schieben: { $item }
       *[off] Zum Fahren ab: { $item }
    }
    .workshop = { $item } beim Fahren: { $state ->
        [folded] umklappen, von Hand.
        [slid] { $by } nach vorn schieben, von Hand.
       *[off] abbauen{ $hours ->
            [none] .
           *[other] , { $hours }.
        }
    }
room-close = Der Platz zwischen Sitz und Hebeln ist gerade so groß wie nötig: { $room }, mindestens { $least }. Messen Sie nach.
    .short = Platz am Sitz: erst messen
    .workshop = Sitzindexpunkt bis Hebel { $room }, höchstens { $off } Abweichung; mindestens { $least }.
seat-faces-forward = Das Anbaugerät wird mit Blick nach hinten bedient, und dieser Sitz schaut nur nach vorn.
    .short = Sitz schaut nur nach vorn
    .workshop = Sitz: nach vorn gerichtet; die Hebel des Anbaugeräts sind dahinter.
seat-reach-far = Die Hebel sind vom Sitz aus schlecht zu erreichen: { $distance }, höchstens { $most }.
    .short = Hebel { $distance } weg, höchstens { $most }
    .workshop = Sitzindexpunkt bis Hebel { $distance }; höchstens { $most }.
seat-reach-unknown = Wie weit die Hebel vom Sitz entfernt sind, ist nicht bekannt.
    .short = Reichweite zu den Hebeln unbekannt
    .workshop = Reichweite zu den Hebeln: Es fehlen Angaben zu { $missing-of }: { $missing-name }.
seat-room = Zwischen Sitz und Hebeln ist Platz für die Knie: { $room }, nötig sind mindestens { $least }.
    .short = Platz am Sitz
    .workshop = Sitzindexpunkt bis Hebel { $room }; mindestens { $least }.
seat-room-short = Zwischen Sitz und Hebeln fehlen { $short } Platz.
    .short = Am Sitz fehlen { $short }
    .workshop = Sitzindexpunkt bis Hebel { $room }; mindestens { $least }: Es fehlen { $short }.
seat-room-unknown = Wie viel Platz am Sitz ist, ist nicht bekannt.
    .short = Platz am Sitz: Angaben fehlen
    .workshop = Platz am Sitz: Es fehlen Angaben zu { $missing-of }: { $missing-name }.
seat-station-differs = { $station ->
    [cab] Dieser Sitz ist nicht für eine Maschine mit Kabine gemacht.
   *[open] Dieser Sitz ist nicht für eine offene Maschine gemacht.
}
    .short = { $station ->
        [cab] Sitz nicht für Kabinen
       *[open] Sitz nicht für offene Maschinen
    }
    .workshop = { $a }: nicht für diesen Fahrerplatz gemacht ({ $station-name }).
seat-station-unknown = Ob dieser Sitz für offene Maschinen oder für Kabinen ist, ist nicht bekannt.
    .short = Sitz: offen oder Kabine?
    .workshop = { $a }: offener Fahrerplatz oder Kabine: Angabe fehlt.
seat-switch-missing = Dem Sitz fehlt der Sitzkontaktschalter, der der Maschine meldet, dass jemand sitzt. Lassen Sie ihn nach der Anleitung des Herstellers nachrüsten. Nicht überbrücken.
    .short = Sitzkontaktschalter nachzurüsten
    .with = Sitzkontaktschalter
    .workshop = Sitzkontaktschalter: am Sitz keiner. Nach der Anleitung der Maschine einbauen und verdrahten. Nicht überbrücken.
seat-switch-unknown = Es ist nicht bekannt, ob der Sitz einen Sitzkontaktschalter hat, der der Maschine meldet, dass jemand sitzt.
    .short = Sitzkontaktschalter?
    .workshop = Sitzkontaktschalter: Für den Sitz fehlen Angaben. Die Maschine nicht mit überbrücktem Schalter betreiben.
seat-turns-not = Der Fahrersitz dieser Maschine lässt sich nicht drehen.
    .short = Sitz dreht nicht
    .workshop = Sitz: Ein drehbarer ist gewählt; der Sitz der Maschine dreht nicht.
seat-without-its-supplier = { $supplier ->
    [machine] Diesen Sitz gibt es nur mit einer anderen Maschine.
    [frame] Diesen Sitz gibt es nur mit einem anderen Rahmen.
   *[implement] Diesen Sitz gibt es nur mit einem anderen Anbaugerät.
}
    .short = { $supplier ->
        [machine] Nur mit anderer Maschine
        [frame] Nur mit anderem Rahmen
       *[implement] Nur mit anderem Anbaugerät
    }
    .workshop = { $a }: wird mit etwas geliefert, das in dieser Zusammenstellung fehlt ({ $supplier-name }). Klären, ob es ihn einzeln gibt.
seats-clash = { $used ->
    [working] Beim Arbeiten stehen { $item } und der Fahrersitz einander im Platz.
   *[driving] Beim Fahren stehen { $item } und der Fahrersitz einander im Platz.
}
    .short = Sitze im selben Platz
    .workshop = { $item } überschneidet den Fahrersitz um { $overlap }, { $used ->
        [working] während der Arbeit
       *[driving] beim Fahren
    }{ $driver ->
        [folded] , bei geklapptem Fahrersitz.
        [slid] , bei vorgeschobenem Fahrersitz.
        [turned] , bei umgedrehtem Fahrersitz.
       *[other] { $behind ->
            [folded] , mit { $item } geklappt.
            [slid] , mit { $item } vorgeschoben.
           *[other] .
        }
    }
seats-unknown = { $used ->
    [working] Es ist nicht bekannt, ob der Fahrersitz beim Arbeiten Platz für den hinteren Sitz lässt.
   *[driving] Es ist nicht bekannt, ob der hintere Sitz beim Fahren Platz für den Fahrersitz lässt.
}
    .short = Platz für beide Sitze unbekannt
    .workshop = Beide Sitze, { $used ->
        [working] während der Arbeit
       *[driving] beim Fahren
    }: Es fehlen Angaben zu { $missing-of }: { $missing-name }.
site-unknown = Es fehlen Angaben zu { $site }: { $missing-name }.
    .short = Einsatzort: Angaben fehlen
    .workshop = Es fehlen Angaben zu { $site }: { $missing-name }.
serial-of-another = Die Seriennummer { $serial } gehört nicht zu { $item }, wie es hier aufgeführt ist. Sehen Sie nach, welches Gerät es ist.
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
station-unknown = Es ist nicht bekannt, ob dieser Rahmen für offene Maschinen oder für Kabinen ist.
    .short = Offen oder Kabine?
    .workshop = { $a }: offen oder Kabine: Angaben fehlen.
swivel-close = Der Sitz stößt beim Drehen vielleicht an { $item }. Messen Sie nach.
    .short = Sitz stößt vielleicht an
    .workshop = Drehsitz: überstreicht einen Radius von { $radius }; { $item } ist { $room } entfernt, höchstens { $off } Abweichung.
swivel-hits = Der Sitz stößt beim Drehen an { $item }.
    .short = Sitz stößt beim Drehen an
    .workshop = Drehsitz: braucht einen Radius von { $radius }; { $item } ist nur { $room } entfernt.
swivel-unknown = Ob der Sitz Platz zum Drehen hat, ist nicht bekannt.
    .short = Platz zum Drehen unbekannt
    .workshop = Drehsitz: Es fehlen Angaben zu { $missing-of }: { $missing-name }.
thread-depth-unknown = Wie tief die Gewinde von { $side } sind und in welchem Metall, ist nicht bekannt. { $least } Gewinde reichen in jedem.
    .short = Gewindetiefe nicht bekannt
    .workshop = { $roles-name }: Tiefe und Werkstoff der Gewindelöcher von { $side } herausfinden. { $least } Gewinde halten in Stahl, Guss und Aluminium; in den härteren kann weniger reichen (übliche Praxis).
thread-too-short = Die Gewinde von { $side } sind { $depth } tief; die Schrauben brauchen { $least }.
    .short = Gewinde zu kurz
    .workshop = { $roles-name }: Gewinde in { $side } { $depth }, mindestens { $least } nötig (übliche Praxis). Kurzes Gewinde reißt aus.
thread-unknown = Die Größe allein ({ $size }) sagt nicht, welches Gewinde die Schrauben von { $side } haben: metrisch oder Zoll, grob oder fein. Erst klären.
    .short = Gewinde nicht bekannt
    .workshop = { $roles-name }: { $side }, { $size }: Gewinde mit der Lehre oder aus der Teileliste bestimmen. M12 und 1/2 Zoll, M16 und 5/8 Zoll sehen gleich aus und gehören nicht zusammen.
threads-differ = Die Schrauben haben { $bolt }, die Gewindelöcher von { $side } { $tapped }: Das geht nicht zusammen.
    .short = Gewinde verschieden
    .workshop = { $roles-name }: Schrauben { $bolt }, Gewindelöcher von { $side } { $tapped }. Eine Größe, zwei Gewinde: Sie greifen an und klemmen.
tie-downs-needed = { $count ->
    [one] Zurren Sie die Maschine mit mindestens { $count } Kette oder Gurt mit { $each } zulässiger Zurrkraft (LC) fest (US-Vorschrift). Es gilt das Recht des Ortes, an dem Sie fahren.
   *[other] Zurren Sie die Maschine mit mindestens { $count } Ketten oder Gurten mit je { $each } zulässiger Zurrkraft (LC) fest (US-Vorschrift). Es gilt das Recht des Ortes, an dem Sie fahren.
}
    .short = { $count ->
        [one] { $count } Zurrmittel mit { $each }
       *[other] { $count } Zurrmittel mit je { $each }
    }
    .workshop = US-Vorschrift (49 CFR 393.106, 393.110): mindestens { $count ->
        [one] { $count } Zurrmittel mit
       *[other] { $count } Zurrmittel mit je
    } mindestens { $each } zulässiger Zurrkraft (LC; 1 daN entspricht etwa 1 kg); direkt gezurrt zählt halb, das ergibt die nötigen { $together }. Wo die Anleitung es verlangt, an vier Ecken zurren; das örtliche Recht geht vor.
trailer-carries = { $rating ->
    [axle] Die Achsen des Anhängers tragen ihre Last im zulässigen Bereich.
   *[total] Maschine und Anhänger bleiben zusammen im zulässigen Gesamtgewicht.
}
    .short = { $rating ->
        [axle] Anhängerachsen: { $left } Reserve
       *[total] Anhänger: { $left } Reserve
    }
    .workshop = { $rating ->
        [axle] Achsen des Anhängers
       *[total] Anhänger mit Maschine
    }: { $load }, zulässig { $rated }, Reserve { $left }.
trailer-load-near = { $rating ->
    [axle] Die Achsen des Anhängers kommen ihrer zulässigen Last so nahe, dass sie gewogen werden müssen.
   *[total] Maschine und Anhänger zusammen kommen der zulässigen Gesamtmasse so nahe, dass sie gewogen werden müssen.
}
    .short = Vor dem Verladen wiegen
    .workshop = { $rating ->
        [axle] Anhängerachsen
       *[total] Maschine und Anhänger
    }: Last { $load }, höchstens { $off } Abweichung, zulässig { $rated }.
trailer-narrow = Über die Reifen gemessen ist die Maschine { $beyond } breiter als die Ladefläche des Anhängers.
    .short = Anhänger { $beyond } zu schmal
    .workshop = Über die Reifen { $width }, Ladefläche { $deck }: { $beyond } zu breit.
trailer-overloaded = { $rating ->
    [axle] Die Achsen des Anhängers würden { $over } mehr tragen als zulässig.
   *[total] Maschine und Anhänger sind zusammen { $over } schwerer als zulässig.
}
    .short = { $rating ->
        [axle] Anhängerachsen: { $over } zu viel
       *[total] Anhänger: { $over } zu viel
    }
    .workshop = { $rating ->
        [axle] Achsen des Anhängers
       *[total] Anhänger mit Maschine
    }: { $load }, zulässig { $rated }, { $over } zu viel.
trailer-short = Die Ladefläche des Anhängers ist kürzer als der Radstand der Maschine.
    .short = Ladefläche nur { $deck } lang
    .workshop = Radstand { $wheelbase }, Ladefläche { $deck }.
trailer-unknown = Es fehlen Angaben zu { $trailer }: { $missing-name }.
    .short = Anhänger: Angaben fehlen
    .workshop = Es fehlen Angaben zu { $trailer }: { $missing-name }.
tyre-overloaded = { $axle ->
    [front] Jeder Vorderreifen müsste { $over } mehr tragen, als für ihn zulässig ist.
   *[rear] Jeder Hinterreifen müsste { $over } mehr tragen, als für ihn zulässig ist.
}
    .short = { $axle ->
        [front] Je Vorderreifen { $over } zu viel
       *[rear] Je Hinterreifen { $over } zu viel
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
