same-missing = Données manquantes pour { $item } : { $missing-name }.{ $risk ->
    [yes] {" "}Ne branchez pas l’outil, ne le levez pas et ne roulez pas avec lui avant de les connaître.
   *[no] {""}
}
    .workshop = Données manquantes pour { $item } : { $missing-name }. Sans elles, pas de réponse pour : { $areas-name }.{ $risk ->
        [yes] {" "}Ne pas brancher l’outil, ne pas le lever et ne pas rouler avec lui avant de les connaître.
       *[no] {""}
    }

area-loads = charges par essieu
area-lift = levage
area-hydraulics = hydraulique
area-drive = entraînement
area-operator = siège
area-wiring = câblage
area-loading = chargement
area-site = chantier
area-digging = terrassement
area-clearance = dégagements
area-build = tout le montage

evidence-listed = { $row ->
    [none] Preuve : donnés ensemble par le constructeur, hors guide.
   *[other] Preuve : guide, ligne { $row }.
}
evidence-same-part = Preuve : même pièce que dans l’ensemble du guide « { $witness } » + « { $witness-other } »{ $row ->
    [none] .
   *[other] {" "}(ligne { $row }).
}
evidence-replaced-part = Preuve : pièce remplacée, à partir de l’ensemble du guide « { $witness } » + « { $witness-other } »{ $row ->
    [none] .
   *[other] {" "}(ligne { $row }).
}
evidence-measured = Preuve : mesuré ({ $tools-name }).
evidence-drawing = Preuve : plan.
evidence-none = Preuve : aucune encore.
evidence-stated = Preuve : documentation du constructeur.
evidence-looked = Preuve : vérifié sur l’exemplaire.
evidence-read = Relevé sur l’exemplaire : { $item }, { $port } : { $parts }{ $by ->
    [none] {""}
   *[other] , par { $by }
}{ $when ->
    [none] .
   *[other] , { $when }.
}

explain-rest = { $count ->
    [one] { $count } autre point est conforme.
   *[other] { $count } autres points sont conformes.
}
explain-nothing = Rien n’est encore choisi qui puisse être jugé.

chain-same = { $item } porte à cette liaison { $parts }, comme { $stands-for }.
chain-replaced = { $item } porte à cette liaison { $parts } et compte donc comme { $stands-for } :
step-forward = { $new } remplace { $old } { $ways ->
    [both] (chacune va à la place de l’autre).
   *[forward] (la nouvelle va à la place de l’ancienne, pas l’inverse).
}
step-backward = { $new } remplace { $old }, et selon la fiche chacune va à la place de l’autre.
joint-parts = Pièces : { $a-parts } sur { $a } ; { $b-parts } sur { $b }.
no-parts = inconnu

check-compare-parts = Comparer les références : { $a }, { $a-port }, avec { $b }, { $b-port }.
check-measure = Mesurer : { $item }, { $port }, { $value-name }{ $within ->
    [none] .
   *[other] , à ±{ $within } { $tool ->
        [tape] (un mètre ruban suffit).
        [caliper] (au pied à coulisse).
       *[finer] (plus fin qu’un pied à coulisse).
    }
}
check-measure-all = Tout mesurer : { $item }, { $port } : { $value-name }{ $within ->
    [none] .
   *[other] , à ±{ $within } { $tool ->
        [tape] (un mètre ruban suffit).
        [caliper] (au pied à coulisse).
       *[finer] (plus fin qu’un pied à coulisse).
    }
}
check-read-parts = Relever les références : { $item }, { $port }. N’importe laquelle le prouverait : { $numbers } (listée avec { $witness }).
check-read-off = À trouver : { $item }, { $port }, { $value-name }.
check-look = Regarder si cela y est : { $item }, { $what }.
check-find-out = À trouver : { $item }, { $value-name }.
check-ask = Interroger le constructeur ou le concessionnaire : { $a } avec { $b }.
check-gap = Mesurer l’écart : { $a }, { $a-shape }, jusqu’à { $b }, { $b-shape }, une fois les deux en place ; { $wanted } au moins sont souhaités.
check-stakes = Pourrait faire passer { $question } de « { $now } » à « { $best } »{ $worst ->
    [none] .
   *[other] {" "}ou à « { $worst } ».
}
quoted = « { $title } »

