access-unknown = Des données manquent ; on ne sait donc pas si la machine accède au chantier.
    .short = Accès : données manquantes
    .workshop = Accès : données manquantes pour { $item } : { $missing-name }.
adapter-goes-in = { $item } se place entre les deux.
    .short = Nécessaire : { $item }
    .workshop = Monter { $item }{ $work ->
        [none] .
       *[other] {" "}: { $work } d’atelier.
    }
adapter-not-needed = Pas nécessaire ici : { $item }.
    .short = Pas nécessaire : { $item }
    .workshop = { $item } ne relie rien dans ce montage ; on peut s’en passer.
arm-on-hitch = Ne creusez pas avec { $item } sur le seul attelage trois points : l’outil peut être projeté vers le haut et basculer sur l’opérateur. Montez un châssis ou, si la notice le permet, la jambe de force du constructeur.
    .short = Pelle rétro sur simple attelage
    .workshop = { $item } est attelé au seul trois points, sans châssis, et peut être projeté vers le haut et basculer sur l’opérateur. Ne pas creuser ainsi. Monter un châssis ou, si la notice le permet, la jambe de force du constructeur.
axle-overloaded = { $axle ->
    [front] L’essieu avant porterait { $over } de plus que sa charge admissible.
   *[rear] L’essieu arrière porterait { $over } de plus que sa charge admissible.
}
    .short = { $axle ->
        [front] Essieu avant : { $over } de trop
       *[rear] Essieu arrière : { $over } de trop
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
        [front] Essieu avant : reste { $left }
       *[rear] Essieu arrière : reste { $left }
    }
    .workshop = { $axle ->
        [front] Essieu avant
       *[rear] Essieu arrière
    } : charge { $load }, admissible { $rated }, il reste { $left }.
bar-in-the-way = { $bar ->
    [stays-up] L’arceau de sécurité doit rester relevé : rabattu, il toucherait { $item } ({ $overlap }).
    [folded] L’arceau de sécurité rabattu touche { $item } ({ $overlap }).
   *[up] L’arceau de sécurité touche { $item } ({ $overlap }).
}
    .short = { $bar ->
        [stays-up] L’arceau doit rester relevé
       *[up] L’arceau empiète de { $overlap }
    }
    .workshop = { $bar ->
        [stays-up] Laisser l’arceau relevé : rabattu, il empiéterait de { $overlap } sur { $item }.
        [folded] L’arceau rabattu empiète de { $overlap } sur { $item }.
       *[up] L’arceau relevé empiète de { $overlap } sur { $item }.
    }
bolt-not-for-tapped = Les boulons de { $bolt } n’entrent pas dans les trous de { $side }, taraudés à { $tapped }.
    .short = Boulons et taraudages différents
    .workshop = { $roles-name } : boulons de { $bolt }, trous de { $side } taraudés à { $tapped }. Ils ne se vissent pas ; ne rien forcer ni retarauder sans l’accord du constructeur.
bolt-too-thick = Les boulons de { $bolt } n’entrent pas dans les trous de { $hole } ({ $side }).
    .short = Boulons trop gros pour les trous
    .workshop = { $roles-name } : trous de { $hole } ({ $side }), boulons { $bolt } : { $over } de trop, plus qu’on n’agrandit un trou.
bolts-stated-differently = Les boulons entre { $b } et { $a } sont indiqués en deux tailles : { $least } et { $most }. Demandez laquelle est la bonne.
    .short = Boulons indiqués en deux tailles
    .workshop = { $roles-name } : boulons de { $least } d’un côté, de { $most } de l’autre. Calculé avec { $most } ; à éclaircir avant tout achat.
bolts-unknown = Des boulons ne passent que par { $bolts } trous sur { $holes }. Le constructeur doit dire si cela suffit.
    .short = Assez de boulons ?
    .workshop = Une plaque a { $holes } trous, l’autre { $bolts }. Demander au constructeur combien de boulons il faut à cette liaison.
bolts-will-not-hold = Les trous de { $hole } ({ $side }) sont bien trop larges pour des boulons de { $bolt } : tête et rondelle passent au travers.
    .short = Trous trop larges pour les boulons
    .workshop = { $roles-name } : trous de { $hole } ({ $side }) pour des boulons de { $bolt } ; la rondelle ordinaire ne les couvre pas (pratique courante).
clearance-hit = { $item } touche { $other }.
    .short = { $item } empiète de { $overlap } sur { $other }
    .workshop = { $item }, { $shape-name }, empiète de { $overlap } sur { $other }, { $other-shape-name }.
clearance-tight = { $item } et { $other } sont trop près l’un de l’autre.
    .short = { $item } à { $gap } seulement : { $other }
    .workshop = { $item }, { $shape-name }, et { $other }, { $other-shape-name } : { $gap } d’écart, il en faut { $wanted } (pratique courante).
clearance-unknown = L’un des deux n’a pas de contour dans le catalogue ; la distance entre eux est donc inconnue.
    .short = Contour manquant
    .workshop = Données manquantes pour { $missing-of } : { $missing-name }.
closure-meets = { $b } se boulonne à l’essieu arrière et tombe aussi en face de l’ancrage avant ({ $a }).
    .short = Tombe sur l’ancrage avant
    .workshop = Ancrage avant : écart { $off-by }, { $margin-way ->
        [short] { $margin } de trop
       *[spare] { $margin } de reste
    } ; les plans peuvent varier de ±{ $worst-case } au total{ $slot ->
        [none] .
       *[other]  ; le trou oblong donne { $slot }.
    }
closure-misses = { $b } se boulonne à l’essieu arrière, mais ne tombe pas en face de l’ancrage avant ({ $a }) : { $longer } { $longer-way ->
    [shorter] trop court
   *[longer] trop long
}.
    .short = Ancrage avant décalé de { $off-by }
    .workshop = Ancrage avant : écart { $off-by }, { $margin-way ->
        [short] { $margin } de trop
       *[spare] { $margin } de reste
    } ; les plans peuvent varier de ±{ $worst-case } au total. Entre ses ancrages, le châssis est { $longer-way ->
        [shorter] { $longer } plus court
       *[longer] { $longer } plus long
    } que la fixation de la machine.
closure-height-off = { $b } se boulonne à l’essieu arrière, mais ne tombe pas en face de l’ancrage avant ({ $a }) : à l’avant, il est { $higher } { $higher-way ->
    [lower] trop bas
   *[higher] trop haut
}.
    .short = Ancrage avant décalé de { $off-by }
    .workshop = Ancrage avant : le châssis est à l’avant { $higher } { $higher-way ->
        [lower] trop bas
       *[higher] trop haut
    }, écart total { $off-by }, { $margin-way ->
        [short] { $margin } de trop
       *[spare] { $margin } de reste
    } ; les plans peuvent varier de ±{ $worst-case } au total. Les boulons de l’essieu ne le laissent tourner que de leur jeu.
closure-aside = { $b } se boulonne à l’essieu arrière, mais ne tombe pas en face de l’ancrage avant ({ $a }) : les plaques { $aside-way ->
    [crossing] se croisent de { $off-by }
   *[apart] sont à { $off-by } l’une de l’autre
}.
    .short = Ancrage avant décalé de { $off-by }
    .workshop = Ancrage avant : de côté, les plaques { $aside-way ->
        [crossing] se croisent de { $off-by } ; le châssis cède jusqu’à { $limit }
       *[apart] sont à { $off-by } l’une de l’autre ; des cales rattrapent { $limit }
    } (pratique courante).
closure-faces-apart = { $b } se boulonne à l’essieu arrière, mais ne tombe pas en face de l’ancrage avant ({ $a }) : les plaques ne se font pas face.
    .short = Plaques avant mal orientées
    .workshop = Ancrage avant : la plaque du châssis ne fait pas face à celle de la machine, ou pas avec le même côté en haut.
closure-open = Les plans ne permettent pas de dire si { $b } tombe en face de l’ancrage avant ({ $a }). Mesurez d’abord.
    .short = Ancrage avant : { $probability } de chances
    .workshop = Ancrage avant : écart { $off-by }, { $margin-way ->
        [short] { $margin } de trop
       *[spare] { $margin } de reste
    } ; les plans peuvent varier de ±{ $worst-case } au total ; { $probability } de chances que cela tombe en face{ $settles ->
        [none] .
       *[other] . Une cote connue à ±{ $settles } trancherait.
    }
closure-unknown = On ne sait pas où se trouve l’ancrage avant ; on ne peut pas encore dire si { $b } tombe en face.
    .short = Ancrage avant : données manquantes
    .workshop = Ancrage avant : données manquantes pour { $missing-of } : { $missing-name }.
