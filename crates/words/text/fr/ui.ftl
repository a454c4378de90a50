ui-step-machine = Machine
ui-step-frame = Châssis
ui-step-seat = Siège
ui-step-implement = Outil
ui-step-choose = Choisissez
ui-on-hitch = Sur l’attelage trois points, sans châssis
ui-answer = Résultat
ui-joints = Liaisons
ui-evidence = Preuve
ui-footprint = Encombrement
ui-parts = Pièces à acheter
ui-loading = Chargement
ui-site = Chantier
ui-digging = Terrassement
ui-weight = Poids
ui-compare = Comparer
ui-saved = Montages enregistrés
ui-share = Partager
ui-fit-sheet = Fiche de montage
ui-print = Imprimer
ui-undo = Annuler
ui-redo = Rétablir
ui-clear = Tout effacer
ui-start-again = Recommencer
ui-close = Fermer
ui-back = Retour
ui-next = Suivant
ui-take = Choisir
ui-taken = Choisi
ui-take-off = Retirer
ui-search = Rechercher
ui-sort = Trier par
ui-sort-verdict = Résultat
ui-sort-price = Prix
ui-sort-length = Longueur
ui-units = Unités
ui-units-metric = Métrique
ui-units-us = US
ui-language = Langue
ui-language-missing = Les textes pour { $language } n’ont pas pu être chargés. L’anglais est affiché à la place.
ui-theme = Thème
ui-theme-light = Clair
ui-theme-dark = Sombre
ui-theme-outdoor = Extérieur
ui-on-hand = Déjà là
ui-to-buy = À acheter
ui-price-on-request = Prix sur demande
ui-total = Total
ui-quantity = Quantité
ui-price = Prix
ui-work-time = Temps d’atelier
ui-part-numbers = Références
ui-hole-patterns = Plans de perçage
ui-margin = Marge
ui-measure = Saisir la mesure
ui-checks = Ce qui trancherait
ui-remedies = Ce qui aiderait
ui-try-remedy = Essayer
ui-cautions = Précautions
ui-details = Détails
ui-for-shopper = En bref
ui-for-workshop = Pour l’atelier
ui-bare-machine = Machine seule
ui-side-view = Vue de côté
ui-plan-view = Vue de dessus
ui-rear-view = Vue arrière
ui-loading-catalogue = Chargement du catalogue
ui-try-again = Réessayer
ui-not-known = inconnu
ui-copy-link = Copier le lien
ui-copied = Copié
ui-offline = Fonctionne hors ligne
ui-new-version = Une nouvelle version est prête. Elle démarre au rechargement.
ui-catalogue-slow = Le catalogue met du temps à charger.
ui-catalogue-missing = Le catalogue n’a pas pu être chargé.
ui-catalogue-broken = Le catalogue contient des erreurs et n’est pas encore utilisable.
ui-storage-full = L’appareil n’a plus de place pour enregistrer. Tout fonctionne encore ; exportez le montage pour le garder.
ui-link-cut-off = Le lien est coupé ou modifié. Redemandez-le.
ui-link-newer = Le lien vient d’une version plus récente. Rechargez la page pour l’obtenir.
ui-link-not-ours = Cette adresse ne contient aucun montage.

ui-not-in-catalogue = { $id } n’est pas dans ce catalogue
ui-options = { $count ->
    [one] { $count } option
   *[other] { $count } options
}
ui-open-checks = { $count ->
    [one] { $count } vérification ouverte
   *[other] { $count } vérifications ouvertes
}
ui-against-bare = { $change } par rapport à la machine seule
ui-reaches = Meilleur résultat encore possible : { $verdict }
ui-comes-with = Fourni avec { $item }

ui-verdict-open = Pas commencé
    .meaning = Commencez par ce que vous avez : machine, châssis, siège ou outil.
ui-so-far = Rien ne s’y oppose pour l’instant. Les autres étapes restent à choisir.
ui-item-list = Nomenclature
ui-steps = Étapes
ui-settings = Réglages
ui-views = Vues
ui-view-fit = Montage
ui-view-parts = Pièces
ui-view-loading = Chargement
ui-view-weight = Poids
ui-view-digging = Creusement
ui-view-site = Chantier
ui-look-from = Vu de
ui-look-side = Côté
ui-look-plan = Dessus
ui-drawing = Dessin
ui-drawing-none = Choisissez machine, châssis, siège ou outil. Le dessin à l’échelle apparaît ici.
ui-short-length = Longueur
ui-short-width = Largeur
ui-short-height = Hauteur
ui-short-ground-clearance = Garde au sol
ui-short-departure = Angle de fuite
ui-short-mass = Masse
ui-short-front-load = Essieu avant
ui-theme-system = Comme l’appareil
ui-sort-name = Nom
ui-nothing-found = Rien ne correspond à la recherche.
ui-take-out = Retirer
ui-details-none = Ce qui se monte sur quoi, et ce qui en résulte, s’affiche ici dès que deux éléments qui se joignent sont choisis.
ui-remedies-none = Aucun adaptateur, siège, châssis ni travail de ce catalogue n’aide.
ui-remedies-more = { $count ->
    [one] { $count } autre
   *[other] { $count } autres
}
ui-beyond-joints = Au-delà des liaisons
ui-no-part-number = numéro de pièce inconnu
ui-forget = Oublier
ui-measure-what = Ce qui a été mesuré
ui-measure-value = Valeur
ui-measure-tool = Mesuré avec
ui-measure-enter = Saisir
ui-measure-wrong = Saisissez une longueur, par exemple 412,5 ou 41,2 cm.
ui-item = Élément
ui-link-missing = Tout ce que contient le lien n’est pas dans ce catalogue. Le reste est ouvert.
ui-catalogue-no-address = Aucun catalogue n’est indiqué. Donnez à l’élément un attribut catalogue.
ui-catalogue-newer = Le catalogue est d’un format plus récent que celui que lit cette version. Rechargez la page pour obtenir la nouvelle.
ui-catalogue-kept = Le catalogue précédent reste en service.
ui-more-problems = { $count ->
    [one] et { $count } autre erreur
   *[other] et { $count } autres erreurs
}
ui-standing = Statut

ui-incomplete = Toutes les étapes ne sont pas encore choisies

ui-also = Aussi dans l’ensemble

ui-failed = Quelque chose s’est mal passé dans ce composant
    .meaning = Vos choix restent dans l’adresse. Rechargez la page pour continuer.
ui-reload = Recharger
