problem-line-column = ligne { $line }, colonne { $column }
problem-cell = { $table }, ligne { $row }{ $column ->
    [none] {""}
   *[other] , colonne { $column }
}
problem-suggestion = Vouliez-vous dire « { $suggestion } » ?

sort-value = une valeur
sort-null = null
sort-flag = true ou false
sort-number = un nombre
sort-whole-number = un nombre entier
sort-number-or-stated = un nombre, ou un enregistrement avec value, plus_minus et source
sort-text = du texte
sort-list = une liste
sort-record = un enregistrement
sort-word-or-record = un mot ou un enregistrement
sort-field-name = le nom d’un champ entre guillemets droits doubles
sort-colon = un deux-points
sort-comma-or-close-bracket = une virgule ou ]
sort-comma-or-close-brace = une virgule ou {"}"}
sort-end-of-file = la fin du fichier

problem-not-text = Ce n’est pas du texte UTF-8 : l’octet { $byte } n’appartient à aucun caractère.
    .mend = Enregistrez le fichier en UTF-8.
problem-syntax = Ce n’est pas du JSON ; trouvé : { $found ->
    [end-of-file] la fin du fichier
   *[other] « { $found } »
}, attendu : { $expected }.
    .mend = Corrigez ici la ponctuation ; JSON n’admet ni commentaire ni virgule avant un crochet fermant ou une accolade fermante.
problem-too-large = Le fichier a { $found } octets ; on en lit { $greatest } au plus.
    .mend = Répartissez le catalogue en plusieurs.
problem-too-many-values = Le fichier contient plus de { $greatest } valeurs.
    .mend = Répartissez le catalogue en plusieurs.
problem-too-deep = Listes et enregistrements sont imbriqués sur plus de { $greatest } niveaux.
    .mend = Un catalogue n’a pas besoin de tant de niveaux : comparez avec la description du format.
problem-more-problems = Il y a d’autres erreurs ; les { $shown } premières sont affichées.
    .mend = Corrigez d’abord celles-ci.
problem-missing-format = Le fichier ne dit pas dans quel format il est.
    .mend = Commencez par "format": { $expected }.
problem-newer-format = Le fichier est au format { $found }, plus récent que le format { $expected } que lit ce programme.
    .mend = Utilisez une version plus récente de ce programme.
problem-unknown-format = Il n’y a pas de format « { $found } ».
    .mend = Le format est le nombre { $expected }.
problem-unknown-table = Il n’y a pas de table « { $found } » dans le format.
    .mend = Corrigez son nom, ou commencez-le par # et une espace si c’est une feuille à vous.
problem-missing-table = La table « { $table } » manque.
    .mend = Ajoutez ce qui manque.
problem-duplicate-table = « { $found } » est une deuxième feuille pour une table déjà présente ; rien n’en a été lu.
    .mend = Mettez ses lignes dans la première feuille, ou commencez son nom par # et une espace.
problem-unknown-column = La table n’a pas de colonne « { $found } ».
    .mend = Corrigez l’en-tête, ou commencez-le par # et une espace si la colonne est à vous.
problem-no-heading = « { $found } » se trouve dans une colonne sans en-tête et serait perdu.
    .mend = Écrivez l’en-tête dans la ligne 1 ; « remarks » si c’est une note à vous.
problem-unit-in-heading = L’en-tête dit { $found }, mais l’en-tête du fichier dit { $expected }.
    .mend = Écrivez tous les nombres en { $expected }, et ainsi tous les en-têtes ; ou corrigez l’en-tête du fichier.
problem-merged-cells = Les cellules { $found } sont fusionnées : seule la première contient quelque chose.
    .mend = Annulez la fusion et remplissez chaque cellule.
problem-hidden-rows = { $last ->
    [none] La ligne { $first } est masquée, mais elle est lue
   *[other] Les lignes { $first } à { $last } sont masquées, mais elles sont lues
} comme les autres.
    .mend = Affichez les lignes et supprimez ce qui ne vaut plus.
problem-cell-error = La cellule contient l’erreur { $found }, pas une valeur.
    .mend = Corrigez la formule, ou écrivez la valeur elle-même.
problem-formula-without-value = La cellule contient une formule, mais pas sa valeur.
    .mend = Ouvrez le classeur dans un tableur, laissez-le calculer et enregistrez-le ; ou écrivez la valeur elle-même.