corner-clears = La machine prend le virage derrière le portail en une fois.
    .short = Prend le virage, { $wanted } suffisent
    .workshop = Portail { $gate }, puis à angle droit dans une allée de { $path } : { $wanted } d’allée suffisent.
corner-tight = La machine ne prend pas le virage derrière le portail en une fois. Cela passe peut-être en manœuvrant ; essayez.
    .short = { $wanted ->
        [none] Virage serré
       *[other] Virage : il faut { $wanted } d’allée
    }
    .workshop = Portail { $gate }, puis à angle droit dans une allée de { $path } : { $wanted ->
        [none] aucune largeur d’allée ne suffit en une fois, car l’arrière déporte contre le portail.
       *[other] pour tourner en une fois, il faut une allée de { $wanted }.
    }
coupler-differs = Les coupleurs hydrauliques diffèrent ; il faut un autre coupleur au flexible.
    .short = Autre coupleur au flexible
    .workshop = { $roles-name } : { $carrier } sur { $a }, { $carried } sur { $b }. Changer le coupleur du flexible.
coupler-fits = Les coupleurs hydrauliques vont ensemble.
    .short = Les coupleurs vont ensemble
    .workshop = { $roles-name } : { $standard }, taille { $size }, des deux côtés.
coupler-unknown = D’un côté, le coupleur hydraulique n’est pas connu.
    .short = Coupleur : données manquantes
    .workshop = { $roles-name } : données manquantes pour { $missing-of } : { $missing-name }.
coupling-weak = L’attelage de la remorque admet { $most } de charge verticale ; chargée, elle en demande au moins { $least }.
    .short = L’attelage admet { $most } sur { $least }
    .workshop = Charge verticale admissible de l’attelage { $most } ; minimum de la remorque chargée { $least }.
driver-seat-cannot = Le siège de l’opérateur ne peut pas se mettre comme choisi : { $state ->
    [folded] il ne se rabat pas vers l’avant.
    [slid] il n’avance pas assez.
    [turned] il ne pivote pas.
   *[other] rien ne dit qu’il le peut.
}
    .short = Siège opérateur : position impossible
    .workshop = Siège de l’opérateur : { $state ->
        [folded] il doit se rabattre vers l’avant ; celui-ci ne le fait pas.
        [slid] il doit avancer ; celui-ci n’avance pas assez.
        [turned] il doit pivoter ; celui-ci ne pivote pas.
       *[other] rien ne dit qu’il peut se mettre ainsi.
    }
driver-seat-moves = { $state ->
    [folded] Pour travailler depuis le siège arrière, rabattez vers l’avant le siège de l’opérateur.
    [slid] Pour travailler depuis le siège arrière, avancez de { $by } le siège de l’opérateur.
    [turned] Pour travailler, faites pivoter le siège de l’opérateur.
   *[off] Pour travailler depuis le siège arrière, il faut déposer le siège de l’opérateur.
}
    .short = { $state ->
        [folded] Rabattre le siège opérateur
        [slid] Avancer le siège opérateur
        [turned] Faire pivoter le siège opérateur
       *[off] Siège opérateur à déposer
    }
    .workshop = Siège de l’opérateur pendant le travail : { $state ->
        [folded] le rabattre vers l’avant, à la main.
        [slid] l’avancer de { $by }, à la main.
        [turned] le faire pivoter, à la main.
       *[off] le déposer{ $hours ->
            [none] .
           *[other] , { $hours }.
        }
    }
deck-close = { $way ->
    [length] L’empattement de la machine est presque exactement aussi long que le plateau de la remorque. Mesurez les deux avant de charger.
   *[width] Hors pneus, la machine est presque exactement aussi large que le plateau de la remorque. Mesurez les deux avant de charger.
}
    .short = Plateau : mesurer d’abord
    .workshop = { $way ->
        [length] Empattement
       *[width] Largeur hors pneus
    } { $size }, plateau { $deck } : à eux deux, ils peuvent s’écarter de { $off }.
equipment-answers = { $a } se joint par « { $port } » à { $what }, qui n’est pas sur la machine. Sans cela le joint n’est pas prouvé.
    .short = Pas sur la machine : { $what }
    .workshop = La connexion « { $port } » de { $a } se joint à { $what }, qui n’est pas sur la machine. Posez-le, ou indiquez qu’il y est.
equipment-in-the-way = { $what } gêne { $item } et doit être déposé.
    .short = Gêne : { $what }
    .workshop = { $what } ({ $shape }) et { $item } ({ $other-shape }) se chevauchent de { $overlap }. Déposez-le.
equipment-lacks = { $item } n’a rien sur la machine où aller : il manque « { $what } ».
    .short = Manque pour { $item } : { $what }
    .workshop = { $item } demande la connexion « { $what } », que la machine n’a pas telle qu’elle est.
equipment-may-be-in-the-way = { $what } gêne peut-être { $item }.
    .short = Gêne peut-être : { $what }
    .workshop = { $what } ({ $shape }) et { $item } ({ $other-shape }) se chevauchent de { $overlap } vus de côté. Regardez si l’un passe à côté de l’autre.
faces-turned = Face contre face avec { $a }, { $b } serait { $way ->
    [half-round] à l’envers
    [tipped] basculé
   *[on-its-side] de travers, couché ou sur la tête
}.
    .short = Faces mal tournées
    .workshop = { $roles-name } : les deux faces ne peuvent pas se regarder avec { $b } { $way ->
        [half-round] dans le bon sens
       *[other] debout
    }.
frame-idle = { $item } reste vide : { $other } est attelé au trois points, derrière lui.
    .short = Rien sur { $item }
    .workshop = { $other } est attelé au trois points, et rien n’est accroché à { $item }. Déposer le châssis, ou choisir un outil ou un adaptateur qui aille sur son porte-outil.
frame-in-the-ground = { $item } entrerait de { $below } dans le sol.
    .short = Entre de { $below } dans le sol
    .workshop = { $item } : le point le plus bas est à { $below } sous le sol.
frame-low = { $item } n’est qu’à { $height } du sol ; il faut { $wanted }.
    .short = À { $height } du sol seulement
    .workshop = { $item } : le point le plus bas est à { $height } du sol ; il faut { $wanted } (pratique courante).
front-axle-heavy-enough = Il reste assez de poids sur les roues avant pour diriger : { $share }, il faut au moins { $least }.
    .short = Essieu avant { $share }, minimum { $least }
    .workshop = L’essieu avant porte { $share } de la masse à vide de la machine ; il faut au moins { $least } (règle routière allemande, et la plupart des notices).
front-axle-lifts = Les roues avant quitteraient le sol. Ne roulez pas ainsi : il faut au moins { $ballast } de lest avant.
    .short = Roues avant levées : { $ballast } de lest
    .workshop = Les roues avant se lèvent : rien que pour les garder au sol, il manque { $lift }. Pour la part minimale, fixer au moins { $ballast } de masses à { $ballast-at } devant l’essieu arrière.
front-axle-light = Les roues avant deviennent trop légères pour diriger en sécurité. Il faut au moins { $ballast } de lest avant.
    .short = { $ballast } de lest avant nécessaires
    .with = un lest avant
    .workshop = L’essieu avant porte { $share } de la masse à vide de la machine ; il faut au moins { $least } (règle routière allemande, et la plupart des notices). Pour cela, fixer au moins { $ballast } de masses à { $ballast-at } devant l’essieu arrière.
front-axle-near-least = Les roues avant deviennent peut-être trop légères pour diriger en sécurité : les masses peuvent s’écarter de plus que ce qui reste. Pesez l’essieu avant, ou fixez au moins { $ballast } de lest avant.
    .short = Peser l’essieu avant
    .workshop = L’essieu avant porte { $share } de la masse à vide de la machine ; il faut au moins { $least }, et sa charge peut s’écarter de { $off }. Au moins { $ballast } de masses à { $ballast-at } devant l’essieu arrière tranchent la question.
front-share-of-total-low = Les roues avant portent { $share } de tout ce qui repose sur les roues. L’usage, sans source, demande { $least } : au moins { $ballast } de lest avant y suffisent.
    .short = Peu du poids total à l’avant
    .workshop = L’essieu avant porte { $share } de la masse totale ; usage courant, sans source : { $least }. Au moins { $ballast } de masses à { $ballast-at } devant l’essieu arrière y suffisent.
gate-close = { $way ->
    [height] La machine est presque exactement aussi haute que le portail. Mesurez les deux avant de passer.
    [folded] Arceau rabattu, la machine est presque exactement aussi haute que le portail. Mesurez les deux avant de passer et ne rabattez l’arceau que comme la notice le permet.
   *[width] La machine est presque exactement aussi large que le portail. Mesurez les deux avant de passer.
}
    .short = Portail : mesurer d’abord
    .workshop = { $way ->
        [height] Hauteur
        [folded] Hauteur arceau rabattu
       *[width] Largeur
    } { $size }, portail { $gate } : à eux deux, ils peuvent s’écarter de { $off }.
