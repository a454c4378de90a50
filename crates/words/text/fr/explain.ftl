same-missing = Non indiqué pour { $item } : { $missing-name }.
    .workshop = { $item } : { $missing-name } non indiqué. Reste ouvert de ce fait : { $areas-name }.

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
area-build = l’ensemble

evidence-listed = { $row ->
    [none] Preuve : proposés ensemble par le constructeur, hors guide.
   *[other] Preuve : guide, ligne { $row }.
}
evidence-same-part = Preuve : même pièce que { $witness } avec { $witness-other }, au guide{ $row ->
    [none] .
   *[other] {" "}(ligne { $row }).
}
evidence-replaced-part = Preuve : pièce remplacée, à partir de { $witness } avec { $witness-other }, au guide{ $row ->
    [none] .
   *[other] {" "}(ligne { $row }).
}
evidence-measured = Preuve : mesuré avec { $tools-name }.
evidence-drawing = Preuve : plan.
evidence-none = Preuve : aucune encore.
evidence-stated = Preuve : documentation du constructeur.
evidence-looked = Preuve : regardé sur l’appareil.

explain-rest = { $count ->
    [one] { $count } autre point est en ordre.
   *[other] { $count } autres points sont en ordre.
}
explain-nothing = Rien n’est encore choisi qui puisse être jugé.

chain-same = { $item } porte { $parts }, comme { $stands-for }.
chain-replaced = { $item } porte { $parts } et vaut pour { $stands-for } :
step-forward = { $old } a été remplacée par { $new } { $ways ->
    [both] (dans les deux sens).
   *[forward] (vers l’avant seulement : la nouvelle sert pour l’ancienne).
}
step-backward = { $new } a remplacé { $old }, et selon la fiche l’ancienne sert aussi pour la nouvelle (dans les deux sens).
joint-parts = Pièces : { $a-parts } sur { $a } ; { $b-parts } sur { $b }.
no-parts = inconnu

check-compare-parts = Comparer les références : { $a-port } de { $a } et { $b-port } de { $b }.
check-measure = Mesurer à { $port } de { $item } : { $value-name }{ $within ->
    [none] .
   *[other] , à ±{ $within } { $tool ->
        [tape] (un mètre ruban suffit).
        [caliper] (au pied à coulisse).
       *[finer] (plus fin qu’un pied à coulisse).
    }
}
check-look = Regarder si { $item } a ceci : { $what }.
check-find-out = À trouver pour { $item } : { $value-name }.
check-ask = Interroger le constructeur ou le concessionnaire sur { $a } avec { $b }.
check-stakes = Pourrait faire passer le résultat de « { $best } » à « { $worst } ».

point-value = { $value-name } (point { $number })
hole-value = trou { $number }, { $value-name }
hole-named = trou { $number } de { $port }

value-at-x = position le long de la machine
value-at-z = position en hauteur
value-ballast-place = place pour le lest
value-beaver-angle = angle du plan incliné arrière
value-bolt = diamètre du boulon
value-bore = alésage
value-category = catégorie d’attelage
value-centre-of-gravity = centre de gravité
value-console = position des leviers
value-coupling = distance de l’attache à l’essieu
value-deck-height = hauteur du plateau
value-deck-length = longueur du plateau
value-deck-rear = bord arrière du plateau
value-deck-width = largeur du plateau
value-diameter = diamètre
value-drop = distance à la broche
value-flow = débit
value-front-axle = suspension de l’essieu avant
value-front-axle-load = charge de l’essieu avant
value-front-bore = alésage avant
value-gap = jeu
value-gate-width = largeur du portail
value-height = hauteur
value-hitch-stay = si son constructeur propose une jambe de force pour l’attelage
value-holes = trous
value-index-point = point repère du siège
value-latch = diamètre de la broche
value-lift = capacité de levage
value-link-mass = masses de flèche, bras et godet
value-lower-pin = broche inférieure
value-mass = masse
value-mast = hauteur du mât
value-nose-load = plage de la charge sur le timon
value-outlets = sorties hydrauliques
value-outline = contour
value-overall-radius = rayon extérieur du pneu
value-path-width = largeur de l’allée
value-pose = position de la liaison
value-power = puissance à la prise de force
value-power-beyond = sortie à pression continue
value-presence-switch = contacteur de présence
value-pressure = pression hydraulique
value-ramp = rampe
value-rated-load = charge admissible par essieu
value-rated-total = masse totale admissible
value-reach = portée
value-rear-axle-load = charge de l’essieu arrière
value-room-behind = place nécessaire derrière le siège
value-rotation = sens de rotation
value-serials = numéros de série
value-setback = retrait
value-shaft-type = type d’arbre
value-size = taille
value-span = écartement des points inférieurs
value-speed = régime
value-spread = écartement
value-standard = norme
value-static-loaded-radius = rayon statique sous charge du pneu
value-stations = poste ouvert ou cabine
value-supplier = avec quoi il vient
value-tolerance = tolérance
value-track = voie
value-turning-radius = rayon de braquage
value-tyre-width = largeur du pneu
value-u = cote en largeur
value-upper-pin = broche supérieure
value-v = cote en hauteur
value-wheelbase = empattement
value-width = largeur

port-kind-bar = barre
port-kind-bolt-pattern = trous
port-kind-clevis = chape
port-kind-electric = prise électrique
port-kind-hook = crochets
port-kind-hook-rack = crochets
port-kind-lug = patte
port-kind-pins = axes
port-kind-power-take-off = prise de force
port-kind-seat-base = pied du siège
port-kind-three-point = attelage trois points
port-kind-coupler = coupleur hydraulique

rotation-clockwise = à droite
rotation-counter-clockwise = à gauche
station-open = ouvert
station-cab = cabine
axle-front = avant
axle-rear = arrière

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

remedy-adapter = Intercaler { $item }
remedy-seat = Prendre { $item } comme siège
remedy-frame = Prendre { $item } comme châssis
remedy-hitch = Le pendre à l’attelage trois points
remedy-drill = Percer les trous manquants à { $port } de { $item }
remedy-open-up = Agrandir de { $by } les trous à { $port } de { $item }
remedy-front-seat-forward = Rabattre le siège de l’opérateur vers l’avant
remedy-fold-roll-over-bar = Rabattre l’arceau, pour le transport et le remisage seulement
remedy-take-off = Déposer : { $what }
remedy-put-on = Poser : { $what }
remedy-ramps = Prendre des rampes de { $length }
remedy-gateway = Supposer un portail de { $width }
remedy-path = Supposer une allée de { $width }
remedy-ballast = Pendre { $mass } de lest à { $x } devant l’essieu arrière
remedy-ballast-behind = Pendre { $mass } de lest à { $x } derrière l’essieu arrière
remedy-leads-to = Ensuite : { $verdict }
remedy-costs = { $money } à acheter
remedy-saves = économise { $money }
remedy-price-open = prix sur demande
remedy-takes = { $work } de travail
remedy-length = { $length } en longueur
remedy-departure = { $change } d’angle de fuite
remedy-settles = Règle : { $findings }
remedy-leaves = Reste à voir : { $findings }
remedy-same-price = rien de plus à acheter
remedy-price-elsewhere = son prix n’est pas dans ce catalogue
remedy-same-size = longueur et angle de fuite inchangés
remedy-with-first = Avec la première proposition
remedy-as-before = { $value }, inchangé

come-by-buy = à acheter
come-by-on-hand = déjà là
come-by-elsewhere = pas dans ce catalogue
come-by-comes-with = fourni avec { $item }
