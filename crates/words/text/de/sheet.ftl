### Das Passblatt. Jeder Schlüssel beginnt mit „ui-“.

ui-fit-sheet = Passblatt
ui-print-sheet = Passblatt drucken
ui-date = Datum
ui-catalogue = Katalog
ui-no-trailer = Kein Anhänger gewählt, daher nicht betrachtet.
ui-no-site = Kein Einsatzort gewählt, daher nicht betrachtet.
ui-joints = Verbindungen
ui-joint = Verbindung
ui-carries = Trägt
ui-carried = Wird getragen
ui-evidence = Beleg
ui-observed = An den Geräten gemessen und abgelesen
ui-dimension = Maß
ui-measured = Gemessen
ui-serial = Seriennummer
ui-step = Schritt
ui-hours = Stunden
ui-parts-all = Teile, zu kaufen und vorhanden
ui-template = Schablone für die zu bohrenden Löcher
ui-template-of = Zu bohren: { $item }, { $port }, { $count ->
    [one] { $count } Loch, mit Volllinie gezeichnet
   *[other] { $count } Löcher, mit Volllinie gezeichnet
}. Gestrichelte Löcher sind schon da. Blick auf die Fläche, die an { $other } anliegt. Vor dem Ankörnen an den vorhandenen Löchern ausrichten.
ui-template-joined = Die { $count } Blätter am Rand ausschneiden und zusammenlegen: Die Zahlen nennen Reihe und Spalte.
ui-template-bar = Die Strecke ist 100 mm lang: vor Gebrauch mit dem Maßstab prüfen. Mit 100 % drucken, nicht an die Seite angepasst.
ui-signed = Gesehen und einverstanden
    .meaning = Dieses Blatt sagt, was an seinem Datum bekannt war. Es ist ein Plan, keine Freigabe der Arbeit.
ui-sign-place = Ort und Datum
ui-sign-name = Name
ui-sign = Unterschrift