gate-low = { $folded ->
    [none] La machine est trop haute de { $beyond } pour le portail.
   *[other] Arceau relevé, la machine est trop haute de { $beyond } pour le portail. Ne rabattez l’arceau que pour passer, sur sol plat, au pas, comme la notice le permet ; relevez-le ensuite. Arceau rabattu, ne bouclez pas la ceinture.
}
    .short = Portail trop bas de { $beyond }
    .with = l’arceau rabattu
    .workshop = Hauteur { $height }, portail { $gate }, { $beyond } de trop{ $folded ->
        [none] .
       *[other]  ; arceau rabattu { $folded }. Ne le rabattre que pour passer, sur sol plat, au pas, comme la notice le permet ; le relever ensuite.
    }
gate-narrow = La machine est plus large que le portail de { $beyond }.
    .short = Portail trop étroit de { $beyond }
    .workshop = Largeur { $width }, portail { $gate } : { $beyond } de trop.
gate-passes = La machine passe le portail, il reste { $left } de chaque côté.
    .short = Portail : { $left } de chaque côté
    .workshop = Largeur { $width }, portail { $gate } : il reste { $left } de chaque côté.
ground-carries = Le sol du chantier porte l’essieu le plus chargé de la machine.
    .short = Sol : reste { $left }
    .workshop = { $axle ->
        [front] Essieu avant
       *[rear] Essieu arrière
    } : charge { $load }, le sol porte { $most }, il reste { $left }.
ground-load-near = L’essieu le plus chargé de la machine est si près de ce que porte le sol du chantier qu’il faut le peser.
    .short = Peser l’essieu pour le sol
    .workshop = { $axle ->
        [front] Essieu avant
       *[rear] Essieu arrière
    } : charge { $load }, à { $off } près au plus, le sol porte { $most }.
ground-overloaded = L’essieu le plus chargé de la machine dépasse de { $over } ce que porte le sol du chantier.
    .short = { $over } de trop pour le sol
    .workshop = { $axle ->
        [front] Essieu avant
       *[rear] Essieu arrière
    } : charge { $load }, le sol porte { $most }, { $over } de trop.
hitch-differs = L’attelage trois points est trop petit pour { $b } : les tourillons n’entrent pas.
    .short = Catégories d’attelage différentes
    .workshop = Catégorie d’attelage { $carrier } sur { $a }, { $carried } sur { $b } : les tourillons sont trop gros.
hitch-dimension-misfits = { $b } ne s’attelle pas au trois points : une cote ne convient pas.
    .short = Cote d’attelage : { $over } de trop
    .workshop = { $dimension-name } : { $carrier } sur { $a }, { $carried } sur { $b }, { $over } de trop.
hitch-dimension-open = Les cotes ne permettent pas de dire si { $b } s’attelle au trois points. Mesurez d’abord.
    .short = Attelage : { $probability } de chances
    .workshop = { $dimension-name } : { $carrier } sur { $a }, { $carried } sur { $b } ; { $probability } de chances que cela aille{ $settles ->
        [none] .
       *[other] . Une cote connue à ±{ $settles } trancherait.
    }
hitch-fits = L’attelage trois points est de la bonne taille.
    .short = La catégorie d’attelage convient
    .workshop = Catégorie d’attelage { $category } (ISO 730) des deux côtés.
hitch-frame-stiff = Les crochets de l’attelage rapide ne sont pas à l’écartement des tourillons ({ $b }).
    .short = L’attelage rapide ne convient pas
    .workshop = Catégorie d’attelage { $carrier } sur { $a } avec attelage rapide, { $carried } sur { $b } : les crochets ne se déplacent pas. Déposer l’attelage rapide.
hitch-needs-bushings = L’attelage est une taille au-dessus de ce qu’il faut pour { $b } ; des bagues de réduction rattrapent l’écart.
    .short = Bagues de réduction nécessaires
    .workshop = Catégorie d’attelage { $carrier } sur { $a }, { $carried } sur { $b } : poser des bagues de réduction.
hitch-other-span = Les bras inférieurs sont à régler à l’écartement des tourillons ({ $b }).
    .short = Bras inférieurs à régler
    .workshop = Catégorie d’attelage { $carrier } sur { $a }, { $carried } sur { $b } : les tourillons sont les mêmes, pas leur écartement. Régler les bras inférieurs et leurs stabilisateurs.
hitch-unknown = La taille d’un attelage trois points n’est pas connue.
    .short = Attelage : données manquantes
    .workshop = Attelage trois points : données manquantes pour { $missing-of } : { $missing-name }.
holes-drilled = { $drill ->
    [one] Vous avez choisi de percer { $drill } trou dans { $side }. Demandez au constructeur avant de percer.
   *[other] Vous avez choisi de percer { $drill } trous dans { $side }. Demandez au constructeur avant de percer.
}
    .short = { $drill ->
        [one] { $drill } trou à percer (choisi)
       *[other] { $drill } trous à percer (choisi)
    }
    .workshop = { $roles-name }, si le constructeur est d’accord : pointer { $drill ->
        [one] { $drill } trou
       *[other] { $drill } trous
    } au travers sur { $side }, { $port }, et percer ; ensuite { $bolts ->
        [one] { $bolts } boulon passe
       *[other] { $bolts } boulons passent
    } avec { $margin } de reste. { $work } d’atelier.
holes-may-meet = Les plans ne permettent pas de dire si les trous coïncident ({ $b }, { $a }). Mesurez d’abord.
    .short = Trous : { $probability } de chances
    .workshop = { $roles-name } : { $bolts ->
        [one] { $bolts } boulon
       *[other] { $bolts } boulons
    }, { $margin-way ->
        [short] il manque { $margin }
       *[spare] { $margin } de reste
    } ; les plans peuvent varier de ±{ $worst-case } au total ; { $probability } de chances que tous les boulons entrent{ $settles ->
        [none] .
       *[other] . Une cote connue à ±{ $settles } trancherait.
    }
holes-meet = Les trous coïncident : { $b } et { $a }.
    .short = Trous : { $margin } de reste
    .workshop = { $roles-name } : { $bolts ->
        [one] { $bolts } boulon entre
       *[other] { $bolts } boulons entrent
    }, { $margin } de reste ; les plans peuvent varier de ±{ $worst-case } au total.
holes-miss = Les trous ne coïncident pas : { $b } et { $a }.
    .short = { $margin ->
        [none] Les trous ne coïncident pas
       *[other] { $margin-way ->
            [short] Trous : il manque { $margin }
           *[spare] Les trous ne coïncident pas
        }
    }
    .workshop = { $roles-name } : il faut { $bolts ->
        [one] { $bolts } boulon
       *[other] { $bolts } boulons
    } et aucune position ne convient, même en agrandissant ou en perçant{ $margin ->
        [none] .
       *[other]  ; au mieux, { $margin-way ->
            [short] il manque { $margin }
           *[spare] il reste { $margin }
        }, et les plans peuvent varier de ±{ $worst-case } au total.
    }
holes-need-drilling = { $drill ->
    [one] { $drill } trou est à percer dans { $side }.
   *[other] { $drill } trous sont à percer dans { $side }.
}
    .short = { $drill ->
        [one] { $drill } trou à percer
       *[other] { $drill } trous à percer
    }
    .workshop = { $roles-name }, si le constructeur est d’accord : { $drill ->
        [one] percer { $drill } trou dans { $side }
       *[other] percer { $drill } trous dans { $side }
    }{ $port ->
        [none] {""}
       *[other] {" "}({ $port })
    } ; { $bolts ->
        [one] ensuite { $bolts } boulon entre
       *[other] ensuite { $bolts } boulons entrent
    } avec { $margin } de reste.{ $work ->
        [none] {""}
       *[other] {" "}{ $work } d’atelier.
    }
holes-need-opening = Les trous sont à agrandir de { $open-by } au plus.
    .short = Trous à agrandir de { $open-by }
    .workshop = { $roles-name }, si le constructeur est d’accord : agrandir les trous de { $open-by } au plus en diamètre{ $open-carrier ->
        [none] {""}
       *[other] {""} ; { $a }, { $carrier-port } : { $open-carrier }
    }{ $open-carried ->
        [none] {""}
       *[other] {""} ; { $b }, { $carried-port } : { $open-carried }
    } ; { $bolts ->
        [one] ensuite { $bolts } boulon entre
       *[other] ensuite { $bolts } boulons entrent
    }.{ $margin-way ->
        [short] {" "}Tels quels, il manque { $margin }.
       *[spare] {""}
    }{ $work ->
        [none] {""}
       *[other] {" "}{ $work } d’atelier.
    }