problem-date-instead = La cellule contient la date { $found }, que le tableur a faite de la saisie.
    .mend = Donnez à la cellule le format « texte » et saisissez de nouveau.
problem-blanks-around = « { $found } » a des espaces avant ou après.
    .mend = Retirez les espaces.
problem-comma-in-list = « { $found } » a une virgule là où une liste est lue : ce serait une seule entrée.
    .mend = Séparez les entrées par des points-virgules ; celle qui a sa propre virgule se met entre guillemets droits.

problem-wrong-type = Trouvé : { $found } ; attendu : { $expected }.
    .mend = Écrivez une valeur de la sorte attendue, ou laissez de côté un champ facultatif.
problem-not-number = « { $found } » n’est pas un nombre.
    .mend = Écrivez le nombre seul, avec un point décimal et rien entre les milliers ; laissez vide s’il n’est pas connu.
problem-number-with-unit = « { $found } » a « { $unit } » à côté du nombre.
    .mend = Écrivez seulement { $number } si c’est dans l’unité de l’en-tête ; sinon convertissez d’abord.
problem-not-flag = « { $found } » n’est ni oui ni non.
    .mend = Écrivez yes ou no dans une table, true ou false en JSON ; laissez vide si ce n’est pas connu.
problem-unknown-field = Il n’y a pas de champ « { $found } » ici.
    .mend = Valeurs possibles : { $expected }.
problem-missing-field = Le champ « { $field } » manque.
    .mend = Ajoutez ce qui manque.
problem-duplicate-field = Le champ « { $field } » figure deux fois.
    .mend = Retirez l’un des deux.
problem-unknown-word = « { $found } » n’est pas un des mots qui peuvent figurer ici.
    .mend = Valeurs possibles : { $expected }.
problem-not-exactly-one = { $found ->
    [none] Il n’y a rien ici ; il en faut exactement un.
   *[other] Il y en a plusieurs ici ({ $found }) ; il en faut exactement un.
}
    .mend = Valeurs possibles : { $expected }.
problem-wrong-count = Valeurs dans la liste : { $found } ; il en faut { $expected }.
    .mend = Écrivez autant de valeurs qu’il en faut.
problem-empty-list = La liste est vide ; il lui faut au moins une entrée.
    .mend = Ajoutez une entrée, ou laissez de côté une liste facultative.
problem-number-not-finite = { $found } n’est pas un nombre fini.
    .mend = Corrigez le nombre, ou laissez le champ de côté s’il n’est pas connu.
problem-number-out-of-range = { $found } sort des limites, de { $least } à { $greatest }.
    .mend = Corrigez le nombre, ou laissez le champ de côté s’il n’est pas connu.
problem-number-not-whole = { $found } n’est pas un nombre entier.
    .mend = Corrigez le nombre, ou laissez le champ de côté s’il n’est pas connu.
problem-unsafe-character = Le texte contient le caractère { $found }, qui est invisible ou inverse le sens du texte.
    .mend = Retirez le caractère.
problem-text-too-long = Le texte a { $found } octets ; le maximum est { $greatest }.
    .mend = Raccourcissez le texte.
problem-blank-text = Le texte est vide.
    .mend = Remplissez-le.
problem-empty-record = L’enregistrement ne dit rien.
    .mend = Laissez-le de côté.
problem-unknown-unit = « { $found } » n’est pas une unité connue ici.
    .mend = Valeurs possibles : { $expected }.
problem-unknown-currency = « { $found } » n’est pas un code de monnaie de trois majuscules.
    .mend = Écrivez le code de l’ISO 4217, par exemple USD, EUR ou GBP.
problem-bad-date = « { $found } » n’est pas une date comme 2014-02-01.
    .mend = Écrivez année, mois et jour avec des traits d’union.

problem-bad-id = « { $found } » n’est pas un identifiant : minuscules, chiffres et traits d’union.
    .mend = Donnez-en un autre.
problem-reserved-id = L’identifiant « { $found } » a un sens propre dans le guide.
    .mend = Donnez-en un autre.
problem-duplicate-id = L’identifiant « { $found } » est déjà pris par { $other }.
    .mend = Donnez-en un autre.
problem-duplicate-part = La référence « { $found } » est déjà prise par { $other }.
    .mend = Gardez une seule ligne par référence.
