same-missing = No consta de { $item }: { $missing-name }.
    .workshop = { $item }: no consta { $missing-name }. Queda abierto por ello: { $areas-name }.

area-loads = cargas por eje
area-lift = elevación
area-hydraulics = hidráulica
area-drive = accionamiento
area-operator = asiento
area-wiring = cableado
area-loading = carga
area-site = lugar
area-digging = excavación
area-clearance = holguras
area-build = el conjunto

evidence-listed = { $row ->
    [none] Prueba: ofrecidos juntos por el fabricante, fuera de la guía.
   *[other] Prueba: guía, fila { $row }.
}
evidence-same-part = Prueba: misma pieza que en { $witness } con { $witness-other }, de la guía{ $row ->
    [none] .
   *[other] {""} (fila { $row }).
}
evidence-replaced-part = Prueba: pieza sustituida, a partir de { $witness } con { $witness-other }, de la guía{ $row ->
    [none] .
   *[other] {""} (fila { $row }).
}
evidence-measured = Prueba: medido con { $tools-name }.
evidence-drawing = Prueba: plano.
evidence-none = Prueba: ninguna todavía.
evidence-stated = Prueba: documentación del fabricante.
evidence-looked = Prueba: mirado en la unidad.

explain-rest = { $count ->
    [one] { $count } punto más está en orden.
   *[other] { $count } puntos más están en orden.
}
explain-nothing = Aún no se ha elegido nada que se pueda juzgar.

chain-same = { $item } lleva { $parts }, lo mismo que { $stands-for }.
chain-replaced = { $item } lleva { $parts } y vale por { $stands-for }:
step-forward = { $old } fue sustituida por { $new } { $ways ->
    [both] (en ambos sentidos).
   *[forward] (solo hacia delante: la nueva sirve por la vieja).
}
step-backward = { $new } sustituyó a { $old }, y según el registro la vieja también sirve por la nueva (en ambos sentidos).
joint-parts = Piezas: { $a-parts } en { $a }; { $b-parts } en { $b }.
no-parts = no se sabe

check-compare-parts = Comparar las referencias de { $a-port } en { $a } y de { $b-port } en { $b }.
check-measure = Medir en { $port } de { $item }: { $value-name }{ $within ->
    [none] .
   *[other] , a ±{ $within } { $tool ->
        [tape] (basta una cinta métrica).
        [caliper] (con calibre).
       *[finer] (más fino que un calibre).
    }
}
check-look = Mirar si { $item } tiene esto: { $what }.
check-find-out = Averiguar de { $item }: { $value-name }.
check-ask = Preguntar al fabricante o al concesionario por { $a } con { $b }.
check-stakes = Podría mover el resultado de { $best } a { $worst }.

point-value = { $value-name } (punto { $number })
hole-value = agujero { $number }, { $value-name }
hole-named = agujero { $number } de { $port }

value-at-x = posición a lo largo de la máquina
value-at-z = posición en altura
value-ballast-place = sitio para lastre
value-beaver-angle = ángulo de la cola inclinada
value-bolt = diámetro del tornillo
value-bore = agujero
value-category = categoría de enganche
value-centre-of-gravity = centro de gravedad
value-console = posición de las palancas
value-coupling = distancia del enganche al eje
value-deck-height = altura de la plataforma
value-deck-length = longitud de la plataforma
value-deck-rear = borde trasero de la plataforma
value-deck-width = anchura de la plataforma
value-diameter = diámetro
value-drop = distancia al pasador
value-flow = caudal
value-front-axle = sujeción del eje delantero
value-front-axle-load = carga del eje delantero
value-front-bore = agujero delantero
value-gap = hueco
value-gate-width = anchura de la puerta
value-height = altura
value-hitch-stay = si el fabricante ofrece un tirante para el enganche
value-holes = agujeros
value-index-point = punto índice del asiento
value-latch = diámetro del pasador
value-lift = capacidad de elevación
value-link-mass = masas de pluma, balancín y cazo
value-lower-pin = bulón inferior
value-mass = masa
value-mast = altura del mástil
value-nose-load = margen de la carga sobre el enganche
value-outlets = salidas hidráulicas
value-outline = contorno
value-overall-radius = radio exterior del neumático
value-path-width = anchura del camino
value-pose = posición de la unión
value-power = potencia en la toma de fuerza
value-power-beyond = salida de presión continua
value-presence-switch = interruptor de presencia
value-pressure = presión hidráulica
value-ramp = rampa
value-rated-load = carga admisible por eje
value-rated-total = masa total admisible
value-reach = alcance
value-rear-axle-load = carga del eje trasero
value-room-behind = sitio necesario tras el asiento
value-rotation = sentido de giro
value-serials = números de serie
value-setback = retranqueo
value-shaft-type = tipo de árbol
value-size = tamaño
value-span = separación de los puntos inferiores
value-speed = velocidad de giro
value-spread = separación
value-standard = norma
value-static-loaded-radius = radio estático bajo carga del neumático
value-stations = puesto abierto o cabina
value-supplier = con qué viene
value-tolerance = tolerancia
value-track = vía
value-turning-radius = radio de giro
value-tyre-width = anchura del neumático
value-u = cota a lo ancho
value-upper-pin = bulón superior
value-v = cota a lo alto
value-wheelbase = distancia entre ejes
value-width = anchura