point-value = { $value-name } (point { $number })
hole-value = trou { $number }, { $value-name }
hole-to-hole = trou { $a } à trou { $b }, d’axe en axe
point-to-point = point { $a } à point { $b }, d’axe en axe
hole-named = { $port }, trou { $number }

value-across = distance latérale
value-at-x = position le long de la machine
value-at-z = position en hauteur
value-ballast-place = place pour le lest
value-beaver-angle = angle du plan incliné arrière
value-bolt = diamètre du boulon
value-bore = alésage
value-cab-rear = paroi arrière de la cabine
value-category = catégorie d’attelage
value-centre-of-gravity = centre de gravité
value-console = position des leviers
value-coupling = distance de la tête d’attelage à l’essieu
value-deck-height = hauteur du plateau
value-deck-length = longueur du plateau
value-deck-rear = bord arrière du plateau
value-deck-width = largeur du plateau
value-diameter = diamètre
value-drop = du crochet à la broche
value-edge = distance des trous extérieurs au bord
value-flow = débit
value-from-axle-along = du premier trou ou axe de l’ancrage d’essieu au premier d’ici, le long de la machine
value-from-axle-height = hauteur du premier trou ou axe d’ici au-dessus du premier de l’ancrage d’essieu
value-front-axle = essieu avant fixe ou oscillant
value-front-axle-load = charge de l’essieu avant
value-front-bore = alésage avant
value-gap = ouverture de chape
value-gate-height = hauteur du portail
value-gate-width = largeur du portail
value-greatest-flow = débit maximal admissible
value-greatest-power = puissance maximale admissible à la prise de force
value-greatest-pressure = pression hydraulique maximale admissible
value-ground-load = charge par essieu maximale que le sol supporte
value-height = hauteur
value-hitch-stay = si le constructeur propose une jambe de force pour le trois points
value-holes = trous
value-hydraulic-need = ce qu’il demande à l’hydraulique
value-index-point = point repère du siège
value-latch = diamètre de la broche
value-least-flow = débit minimal nécessaire
value-least-power = puissance minimale nécessaire à la prise de force
value-least-pressure = pression hydraulique minimale nécessaire
value-lift = capacité de levage de l’attelage
value-link-mass = masses de flèche, balancier et godet
value-lower-pin = tourillon inférieur
value-mass = masse
value-mast = hauteur du mât
value-metal = métal de la plaque
value-nose-load = charge admissible sur le timon
value-outlets = sorties hydrauliques
value-outline = contour
value-overall-radius = rayon extérieur du pneu
value-own-seat = siège propre
value-pair-width = largeur sur les faces ou entre les plaques latérales
value-path-turn = si l’allée tourne à angle droit
value-path-width = largeur de l’allée
value-plate = épaisseur de la plaque
value-pose = position de la liaison
value-power = puissance à la prise de force
value-power-beyond = Power Beyond (prélèvement direct à la pompe)
value-presence-switch = contacteur de siège
value-pressure = pression hydraulique
value-ramp = rampe
value-rated-axle = charge admissible par essieu de la remorque
value-rated-load = charge admissible par essieu
value-rated-nose = charge verticale maximale de l’attelage
value-rated-total = masse totale admissible
value-reach = portée
value-rear-axle-load = charge de l’essieu arrière
value-roll-over-bar = arceau de sécurité
value-room-behind = place nécessaire derrière le siège
value-rotation = sens de rotation de la prise de force
value-seat-off = si le siège se dépose
value-serials = numéros de série
value-setback = du crochet au plan d’appui
value-shaft-type = type d’arbre de prise de force
value-size = taille
value-span = écartement des tourillons inférieurs
value-speed = régime de prise de force
value-spread = écartement gauche-droite
value-standard = norme
value-static-loaded-radius = rayon statique sous charge du pneu
value-stations = poste ouvert ou cabine
value-supplier = avec quoi il est fourni
value-swivel-radius = rayon de pivotement du siège
value-thread = filetage
value-tolerance = tolérance
value-track = voie
value-transport-width = largeur au transport
value-turning-radius = rayon de braquage
value-tyre-rating = charge admissible d’un pneu
value-tyre-width = largeur du pneu
value-u = position en largeur, depuis le zéro du plan
value-upper-pin = axe de troisième point
value-v = position en hauteur, depuis le zéro du plan
value-wheelbase = empattement
value-width = largeur

