access-unknown = On ne sait pas si la machine accède au site, car une donnée dont cela dépend n’est pas indiquée.
    .short = Accès non connu
    .workshop = Accès : { $missing-name } de { $item } non indiqué.
adapter-goes-in = { $item } se place entre les deux.
    .short = Demande { $item }
    .workshop = Monter { $item }{ $work ->
        [none] .
       *[other] {" "}: { $work } d’atelier.
    }
adapter-not-needed = { $item } est inutile ici.
    .short = { $item } est inutile
    .workshop = { $item } ne relie rien dans ce montage et peut être laissé de côté.
arm-on-hitch = Un bras de pelle sur un simple attelage trois points peut être soulevé vers l’opérateur. Demandez si son constructeur propose une jambe de force.
    .short = Bras de pelle sur simple attelage
    .workshop = { $item } pend au simple attelage trois points et peut être soulevé et rabattu vers l’opérateur. Prendre un châssis ou, si la notice le permet, la jambe de force du constructeur.
axle-overloaded = { $axle ->
    [front] L’essieu avant porterait plus que sa charge admissible.
   *[rear] L’essieu arrière porterait plus que sa charge admissible.
}
    .short = { $axle ->
        [front] Essieu avant surchargé
       *[rear] Essieu arrière surchargé
    }
    .workshop = { $axle ->
        [front] Essieu avant
       *[rear] Essieu arrière
    } : charge { $load }, admissible { $rated }, { $over } de trop.
axle-within-rating = { $axle ->
    [front] L’essieu avant reste sous sa charge admissible.
   *[rear] L’essieu arrière reste sous sa charge admissible.
}
    .short = { $axle ->
        [front] Essieu avant dans sa limite
       *[rear] Essieu arrière dans sa limite
    }
    .workshop = { $axle ->
        [front] Essieu avant
       *[rear] Essieu arrière
    } : charge { $load }, admissible { $rated }, reste { $left }.
bar-in-the-way = { $bar ->
    [stays-up] Avec { $item } monté, l’arceau ne peut pas être rabattu.
   *[up] L’arceau et { $item } se gênent.
}
    .short = { $bar ->
        [stays-up] L’arceau reste relevé
       *[up] L’arceau gêne
    }
    .workshop = { $bar ->
        [stays-up] Rabattu, l’arceau chevaucherait { $item } de { $overlap }.
        [folded] L’arceau rabattu chevauche { $item } de { $overlap }.
       *[up] L’arceau relevé chevauche { $item } de { $overlap }.
    }
bolts-unknown = Des boulons passent par { $bolts } trous sur { $holes } ; rien n’indique si cela suffit.
    .short = Nombre de boulons non indiqué
    .workshop = Une plaque a { $holes } trous, l’autre { $bolts }. Demander au constructeur combien de boulons il faut à cette liaison.
clearance-hit = { $item } et { $other } se gênent.
    .short = { $item } touche { $other }
    .workshop = { $shape-name } de { $item } chevauche { $other-shape-name } de { $other } de { $overlap }.
clearance-tight = { $item } passe près de { $other }.
    .short = { $item } près de { $other }
    .workshop = De { $shape-name } de { $item } à { $other-shape-name } de { $other } : { $gap } d’écart, { $wanted } souhaités.
clearance-unknown = L’un des deux n’est pas dessiné ; on ne peut pas encore dire s’ils se gênent.
    .short = Contour non indiqué
    .workshop = { $missing-of } : { $missing-name } non indiqué.
closure-meets = Boulonné à l’essieu arrière, { $b } tombe aussi en face de l’ancrage avant de { $a }.
    .short = Tombe sur l’ancrage avant
    .workshop = Ancrage avant : écart { $off-by }, marge { $margin }, pire cas ±{ $worst-case }{ $slot ->
        [none] .
       *[other] {" "}; le trou oblong donne { $slot }.
    }
closure-misses = Boulonné à l’essieu arrière, { $b } ne tombe pas en face de l’ancrage avant de { $a }.
    .short = Manque l’ancrage avant
    .workshop = Ancrage avant : écart { $off-by }, marge { $margin }, pire cas ±{ $worst-case }. Entre ses ancrages, le châssis est { $longer-way ->
        [shorter] { $longer } plus court
       *[longer] { $longer } plus long
    } que la fixation de la machine.
closure-open = D’après les plans, on ne peut dire si { $b } tombe en face de l’ancrage avant de { $a } : c’est trop juste.
    .short = Ancrage avant trop juste
    .workshop = Ancrage avant : écart { $off-by }, marge { $margin }, pire cas ±{ $worst-case } ; probabilité { $probability }{ $settles ->
        [none] .
       *[other] . Une cote connue à ±{ $settles } trancherait.
    }
closure-unknown = La place de l’ancrage avant n’est pas indiquée ; on ne peut pas encore dire si { $b } tombe en face.
    .short = Ancrage avant non indiqué
    .workshop = Ancrage avant de { $missing-of } : { $missing-name } non indiqué.