port-kind-bar = barra
port-kind-bolt-pattern = agujeros
port-kind-clevis = horquilla
port-kind-electric = conector
port-kind-hook = ganchos
port-kind-hook-rack = ganchos
port-kind-lug = oreja
port-kind-pins = bulones
port-kind-power-take-off = toma de fuerza
port-kind-seat-base = pie del asiento
port-kind-three-point = enganche de tres puntos
port-kind-coupler = acoplador hidráulico

rotation-clockwise = a derechas
rotation-counter-clockwise = a izquierdas
station-open = abierto
station-cab = cabina
axle-front = delantero
axle-rear = trasero

footprint-length = Longitud total
footprint-width = Anchura total
footprint-height = Altura total
footprint-wheelbase = Distancia entre ejes
footprint-rear-overhang = Voladizo trasero
footprint-front-overhang = Voladizo delantero
footprint-ground-clearance = Altura libre
footprint-departure = Ángulo de salida
footprint-approach = Ángulo de entrada
footprint-breakover = Ángulo ventral
footprint-mass = Masa con operador
footprint-front-load = Carga del eje delantero
footprint-rear-load = Carga del eje trasero
footprint-to-buy = Por comprar
footprint-work = Tiempo de taller
footprint-items-to-buy = Artículos por comprar

remedy-adapter = Poner { $item } en medio
remedy-seat = Tomar { $item } como asiento
remedy-frame = Tomar { $item } como bastidor
remedy-hitch = Colgarlo del enganche de tres puntos
remedy-drill = Taladrar los agujeros que faltan en { $port } de { $item }
remedy-open-up = Agrandar { $by } los agujeros en { $port } de { $item }
remedy-front-seat-forward = Plegar hacia delante el asiento del operador
remedy-fold-roll-over-bar = Plegar el arco antivuelco, solo para transportar y guardar
remedy-take-off = Quitar: { $what }
remedy-put-on = Poner: { $what }
remedy-ramps = Usar rampas de { $length }
remedy-gateway = Suponer una puerta de { $width }
remedy-path = Suponer un camino de { $width }
remedy-ballast = Colgar { $mass } de lastre a { $x } por delante del eje trasero
remedy-ballast-behind = Colgar { $mass } de lastre a { $x } por detrás del eje trasero
remedy-leads-to = Entonces: { $verdict }
remedy-costs = { $money } por comprar
remedy-saves = ahorra { $money }
remedy-price-open = precio a consultar
remedy-takes = { $work } de trabajo
remedy-length = { $length } de longitud
remedy-departure = { $change } de ángulo de salida
remedy-settles = Resuelve: { $findings }
remedy-leaves = Queda por resolver: { $findings }
remedy-same-price = nada más que comprar
remedy-price-elsewhere = su precio no está en este catálogo
remedy-same-size = longitud y ángulo de salida sin cambio
remedy-with-first = Con la primera propuesta
remedy-as-before = { $value }, sin cambio

come-by-buy = por comprar
come-by-on-hand = ya disponible
come-by-elsewhere = no está en este catálogo
come-by-comes-with = viene con { $item }
