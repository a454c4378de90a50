ui-step-machine = Maschine
ui-step-frame = Rahmen
ui-step-seat = Sitz
ui-step-implement = Anbaugerät
ui-step-choose = Bitte wählen
ui-on-hitch = Am Dreipunktanbau, ohne Rahmen
ui-answer = Ergebnis
ui-joints = Verbindungen
ui-evidence = Beleg
ui-footprint = Abmessungen
ui-parts = Benötigte Teile
ui-loading = Verladen
ui-site = Baustelle
ui-digging = Graben
ui-weight = Gewicht
ui-compare = Vergleichen
ui-saved = Gespeicherte Zusammenstellungen
ui-share = Teilen
ui-fit-sheet = Anbaublatt
ui-print = Drucken
ui-undo = Rückgängig
ui-redo = Wiederholen
ui-clear = Alles leeren
ui-start-again = Von vorn
ui-close = Schließen
ui-back = Zurück
ui-next = Weiter
ui-take = Wählen
ui-taken = Gewählt
ui-take-off = Entfernen
ui-search = Suchen
ui-sort = Sortieren nach
ui-sort-verdict = Ergebnis
ui-sort-price = Preis
ui-sort-length = Länge
ui-units = Einheiten
ui-units-metric = Metrisch
ui-units-us = US
ui-language = Sprache
ui-language-missing = Die Texte für { $language } konnten nicht geladen werden. Stattdessen wird Englisch gezeigt.
ui-theme = Darstellung
ui-theme-light = Hell
ui-theme-dark = Dunkel
ui-theme-outdoor = Draußen
ui-on-hand = Vorhanden
ui-to-buy = Zu kaufen
ui-price-on-request = Preis auf Anfrage
ui-total = Summe
ui-quantity = Menge
ui-price = Preis
ui-work-time = Werkstattzeit
ui-part-numbers = Teilenummern
ui-hole-patterns = Lochbilder
ui-margin = Reserve
ui-measure = Messwert eingeben
ui-checks = Was es klären würde
ui-remedies = Was helfen würde
ui-try-remedy = Ausprobieren
ui-cautions = Hinweise zur Sicherheit
ui-details = Einzelheiten
ui-for-shopper = Kurz
ui-for-workshop = Für die Werkstatt
ui-bare-machine = Maschine allein
ui-side-view = Seitenansicht
ui-plan-view = Draufsicht
ui-rear-view = Rückansicht
ui-loading-catalogue = Katalog wird geladen
ui-try-again = Erneut versuchen
ui-not-known = nicht bekannt
ui-copy-link = Link kopieren
ui-copied = Kopiert
ui-offline = Funktioniert ohne Netz
ui-new-version = Eine neue Version ist bereit. Sie startet beim Neuladen.
ui-catalogue-slow = Das Laden des Katalogs dauert lange.
ui-catalogue-missing = Der Katalog konnte nicht geladen werden.
ui-catalogue-broken = Der Katalog enthält Fehler und ist noch nicht nutzbar.
ui-storage-full = Auf dem Gerät ist kein Platz zum Speichern. Alles läuft weiter; zum Aufheben die Zusammenstellung exportieren.
ui-link-cut-off = Der Link ist abgeschnitten oder verändert. Bitte neu anfordern.
ui-link-newer = Der Link stammt von einer neueren Version. Seite neu laden, um sie zu erhalten.
ui-link-not-ours = Diese Adresse enthält keine Zusammenstellung.

ui-not-in-catalogue = { $id } ist nicht in diesem Katalog
ui-options = { $count ->
    [one] { $count } Auswahl
   *[other] { $count } zur Auswahl
}
ui-open-checks = { $count ->
    [one] { $count } Prüfung offen
   *[other] { $count } Prüfungen offen
}
ui-against-bare = { $change } gegenüber der Maschine allein
ui-reaches = Bestes noch erreichbares Ergebnis: { $verdict }
ui-comes-with = Kommt mit { $item }

ui-verdict-open = Noch offen
    .meaning = Mit dem beginnen, was da ist: Maschine, Rahmen, Sitz oder Anbaugerät.
ui-so-far = Bisher spricht nichts dagegen. Die übrigen Schritte sind noch offen.
ui-item-list = Stückliste
ui-steps = Schritte
ui-settings = Einstellungen
ui-views = Ansichten
ui-view-fit = Passung
ui-view-parts = Teile
ui-view-loading = Verladen
ui-view-weight = Gewicht
ui-view-digging = Graben
ui-view-site = Einsatzort
ui-look-from = Blick von
ui-look-side = Seite
ui-look-plan = Oben
ui-drawing = Zeichnung
ui-drawing-none = Maschine, Rahmen, Sitz oder Anbaugerät wählen. Hier entsteht die Zeichnung im Maßstab.
ui-short-length = Länge
ui-short-width = Breite
ui-short-height = Höhe
ui-short-ground-clearance = Bodenfreiheit
ui-short-departure = Böschung hinten
ui-short-mass = Masse
ui-short-front-load = Vorderachse
ui-theme-system = Wie das Gerät
ui-sort-name = Name
ui-nothing-found = Dazu wurde nichts gefunden.
ui-take-out = Herausnehmen
ui-details-none = Was woran passt und was daraus folgt, steht hier, sobald zwei Dinge gewählt sind, die aneinanderkommen.
ui-remedies-none = Kein Adapter, Sitz, Rahmen und keine Arbeit aus diesem Katalog hilft.
ui-remedies-more = { $count ->
    [one] { $count } weitere
   *[other] { $count } weitere
}
ui-beyond-joints = Über die Verbindungen hinaus
ui-no-part-number = Teilenummer nicht bekannt
ui-forget = Vergessen
ui-measure-what = Was gemessen wurde
ui-measure-value = Wert
ui-measure-tool = Gemessen mit
ui-measure-enter = Eintragen
ui-measure-wrong = Bitte eine Länge eingeben, etwa 412,5 oder 41,2 cm.
ui-item = Posten
ui-link-missing = Nicht alles aus dem Link steht in diesem Katalog. Der Rest ist geöffnet.
ui-catalogue-no-address = Es ist kein Katalog genannt. Das Element braucht ein Attribut catalogue.
ui-catalogue-newer = Der Katalog hat ein neueres Format, als diese Version liest. Die Seite neu laden, um die neue Version zu holen.
ui-catalogue-kept = Der bisherige Katalog bleibt in Gebrauch.
ui-more-problems = { $count ->
    [one] und { $count } weiterer Fehler
   *[other] und { $count } weitere Fehler
}
ui-standing = Stand

ui-incomplete = Noch sind nicht alle vier Schritte beantwortet

ui-also = Außerdem dabei

ui-failed = In diesem Widget ist etwas schiefgegangen
    .meaning = Die Auswahl steht in der Adresse. Die Seite neu laden, dann geht es weiter.
ui-reload = Neu laden