holes-need-washers = Les trous de { $hole } ({ $side }) sont larges pour des boulons de { $bolt } : mettez des rondelles larges et épaisses.
    .short = Rondelles larges nécessaires
    .workshop = { $roles-name } : trous de { $hole } ({ $side }) pour des boulons de { $bolt }, plus larges que la série large ; mettre des rondelles larges et épaisses sous tête et écrou (pratique courante).
holes-opened = Vous avez choisi d’agrandir de { $open-by } les trous ({ $side }).
    .short = Trous à agrandir de { $open-by } (choisi)
    .workshop = { $roles-name } : agrandir les trous de { $open-by } en diamètre sur { $side }, { $port } ; ensuite { $bolts ->
        [one] { $bolts } boulon passe
       *[other] { $bolts } boulons passent
    } avec { $margin } de reste. { $work } d’atelier.
holes-plan-not-needed = { $kind ->
    [opening] Ici, les trous n’ont pas à être agrandis : { $item }.
   *[drilling] Ici, pas besoin de percer : { $item }.
}
    .short = { $kind ->
        [opening] Agrandissement inutile
       *[drilling] Perçage inutile
    }
    .workshop = { $kind ->
        [opening] Agrandissement choisi ({ $item }, { $port }), mais aucune liaison de ce montage n’en a besoin.
       *[drilling] Perçage choisi ({ $item }, { $port }), mais aucune liaison de ce montage n’en a besoin.
    }
holes-plan-not-possible = { $kind ->
    [opening] L’agrandissement choisi n’est pas réalisable : { $item }.
   *[drilling] Le perçage choisi n’est pas réalisable : { $item }.
}
    .short = { $kind ->
        [opening] Agrandissement impossible
       *[drilling] Perçage impossible
    }
    .workshop = { $reason ->
        [no-port] { $item } n’a pas cela : { $port }.
        [no-holes] { $item }, { $port } : pas de trous.
       *[too-much] { $item }, { $port } : agrandir de 1 mm au plus (pratique courante).
    } Choisir à nouveau.
holes-too-many = Il y a trop de trous pour essayer toutes les positions ({ $b } sur { $a }). Posez l’un sur l’autre ou comparez les références.
    .short = Trop de trous à comparer
    .workshop = { $roles-name } : { $holes } trous ; on en compare { $most } au plus, moins quand leur disposition est irrégulière.
holes-unknown = D’un côté, les trous ne sont pas connus ; on ne peut pas encore dire s’ils coïncident.
    .short = Trous : données manquantes
    .workshop = { $roles-name } : données manquantes pour { $missing-of } : { $missing-name }.
hooks-hold = { $b } et { $a } : les crochets reposent sur la barre et la broche entre.
    .short = Crochets et broche conviennent
    .workshop = { $roles-name } : crochets et broche dans la limite usuelle de { $limit } ; jeu { $play }.
hooks-may-hold = Les plans ne permettent pas de dire si les crochets vont ({ $b } sur { $a }). Mesurez d’abord.
    .short = Crochets : { $probability } de chances
    .workshop = { $roles-name } : { $dimension-name }, { $play } entre les deux, en pratique { $limit } au plus ; { $probability } de chances que cela tienne{ $settles ->
        [none] .
       *[other] . Une cote connue à ±{ $settles } trancherait.
    }
hooks-misfit = Les crochets ne vont pas : { $b } sur { $a }.
    .short = Crochets : écart de { $off-by }
    .workshop = { $roles-name } : { $dimension-name } { $carrier } sur { $a }, { $carried } sur { $b } : { $off-by } d’écart, en pratique { $limit } au plus.
hooks-need-bush = La liaison de { $b } et { $a } a { $play } de jeu. Une bague le rattrape.
    .short = Bague nécessaire
    .workshop = { $roles-name } : { $dimension-name } { $carrier } ({ $a }), { $carried } ({ $b }) : jeu { $play }, au plus { $limit } (pratique courante). Monter une bague si le constructeur le permet.
hooks-unknown = Une cote des crochets n’est pas connue.
    .short = Crochets : données manquantes
    .workshop = { $roles-name } : données manquantes pour { $missing-of } : { $missing-name }.
hydraulic-lines-unknown = On ne sait pas si les conduites hydrauliques peuvent être raccordées, car des données manquent.
    .short = Conduites hydrauliques inconnues
    .workshop = Conduites hydrauliques : donnée manquante pour { $missing-of } : { $missing-name }.
hydraulics-flow-high = La machine débite plus d’huile que l’outil n’en admet.
    .short = Débit { $flow }, au plus { $most }
    .workshop = Débit { $flow } ; l’outil admet { $most } au plus. Poser un diviseur de débit ou demander à son constructeur.
hydraulics-flow-short = La machine débite { $flow } d’huile, moins que les { $least } avec lesquels l’outil travaille.
    .short = Peu de débit
    .workshop = Débit { $flow } ; il faut { $least } à l’outil. Chaque course dure { $time-ratio } fois la durée normale.
hydraulics-match = L’hydraulique de la machine convient à l’outil.
    .short = Hydraulique : { $flow } à { $pressure }
    .workshop = Débit { $flow } à { $pressure } : { $power } de puissance hydraulique.
hydraulics-no-power-beyond = Il faut à l’outil sa propre alimentation depuis la pompe (Power Beyond, prélèvement direct), et la machine n’en a pas encore.
    .short = Kit Power Beyond nécessaire
    .workshop = Power Beyond (prélèvement direct à la pompe) : il en faut un à l’outil, la machine n’en a pas. Poser un kit.
hydraulics-outlets-short = La machine a trop peu de sorties hydrauliques.
    .short = Sorties hydrauliques : { $has }, il en faut { $need }
    .workshop = Sorties hydrauliques : il y en a { $has }, il en faut { $need }. Ajouter un distributeur ou un sélecteur.
hydraulics-pressure-high = La pression hydraulique de la machine dépasse ce que l’outil admet. Ne le branchez pas avant qu’un atelier ait abaissé le tarage du limiteur de pression.
    .short = Pression { $pressure }, au plus { $most }
    .workshop = Pression de tarage { $pressure } ; l’outil admet { $most } au plus. Ne pas le brancher avant d’avoir abaissé le tarage du limiteur de pression.
hydraulics-pressure-short = La pression hydraulique de la machine est de { $pressure }, moins que les { $least } avec lesquels l’outil travaille.
    .short = Peu de pression hydraulique
    .workshop = Pression de tarage { $pressure } ; il faut { $least } à l’outil.
hydraulics-unknown = Des données hydrauliques manquent. Ne branchez pas l’outil avant de connaître la pression et le débit.
    .short = Hydraulique : données manquantes
    .workshop = Hydraulique : données manquantes pour { $missing-of } : { $missing-name }.
implement-own-seat = Le siège propre à l’outil est choisi, et cet outil n’en a pas.
    .short = L’outil n’a pas de siège propre
    .workshop = Siège : celui de l’outil est choisi ; cet outil n’en a pas.
joint-listed = { $a } et { $b } figurent ensemble dans le guide du constructeur.
    .short = Ensemble dans le guide
    .workshop = { $roles-name } : donnés ensemble { $guide ->
        [none] par le constructeur, hors guide.
       *[other] dans { $guide } du { $date }.
    }
joint-replaced-part = Par remplacement de pièces, cette liaison est la même que dans un ensemble du guide : { $a } et { $b }.
    .short = Pièces remplacées du guide
    .workshop = { $roles-name } : par remplacement, { $part } mène à l’ensemble du guide « { $witness } » + « { $witness-other } ».
joint-same-part = { $a } et { $b } se relient par les mêmes pièces qu’un ensemble du guide.
    .short = Mêmes pièces que dans le guide
    .workshop = { $roles-name } : la même pièce, { $part }, fait cette liaison dans l’ensemble du guide « { $witness } » + « { $witness-other } ».
kinds-differ = { $b } et { $a } se raccordent différemment.
    .short = Types de liaison différents
    .workshop = { $roles-name } : { $carrier-name } sur { $a }, { $carried-name } sur { $b }.
lift-enough = L’attelage peut lever l’outil ; il reste { $left }.
    .short = Levage : reste { $left }
    .workshop = Capacité de levage { $lift } au point d’attelage de l’outil, masse { $mass } : il reste { $left }.
lift-short = L’attelage ne peut pas lever l’outil : { $over } de trop.
    .short = { $over } de trop pour l’attelage
    .workshop = Capacité de levage { $lift } au point d’attelage de l’outil, masse { $mass } : { $over } de trop.
lift-unknown = On ne sait pas si l’attelage peut lever l’outil.
    .short = Levage : données manquantes
    .workshop = Levage : données manquantes pour { $missing-of } : { $missing-name }.