problem-duplicate-port = Une autre connexion de cet article porte le nom « { $found } ».
    .mend = Donnez-en un autre.
problem-unknown-reference = « { $found } » n’est pas { $table ->
    [items] dans les tables d’articles
   *[other] dans la table « { $table } »
}.
    .mend = Corrigez l’orthographe, ou ajoutez la ligne.
problem-unknown-part = La référence « { $found } » n’est pas dans la table des pièces.
    .mend = Corrigez l’orthographe, ou ajoutez la ligne.
problem-named-twice = « { $found } » figure deux fois dans cette liste.
    .mend = Ne le gardez qu’une fois.
problem-listed-with-itself = Un article figure avec lui-même dans le guide.
    .mend = Nommez les articles avec lesquels il figure, ou retirez l’entrée.

problem-mass-not-positive = Une masse de { $found } est impossible : elle doit être supérieure à zéro.
    .mend = Corrigez le nombre, ou laissez le champ de côté s’il n’est pas connu.
problem-not-positive = { $found } est impossible : il faut plus que zéro.
    .mend = Corrigez le nombre, ou laissez le champ de côté s’il n’est pas connu.
problem-negative = { $found } est impossible : il faut zéro ou plus.
    .mend = Corrigez le nombre, ou laissez le champ de côté s’il n’est pas connu.
problem-range-upside-down = L’intervalle est à l’envers : il finit à { $greatest }, en dessous de son début à { $least }.
    .mend = Échangez les deux, ou corrigez celui qui est faux.
problem-outside-own-range = { $found } sort de son propre intervalle, de { $least } à { $greatest }.
    .mend = Corrigez le nombre, ou laissez le champ de côté s’il n’est pas connu.
problem-share-out-of-range = Une part de { $found } est impossible : elle est entre 0 et 1.
    .mend = Corrigez le nombre, ou laissez le champ de côté s’il n’est pas connu.
problem-folded-seat-not-outlined = Le siège se rabat, et rien ne le dessine rabattu.
    .mend = Ajoutez des formes de rôle seat_folded qui le montrent rabattu, ou indiquez qu’il ne se rabat pas.
problem-folded-seat-not-stated = Un siège est dessiné rabattu, et rien ne dit que ce siège se rabat.
    .mend = Indiquez que le siège se rabat, ou retirez les formes de rôle seat_folded.
problem-own-seat-not-there = Un siège propre est décrit, et rien ne dit que l’outil en a un.
    .mend = Mettez own_seat à true, ou retirez ceci.
problem-price-too-fine = Le prix { $found } est plus fin que le centième et sera arrondi.
    .mend = Arrondissez-le vous-même.
problem-half-range-too-great = Le demi-intervalle { $found } n’est pas inférieur à la valeur { $value } à laquelle il appartient.
    .mend = Indiquez de combien la vraie valeur peut s’écarter de celle donnée, dans la même unité.
problem-unlikely-size = { $found } n’est guère possible ici : l’usage va de { $least } à { $greatest }.
    .mend = Vérifiez que le nombre est dans l’unité de l’en-tête et qu’aucun chiffre ni la virgule n’a glissé.
problem-loads-not-mass = Les essieux portent { $loads } ensemble, mais la masse est { $found }.
    .mend = Pesez de nouveau, ou corrigez la masse ou l’une des charges à vide.
problem-load-above-rating = L’essieu porte déjà à vide { $found }, plus que les { $rated } admis.
    .mend = Corrigez la charge ou la charge admise.
problem-wheels-overlap = Les roues se chevauchent : des rayons de { $rear } et { $front } ne tiennent pas dans un empattement de { $found }.
    .mend = Corrigez le rayon faux ; un diamètre est peut-être à sa place.
problem-tyre-above-machine = La roue est haute de { $found }, plus que tout ce qui est dessiné de la machine ({ $top }).
    .mend = Corrigez le rayon ; un diamètre est peut-être à sa place.
problem-parts-outweigh-whole = Le bras pèse { $found }, mais ses éléments pèsent à eux seuls { $parts }.
    .mend = Corrigez la masse : voyez l’unité de l’en-tête et le point décimal.
problem-far-from-its-kind = { $found } est loin de ceux de son genre : celui du milieu est { $usual }.
    .mend = Vérifiez que le nombre est dans l’unité de l’en-tête et qu’aucun chiffre ni point décimal n’a glissé.
