verdict-bolts-up = Se monte
    .meaning = Se monte et peut travailler tel quel.
verdict-bolts-up-with-work = Se monte avec travaux
    .meaning = Se monte une fois les pièces posées ou les travaux faits comme indiqué.
verdict-check-first = À vérifier
    .meaning = Il faut regarder ou mesurer quelque chose avant de pouvoir le dire.
verdict-wont-mount = Ne se monte pas
    .meaning = De cette façon, le montage est impossible ou le travail interdit.

question-fit = Montage
question-work = Travail
question-travel = Transport
question-site = Chantier
question-open = pas encore décidé
question-in-order = { $count ->
    [one] { $count } point conforme
   *[other] { $count } points conformes
}
question-tightest = { $tightest } ({ $count })
headline-open = Pas encore décidé
headline-at-best = Au mieux : { $verdict }

fit-yes = Se monte
fit-with = { $what ->
    [none] Se monte avec travaux
   *[other] Se monte avec travaux : { $what }
}
fit-check = À vérifier
fit-no = Ne se monte pas
work-yes = Apte au travail
work-with = { $what ->
    [none] Apte au travail avec des changements
   *[other] Apte au travail avec { $what }
}
work-check = À vérifier
work-no = Inapte au travail
travel-yes = Se charge
travel-with = { $what ->
    [none] Se charge avec des changements
   *[other] Se charge avec { $what }
}
travel-check = À vérifier
travel-no = Ne se charge pas
site-yes = Accès possible
site-with = { $what ->
    [none] Accès possible avec des changements
   *[other] Accès possible avec { $what }
}
site-check = À vérifier
site-no = Accès impossible

finding-in-order = Conforme
finding-with-work = À faire
finding-check = À vérifier
finding-no = Exclu

standing-listed = Dans le guide
    .meaning = Cet ensemble figure dans le guide du constructeur.
standing-off-guide = Pas dans le guide
    .meaning = Cet ensemble ne figure pas dans le guide du constructeur. Le résultat est déduit ici des pièces et des cotes.

grade-listed = guide
    .meaning = Les deux figurent ensemble dans le guide du constructeur.
grade-same-part = même pièce
    .meaning = La même référence fait la liaison dans un ensemble du guide.
grade-replaced-part = pièce remplacée
    .meaning = Une fiche de remplacement relie la pièce à celle d’un ensemble du guide.
grade-measured = mesuré
    .meaning = Repose sur des mesures prises sur l’exemplaire.
grade-drawing = plan
    .meaning = Repose sur des plans ou la documentation, non sur l’exemplaire lui-même.
grade-none = aucune
    .meaning = On ne sait encore rien.

role-axle-anchor = ancrage d’essieu
role-front-anchor = ancrage avant
role-rack = porte-outil
role-hitch = attelage trois points
role-seat-deck = platine de siège
role-power-take-off = prise de force
role-pressure = ligne de pression
role-return = ligne de retour
role-case-drain = ligne de drain
role-wiring = câblage

kind-machine = machine
kind-frame = châssis
kind-seat = siège
kind-implement = outil
kind-adapter = adaptateur
kind-equipment = équipement

tool-caliper = pied à coulisse
tool-tape = mètre ruban
tool-photograph = photo

caution-planning-aid = Fit-up est une aide à la préparation. Les notices du constructeur, les charges admissibles, la loi locale et l’avis d’un atelier qualifié passent avant.
    .title = Aide à la préparation
caution-arm-on-hitch = Une pelle rétro (portée) sur le seul attelage trois points, sans châssis, peut être projetée vers le haut et basculer sur l’opérateur. Ne creusez pas ainsi. Il lui faut un châssis ou la jambe de force du constructeur ; la notice dit ce qu’il faut.
    .title = Pelle rétro sur attelage
caution-roll-over-bar-up = Travaillez arceau de sécurité relevé et ceinture bouclée. Ne rabattez l’arceau que pour passer sous un obstacle, transporter ou remiser, comme la notice de la machine le permet, et relevez-le aussitôt. Arceau rabattu, ne bouclez pas la ceinture.
    .title = Arceau de sécurité relevé
caution-drilling-or-welding = Percer ou souder un châssis, une structure antiretournement ou la machine elle-même (carter d’essieu, boîte de vitesses, cabine) relève du constructeur ou d’un ingénieur. Demandez avant de percer ou de souder.
    .title = Perçage et soudage
caution-light-front-axle = Avec un essieu avant trop léger, on ne dirige ni ne freine en sécurité. Suivez la notice de la machine pour le lestage et les charges maximales par essieu.
    .title = Essieu avant léger
caution-hydraulic-pressure = L’huile sous pression peut traverser la peau. Ne cherchez jamais une fuite à la main ; une blessure, même petite, demande un médecin aussitôt. Arrêtez le moteur, abaissez tout et faites tomber la pression avant de toucher un coupleur.
    .title = Pression hydraulique
caution-raised-parts = Ne travaillez pas sous des parties levées que seule l’hydraulique retient. Calez-les comme la notice le montre.
    .title = Parties levées
caution-slopes = Un angle de basculement statique n’est pas une pente de travail sûre. Bosses, freinage, virages et charge levée font basculer la machine bien avant ; les limites de la notice s’appliquent.
    .title = Pentes
caution-excavations = Avant de creuser, faites repérer les câbles et conduites enterrés. Les parois de tranchée doivent être blindées ou talutées selon les règles locales.
    .title = Terrassement
caution-loading-ramps = Les rampes doivent être d’une charge admissible suffisante pour la machine avec son outil, fixées à la remorque et sèches. Suivez les notices des rampes et de la remorque.
    .title = Rampes de chargement
caution-tie-down = Arrimez la machine avec des chaînes ou sangles d’une charge de travail suffisante, aux points que sa notice indique, aux quatre coins si elle le demande. La loi locale fixe le nombre et la résistance minimaux.
    .title = Arrimage
caution-road-limits = Les limites de masse, largeur, longueur et vitesse sur route diffèrent selon les lieux. Vérifiez celles du lieu avant de rouler.
    .title = Limites sur route
caution-rotating-shafts = Un arbre qui tourne happe vêtements, cheveux et membres en un instant. Ne faites tourner le cardan et l’outil qu’avec tous les protecteurs en place et intacts. Arrêtez le moteur, retirez la clé et attendez que tout soit immobile avant d’approcher.
    .title = Arbres tournants et protecteurs
caution-hoisting = Tant que l’outil est suspendu à un engin de levage, personne ne se tient dessous ni à côté. Utilisez un engin et des élingues d’une charge suffisante pour son poids, aux points de levage que sa notice indique. Calez l’outil et la machine avant de passer la main entre les deux et avant de poser un axe ou un boulon.
    .title = Levage et calage

shape-rear-tyre = pneu arrière
shape-front-tyre = pneu avant