listing-and-dimensions-disagree = { $a } et { $b } figurent ensemble dans le guide du constructeur, mais d’après leurs cotes ils ne se relient pas. L’un des deux est faux. N’achetez rien avant de savoir lequel.
    .short = Guide et cotes se contredisent
    .workshop = { $roles-name } : ensemble dans le guide, mais d’après les cotes cela ne va pas{ $margin ->
        [none] .
       *[other]  : { $margin-way ->
            [short] il manque { $margin }
           *[spare] { $margin } de reste
        }{ $worst-case ->
            [none] .
           *[other]  ; les plans peuvent varier de ±{ $worst-case } au total.
        }
    } Comparer les références sur les exemplaires avant tout achat.
load-long = Le chargement dépasse l’arrière de la remorque de plus qu’une limite routière. Renseignez-vous auprès de l’autorité routière avant de rouler avec.
    .short = Chargement dépassant loin
    .workshop = Dépasse de { $overhang } à l’arrière, limite { $most } ({ $limit-name }) : { $beyond } de trop.
load-near-rating = { $bearer ->
    [front-axle] L’essieu avant est si près de sa charge admissible qu’il faut le peser.
    [rear-axle] L’essieu arrière est si près de sa charge admissible qu’il faut le peser.
    [front-tyre] Les pneus avant sont si près de leur charge admissible qu’il faut peser l’essieu.
    [rear-tyre] Les pneus arrière sont si près de leur charge admissible qu’il faut peser l’essieu.
   *[hitch] L’outil est si près de ce que lève l’attelage qu’il faut le peser.
}
    .short = { $bearer ->
        [front-axle] Peser l’essieu avant
        [rear-axle] Peser l’essieu arrière
        [front-tyre] Peser pour les pneus avant
        [rear-tyre] Peser pour les pneus arrière
       *[hitch] Peser l’outil
    }
    .workshop = { $bearer-name } : charge { $load }, à { $off } près au plus, admissible { $rated }.
load-wide = Le chargement est plus large qu’une limite routière. Renseignez-vous auprès de l’autorité routière avant de rouler avec.
    .short = Chargement trop large de { $beyond }
    .workshop = Largeur { $width }, limite { $most } ({ $limit-name }) : { $beyond } de trop.
loading-unknown = Des données manquent ; on ne sait donc pas comment la machine voyage sur la remorque.
    .short = Chargement : données manquantes
    .workshop = Chargement : données manquantes pour { $item } : { $missing-name }.
loads-unknown = Des données manquent ; les charges par essieu ne sont donc pas connues. Ne levez pas l’outil et ne roulez pas avec lui avant de les connaître.
    .short = Charges : données manquantes
    .workshop = Charges par essieu : données manquantes pour { $item } : { $missing-name }.
measured-against-listing = { $a } et { $b } figurent ensemble dans le guide, mais d’après les mesures prises sur { $unit } ils ne se relient pas{ $margin ->
    [none] .
   *[other]  : { $margin-way ->
        [short] il manque { $margin }
       *[spare] { $margin } de reste
    }.
}
    .short = Mesuré : ne se relie pas, bien que listé
    .workshop = { $roles-name } : ensemble dans le guide, mais d’après les mesures prises cela ne va pas{ $margin ->
        [none] .
       *[other]  : { $margin-way ->
            [short] il manque { $margin }
           *[spare] { $margin } de reste
        }.
    } Pour cet exemplaire, les mesures décident. Mesurer encore avant tout achat.
measurement-not-used = Une mesure ne peut pas servir : { $item }. Reprenez-la.
    .short = Mesure inutilisable
    .workshop = { $item }, { $port }, { $dimension-name } : { $reason ->
        [no-port] { $item } n’a pas cela : { $port }.
        [no-dimension] { $port } n’a pas cette cote.
        [half-range] elle ne peut pas être aussi incertaine.
       *[impossible] cette valeur ne peut pas être juste.
    }
metal-too-little = Un trou de { $hole } dans { $side } laisserait trop peu de métal : { $metal } jusqu’au { $towards ->
    [hole] trou suivant
   *[edge] bord
}, il en faut { $least }.
    .short = Trop peu de métal autour du trou
    .workshop = { $roles-name } : { $side }, { $port } : du milieu d’un trou de { $hole }, { $metal } jusqu’au { $towards ->
        [hole] milieu du suivant
       *[edge] bord de la plaque
    }, au moins { $least } nécessaires (d’après les règles européennes de construction en acier, à titre indicatif).
metal-unknown = Avant de faire un trou de { $hole } dans { $side }, voyez jusqu’où va la plaque : de son milieu au bord il faut { $least }.
    .short = Distance au bord inconnue
    .workshop = { $roles-name } : { $side }, { $port } : mesurer des trous extérieurs au bord de la plaque. Un trou de { $hole } demande { $least } depuis son milieu (d’après les règles européennes de construction en acier, à titre indicatif).
must-come-off = À déposer de la machine : { $what }.
    .short = À déposer : { $what }
    .workshop = Pour { $item }, à déposer de la machine : { $what }.
must-go-on = La machine doit porter : { $what }.
    .short = Nécessaire : { $what }
    .workshop = Pour { $item }, la machine doit porter : { $what }.
needs-frame = Il faut un châssis de montage pour { $item }.
    .short = Châssis de montage nécessaire
    .workshop = { $item } s’accroche à un porte-outil ; le seul attelage trois points n’en a pas.
nose-load-in-range = { $heading ->
    [backward] Capot vers l’arrière, la machine peut être placée de façon que la charge sur le timon soit correcte.
   *[forward] Capot vers l’avant, la machine peut être placée de façon que la charge sur le timon soit correcte.
}
    .short = Charge sur le timon { $nose }
    .workshop = Charge sur le timon { $nose } (admissible { $most-way ->
        [same] { $least }
       *[range] de { $least } à { $most }
    }), capot vers { $heading ->
        [backward] l’arrière
       *[forward] l’avant
    } et essieu arrière { $to-way ->
        [same] à { $from }
       *[range] de { $from } à { $to }
    } devant le bord arrière du plateau.
nose-load-near = C’est la précision des masses qui décide si la charge sur le timon peut être amenée dans la plage admise sur ce plateau. Pesez-la à l’attelage avant de rouler.
    .short = Peser à l’attelage
    .workshop = Charge sur le timon { $nose }, à { $off } près au plus, admissible { $most-way ->
        [same] { $least }
       *[range] de { $least } à { $most }
    }, la machine tournée vers { $heading ->
        [backward] l’arrière
       *[forward] l’avant
    }.
nose-load-out-of-range = Nulle part sur le plateau de la remorque la charge sur le timon n’est correcte.
    .short = Charge sur le timon fausse : { $nose }
    .workshop = Charge sur le timon { $nose } à la meilleure place du plateau, admissible { $most-way ->
        [same] { $least }
       *[range] de { $least } à { $most }
    }.
nothing-answers = { $role ->
    [axle-anchor] { $a } n’a rien où se boulonner à l’essieu arrière.
    [front-anchor] { $a } n’a rien où se boulonner à l’avant.
    [rack] { $a } n’a pas de porte-outil où s’accrocher.
    [hitch] { $a } n’a pas d’attelage trois points.
    [seat-deck] { $a } n’a pas de platine où se fixer.
    [power-take-off] { $a } n’a pas de prise de force.
    [pressure] Il faut une ligne de pression, qui manque encore : { $a }.
    [return] Il faut une ligne de retour, qui manque encore : { $a }.
    [case-drain] Il faut une ligne de drain, qui manque encore : { $a }.
   *[wiring] Il faut un câblage, qui manque encore : { $a }.
}
    .short = { $role ->
        [axle-anchor] Ancrage d’essieu manquant
        [front-anchor] Ancrage avant manquant
        [rack] Porte-outil manquant
        [hitch] Attelage trois points manquant
        [seat-deck] Platine de siège manquante
        [power-take-off] Prise de force manquante
        [pressure] Ligne de pression à poser
        [return] Ligne de retour à poser
        [case-drain] Ligne de drain à poser
       *[wiring] Câblage à poser
    }
    .workshop = { $a }, { $port } : rien dans ce montage n’y correspond ({ $role-name }).
nothing-to-put-on = La machine doit porter : { $what }. Le catalogue n’en a pas pour elle.
    .short = Nécessaire : { $what }
    .workshop = { $item } demande { $what } sur la machine, et le catalogue n’en a pas pour elle. Demandez au fabricant.
own-seat-comes-off = Le siège propre de l’outil n’est pas celui choisi. Il faut le déposer.
    .short = Siège de l’outil à déposer
    .workshop = Déposer le siège propre de l’outil : { $hours }.
own-seat-unknown = On ne sait pas si l’outil porte son propre siège, ni si celui-ci se dépose.
    .short = Siège de l’outil inconnu
    .workshop = Siège propre de l’outil : données manquantes pour { $missing-of } : { $missing-name }.