corner-clears = La machine prend le virage derrière le portail en une fois.
    .short = Prend le virage
    .workshop = Portail { $gate }, puis à angle droit dans une allée de { $path } : { $wanted } d’allée suffisent.
corner-tight = La machine ne prend pas le virage derrière le portail en une fois. Essayez en manœuvrant.
    .short = Virage serré
    .workshop = Portail { $gate }, puis à angle droit dans une allée de { $path } : { $wanted ->
        [none] aucune largeur d’allée ne suffit en une fois, car l’arrière déporte contre le portail.
       *[other] un seul virage demande une allée de { $wanted }.
    }
coupler-differs = Les coupleurs hydrauliques diffèrent ; un flexible demande un autre embout.
    .short = Le flexible demande un autre embout
    .workshop = { $roles-name } : { $carrier } sur { $a }, { $carried } sur { $b }. Changer l’embout du flexible.
coupler-fits = Les coupleurs hydrauliques vont ensemble.
    .short = Les coupleurs vont ensemble
    .workshop = { $roles-name } : { $standard }, taille { $size }, des deux côtés.
coupler-unknown = Un des coupleurs hydrauliques n’est pas indiqué.
    .short = Coupleur non indiqué
    .workshop = { $roles-name } de { $missing-of } : { $missing-name } non indiqué.
frame-idle = { $item } reste vide : { $other } est attelé au trois points, derrière lui.
    .short = Rien sur { $item }
    .workshop = { $other } est attelé au trois points, et rien ne pend à { $item }. Déposer le châssis, ou choisir un outil ou un adaptateur qui aille sur son support arrière.
frame-in-the-ground = { $item } entrerait dans le sol.
    .short = Entre dans le sol
    .workshop = Le point le plus bas de { $item } est à { $below } sous le sol.
frame-low = { $item } pend près du sol.
    .short = Près du sol
    .workshop = Le point le plus bas de { $item } est à { $height } du sol ; { $wanted } souhaités.
front-axle-heavy-enough = Il reste assez de poids sur les roues avant pour diriger.
    .short = Essieu avant assez lourd
    .workshop = L’essieu avant porte { $share } de la masse à vide de la machine ; { $least } au moins.
front-axle-lifts = Les roues avant quitteraient le sol.
    .short = Les roues avant se lèvent
    .workshop = Il manque { $lift } à l’essieu avant pour rester au sol. { $ballast } à { $ballast-at } devant l’essieu arrière l’amènent à la part minimale.
front-axle-light = Les roues avant deviennent trop légères pour diriger en sécurité. Environ { $ballast } de lest avant suffiraient.
    .short = Demande un lest avant
    .workshop = L’essieu avant porte { $share } de la masse à vide de la machine ; { $least } au moins. { $ballast } à { $ballast-at } devant l’essieu arrière y suffisent.
front-seat-in-the-way = { $need ->
    [flips-forward] Le siège de l’opérateur devrait se rabattre vers l’avant ; sur cette machine, il ne le fait pas.
    [comes-off] Il faut déposer le siège de l’opérateur pour faire de la place.
   *[other] Le siège de l’opérateur devrait avancer plus qu’il ne peut.
}
    .short = { $need ->
        [flips-forward] Le siège avant ne se rabat pas
        [comes-off] Siège avant à déposer
       *[other] Le siège avant gêne
    }
    .workshop = { $need ->
        [flips-forward] Siège de l’opérateur : doit se rabattre vers l’avant ; celui-ci ne le fait pas.
        [comes-off] Siège de l’opérateur : dévisser et déposer.
       *[other] Siège de l’opérateur : doit avancer de { $need } ; il avance de { $has }.
    }
gate-low = { $folded ->
    [none] La machine est trop haute pour le portail.
   *[other] Arceau relevé, la machine est trop haute pour le portail ; arceau rabattu, elle passe.
}
    .short = Portail trop bas
    .workshop = Hauteur { $height }, portail { $gate }, { $beyond } de trop{ $folded ->
        [none] .
       *[other] {" "}; arceau rabattu { $folded }.
    }
gate-narrow = La machine est plus large que le portail de { $beyond }.
    .short = Portail trop étroit
    .workshop = Largeur { $width }, portail { $gate } : { $beyond } de trop.
gate-passes = La machine passe le portail, il reste { $left } de chaque côté.
    .short = Passe le portail
    .workshop = Largeur { $width }, portail { $gate } : il reste { $left } de chaque côté.
ground-carries = Le sol du site porte l’essieu le plus chargé de la machine.
    .short = Le sol porte
    .workshop = { $axle ->
        [front] Essieu avant
       *[rear] Essieu arrière
    } : charge { $load }, le sol porte { $most }, il reste { $left }.
ground-overloaded = L’essieu le plus chargé de la machine dépasse de { $over } ce que porte le sol du site.
    .short = Trop lourde pour le sol
    .workshop = { $axle ->
        [front] Essieu avant
       *[rear] Essieu arrière
    } : charge { $load }, le sol porte { $most }, { $over } de trop.
