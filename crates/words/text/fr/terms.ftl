verdict-bolts-up = Se monte
    .meaning = Se monte tel quel.
verdict-bolts-up-with-work = Se monte avec travaux
    .meaning = Se monte une fois les pièces posées ou les travaux faits comme indiqué.
verdict-check-first = À vérifier
    .meaning = Il faut regarder ou mesurer quelque chose avant de pouvoir le dire.
verdict-wont-mount = Ne se monte pas
    .meaning = De cette façon, le montage est impossible.

standing-listed = Au guide
    .meaning = Le guide du constructeur donne cet ensemble.
standing-off-guide = Hors guide
    .meaning = Le guide du constructeur ne donne pas cet ensemble. Le résultat est déduit des pièces et des cotes.

grade-listed = guide
    .meaning = Le constructeur les propose ensemble.
grade-same-part = même pièce
    .meaning = La même référence fait la liaison dans un ensemble que le constructeur propose.
grade-replaced-part = pièce remplacée
    .meaning = Une fiche de remplacement relie la pièce à celle d’un ensemble que le constructeur propose.
grade-measured = mesuré
    .meaning = Repose sur des mesures prises sur l’appareil.
grade-drawing = plan
    .meaning = Repose sur des plans ou la documentation, non sur l’appareil lui-même.
grade-none = rien
    .meaning = On ne sait encore rien.

role-axle-anchor = ancrage d’essieu
role-front-anchor = ancrage avant
role-rack = support arrière
role-hitch = attelage trois points
role-seat-deck = assise du siège
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

tool-caliper = pied à coulisse
tool-tape = mètre ruban

caution-planning-aid = Fit-up est une aide à la préparation. Les notices du constructeur, les charges admissibles, la loi locale et l’avis d’un atelier qualifié passent avant.
    .title = Aide à la préparation
caution-arm-on-hitch = Un bras de pelle sur un simple attelage trois points peut être soulevé et rabattu vers l’opérateur. Il lui faut un châssis ou la jambe de force du constructeur ; sa notice dit laquelle.
    .title = Bras de pelle sur attelage
caution-roll-over-bar-up = Travaillez arceau relevé et ceinture bouclée. Un arceau qui doit être rabattu ne l’est que pour le transport et le remisage, comme la notice de la machine le permet.
    .title = Arceau relevé
caution-drilling-or-welding = Percer ou souder un châssis ou une structure antiretournement relève du constructeur ou d’un ingénieur. Demandez avant de percer.
    .title = Perçage et soudage
caution-light-front-axle = Avec un essieu avant trop léger, on ne dirige ni ne freine en sécurité. Suivez la notice de la machine pour le lestage et les charges par essieu.
    .title = Essieu avant léger
caution-hydraulic-pressure = L’huile hydraulique sous pression peut traverser la peau. Arrêtez le moteur, abaissez tout et faites tomber la pression avant de toucher un coupleur.
    .title = Pression hydraulique
caution-raised-parts = Ne travaillez pas sous des parties levées que seule l’hydraulique retient. Calez-les comme la notice le montre.
    .title = Parties levées
caution-slopes = Un angle de basculement statique n’est pas une pente de travail sûre. Bosses, freinage, virages et charge levée font basculer la machine bien avant ; les limites de la notice s’appliquent.
    .title = Pentes
caution-excavations = Avant de creuser, faites repérer les câbles et conduites enterrés. Les parois de tranchée se protègent selon les règles locales.
    .title = Terrassement
caution-loading-ramps = Les rampes doivent être prévues pour la machine, fixées à la remorque et sèches. Suivez les notices des rampes et de la remorque.
    .title = Rampes de chargement
caution-tie-down = Arrimez la machine avec des sangles prévues pour elle, aux points que sa notice indique. La loi locale fixe le nombre et la résistance minimaux.
    .title = Arrimage
caution-road-limits = Les limites de masse, largeur, longueur et vitesse sur route diffèrent selon les lieux. Vérifiez celles du lieu avant de rouler.
    .title = Limites sur route

shape-rear-tyre = Pneu arrière
shape-front-tyre = Pneu avant