port-kind-bar = barre
port-kind-bolt-pattern = trous
port-kind-clevis = chape
port-kind-electric = connecteur électrique
port-kind-hook = crochets
port-kind-hook-rack = crochets
port-kind-lug = patte
port-kind-pins = axes
port-kind-power-take-off = prise de force
port-kind-seat-base = pied du siège
port-kind-three-point = attelage trois points
port-kind-coupler = coupleur hydraulique

rotation-clockwise = sens horaire
rotation-counter-clockwise = sens antihoraire
station-open = ouvert
station-cab = cabine
axle-front = avant
axle-rear = arrière
bearer-front-axle = Essieu avant
bearer-front-tyre = Un pneu avant
bearer-hitch = Attelage
bearer-rear-axle = Essieu arrière
bearer-rear-tyre = Un pneu arrière
limit-de-stvzo-22 = StVZO, article 22 (4), Allemagne
limit-eu-96-53 = directive 96/53/CE de l’UE
limit-us-23-cfr-658 = 23 CFR 658.15 des États-Unis
limit-us-49-cfr-393-87 = 49 CFR 393.87 des États-Unis, à partir de laquelle il faut le signaler

footprint-length = Longueur hors tout
footprint-width = Largeur hors tout
footprint-height = Hauteur hors tout
footprint-wheelbase = Empattement
footprint-rear-overhang = Porte-à-faux arrière
footprint-front-overhang = Porte-à-faux avant
footprint-ground-clearance = Garde au sol
footprint-departure = Angle de fuite
footprint-approach = Angle d’attaque
footprint-breakover = Angle ventral
footprint-mass = Masse avec opérateur
footprint-front-load = Charge de l’essieu avant
footprint-rear-load = Charge de l’essieu arrière
footprint-to-buy = À acheter
footprint-work = Temps d’atelier
footprint-items-to-buy = Articles à acheter