hitch-differs = Les attelages trois points sont de tailles différentes, et { $b } ne s’attelle pas.
    .short = Catégories d’attelage différentes
    .workshop = Catégorie d’attelage { $carrier } sur { $a }, { $carried } sur { $b } : les broches sont trop grosses.
hitch-dimension-misfits = Une cote de l’attelage trois points ne convient pas à { $b }, qui ne s’attelle pas.
    .short = La cote d’attelage ne convient pas
    .workshop = { $dimension-name } : { $carrier } sur { $a }, { $carried } sur { $b }, { $over } de trop.
hitch-dimension-open = D’après les cotes, on ne peut dire si { $b } s’attelle au trois points : c’est trop juste.
    .short = Attelage trop juste
    .workshop = { $dimension-name } : { $carrier } sur { $a }, { $carried } sur { $b } ; probabilité { $probability }{ $settles ->
        [none] .
       *[other] . Connu à ±{ $settles } près, ce serait réglé.
    }
hitch-fits = L’attelage trois points est de la bonne taille.
    .short = La catégorie d’attelage convient
    .workshop = Catégorie d’attelage { $category } (ISO 730) des deux côtés.
hitch-frame-stiff = Les crochets du cadre d’attelage rapide ont un autre écartement que { $b }.
    .short = Le cadre d’attelage rapide ne convient pas
    .workshop = Catégorie d’attelage { $carrier } sur { $a } avec cadre d’attelage rapide, { $carried } sur { $b } : les crochets ne se déplacent pas. Déposer le cadre.
hitch-needs-bushings = L’attelage est une taille au-dessus de ce que { $b } demande ; des bagues rattrapent l’écart.
    .short = Demande des bagues de réduction
    .workshop = Catégorie d’attelage { $carrier } sur { $a }, { $carried } sur { $b } : poser des bagues de réduction.
hitch-other-span = Les bras inférieurs sont à régler à l’écartement de { $b }.
    .short = Bras inférieurs à régler
    .workshop = Catégorie d’attelage { $carrier } sur { $a }, { $carried } sur { $b } : les broches sont les mêmes, pas l’écartement. Régler les bras inférieurs et leurs stabilisateurs.
hitch-unknown = La taille d’un attelage trois points n’est pas indiquée.
    .short = Taille d’attelage non indiquée
    .workshop = Attelage de { $missing-of } : { $missing-name } non indiqué.
holes-drilled = { $drill ->
    [one] { $drill } trou est percé dans { $side }, comme décidé.
   *[other] { $drill } trous sont percés dans { $side }, comme décidé.
}
    .short = { $drill ->
        [one] { $drill } trou percé
       *[other] { $drill } trous percés
    }
    .workshop = { $roles-name } : pointer { $drill ->
        [one] { $drill } trou
       *[other] { $drill } trous
    } au travers sur { $port } de { $side } et percer ; ensuite { $bolts ->
        [one] { $bolts } boulon passe
       *[other] { $bolts } boulons passent
    } avec une marge de { $margin }. { $work } d’atelier.
holes-may-meet = D’après les plans, on ne peut dire si les trous de { $b } et { $a } coïncident : c’est trop juste.
    .short = Trous trop justes
    .workshop = { $roles-name } : { $bolts ->
        [one] { $bolts } boulon
       *[other] { $bolts } boulons
    }, marge { $margin }, pire cas ±{ $worst-case } ; probabilité { $probability }{ $settles ->
        [none] .
       *[other] . Une cote connue à ±{ $settles } trancherait.
    }
holes-meet = Les trous de { $b } et { $a } coïncident.
    .short = Les trous coïncident
    .workshop = { $roles-name } : { $bolts ->
        [one] { $bolts } boulon entre
       *[other] { $bolts } boulons entrent
    }, marge { $margin }, pire cas ±{ $worst-case }.
holes-miss = Les trous de { $b } et { $a } ne coïncident pas.
    .short = Les trous ne coïncident pas
    .workshop = { $roles-name } : il faut { $bolts ->
        [one] { $bolts } boulon
       *[other] { $bolts } boulons
    } et aucune position ne convient, même en agrandissant ou en perçant{ $margin ->
        [none] .
       *[other] {" "}; au mieux la marge est { $margin }, pire cas ±{ $worst-case }.
    }
holes-need-drilling = { $drill ->
    [one] { $drill } trou est à percer dans { $side }.
   *[other] { $drill } trous sont à percer dans { $side }.
}
    .short = { $drill ->
        [one] { $drill } trou à percer
       *[other] { $drill } trous à percer
    }
    .workshop = { $roles-name } : percer { $drill ->
        [one] { $drill } trou
       *[other] { $drill } trous
    } dans { $side } ; ensuite { $bolts ->
        [one] { $bolts } boulon entre
       *[other] { $bolts } boulons entrent
    } avec une marge de { $margin }.
