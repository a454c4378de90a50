verdict-bolts-up = Passt
    .meaning = Lässt sich so anbauen, wie es ist.
verdict-bolts-up-with-work = Passt mit Arbeit
    .meaning = Lässt sich anbauen, sobald die genannten Teile montiert oder die genannten Arbeiten erledigt sind.
verdict-check-first = Erst prüfen
    .meaning = Bevor jemand es sagen kann, muss etwas angesehen oder gemessen werden.
verdict-wont-mount = Passt nicht
    .meaning = So lässt es sich nicht anbauen.

standing-listed = In der Herstellerliste
    .meaning = Die Herstellerliste führt diese Zusammenstellung.
standing-off-guide = Nicht in der Herstellerliste
    .meaning = Die Herstellerliste führt diese Zusammenstellung nicht. Das Ergebnis ist aus Teilen und Maßen erarbeitet.

grade-listed = Herstellerliste
    .meaning = Der Hersteller führt beide zusammen auf.
grade-same-part = gleiches Teil
    .meaning = Dieselbe Teilenummer trägt die Verbindung in einer Zusammenstellung, die der Hersteller aufführt.
grade-replaced-part = ersetztes Teil
    .meaning = Ein Ersatzvermerk verbindet das Teil mit einem aus einer Zusammenstellung, die der Hersteller aufführt.
grade-measured = gemessen
    .meaning = Beruht auf Messungen am Gerät.
grade-drawing = Zeichnung
    .meaning = Beruht auf Zeichnungen oder Unterlagen, nicht auf dem Gerät selbst.
grade-none = nichts
    .meaning = Noch ist nichts bekannt.

role-axle-anchor = Achsbefestigung
role-front-anchor = vordere Befestigung
role-rack = Geräteaufnahme
role-hitch = Dreipunktanbau
role-seat-deck = Sitzkonsole
role-power-take-off = Zapfwelle
role-pressure = Druckleitung
role-return = Rücklaufleitung
role-case-drain = Leckölleitung
role-wiring = Elektrik

kind-machine = Maschine
kind-frame = Rahmen
kind-seat = Sitz
kind-implement = Anbaugerät
kind-adapter = Adapter

tool-caliper = Messschieber
tool-tape = Bandmaß

caution-planning-aid = Fit-up ist eine Planungshilfe. Die Betriebsanleitungen des Herstellers, die zulässigen Lasten, das örtliche Recht und das Urteil einer Fachwerkstatt gehen vor.
    .title = Planungshilfe
caution-arm-on-hitch = Ein Baggerarm am bloßen Dreipunktanbau kann nach oben und gegen den Fahrer gedrückt werden. Er braucht einen Rahmen oder die Abstützung des Herstellers; welche, sagt dessen Anleitung.
    .title = Baggerarm am Dreipunktanbau
caution-roll-over-bar-up = Mit aufgestelltem Überrollbügel und angelegtem Gurt arbeiten. Ein Bügel, der geklappt werden muss, wird nur für Transport und Abstellen geklappt, soweit die Anleitung der Maschine es erlaubt.
    .title = Überrollbügel aufgestellt
caution-drilling-or-welding = Ob an einem Rahmen oder Überrollschutz gebohrt oder geschweißt werden darf, entscheidet der Hersteller oder ein Ingenieur. Vor dem ersten Loch fragen.
    .title = Bohren und Schweißen
caution-light-front-axle = Mit zu leichter Vorderachse lässt sich nicht sicher lenken und bremsen. Es gilt die Anleitung der Maschine zu Ballast und zulässigen Achslasten.
    .title = Leichte Vorderachse
caution-hydraulic-pressure = Hydrauliköl unter Druck kann in die Haut eindringen. Motor abstellen, alles absenken und Druck ablassen, bevor eine Kupplung angefasst wird.
    .title = Hydraulikdruck
caution-raised-parts = Nicht unter angehobenen Teilen arbeiten, die nur die Hydraulik hält. Abstützen, wie es die Anleitung zeigt.
    .title = Angehobene Teile
caution-slopes = Ein statischer Kippwinkel ist keine sichere Hangneigung. Unebenheiten, Bremsen, Kurven und gehobene Last kippen eine Maschine viel früher; es gelten die Grenzen der Anleitung.
    .title = Hänge
caution-excavations = Vor dem Graben Kabel und Leitungen im Boden orten lassen. Grabenwände sind nach den örtlichen Vorschriften zu sichern.
    .title = Graben
caution-loading-ramps = Rampen müssen für die Maschine zugelassen, am Anhänger befestigt und trocken sein. Es gelten die Anleitungen von Rampe und Anhänger.
    .title = Auffahrrampen
caution-tie-down = Die Maschine mit dafür zugelassenen Zurrmitteln an den Punkten sichern, die ihre Anleitung nennt. Mindestzahl und Festigkeit regelt das örtliche Recht.
    .title = Ladungssicherung
caution-road-limits = Grenzen für Masse, Breite, Länge und Tempo auf der Straße sind von Ort zu Ort verschieden. Vor der Fahrt die örtlichen prüfen.
    .title = Straßenverkehr

shape-rear-tyre = Hinterreifen
shape-front-tyre = Vorderreifen