number-read-differs = La référence relevée sur { $item } n’est pas celle que le catalogue y indique{ $rests ->
    [listed] , mais un ensemble avec la pièce relevée est dans le guide.
    [measured] . Ce qui a été mesuré décide.
   *[nothing] . Ce que le catalogue dit de cette liaison ne vaut peut-être pas pour cet exemplaire.
}
    .short = Autre référence que dans le catalogue
    .workshop = { $item }, { $port } : { $read } relevée sur l’exemplaire, { $listed } dans le catalogue. { $rests ->
        [listed] La référence relevée décide : elle fait partie d’un ensemble du guide.
        [measured] Ce qui a été mesuré sur l’exemplaire décide.
       *[nothing] Rien de ce que la ligne indique de cette pièce ne compte tant qu’elle n’est pas mesurée.
    }
pins-count-differs = { $a } a { $carrier } points d’axe, { $b } en a { $carried }.
    .short = Points d’axe : { $carrier } et { $carried }
    .workshop = { $roles-name } : { $carrier } points sur { $a }, { $carried } sur { $b }. Chaque oreille demande sa chape.
pins-heights-off = Les points d’axe de { $b } ne sont pas aux hauteurs de ceux de { $a }.
    .short = Hauteurs d’axes : { $over } de trop
    .workshop = { $roles-name } : les hauteurs des points diffèrent entre elles de { $off-by }, soit { $over } de plus que le jeu des axes.
pins-enter = Les axes conviennent : { $b } et { $a }.
    .short = Les axes conviennent
    .workshop = { $roles-name }, { $point } : jeu { $running }, en pratique { $limit } au plus.
pins-may-enter = Les plans ne permettent pas de dire si les axes conviennent ({ $b }, { $a }). Mesurez d’abord.
    .short = Axes : { $probability } de chances
    .workshop = { $roles-name }{ $point ->
        [none] {""}
       *[other] , { $point }
    }, { $dimension-name } : { $running } de jeu, en pratique { $limit } au plus ; { $probability } de chances que cela aille{ $settles ->
        [none] .
       *[other] . Une cote connue à ±{ $settles } trancherait.
    }
pins-need-sleeve = L’axe est plus mince que son alésage. Une bague rattrape l’écart.
    .short = Bague nécessaire : { $running } de jeu
    .workshop = { $roles-name }, { $point } : alésage { $bore }, axe { $pin }, jeu { $running } ; au-delà de { $limit } il faut une bague (pratique courante).
pins-side-play = La liaison a du jeu latéral. Des rondelles de calage le rattrapent.
    .short = Rondelles : { $play } de jeu latéral
    .workshop = { $roles-name }, { $point } : jeu latéral { $play } ; au-delà de { $limit } il faut des rondelles de calage (pratique courante).
pins-sleeved = { $item } ajuste l’axe à son alésage.
    .short = Bagué avec { $item }
    .workshop = { $roles-name } : { $item } garnit l’alésage de { $bore } pour l’axe de { $pin }.
pins-spread-off = Pattes trop { $carried-way ->
    [narrow] rapprochées
   *[wide] écartées
} de { $off-by } : { $b } sur { $a }.
    .short = Écartement : { $off-by } d’écart
    .workshop = { $roles-name } : écartement { $carrier } sur { $a }, { $carried } sur { $b } : trop { $carried-way ->
        [narrow] étroit
       *[wide] large
    } de { $off-by }, en pratique { $limit } au plus.
pins-unknown = Une cote des axes n’est pas connue.
    .short = Axes : cotes manquantes
    .workshop = { $roles-name } : données manquantes pour { $missing-of } : { $missing-name }.
pins-will-not-enter = { $dimension ->
    [width] Une patte est trop large pour sa chape.
   *[diameter] Un axe est trop gros pour son alésage.
}
    .short = { $dimension ->
        [width] Patte trop large de { $over }
       *[diameter] Axe trop gros de { $over }
    }
    .workshop = { $roles-name }, { $point } : { $dimension-name } { $carrier } sur { $a }, { $carried } sur { $b } : { $over } de trop.
plates-may-fit = Les plans ne disent pas si les plaques latérales de { $b } passent sur { $a }. Mesurez d’abord.
    .short = Largeur des plaques : trop juste
    .workshop = { $roles-name } : { $between } entre les plaques, { $over } sur les faces de la machine, jour { $gap } ; il doit être entre 0 et { $limit }, et les cotes peuvent varier de ±{ $worst-case } au total ; probabilité que cela passe { $probability }{ $settles ->
        [none] .
       *[other] . Une largeur connue à ±{ $settles } suffirait.
    }
plates-need-shims = { $b } est plus large de { $gap } entre ses plaques latérales que { $a }. Des cales comblent cela.
    .short = Cales aux plaques latérales
    .workshop = { $roles-name } : { $between } entre les plaques, { $over } sur les faces de la machine : { $gap } de cales, la moitié de chaque côté ; on cale jusqu’à { $limit } (pratique courante).
plates-too-narrow = { $b } ne passe pas sur { $a } : ses plaques latérales sont trop serrées de { $short }.
    .short = Plaques latérales trop serrées
    .workshop = { $roles-name } : { $between } entre les plaques, { $over } sur les faces de la machine : il manque { $short }. Ne pas écarter le châssis de force.
plates-too-wide = { $b } est trop large pour { $a } : { $gap } de jour entre les plaques latérales et la machine.
    .short = Plaques latérales trop écartées
    .workshop = { $roles-name } : { $between } entre les plaques, { $over } sur les faces de la machine : jour de { $gap } ; les cales rattrapent { $limit } (pratique courante).
plates-unknown = On ne connaît pas la largeur sur les faces ({ $a }) ou entre les plaques latérales ({ $b }).
    .short = Largeur des plaques inconnue
    .workshop = { $roles-name } : données manquantes pour { $missing-of } : { $missing-name }.
port-looked-missing = Ce qu’il faut à la liaison n’est pas sur cet exemplaire.
    .short = Absent de cet exemplaire
    .workshop = { $roles-name } : cherché et absent : { $port }.
port-not-on-serial = Les exemplaires portant ce numéro de série n’ont pas ce qu’il faut à la liaison.
    .short = Pas sur ce numéro de série
    .workshop = { $roles-name } : absent du numéro de série { $serial } : { $port }.
port-serial-unknown = Seuls certains exemplaires ont ce qu’il faut à la liaison. Regardez le vôtre ou saisissez son numéro de série.
    .short = Dépend du numéro de série
    .workshop = { $roles-name } : seulement sur certains numéros de série : { $port }.
place-unknown = On ne sait pas où se trouve { $item } sur la machine ; ce qui en dépend ne peut pas être calculé.
    .short = Emplacement inconnu
    .workshop = Aucune liaison dans les données ne dit où se trouve { $item }. Mesurer, ou demander au constructeur.
power-high = La machine a plus de puissance que l’outil n’en admet.
    .short = Puissance { $power }, au plus { $most }
    .workshop = Puissance à la prise de force { $power } ; l’outil admet { $most } au plus.
power-short = La machine a trop peu de puissance pour l’outil.
    .short = Puissance { $power }, il faut { $least }
    .workshop = Puissance à la prise de force { $power } ; il faut { $least } à l’outil.
power-unknown = La puissance de la machine à la prise de force n’est pas connue.
    .short = Puissance : données manquantes
    .workshop = Données manquantes pour { $missing-of } : { $missing-name }.
pto-differs = { $dimension ->
    [speed] La prise de force ne tourne pas au régime qu’il faut à l’outil.
    [rotation] La prise de force tourne dans l’autre sens.
   *[shaft-type] Il faut une autre mâchoire au cardan.
}
    .short = { $dimension ->
        [speed] Régime de PDF différent
        [rotation] La PDF tourne dans l’autre sens
       *[shaft-type] Autre mâchoire de cardan
    }
    .workshop = { $dimension ->
        [speed] { $dimension-name } : { $carrier-name } tr/min sur { $a }, { $carried-name } tr/min sur { $b }.
       *[other] { $dimension-name } : { $carrier-name } sur { $a }, { $carried-name } sur { $b }.
    }
pto-fits = La prise de force convient à l’outil.
    .short = La prise de force convient
    .workshop = Prise de force : type { $shaft-type } (ISO 500-1), { $speed } tr/min des deux côtés.
pto-unknown = Des données manquent sur la prise de force.
    .short = Prise de force : données manquantes
    .workshop = Données manquantes pour { $missing-of } : { $missing-name }.