holes-need-opening = Les trous sont à agrandir un peu.
    .short = Trous à agrandir
    .workshop = { $roles-name } : agrandir les trous de { $open-by } au plus en diamètre ; ensuite { $bolts ->
        [one] { $bolts } boulon entre
       *[other] { $bolts } boulons entrent
    } avec une marge de { $margin }.
holes-opened = Les trous de { $side } sont agrandis, comme décidé.
    .short = Trous agrandis
    .workshop = { $roles-name } : agrandir les trous de { $port } sur { $side } de { $open-by } de diamètre ; ensuite { $bolts ->
        [one] { $bolts } boulon passe
       *[other] { $bolts } boulons passent
    } avec une marge de { $margin }. { $work } d’atelier.
holes-plan-not-needed = { $kind ->
    [opening] Ici, les trous de { $item } n’ont pas à être agrandis.
   *[drilling] Ici, { $item } n’a pas à être percé.
}
    .short = { $kind ->
        [opening] Agrandissement inutile
       *[drilling] Perçage inutile
    }
    .workshop = { $kind ->
        [opening] Il est décidé d’agrandir { $port } de { $item }, et aucun assemblage de ce montage ne s’en sert.
       *[drilling] Il est décidé de percer { $port } de { $item }, et aucun assemblage de ce montage ne s’en sert.
    }
holes-plan-not-possible = { $kind ->
    [opening] Il est décidé d’agrandir des trous de { $item }, mais pas comme cela peut se faire.
   *[drilling] Il est décidé de percer { $item }, mais pas comme cela peut se faire.
}
    .short = { $kind ->
        [opening] Agrandissement impossible
       *[drilling] Perçage impossible
    }
    .workshop = { $reason ->
        [no-port] { $item } n’a pas de { $port }.
        [no-holes] { $port } de { $item } n’a pas de trous.
       *[too-much] { $port } de { $item } : les trous s’agrandissent de plus que rien et de 1 mm au plus.
    } Décider à nouveau.
holes-too-many = Il y a trop de trous pour essayer toutes les positions de { $b } sur { $a }. Posez l’un sur l’autre ou comparez les numéros de pièce.
    .short = Trop de trous à comparer
    .workshop = { $roles-name } : { $holes } trous ; on en compare { $most } au plus, moins quand leur disposition est irrégulière.
holes-unknown = Les trous ne sont pas indiqués d’un côté ; on ne peut pas encore dire s’ils coïncident.
    .short = Trous non indiqués
    .workshop = { $roles-name } de { $missing-of } : { $missing-name } non indiqué.
hooks-hold = Les crochets de { $b } reposent sur la barre de { $a } et la broche entre.
    .short = Crochets et broche conviennent
    .workshop = { $roles-name } : crochets et broche dans la limite de { $limit } ; jeu { $play }.
hooks-may-hold = D’après les plans, on ne peut dire si les crochets de { $b } vont sur { $a } : c’est trop juste.
    .short = Crochets trop justes
    .workshop = { $roles-name } : { $dimension-name }, { $play } entre les deux, on admet { $limit } ; probabilité { $probability }{ $settles ->
        [none] .
       *[other] . Connu à ±{ $settles }, ce serait tranché.
    }
hooks-misfit = Les crochets de { $b } ne vont pas sur { $a }.
    .short = Les crochets ne vont pas
    .workshop = { $roles-name } : { $dimension-name } { $carrier } sur { $a }, { $carried } sur { $b } : { $off-by } d’écart, on admet { $limit }.
hooks-unknown = Une cote des crochets n’est pas indiquée.
    .short = Crochets non indiqués
    .workshop = { $roles-name } de { $missing-of } : { $missing-name } non indiqué.
hydraulics-flow-high = La machine débite plus d’huile que l’outil n’en admet.
    .short = Trop de débit
    .workshop = Débit { $flow } ; l’outil admet { $most } au plus. Poser un diviseur de débit ou demander à son constructeur.
hydraulics-flow-short = La machine débite moins d’huile que l’outil n’en demande ; il travaille lentement.
    .short = Peu de débit
    .workshop = Débit { $flow } ; l’outil demande { $least }. Chaque course dure { $time-ratio } fois plus longtemps.
hydraulics-match = L’hydraulique de la machine convient à l’outil.
    .short = L’hydraulique convient
    .workshop = Débit { $flow } à { $pressure } : { $power } de puissance hydraulique.
hydraulics-no-power-beyond = L’outil demande sa propre alimentation depuis la pompe (pression continue), et la machine n’en a pas encore.
    .short = Demande une sortie à pression continue
    .workshop = Sortie à pression continue : demandée par l’outil, absente de la machine. Poser un kit.
hydraulics-outlets-short = La machine a trop peu de sorties hydrauliques.
    .short = Trop peu de sorties hydrauliques
    .workshop = Sorties : { $has } présentes, { $need } nécessaires. Ajouter un distributeur ou un sélecteur.
hydraulics-pressure-high = La pression hydraulique de la machine dépasse ce que l’outil supporte.
    .short = Trop de pression hydraulique
    .workshop = Pression de tarage { $pressure } ; l’outil supporte { $most }.