remedy-adapter = Intercaler : { $item }
remedy-seat = Prendre { $item } comme siège
remedy-frame = Prendre { $item } comme châssis
remedy-hitch = L’atteler au trois points
remedy-drill = Faire percer les trous manquants, si le constructeur est d’accord : { $item }, { $port }
remedy-open-up = Faire agrandir les trous de { $by }, si le constructeur est d’accord : { $item }, { $port }
remedy-driver-seat = { $state ->
    [folded] Rabattre vers l’avant le siège de l’opérateur pour travailler
    [slid] Avancer le siège de l’opérateur pour travailler
    [turned] Faire pivoter le siège de l’opérateur pour travailler
    [off] Déposer le siège de l’opérateur pour travailler
   *[driving] Laisser le siège de l’opérateur tel quel
}
remedy-rear-seat = { $state ->
    [folded] Rabattre le siège arrière pour conduire
    [slid] Avancer le siège arrière pour conduire
    [turned] Faire pivoter le siège arrière pour conduire
    [off] Déposer le siège arrière pour conduire
   *[driving] Laisser le siège arrière tel quel
}
remedy-fold-roll-over-bar = Rabattre l’arceau seulement pour passer, transporter ou remiser, jamais pour travailler ; le relever aussitôt
remedy-take-off = Déposer : { $what }
remedy-put-on = Poser : { $what }
remedy-ramps = Prendre des rampes de { $length }
remedy-gateway = Passer par une entrée d’au moins { $width }
remedy-path = Passer par une allée d’au moins { $width }
remedy-ballast = Fixer { $mass } de masses à { $x } devant l’essieu arrière
remedy-ballast-behind = Fixer { $mass } de masses à { $x } derrière l’essieu arrière
strip-title = Ce qui se dépose, bouge et se pose
strip-stays = À laisser en place : { $what }
strip-own-seat = Déposer le siège propre : { $item }
strip-fit = Monter : { $item }
strip-hours-unknown = heures non indiquées
strip-at-least = au moins { $work }
bolts-title = Boulons
bolts-joint = { $carrier } + { $carried } ({ $role })
bolts-number = { $number } × { $thread }
bolts-thread = { $thread }, nombre : voir le manuel
bolts-number-alone = { $number } boulons, lesquels : voir le manuel
bolts-as-in-manual = quels boulons et combien : voir le manuel
bolts-on-both-sides = autant de l’autre côté de la machine
bolts-length = longueur { $length } pour { $grip } de tôle
bolts-grip = pour { $grip } de tôle, longueur : voir le manuel
bolts-length-unknown = longueur : voir le manuel
bolts-nuts = avec un écrou chacun
bolts-tapped = dans le filetage de { $item }
bolts-washers = { $count ->
    [one] { $count } rondelle chacun
   *[other] { $count } rondelles chacun
}
bolts-plate-washer = une rondelle large et épaisse chacun sur { $item }
bolts-class = classe { $class }
bolts-class-unknown = classe : voir le manuel
bolts-torque = serrer à { $torque }
bolts-torque-unknown = couple de serrage : voir le manuel
bolts-class-and-torque-unknown = classe et couple de serrage : voir le manuel
bolts-drill = { $count ->
    [one] Percer { $count } trou de { $diameter } dans { $item }, « { $port } »
   *[other] Percer { $count } trous de { $diameter } dans { $item }, « { $port } »
}
bolts-open = { $count ->
    [one] Agrandir { $count } trou de { $item }, « { $port } », à { $diameter }
   *[other] Agrandir { $count } trous de { $item }, « { $port } », à { $diameter }
}
bolts-edge = { $edge } du centre au bord de la tôle, il en faut au moins { $least }
bolts-edge-unknown = veiller à garder au moins { $least } du centre au bord de la tôle
sets-unbeaten = rien ne fait mieux
sets-items-to-buy = Pièces à acheter
sets-all-kept = Vous gardez les quatre choix : il n’y a que cet ensemble. Libérez-en un pour voir ce qui se monte aussi.
sets-says = Les meilleurs ensembles complets, le meilleur résultat d’abord.
sets-none = Aucun ensemble complet ne se monte.
sets-not-all = Il y a trop d’ensembles pour tous les examiner ; voici les meilleurs de ceux qui l’ont été.
lists-read = { $count ->
    [one] { $count } ligne lue
   *[other] { $count } lignes lues
}
lists-says = Choisissez ou collez deux listes de pièces. Chaque ensemble est dit identique, remplacé ou différent, avec ce qui en suit pour sa liaison.
lists-without-heading = Sans titre
lists-same = identique
    .joint = Ce qui est prouvé de l’une à cette liaison vaut pour l’autre.
lists-replaced-both-ways = numéros remplacés, chacun sert pour l’autre
    .joint = Ce qui est prouvé de l’une à cette liaison vaut pour l’autre.
lists-second-serves-for-first = la seconde liste a ce qui remplace des pièces de la première
    .joint = La seconde sert là où sert la première. L’inverse n’est pas prouvé.
lists-first-serves-for-second = la première liste a ce qui remplace des pièces de la seconde
    .joint = La première sert là où sert la seconde. L’inverse n’est pas prouvé.
lists-quantities-differ = mêmes numéros, autres quantités
    .joint = Non prouvé tant qu’on ne sait pas quelle quantité est juste.
lists-hardware-differs = seuls des boulons, écrous ou rondelles diffèrent
    .joint = Les pièces qui portent la liaison sont les mêmes. Monter les boulons, écrous et rondelles de la liste avec laquelle elle est prouvée.
lists-differs = diffère
    .joint = Ces listes ne prouvent pas cette liaison.
