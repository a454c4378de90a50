### Longueurs saisies qui ne peuvent valoir, chacune avec ce qu’il faut écrire. $typed est ce qui a été écrit.

misread-nothing = Aucune longueur n’est écrite. Écrivez-la avec son unité, par exemple 51,6 mm ou 2 1/32 in.
misread-no-length = « { $typed } » n’est pas une longueur. Écrivez un nombre et son unité, par exemple 51,6 mm ou 2 1/32 in.
misread-thousands = « { $typed } » peut se lire de deux façons. Retirez les signes entre milliers ou écrivez les décimales comme 1,2.
misread-metric-fraction = « { $typed } » est une fraction, et les millimètres n’en ont pas. Si ce sont des pouces, écrivez-le : 2 1/32 in.
misread-not-above-zero = « { $typed } » n’est pas au-dessus de zéro, alors qu’une cote de la machine l’est. Écrivez ce que l’instrument indique.
misread-too-long = « { $typed } » dépasse 100 m. Vérifiez le nombre et son unité.
misread-plus-minus = Dans « { $typed } », le ± est inférieur à zéro ou supérieur à la longueur même. Écrivez de combien la lecture peut s’écarter, par exemple ± 0,5.

identify-candidate = { $item }, { $port } : { $likelihood }
identify-measured = { $count ->
    [one] { $count } cote mesurée concorde avec les indications.
   *[other] { $count } cotes mesurées concordent avec les indications.
}
identify-measured-not = Ce qui a été mesuré s’écarte des indications plus que les deux ne peuvent être incertains.
identify-bears = Il porte la référence relevée.
identify-bears-not = Il porte une autre référence.
identify-counts = Il a autant de trous ou de points.
identify-counts-not = Il a un autre nombre de trous ou de points.
identify-more = { $count ->
    [one] { $count } autre est moins probable.
   *[other] { $count } autres sont moins probables.
}
identify-none = Rien dans ce catalogue n’indique ce qui a été observé.
identify-next-measure = À mesurer ensuite : { $what }. { $first } désigne { $a }, { $second } désigne { $b }.
identify-next-read = Relever ensuite la référence. { $first } désigne { $a }, { $second } désigne { $b }.
identify-next-count = Compter ensuite les trous ou les points. { $first } désignent { $a }, { $second } désignent { $b }.