hydraulics-pressure-short = La pression hydraulique de la machine est faible pour l’outil ; il creuse ou lève avec moins de force.
    .short = Peu de pression hydraulique
    .workshop = Pression de tarage { $pressure } ; l’outil demande { $least }.
hydraulics-unknown = Tout n’est pas indiqué sur l’hydraulique de la machine.
    .short = Hydraulique non indiquée
    .workshop = Hydraulique de { $missing-of } : { $missing-name } non indiqué.
implement-own-seat = Ce siège vient avec un outil, et l’outil choisi n’en apporte pas.
    .short = L’outil n’apporte pas de siège
    .workshop = Siège : celui de l’outil est choisi ; cet outil n’en a pas.
joint-listed = Le constructeur propose { $a } et { $b } ensemble.
    .short = Proposés ensemble
    .workshop = { $roles-name } : proposés ensemble { $guide ->
        [none] par le constructeur, hors guide.
       *[other] dans { $guide } du { $date }.
    }
joint-replaced-part = Les fiches de remplacement du constructeur rattachent les pièces qui relient { $a } et { $b } à un ensemble qu’il propose.
    .short = Rattachés par pièces remplacées
    .workshop = { $roles-name } : { $part } se rattache par remplacement à l’ensemble { $witness } avec { $witness-other }, que le constructeur propose.
joint-same-part = { $a } et { $b } se relient par les mêmes pièces qu’un ensemble que le constructeur propose.
    .short = Mêmes pièces qu’un ensemble du guide
    .workshop = { $roles-name } : { $part } fait aussi la liaison de { $witness } avec { $witness-other }, que le constructeur propose.
kinds-differ = { $b } se relie autrement que { $a } ne le prévoit.
    .short = Types de liaison différents
    .workshop = { $roles-name } : { $carrier-name } sur { $a }, { $carried-name } sur { $b }.
lift-enough = L’attelage peut lever l’outil.
    .short = L’attelage le lève
    .workshop = Capacité de levage { $lift } là où l’outil pend, masse { $mass } : reste { $left }.
lift-short = L’attelage ne peut pas lever l’outil.
    .short = Trop lourd pour l’attelage
    .workshop = Capacité de levage { $lift } là où l’outil pend, masse { $mass } : { $over } de trop.
lift-unknown = Il n’est pas indiqué si l’attelage peut lever l’outil.
    .short = Levage non indiqué
    .workshop = Levage : { $missing-name } de { $missing-of } non indiqué.
listing-and-dimensions-disagree = Le constructeur propose { $a } et { $b } ensemble, mais d’après leurs cotes ils ne se relient pas. L’un des deux est faux.
    .short = Guide et cotes se contredisent
    .workshop = { $roles-name } : proposés ensemble, mais les cotes disent non{ $margin ->
        [none] .
       *[other] {" "}: marge { $margin }, pire cas ±{ $worst-case }.
    } Comparer les références sur les appareils avant tout achat.
loading-unknown = On ne sait pas comment la machine voyage sur la remorque, car une donnée dont cela dépend n’est pas indiquée.
    .short = Chargement non connu
    .workshop = Chargement : { $missing-name } de { $item } non indiqué.
loads-unknown = Les charges par essieu sont inconnues, car une donnée dont elles dépendent manque.
    .short = Charges par essieu inconnues
    .workshop = Charges par essieu : { $missing-name } de { $item } non indiqué.
measurement-not-used = Une mesure de { $item } ne peut pas servir. À reprendre.
    .short = Mesure inutilisable
    .workshop = { $port } de { $item }, { $dimension-name } : { $reason ->
        [no-port] { $item } n’a pas de { $port }.
        [no-dimension] { $port } n’a pas cette cote.
       *[impossible] aucune unité n’a cette valeur.
    }
must-come-off = À déposer de la machine : { $what }.
    .short = À déposer : { $what }
    .workshop = Pour { $item }, à déposer de la machine : { $what }.
must-go-on = La machine doit porter : { $what }.
    .short = Demande : { $what }
    .workshop = Pour { $item }, la machine doit porter : { $what }.
needs-frame = { $item } demande un châssis de montage.
    .short = Demande un châssis
    .workshop = { $item } se pend à un support arrière ; le simple attelage trois points n’en a pas.
nose-load-in-range = { $heading ->
    [backward] L’arrière vers l’avant, la machine peut se placer sur la remorque avec la charge sur le timon dans sa plage.
   *[forward] L’avant vers l’avant, la machine peut se placer sur la remorque avec la charge sur le timon dans sa plage.
}
    .short = Charge sur le timon correcte
    .workshop = Charge sur le timon { $nose }, plage de { $least } à { $most }, l’essieu arrière de { $from } à { $to } devant le bord arrière du plateau et { $heading ->
        [backward] l’arrière vers l’avant.
       *[forward] l’avant vers l’avant.
    }
nose-load-out-of-range = Nulle part sur le plateau de la remorque la charge sur le timon n’est dans sa plage.
    .short = Charge sur le timon hors plage
    .workshop = Charge sur le timon { $nose } à la meilleure place du plateau, plage de { $least } à { $most }.
