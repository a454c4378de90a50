### What the page says by itself, without the engine. Every key begins with "ui-", and no text has a value in it.

ui-start-says = Fit-up zeigt, ob ein Heckgerät an einen Kompakttraktor passt, was dafür nötig ist und wie sicher das ist.
ui-language-unspoken = Die Texte ließen sich nicht laden. Es wird Englisch angezeigt.
ui-engine-restarted = Die Berechnung war stehen geblieben. Sie wurde mit derselben Auswahl neu begonnen.
ui-engine-here = Die Berechnung läuft in der Seite selbst, weil der Browser ihr keinen eigenen Platz gibt. Die Seite kann zeitweise stocken.
ui-engine-missing = Das Rechenprogramm ließ sich nicht laden.
ui-engine-cut-off = Das Rechenprogramm kam beschädigt oder abgeschnitten an.
ui-engine-other-version = Das Rechenprogramm hat eine andere Version als diese Seite. Laden Sie die Seite neu.
ui-engine-stopped = Die Berechnung ist dreimal hintereinander stehen geblieben.
ui-engine-kept = Angezeigt wird der Stand davor. Ihre Auswahl bleibt in diesem Link erhalten:
ui-stories = Beispiele aus dem Vorführkatalog
ui-story-listed = Eine Zusammenstellung aus der Liste des Herstellers: Sie passt.
ui-story-measured = Ein gebrauchter Baggerarm ohne Papiere: mit dem Messschieber gemessen und geklärt.
ui-story-two-holes = Eine Sitzplatte, in die zwei Löcher zu bohren sind.
ui-update = Eine neue Fassung von Fit-up ist da. Ihre Auswahl bleibt erhalten.
ui-update-take = Laden
ui-copy-kept = Das Netz antwortet nicht. Der Katalog ist die Kopie auf diesem Gerät, Stand:
ui-idle = Sind Sie noch da?
ui-idle-says = Gleich beginnt alles neu für den nächsten Besucher.
ui-idle-stay = Weiter
