### La fiche de montage. Chaque clé commence par « ui- ».

ui-fit-sheet = Fiche de montage
ui-print-sheet = Imprimer la fiche de montage
ui-date = Date
ui-catalogue = Catalogue
ui-no-trailer = Aucune remorque choisie : rien n’a été examiné.
ui-no-site = Aucun lieu choisi : rien n’a été examiné.
ui-joints = Liaisons
ui-joint = Liaison
ui-carries = Porte
ui-carried = Est porté
ui-evidence = Preuve
ui-observed = Mesuré et relevé sur les machines
ui-dimension = Cote
ui-measured = Mesuré
ui-serial = Numéro de série
ui-step = Étape
ui-hours = Heures
ui-parts-all = Pièces, à acheter et disponibles
ui-template = Gabarit des trous à percer
ui-template-of = À percer : { $item }, { $port }, { $count ->
    [one] { $count } trou, tracé en trait plein
   *[other] { $count } trous, tracés en trait plein
}. Les trous en tirets existent déjà. Vue sur la face qui s’appuie contre { $other }. Posez le gabarit sur les trous existants avant de pointer les centres.
ui-template-joined = Découpez les { $count } feuilles au bord et assemblez-les : les chiffres donnent la ligne et la colonne.
ui-template-bar = La barre mesure 100 mm : à vérifier avec une règle avant usage. Imprimez à 100 %, sans adapter à la page.
ui-signed = Vu et approuvé
    .meaning = Cette fiche dit ce qui était connu à sa date. C’est un plan, pas une autorisation de travaux.
ui-sign-place = Lieu et date
ui-sign-name = Nom
ui-sign = Signature