nothing-answers = { $role ->
    [axle-anchor] { $a } ne trouve rien où se boulonner à l’essieu arrière.
    [front-anchor] { $a } ne trouve rien où se boulonner à l’avant.
    [rack] { $a } ne trouve pas de support arrière.
    [hitch] { $a } ne trouve pas d’attelage trois points.
    [seat-deck] { $a } ne trouve pas d’assise.
    [power-take-off] { $a } ne trouve pas de prise de force.
    [pressure] { $a } demande une ligne hydraulique qui manque encore.
    [return] { $a } demande une ligne de retour qui manque encore.
    [case-drain] { $a } demande une ligne de drain qui manque encore.
   *[wiring] { $a } demande un câble qui manque encore.
}
    .short = { $role ->
        [axle-anchor] Pas d’ancrage d’essieu pour lui
        [front-anchor] Pas d’ancrage avant pour lui
        [rack] Pas de support pour lui
        [hitch] Pas d’attelage pour lui
        [seat-deck] Pas d’assise pour le siège
        [power-take-off] Pas de prise de force pour lui
        [pressure] Ligne de pression à poser
        [return] Ligne de retour à poser
        [case-drain] Ligne de drain à poser
       *[wiring] Câble à poser
    }
    .workshop = { $a }, { $port } : rien dans ce montage n’y répond ({ $role-name }).
pins-enter = Les axes de { $b } et { $a } conviennent.
    .short = Les axes conviennent
    .workshop = { $roles-name }, { $point } : jeu { $running }, on admet { $limit }.
pins-may-enter = D’après les plans, on ne peut dire si les axes de { $b } et { $a } vont ensemble : c’est trop juste.
    .short = Axes trop justes
    .workshop = { $roles-name }{ $point ->
        [none] {""}
       *[other] , { $point }
    } : { $dimension-name } laisse { $running } de jeu, on admet { $limit } ; probabilité { $probability }{ $settles ->
        [none] .
       *[other] . Connu à ±{ $settles }, ce serait tranché.
    }
pins-need-sleeve = L’axe est plus mince que son alésage. Une bague rattrape l’écart.
    .short = Demande une bague
    .workshop = { $roles-name }, { $point } : alésage { $bore }, axe { $pin }, jeu { $running } ; au-delà de { $limit } il faut une bague.
pins-side-play = La liaison a du jeu latéral. Des rondelles le rattrapent.
    .short = Demande des rondelles
    .workshop = { $roles-name }, { $point } : jeu latéral { $play } ; au-delà de { $limit } il faut des rondelles.
pins-sleeved = { $item } ajuste l’axe à son alésage.
    .short = Bagué avec { $item }
    .workshop = { $roles-name } : { $item } garnit l’alésage de { $bore } pour l’axe de { $pin }.
pins-spread-off = Les pattes de { $b } sont { $off-by } trop écartées ou trop serrées pour { $a }.
    .short = L’écartement ne convient pas
    .workshop = { $roles-name } : écartement { $carrier } sur { $a }, { $carried } sur { $b } : { $off-by } d’écart, on admet { $limit }.
pins-unknown = Une cote des axes n’est pas indiquée.
    .short = Axes non indiqués
    .workshop = { $roles-name } de { $missing-of } : { $missing-name } non indiqué.
pins-will-not-enter = { $dimension ->
    [width] Une patte est trop large pour la chape où elle doit entrer.
   *[diameter] Un axe est trop gros pour son alésage.
}
    .short = { $dimension ->
        [width] Patte trop large
       *[diameter] Axe trop gros
    }
    .workshop = { $roles-name }, { $point } : { $dimension-name } { $carrier } sur { $a }, { $carried } sur { $b } : { $over } de trop.
port-looked-missing = Ce qu’il faut à la liaison n’est pas sur cet appareil.
    .short = Absent de cet appareil
    .workshop = { $roles-name } : { $port }, cherché et absent.
port-not-on-serial = Les appareils portant ce numéro de série n’ont pas ce qu’il faut à la liaison.
    .short = Pas sur ce numéro de série
    .workshop = { $roles-name } : le numéro de série { $serial } vient sans { $port }.
port-serial-unknown = Seuls certains appareils ont ce qu’il faut à la liaison. Regardez le vôtre ou saisissez son numéro de série.
    .short = Dépend du numéro de série
    .workshop = { $roles-name } : seuls certains numéros de série ont { $port }.
place-unknown = L’emplacement de { $item } sur la machine n’est pas indiqué ; ce qui en dépend ne peut pas être calculé.
    .short = Emplacement inconnu
    .workshop = Aucune liaison dans les données ne dit où se trouve { $item }. Mesurer, ou demander au constructeur.
power-high = La machine a plus de puissance que l’outil n’en admet.
    .short = Trop de puissance
    .workshop = Puissance à la prise { $power } ; l’outil supporte { $most }.
