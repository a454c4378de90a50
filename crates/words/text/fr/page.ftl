### What the page says by itself, without the engine. Every key begins with "ui-", and no text has a value in it.

ui-start-says = Fit-up montre si un outil arrière se monte sur un tracteur compact, ce qu’il faut pour cela et avec quelle certitude.
ui-language-unspoken = Les textes n’ont pas pu être chargés. L’anglais est affiché à la place.
ui-engine-restarted = Le calcul s’était arrêté. Il a été relancé avec le même choix.
ui-engine-here = Le calcul tourne dans la page elle-même, car le navigateur ne lui donne pas de place à part. La page peut marquer des pauses.
ui-engine-missing = Le programme de calcul n’a pas pu être chargé.
ui-engine-cut-off = Le programme de calcul est arrivé abîmé ou incomplet.
ui-engine-other-version = Le programme de calcul n’est pas de la même version que cette page. Rechargez la page.
ui-engine-stopped = Le calcul s’est arrêté trois fois de suite.
ui-engine-kept = L’affichage date d’avant. Votre choix est conservé dans ce lien :
ui-stories = Exemples du catalogue de démonstration
ui-story-listed = Un ensemble de la liste du constructeur : il se monte tel quel.
ui-story-measured = Un bras d’occasion sans papiers : mesuré au pied à coulisse, et réglé.
ui-story-two-holes = Une plate-forme de siège où il faut percer deux trous.
ui-update = Une nouvelle version de Fit-up est prête. Votre montage est conservé.
ui-update-take = La charger
ui-copy-kept = Le réseau ne répond pas. Le catalogue est la copie gardée sur cet appareil, du
ui-idle = Êtes-vous toujours là ?
ui-idle-says = Dans un instant, tout recommence pour le visiteur suivant.
ui-idle-stay = Continuer