ramp-axle-light = Dans la montée de la rampe, il reste peu de poids sur l’{ $axle ->
        [front] essieu avant
       *[rear] essieu arrière
    } : { $load }, il en faut au moins { $least }. La direction répond mal, et une secousse peut le soulever.
    .short = { $axle ->
        [front] Rampe : { $load } sur l’essieu avant
       *[rear] Rampe : { $load } sur l’essieu arrière
    }
    .workshop = Sur la rampe, { $way ->
        [forward] en marche avant
       *[backward] en marche arrière
    } : { $axle ->
        [front] essieu avant
       *[rear] essieu arrière
    } { $load }, il faut { $least } (proposition propre, aucune valeur publiée).
ramp-clears = { $way ->
    [forward] En marche avant, la machine monte la rampe de la remorque sans frotter.
    [backward] En marche arrière, la machine monte la rampe de la remorque sans frotter.
   *[either] La machine monte la rampe de la remorque sans frotter.
}
    .short = Rampe : reste { $clearance }
    .workshop = Rampe { $ramp } : { $item } passe au plus près, il reste { $clearance }.
ramp-drags = { $item } frotte de { $drags-by } sur la rampe de la remorque. { $shortest ->
    [none] Même la plus longue rampe transportable ne suffit pas.
   *[other] Des rampes d’au moins { $shortest } suffisent.
}
    .short = Frotte de { $drags-by } sur la rampe
    .with = des rampes plus longues
    .workshop = Rampe { $ramp }, { $way ->
        [backward] en marche arrière
       *[forward] en marche avant
    } : { $item } est trop bas de { $drags-by }, { $distance } { $place ->
        [ahead] devant l’essieu arrière, avant les roues avant
        [between] devant l’essieu arrière, entre les roues
       *[behind] derrière l’essieu arrière
    }. { $shortest ->
        [none] Même la plus longue rampe transportable ne laisse pas les { $wanted } nécessaires (pratique courante).
       *[other] Des rampes d’au moins { $shortest } laissent les { $wanted } nécessaires (pratique courante).
    }
ramp-near = { $item } passe si près de la rampe de la remorque qu’il faut mesurer, et même la plus longue rampe transportable ne laisse pas à coup sûr les { $wanted } nécessaires. Mesurez avant de charger ; montez ensuite au ralenti pendant que quelqu’un observe de côté, à l’écart de la rampe.
    .short = Rampe : mesurer d’abord
    .workshop = Rampe { $ramp }, { $way ->
        [backward] en marche arrière
       *[forward] en marche avant
    } : { $item } à { $clearance } au-dessus de la rampe d’après le plan, { $wanted } nécessaires (pratique courante) ; les longueurs sont connues à { $off } près.
ramp-steep = La rampe de la remorque monte à { $angle } : rien n’y grimpe. { $shortest ->
    [none] Prenez une autre remorque.
   *[other] Prenez des rampes d’au moins { $shortest }.
}
    .short = Rampe bien trop raide
    .with = des rampes plus longues
    .workshop = Rampe ou plan incliné arrière à { $angle } ; à partir de 60°, ce n’est plus une rampe (pratique courante).
ramp-tight = Entre { $item } et la rampe de la remorque, il ne reste que { $clearance } ; il en faut { $wanted }. { $shortest ->
    [none] Même la plus longue rampe transportable ne suffit pas.
   *[other] Des rampes d’au moins { $shortest } suffisent.
}
    .short = { $clearance } seulement sur la rampe
    .with = des rampes plus longues
    .workshop = Rampe { $ramp }, { $way ->
        [backward] en marche arrière
       *[forward] en marche avant
    } : { $clearance } sous { $item }, { $distance } { $place ->
        [ahead] devant l’essieu arrière, avant les roues avant
        [between] devant l’essieu arrière, entre les roues
       *[behind] derrière l’essieu arrière
    }. { $shortest ->
        [none] Même la plus longue rampe transportable ne laisse pas les { $wanted } nécessaires (pratique courante).
       *[other] Des rampes d’au moins { $shortest } laissent les { $wanted } nécessaires (pratique courante).
    }
ramp-tips = La machine bascule sur la rampe : l’{ $axle ->
        [front] essieu avant
       *[rear] essieu arrière
    } se soulève dans la montée.
    .short = Bascule sur la rampe
    .workshop = Sur la rampe ({ $ramp }), { $way ->
        [forward] en marche avant
       *[backward] en marche arrière
    } : l’{ $axle ->
        [front] essieu avant
       *[rear] essieu arrière
    } se soulève.
rear-seat-cannot = Pendant la conduite, la position choisie est impossible : { $item }.
    .short = Position impossible : { $item }
    .workshop = { $item } pendant la conduite : { $state ->
        [folded] doit se rabattre ; ce siège ne le fait pas.
        [slid] doit avancer ; ce siège n’avance pas.
        [turned] doit pivoter ; ce siège ne pivote pas.
       *[other] rien ne dit qu’il peut se mettre ainsi.
    }
rear-seat-moves = { $state ->
    [folded] Pour conduire, à rabattre : { $item }.
    [slid] Pour conduire, à avancer de { $by } : { $item }.
   *[off] Pour conduire, à déposer : { $item }.
}
    .short = { $state ->
        [folded] À rabattre pour conduire : { $item }
        [slid] À avancer pour conduire : { $item }
       *[off] À déposer pour conduire : { $item }
    }
    .workshop = { $item } pendant la conduite : { $state ->
        [folded] à rabattre, à la main.
        [slid] à avancer de { $by }, à la main.
       *[off] à déposer{ $hours ->
            [none] .
           *[other] , { $hours }.
        }
    }
room-close = La place entre le siège et les leviers suffit tout juste : { $room }, au moins { $least }. Mesurez-la.
    .short = Place au siège : mesurer d’abord
    .workshop = Du point repère du siège aux leviers { $room }, à { $off } près au plus ; au moins { $least }.
seat-faces-forward = L’outil se conduit tourné vers l’arrière, et ce siège ne regarde que vers l’avant.
    .short = Siège tourné vers l’avant seul
    .workshop = Siège : tourné vers l’avant ; les leviers de l’outil sont derrière.
seat-reach-far = Les leviers sont trop loin du siège : { $distance }, au plus { $most }.
    .short = Leviers à { $distance }, au plus { $most }
    .workshop = Du point repère du siège aux leviers { $distance } ; au plus { $most }.
seat-reach-unknown = On ne sait pas à quelle distance du siège se trouvent les leviers.
    .short = Portée des leviers inconnue
    .workshop = Portée des leviers : donnée manquante pour { $missing-of } : { $missing-name }.
seat-room = Il y a la place des genoux entre le siège et les leviers : { $room }, il faut au moins { $least }.
    .short = Assez de place au siège
    .workshop = Du point repère du siège aux leviers { $room } ; au moins { $least }.
seat-room-short = Entre le siège et les leviers, il manque { $short } de place.
    .short = Il manque { $short } au siège
    .workshop = Du point repère du siège aux leviers { $room } ; au moins { $least } : il manque { $short }.
seat-room-unknown = On ne sait pas combien de place il y a au siège.
    .short = Place au siège : données manquantes
    .workshop = Place au siège : données manquantes pour { $missing-of } : { $missing-name }.
seat-station-differs = { $station ->
    [cab] Ce siège n’est pas fait pour une machine à cabine.
   *[open] Ce siège n’est pas fait pour une machine ouverte.
}
    .short = { $station ->
        [cab] Siège non prévu pour cabine
       *[open] Siège non prévu pour poste ouvert
    }
    .workshop = { $a } : non prévu pour ce poste ({ $station-name }).
seat-station-unknown = On ne sait pas si ce siège est prévu pour un poste ouvert ou pour une cabine.
    .short = Siège : ouvert ou cabine ?
    .workshop = { $a } : poste ouvert ou cabine : donnée manquante.
seat-switch-missing = Le siège n’a pas le contacteur de siège, qui signale à la machine que quelqu’un est assis. Faites-en poser un selon la notice du constructeur. Ne le pontez pas.
    .short = Contacteur de siège à poser
    .with = un contacteur de siège
    .workshop = Contacteur de siège : absent du siège. Poser et câbler selon la notice de la machine. Ne pas le ponter.
seat-switch-unknown = On ne sait pas si le siège a un contacteur de siège, qui signale à la machine que quelqu’un est assis.
    .short = Contacteur de siège ?
    .workshop = Contacteur de siège : données manquantes pour le siège. Ne pas utiliser la machine avec le contacteur ponté.
seat-turns-not = Le siège de l’opérateur de cette machine ne pivote pas.
    .short = Le siège ne pivote pas
    .workshop = Siège : un siège pivotant est choisi ; celui de la machine ne pivote pas.