power-short = La machine a trop peu de puissance pour l’outil.
    .short = Trop peu de puissance
    .workshop = Puissance à la prise { $power } ; l’outil demande { $least }.
power-unknown = La puissance de la machine à la prise de force n’est pas indiquée.
    .short = Puissance non indiquée
    .workshop = Entraînement de { $missing-of } : { $missing-name } non indiqué.
pto-differs = { $dimension ->
    [speed] La prise de force ne tourne pas au régime que l’outil demande.
    [rotation] La prise de force tourne dans l’autre sens.
   *[shaft-type] L’arbre de transmission demande un autre embout.
}
    .short = { $dimension ->
        [speed] Régime de prise différent
        [rotation] La prise tourne dans l’autre sens
       *[shaft-type] L’arbre demande un autre embout
    }
    .workshop = Prise de force : { $dimension-name } { $carrier-name } sur { $a }, { $carried-name } sur { $b }.
pto-fits = La prise de force convient à l’outil.
    .short = La prise de force convient
    .workshop = Prise de force : type { $shaft-type } (ISO 500-1), { $speed } tours par minute des deux côtés.
pto-unknown = Tout n’est pas indiqué sur la prise de force.
    .short = Prise de force non indiquée
    .workshop = Prise de force de { $missing-of } : { $missing-name } non indiqué.
ramp-clears = { $way ->
    [forward] En marche avant, la machine monte la rampe de la remorque sans frotter.
    [backward] En marche arrière, la machine monte la rampe de la remorque sans frotter.
   *[either] La machine monte la rampe de la remorque sans frotter.
}
    .short = Passe la rampe
    .workshop = Rampe { $ramp } : { $item } passe au plus près, il reste { $clearance }.
ramp-drags = { $item } frotte de { $drags-by } sur la rampe de la remorque. { $shortest ->
    [none] Aucune rampe qui voyage sur une remorque ne suffit.
   *[other] Des rampes de { $shortest } suffisent.
}
    .short = Frotte sur la rampe
    .workshop = Rampe { $ramp }, { $way ->
        [backward] en marche arrière
       *[forward] en marche avant
    } : { $item } est trop bas de { $drags-by }, { $distance } { $place ->
        [ahead] devant l’essieu arrière, avant les roues avant
        [between] devant l’essieu arrière, entre les roues
       *[behind] derrière l’essieu arrière
    }. { $shortest ->
        [none] Aucune rampe qui voyage sur une remorque ne laisse { $wanted }.
       *[other] Une rampe de { $shortest } laisse { $wanted }.
    }
ramp-tight = { $item } passe à { $clearance } de la rampe de la remorque ; { $wanted } sont voulus. { $shortest ->
    [none] Aucune rampe qui voyage sur une remorque ne les laisse.
   *[other] Des rampes de { $shortest } les laissent.
}
    .short = Rampe juste
    .workshop = Rampe { $ramp }, { $way ->
        [backward] en marche arrière
       *[forward] en marche avant
    } : { $clearance } sous { $item }, { $distance } { $place ->
        [ahead] devant l’essieu arrière, avant les roues avant
        [between] devant l’essieu arrière, entre les roues
       *[behind] derrière l’essieu arrière
    }. { $shortest ->
        [none] Aucune rampe qui voyage sur une remorque ne laisse { $wanted }.
       *[other] Une rampe de { $shortest } laisse { $wanted }.
    }
seat-faces-forward = L’outil se conduit tourné vers l’arrière, et ce siège ne regarde que vers l’avant.
    .short = Le siège ne regarde que vers l’avant
    .workshop = Siège : tourné vers l’avant ; les leviers de l’outil sont derrière.
seat-reach-far = Les leviers sont trop loin du siège.
    .short = Leviers éloignés
    .workshop = Du point repère du siège aux leviers { $distance } ; au plus { $most }.
seat-room = Il y a de la place pour les genoux entre le siège et les leviers.
    .short = De la place au siège
    .workshop = Du point repère du siège aux leviers { $room } ; au moins { $least }.
seat-room-short = Il y a trop peu de place entre le siège et les leviers.
    .short = Trop peu de place au siège
    .workshop = Du point repère du siège aux leviers { $room } ; au moins { $least } : il manque { $short }.
seat-room-unknown = La place au siège n’est pas indiquée.
    .short = Place au siège non indiquée
    .workshop = Place au siège : { $missing-name } de { $missing-of } non indiqué.
seat-station-differs = { $station ->
    [cab] Ce siège n’est pas fait pour une machine à cabine.
   *[open] Ce siège n’est pas fait pour une machine ouverte.
}
    .short = { $station ->
        [cab] Siège pas pour cabines
       *[open] Siège pas pour machines ouvertes
    }
    .workshop = { $a } : pas fait pour ce poste ({ $station-name }).
seat-switch-missing = Le siège n’a pas le contacteur qui signale à la machine que quelqu’un est assis. Il faut en poser un selon la notice du constructeur.
    .short = Contacteur de siège à poser
    .workshop = Contacteur de présence : absent du siège. Poser et câbler selon la notice de la machine.