lists-only-first = seulement dans la première liste
    .joint = Rien ne s’ensuit pour cette liaison : elle manque dans la seconde liste.
lists-only-second = seulement dans la seconde liste
    .joint = Rien ne s’ensuit pour cette liaison : elle manque dans la première liste.
lists-line-only-first = { $first } : { $of-first } dans la première liste, aucune dans la seconde
lists-line-only-second = { $second } : aucune dans la première liste, { $of-second } dans la seconde
lists-line-quantity = { $first } : { $of-first } dans la première liste, { $of-second } dans la seconde
lists-line-second-replaces = { $second } remplace { $first }, pas l’inverse
lists-line-second-replaces-both-ways = { $second } remplace { $first }, et inversement
lists-line-first-replaces = { $first } remplace { $second }, pas l’inverse
lists-line-first-replaces-both-ways = { $first } remplace { $second }, et inversement
lists-line-written-otherwise = { $first } est écrit { $second } dans la seconde liste
lists-line-same = { $of-first } × { $first } dans les deux
lists-fault = Ligne { $line } : { $what }.
lists-fault-no-number = pas de numéro de pièce dans « { $text } » ; en écrire un ou supprimer la ligne
lists-fault-quantity = « { $text } » n’est pas une quantité ; écrire un nombre entier à partir de 1
lists-fault-doubled = { $text } figure aussi à la ligne { $other } ; les quantités sont additionnées
lists-fault-no-list = ce n’est pas une liste de pièces ; donner des lignes avec numéro de pièce et quantité
lists-fault-too-long = la liste a plus de { $other } lignes ; la partager
lists-fault-not-text = ce n’est pas du texte ; enregistrer la liste en CSV, en UTF-8
remedy-leads-to = Ensuite : { $verdict }
answer-to = { $answer } ({ $question })
remedy-costs = { $money } de plus à acheter
remedy-saves = économise { $money }
remedy-price-open = prix sur demande
remedy-takes = { $work } de travail en { $way ->
    [less] moins
   *[more] plus
}
remedy-length = { $length } de { $way ->
    [less] moins en longueur
   *[more] plus en longueur
}
remedy-departure = angle de fuite { $way ->
    [less] réduit
   *[more] augmenté
} de { $change }
remedy-settles = Résout : { $findings }
remedy-leaves = Reste à voir : { $findings }
remedy-same-price = rien de plus à acheter
remedy-price-elsewhere = son prix n’est pas dans ce catalogue
remedy-same-size = longueur et angle de fuite sans changement
remedy-with-first = Avec la première proposition
remedy-as-before = { $value }, sans changement

total-at-least = au moins { $known } ; { $open ->
    [one] { $open } prix inconnu
   *[other] { $open } prix inconnus
}
come-by-buy = à acheter
come-by-on-hand = disponible
come-by-elsewhere = pas dans ce catalogue
come-by-comes-with = fourni avec { $item }

date = { $day ->
    [one] { $day }er
   *[other] { $day }
} { $month } { $year }
month-1 = janvier
month-2 = février
month-3 = mars
month-4 = avril
month-5 = mai
month-6 = juin
month-7 = juillet
month-8 = août
month-9 = septembre
month-10 = octobre
month-11 = novembre
month-12 = décembre

labelled = { $label } : { $value }
clauses = { $first } ; { $second }

file-clean = { $file } : aucune erreur
file-warned = { $file } : { $warnings ->
    [one] { $warnings } avertissement
   *[other] { $warnings } avertissements
} ; le catalogue est utilisable
file-faulty = { $file } : { $errors ->
    [one] { $errors } erreur
   *[other] { $errors } erreurs
}, { $warnings ->
    [one] { $warnings } avertissement
   *[other] { $warnings } avertissements
}
file-unusable = { $errors ->
    [one] Le catalogue a { $errors } erreur et n’est pas utilisable ; « { $command } » la montre avec son remède.
   *[other] Le catalogue a { $errors } erreurs et n’est pas utilisable ; « { $command } » les montre toutes avec leur remède.
}
file-error = erreur
file-warning = avertissement