seat-without-its-supplier = { $supplier ->
    [machine] Ce siège n’est fourni qu’avec une autre machine.
    [frame] Ce siège n’est fourni qu’avec un autre châssis.
   *[implement] Ce siège n’est fourni qu’avec un autre outil.
}
    .short = { $supplier ->
        [machine] Seulement avec une autre machine
        [frame] Seulement avec un autre châssis
       *[implement] Seulement avec un autre outil
    }
    .workshop = { $a } : fourni avec quelque chose qui n’est pas dans ce montage ({ $supplier-name }). Voir s’il se vend seul.
seats-clash = { $used ->
    [working] Pendant le travail, { $item } et le siège de l’opérateur occupent la même place.
   *[driving] Pendant la conduite, { $item } et le siège de l’opérateur occupent la même place.
}
    .short = Deux sièges à la même place
    .workshop = { $item } chevauche le siège de l’opérateur de { $overlap } { $used ->
        [working] pendant le travail
       *[driving] pendant la conduite
    }{ $driver ->
        [folded] , siège de l’opérateur rabattu.
        [slid] , siège de l’opérateur avancé.
        [turned] , siège de l’opérateur pivoté.
       *[other] { $behind ->
            [folded] , { $item } étant rabattu.
            [slid] , { $item } étant avancé.
           *[other] .
        }
    }
seats-unknown = { $used ->
    [working] On ne sait pas si le siège de l’opérateur laisse la place au siège arrière pendant le travail.
   *[driving] On ne sait pas si le siège arrière laisse la place au siège de l’opérateur pendant la conduite.
}
    .short = Place pour les deux sièges inconnue
    .workshop = Les deux sièges, { $used ->
        [working] pendant le travail
       *[driving] pendant la conduite
    } : données manquantes pour { $missing-of } : { $missing-name }.
site-unknown = Données manquantes pour { $site } : { $missing-name }.
    .short = Chantier : données manquantes
    .workshop = Données manquantes pour { $site } : { $missing-name }.
serial-of-another = Le numéro de série { $serial } ne correspond pas à { $item } tel qu’il figure ici. Vérifiez de quel exemplaire il s’agit.
    .short = Numéro d’une autre série
    .workshop = { $item } : le numéro de série { $serial } est hors de la plage de cette fiche.
station-differs = { $station ->
    [cab] Ce châssis n’est pas fait pour une machine à cabine.
   *[open] Ce châssis n’est pas fait pour une machine ouverte.
}
    .short = { $station ->
        [cab] Châssis non prévu pour cabine
       *[open] Châssis non prévu pour poste ouvert
    }
    .workshop = { $a } : non prévu pour ce poste ({ $station-name }).
station-unknown = On ne sait pas si ce châssis est pour machines ouvertes ou à cabine.
    .short = Poste ouvert ou cabine ?
    .workshop = { $a } : poste ouvert ou cabine : données manquantes.
swivel-close = En tournant, le siège heurte peut-être { $item }. Mesurez.
    .short = Le siège heurte peut-être
    .workshop = Siège pivotant : balaie un rayon de { $radius } ; { $item } est à { $room }, à { $off } près au plus.
swivel-hits = Le siège heurte { $item } en pivotant.
    .short = Le siège heurte en pivotant
    .workshop = Siège pivotant : balaie un rayon de { $radius } ; { $item } est à { $room }.
swivel-unknown = On ne sait pas si le siège a la place de pivoter.
    .short = Place pour pivoter inconnue
    .workshop = Siège pivotant : donnée manquante pour { $missing-of } : { $missing-name }.
thread-depth-unknown = On ne connaît ni la profondeur du taraudage de { $side } ni le métal. { $least } de filet suffisent dans tous.
    .short = Profondeur du taraudage inconnue
    .workshop = { $roles-name } : trouver la profondeur et le métal des trous taraudés de { $side }. { $least } de filet tiennent dans l’acier, la fonte et l’aluminium ; dans les plus durs, moins peut suffire (pratique courante).
thread-too-short = Les taraudages de { $side } ont { $depth } de profondeur ; il en faut { $least }.
    .short = Taraudage trop court
    .workshop = { $roles-name } : filet dans { $side } { $depth }, au moins { $least } nécessaires (pratique courante). Un filet court s’arrache.
thread-unknown = La taille seule ({ $size }) ne dit pas quel filetage ont les boulons de { $side } : métrique ou en pouces, gros ou fin. À vérifier d’abord.
    .short = Filetage inconnu
    .workshop = { $roles-name } : { $side }, { $size } : déterminer le filetage au peigne ou dans la liste de pièces. M12 et 1/2 in, M16 et 5/8 in se ressemblent et ne se vissent pas ensemble.
threads-differ = Les boulons sont en { $bolt } et les trous de { $side } taraudés en { $tapped } : ils ne se vissent pas ensemble.
    .short = Filetages différents
    .workshop = { $roles-name } : boulons { $bolt }, trous de { $side } taraudés { $tapped }. Une taille, deux filetages : ils s’engagent et se coincent.
tie-downs-needed = { $count ->
    [one] Arrimez la machine avec au moins { $count } chaîne ou sangle d’une charge de travail de { $each } (règle américaine). La loi du lieu où vous roulez s’applique.
   *[other] Arrimez la machine avec au moins { $count } chaînes ou sangles d’une charge de travail de { $each } chacune (règle américaine). La loi du lieu où vous roulez s’applique.
}
    .short = { $count ->
        [one] { $count } chaîne ou sangle de { $each }
       *[other] { $count } chaînes ou sangles de { $each }
    }
    .workshop = Règle américaine (49 CFR 393.106, 393.110) : au moins { $count ->
        [one] { $count } chaîne ou sangle d’une charge de travail
       *[other] { $count } chaînes ou sangles, chacune d’une charge de travail
    } de { $each } ou plus ; une attache directe compte pour moitié, ce qui donne les { $together } nécessaires. Arrimer aux quatre coins si la notice le demande ; la loi locale prévaut.
trailer-carries = { $rating ->
    [axle] Les essieux de la remorque portent leur charge dans la limite admise.
   *[total] Machine et remorque ensemble restent dans la limite admise.
}
    .short = { $rating ->
        [axle] Essieux de remorque : reste { $left }
       *[total] Remorque : reste { $left }
    }
    .workshop = { $rating ->
        [axle] Essieux de la remorque
       *[total] Remorque avec la machine
    } : { $load }, admissible { $rated }, il reste { $left }.
trailer-load-near = { $rating ->
    [axle] Les essieux de la remorque sont si près de leur charge admissible qu’il faut les peser.
   *[total] La machine et la remorque ensemble sont si près de la charge admissible qu’il faut les peser.
}
    .short = Peser avant de charger
    .workshop = { $rating ->
        [axle] Essieux de la remorque
       *[total] Machine et remorque
    } : charge { $load }, à { $off } près au plus, admissible { $rated }.
trailer-narrow = Hors pneus, la machine dépasse le plateau de la remorque de { $beyond }.
    .short = Remorque trop étroite de { $beyond }
    .workshop = Largeur hors pneus { $width }, plateau { $deck } : { $beyond } de trop.
trailer-overloaded = { $rating ->
    [axle] Les essieux de la remorque porteraient { $over } de plus que la charge admissible.
   *[total] Machine et remorque ensemble dépassent la charge admissible de { $over }.
}
    .short = { $rating ->
        [axle] Essieux de remorque : { $over } de trop
       *[total] Remorque : { $over } de trop
    }
    .workshop = { $rating ->
        [axle] Essieux de la remorque
       *[total] Remorque avec la machine
    } : { $load }, admissible { $rated }, { $over } de trop.
trailer-short = Le plateau de la remorque est plus court que l’empattement de la machine.
    .short = Plateau de { $deck } seulement
    .workshop = Empattement { $wheelbase }, plateau { $deck }.
trailer-unknown = Données manquantes pour { $trailer } : { $missing-name }.
    .short = Remorque : données manquantes
    .workshop = Données manquantes pour { $trailer } : { $missing-name }.
tyre-overloaded = { $axle ->
    [front] Chaque pneu avant porterait { $over } de plus que sa charge admissible.
   *[rear] Chaque pneu arrière porterait { $over } de plus que sa charge admissible.
}
    .short = { $axle ->
        [front] Chaque pneu avant : { $over } de trop
       *[rear] Chaque pneu arrière : { $over } de trop
    }
    .workshop = { $axle ->
        [front] Chaque pneu avant
       *[rear] Chaque pneu arrière
    } : charge { $load }, admissible { $rated }, { $over } de trop.
wiring-differs = Les connecteurs électriques diffèrent ; l’un est à changer.
    .short = Connecteur électrique à changer
    .workshop = { $roles-name } : { $carrier } sur { $a }, { $carried } sur { $b }.
wiring-fits = Les connecteurs électriques vont ensemble.
    .short = Les connecteurs vont ensemble
    .workshop = { $roles-name } : { $connector } des deux côtés.