seat-switch-unknown = Il n’est pas indiqué si le siège a un contacteur qui signale à la machine que quelqu’un est assis.
    .short = Contacteur de siège non indiqué
    .workshop = Contacteur de présence : non indiqué pour le siège.
seat-turns-not = Le siège de l’opérateur de cette machine ne pivote pas.
    .short = Le siège ne pivote pas
    .workshop = Siège : un siège pivotant est choisi ; celui de la machine ne pivote pas.
seat-without-its-supplier = { $supplier ->
    [machine] Ce siège ne vient qu’avec une autre machine.
    [frame] Ce siège ne vient qu’avec un autre châssis.
   *[implement] Ce siège ne vient qu’avec un autre outil.
}
    .short = { $supplier ->
        [machine] Vient avec une autre machine
        [frame] Vient avec un autre châssis
       *[implement] Vient avec un autre outil
    }
    .workshop = { $a } : vient avec quelque chose qui n’est pas dans ce montage ({ $supplier-name }). Voir s’il se vend seul.
site-unknown = Non indiqué pour { $site } : { $missing-name }.
    .short = Site sans données
    .workshop = { $site } : { $missing-name } non indiqué.
serial-of-another = Le numéro de série { $serial } n’est pas celui de { $item } tel qu’il figure ici. Vérifiez de quelle unité il s’agit.
    .short = Numéro d’une autre série
    .workshop = { $item } : le numéro de série { $serial } est hors de la plage de cette fiche.
station-differs = { $station ->
    [cab] Ce châssis n’est pas fait pour une machine à cabine.
   *[open] Ce châssis n’est pas fait pour une machine ouverte.
}
    .short = { $station ->
        [cab] Châssis pas pour cabines
       *[open] Châssis pas pour machines ouvertes
    }
    .workshop = { $a } : pas fait pour ce poste ({ $station-name }).
station-unknown = Il n’est pas indiqué si ce châssis est pour machines ouvertes ou à cabine.
    .short = Ouvert ou cabine non indiqué
    .workshop = { $a } : postes non indiqués.
swivel-hits = Le siège heurte { $item } en pivotant.
    .short = Le siège heurte en pivotant
    .workshop = Siège pivotant : balaie un rayon de { $radius } ; jusqu’à { $item } il y a { $room }.
tie-downs-needed = { $count ->
    [one] Arrimez la machine avec au moins { $count } sangle ou chaîne.
   *[other] Arrimez la machine avec au moins { $count } sangles ou chaînes.
}
    .short = Arrimage nécessaire
    .workshop = Au moins { $count } arrimages qui tiennent ensemble { $together } : tout droit de la remorque à la machine, { $each } chacun (49 CFR 393.106, 393.110).
trailer-carries = { $rating ->
    [axle] Les essieux de la remorque portent leur charge dans l’admissible.
   *[total] Machine et remorque ensemble restent dans la charge admissible.
}
    .short = La remorque porte
    .workshop = { $rating ->
        [axle] Essieux de la remorque
       *[total] Remorque avec la machine
    } : { $load }, admissible { $rated }, il reste { $left }.
trailer-narrow = Les pneus de la machine sont plus larges que le plateau de la remorque de { $beyond }.
    .short = Remorque trop étroite
    .workshop = Sur les pneus { $width }, plateau { $deck } : { $beyond } de trop.
trailer-overloaded = { $rating ->
    [axle] Les essieux de la remorque porteraient { $over } de plus que l’admissible.
   *[total] Machine et remorque ensemble dépassent la charge admissible de { $over }.
}
    .short = Remorque surchargée
    .workshop = { $rating ->
        [axle] Essieux de la remorque
       *[total] Remorque avec la machine
    } : { $load }, admissible { $rated }, { $over } de trop.
trailer-short = Le plateau de la remorque est plus court que l’empattement de la machine.
    .short = Remorque trop courte
    .workshop = Empattement { $wheelbase }, plateau { $deck }.
trailer-unknown = Non indiqué pour { $trailer } : { $missing-name }.
    .short = Remorque sans données
    .workshop = { $trailer } : { $missing-name } non indiqué.
tyre-overloaded = { $axle ->
    [front] Les pneus avant porteraient plus que leur charge admissible.
   *[rear] Les pneus arrière porteraient plus que leur charge admissible.
}
    .short = { $axle ->
        [front] Pneus avant surchargés
       *[rear] Pneus arrière surchargés
    }
    .workshop = { $axle ->
        [front] Chaque pneu avant
       *[rear] Chaque pneu arrière
    } : charge { $load }, admissible { $rated }, { $over } de trop.
wiring-differs = Les prises électriques diffèrent ; l’une est à changer.
    .short = Prise électrique à changer
    .workshop = { $roles-name } : { $carrier } sur { $a }, { $carried } sur { $b }.
wiring-fits = Les prises électriques vont ensemble.
    .short = Les prises vont ensemble
    .workshop = { $roles-name } : { $connector } des deux côtés.