problem-port-far-away = Le raccord est à x = { $found }, bien loin de la machine.
    .mend = Corrigez sa position : x compte vers l’avant depuis l’essieu arrière, dans l’unité de l’en-tête.
problem-unlikely-year = { $found } n’est guère une année de construction.
    .mend = Corrigez l’année, ou laissez vide si elle n’est pas connue.
problem-future-date = La date { $found } est encore à venir : aujourd’hui, c’est { $today }.
    .mend = Corrigez la date.
problem-long-label = Le libellé a { $found } caractères et ne tient pas là où les libellés sont affichés.
    .mend = Raccourcissez-le à { $greatest }, et mettez le reste dans la note.
problem-same-label = « { $found } » est aussi le libellé de { $other }, et ni années, ni numéros de série, ni série ne les distinguent.
    .mend = Donnez à chacun son libellé, ou indiquez ce qui les distingue.
problem-rare-word = « { $found } » ne figure qu’ici.
    .mend = Corrigez l’orthographe si un autre mot est visé.
problem-similar-part = « { $found } » et « { $like } » ({ $other }) sont le même numéro, à l’écriture près.
    .mend = Gardez une ligne, et écrivez le numéro partout de la même façon.
problem-line-twice = La ligne figure déjà en { $other }.
    .mend = Retirez-en une, ou corrigez sa position.
problem-sleeve-inside-out = Le diamètre intérieur { $inner } de la bague n’est pas inférieur à son diamètre extérieur { $outer }.
    .mend = Échangez les deux diamètres.

problem-no-holes = Le plan de perçage n’a pas de trous.
    .mend = Ajoutez-les, ou laissez la connexion de côté s’ils ne sont pas connus.
problem-too-many-holes = Le plan de perçage a { $found } trous ; le maximum est { $greatest }.
    .mend = Laissez de côté les trous qu’aucun boulon de la liaison n’utilise.
problem-holes-coincide = Les trous { $first } et { $second } sont au même endroit.
    .mend = Retirez-en un, ou corrigez sa position.
problem-holes-overlap = Les trous { $first } et { $second } sont à { $apart } l’un de l’autre et se coupent.
    .mend = Corrigez la position de l’un, ou faites des deux un trou oblong.
problem-bolt-above-hole = Une vis de { $bolt } ne passe pas dans un trou de { $found }.
    .mend = Corrigez le trou ou la vis du raccord.
problem-holes-off-reference = Tous les trous sont loin du point de référence du raccord, leur milieu à u = { $u }, v = { $v }.
    .mend = Comptez u et v depuis le point que donne la position, ou déplacez la position vers les trous.
problem-more-bolts-than-holes = Il faudrait plus de boulons qu’il n’y a de trous : boulons { $required }, trous { $holes }.
    .mend = Corrigez le nombre, ou ajoutez les trous.
problem-thread-not-read = { $found } n’est pas un filetage connu ici.
    .mend = Écrivez-le M12, M12x1.25 ou 1/2-13 UNC.
problem-no-points = La connexion à axes n’a pas de points.
    .mend = Ajoutez-les, ou laissez la connexion de côté s’ils ne sont pas connus.
problem-pose-not-square = Une face tournée vers « { $faces } » ne peut pas avoir « { $up } » comme sens vers le haut.
    .mend = Choisissez un sens vers le haut à angle droit de celui où la face est tournée.
problem-pose-missing = La connexion ne dit pas où elle est ; on ne peut donc rien placer par elle.
    .mend = Ajoutez la position (pose).
problem-looks-away = Le raccord ({ $role }) regarde vers { $found }, à l’opposé de ce qu’il doit rencontrer.
    .mend = Faites-le regarder vers { $expected } ; ses trous se voient de là.
problem-kind-not-of-role = Une connexion de type « { $kind } » ne peut pas servir de « { $role } ».
    .mend = Valeurs possibles : { $expected }.
problem-machine-carried = Une machine ne peut pas être le côté porté.
    .mend = Mettez "carrier" comme bout (end) de la connexion.
problem-adapter-leads-nowhere = L’adaptateur ne mène pas d’une connexion à une autre.
    .mend = Donnez-lui une connexion portée et une qui porte, ou une bague.
problem-mount-without-port = L’outil n’a pas de connexion par laquelle se monter ({ $mount }).
    .mend = Ajoutez une connexion portée de ce rôle, ou corrigez le montage (mount).
problem-frame-without-port = Le châssis n’a pas de raccord « { $role } » ({ $end }), dont chaque châssis a besoin.
    .mend = Ajoutez le raccord, avec ce qu’on en sait.
problem-equipment-for-nothing = L’équipement n’est pour aucune machine.
    .mend = Nommez les machines pour lesquelles il est fait.
problem-equipment-blocks-own = L’équipement bloque une connexion qu’il ajoute lui-même ({ $port }).
    .mend = Retirez la connexion de l’une des deux listes.
problem-equipment-names-nothing = Aucune des machines pour lesquelles l’équipement est fait n’a « { $found } ».
    .mend = Corrigez le nom, ou les machines.
problem-equipment-port-taken = L’équipement ajoute une connexion « { $port } » que { $machine } a déjà.
    .mend = Donnez un autre nom à la connexion, ou bloquez celle de la machine.
problem-fitted-not-for-machine = La machine est vendue avec { $found }, qui n’est pas pour elle.
    .mend = Ajoutez la machine à cet équipement, ou retirez-le ici.
problem-kind-of-no-equipment = Aucun équipement n’est du genre « { $found } ».
    .mend = Corrigez le mot, ou ajoutez un équipement de ce genre.

problem-path-unreadable = Les données du tracé sont illisibles : « { $found } ».
    .mend = Utilisez les commandes M L H V C Q A Z, la première un M.
problem-path-out-of-range = Les données du tracé ont une coordonnée au-delà de { $greatest }.
    .mend = Corrigez la coordonnée.
problem-path-curved = Un dessous est fait de lignes droites ; celui-ci a des courbes.
    .mend = N’utilisez que M, L, H, V et Z.
problem-draws-nothing = Le tracé de « { $shape } » n’a pas deux points différents et ne dessine rien.
    .mend = Donnez-lui ses points, ou retirez la forme.
problem-outline-crosses-itself = Le contour de « { $shape } » se croise lui-même en ({ $x }, { $y }).
    .mend = Mettez ses points en ordre autour du contour.
problem-outline-too-detailed = Les contours sont trop détaillés pour être vérifiés, à partir de « { $shape } ».
    .mend = Dessinez-le avec moins de points.
problem-centre-of-gravity-outside = Le centre de gravité ({ $x }, { $y }) est hors du contour dans la vue de { $view ->
    [side] côté
   *[plan] dessus
}.
    .mend = Corrigez le centre de gravité, ou dessinez ce qui manque du contour.
problem-carrier-without-arm = La forme « { $shape } » bouge avec « { $carrier } », mais l’article n’est pas une pelle rétro.
    .mend = Ajoutez le bras, ou laissez la forme bouger avec l’article.

problem-lineage-circle = Les pièces se remplacent en cercle : { $chain }.
    .mend = Retirez la fiche qui est fausse.
problem-lineage-contradictory = Que { $by } a remplacé { $part } est noté dans les deux sens et aussi vers l’avant seulement ; l’autre fiche est { $other }.
    .mend = Retirez la fiche qui est fausse.
problem-replaced-by-nothing = La pièce n’est remplacée par rien.
    .mend = Nommez ce qui la remplace, ou laissez "replaced" de côté.

problem-set-names-nothing = L’ensemble ne nomme aucun article.
    .mend = Nommez au moins un article par son identifiant.
problem-duplicate-set = L’ensemble est déjà dans le guide, en { $other }.
    .mend = Retirez l’un des deux.
problem-bolts-disagree = L’ensemble est dans le guide, mais au raccord ({ $role }) « { $a } » indique une vis de { $bolt_a } et « { $b } » une de { $bolt_b }.
    .mend = Corrigez le côté faux.
problem-listed-blocked = L’ensemble est dans le guide, mais d’après ses données il ne se monte pas ainsi : { $reason }.
    .mend = Corrigez ce qui est faux ; « fitup coverage » dit la raison en entier.
problem-listed-cannot-mate = L’ensemble est dans le guide, mais d’après les cotes de leurs connexions « { $a } » ne peut pas porter « { $b } » ({ $role }).
    .mend = Comparez les deux connexions avec les plans ; une des cotes ou le guide est faux.
