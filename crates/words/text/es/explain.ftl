same-missing = Faltan datos de { $item }: { $missing-name }.{ $risk ->
    [yes] {" "}No conecte ni levante el implemento ni conduzca con él antes de conocerlos.
   *[no] {""}
}
    .workshop = Faltan datos de { $item }: { $missing-name }. Sin ellos no se puede responder: { $areas-name }.{ $risk ->
        [yes] {" "}No conectar ni levantar el implemento ni conducir con él antes de conocerlos.
       *[no] {""}
    }

area-loads = cargas por eje
area-lift = elevación
area-hydraulics = hidráulica
area-drive = accionamiento
area-operator = asiento
area-wiring = cableado
area-loading = transporte
area-site = lugar
area-digging = excavación
area-clearance = distancias
area-build = todo el montaje

evidence-listed = { $row ->
    [none] Fundamento: el fabricante los da juntos, fuera de la guía.
   *[other] Fundamento: guía, fila { $row }.
}
evidence-same-part = Fundamento: misma pieza que en el conjunto de la guía «{ $witness }» + «{ $witness-other }»{ $row ->
    [none] .
   *[other] {""} (fila { $row }).
}
evidence-replaced-part = Fundamento: pieza sustituida, a partir del conjunto de la guía «{ $witness }» + «{ $witness-other }»{ $row ->
    [none] .
   *[other] {""} (fila { $row }).
}
evidence-measured = Fundamento: medido con { $tools-name }.
evidence-drawing = Fundamento: plano.
evidence-none = Fundamento: ninguno todavía.
evidence-stated = Fundamento: documentación del fabricante.
evidence-looked = Fundamento: comprobado en la unidad.
evidence-read = Leído en la unidad: { $item }, { $port }: { $parts }{ $by ->
    [none] {""}
   *[other] , por { $by }
}{ $when ->
    [none] .
   *[other] , { $when }.
}

explain-rest = { $count ->
    [one] { $count } punto más es correcto.
   *[other] { $count } puntos más son correctos.
}
explain-nothing = Aún no se ha elegido nada que se pueda juzgar.

chain-same = { $item } lleva en esta unión { $parts }, lo mismo que { $stands-for }.
chain-replaced = { $item } lleva en esta unión { $parts } y por eso cuenta como { $stands-for }:
step-forward = { $new } sustituye a { $old } { $ways ->
    [both] (cada una vale en lugar de la otra).
   *[forward] (la nueva vale en lugar de la vieja, no al revés).
}
step-backward = { $new } sustituye a { $old }, y según el registro cada una vale en lugar de la otra.
joint-parts = Piezas: { $a-parts } en { $a }; { $b-parts } en { $b }.
no-parts = no se sabe

check-compare-parts = Comparar las referencias: { $a }, { $a-port }, con { $b }, { $b-port }.
check-measure = Medir: { $item }, { $port }, { $value-name }{ $within ->
    [none] .
   *[other] , a ±{ $within } { $tool ->
        [tape] (basta una cinta métrica).
        [caliper] (con calibre).
       *[finer] (más fino que un calibre).
    }
}
check-measure-all = Medir todo esto: { $item }, { $port }: { $value-name }{ $within ->
    [none] .
   *[other] , a ±{ $within } { $tool ->
        [tape] (basta una cinta métrica).
        [caliper] (con calibre).
       *[finer] (más fino que un calibre).
    }
}
check-read-parts = Leer las referencias: { $item }, { $port }. Cualquiera de estas lo probaría: { $numbers } (en la lista con { $witness }).
check-read-off = Averiguar: { $item }, { $port }, { $value-name }.
check-look = Mirar si está: { $item }, { $what }.
check-find-out = Averiguar: { $item }, { $value-name }.
check-ask = Preguntar al fabricante o al concesionario: { $a } con { $b }.
check-gap = Medir la holgura: { $a }, { $a-shape }, a { $b }, { $b-shape }, con ambos en su sitio; se desean al menos { $wanted }.
check-stakes = Podría cambiar { $question } de «{ $now }» a «{ $best }»{ $worst ->
    [none] .
   *[other] {" "}o a «{ $worst }».
}
quoted = «{ $title }»

point-value = { $value-name } (punto { $number })
hole-value = agujero { $number }, { $value-name }
hole-to-hole = agujero { $a } a agujero { $b }, de centro a centro
point-to-point = punto { $a } a punto { $b }, de centro a centro
hole-named = { $port }, agujero { $number }

value-across = distancia lateral
value-at-x = posición a lo largo de la máquina
value-at-z = posición en altura
value-ballast-place = sitio para lastre
value-beaver-angle = ángulo de la cola inclinada
value-bolt = diámetro del tornillo
value-bore = alojamiento del bulón
value-cab-rear = pared trasera de la cabina
value-category = categoría de enganche
value-centre-of-gravity = centro de gravedad
value-console = posición de las palancas
value-coupling = distancia de la lanza al eje
value-deck-height = altura de la plataforma
value-deck-length = longitud de la plataforma
value-deck-rear = borde trasero de la plataforma
value-deck-width = anchura de la plataforma
value-diameter = diámetro
value-drop = del centro del gancho al pasador
value-edge = distancia de los agujeros exteriores al borde
value-flow = caudal
value-from-axle-along = del primer agujero o bulón del anclaje del eje al primero de aquí, a lo largo de la máquina
value-from-axle-height = altura del primer agujero o bulón de aquí sobre el primero del anclaje del eje
value-front-axle = eje delantero fijo u oscilante
value-front-axle-load = carga del eje delantero
value-front-bore = alojamiento delantero
value-gap = abertura de la horquilla
value-gate-height = altura de la puerta
value-gate-width = anchura de la puerta
value-greatest-flow = caudal máximo admisible
value-greatest-power = potencia máxima admisible en la toma de fuerza
value-greatest-pressure = presión hidráulica máxima admisible
value-ground-load = carga por eje máxima que soporta el suelo
value-height = altura
value-hitch-stay = si el fabricante ofrece un tirante para el enganche de tres puntos
value-holes = agujeros
value-hydraulic-need = lo que necesita del sistema hidráulico
value-index-point = punto índice del asiento
value-latch = diámetro del pasador
value-least-flow = caudal mínimo necesario
value-least-power = potencia mínima necesaria en la toma de fuerza
value-least-pressure = presión hidráulica mínima necesaria
value-lift = capacidad de elevación del enganche
value-link-mass = masas de pluma, balancín y cazo
value-lower-pin = bulón de los brazos inferiores
value-mass = masa
value-mast = altura del mástil
value-metal = metal de la placa
value-nose-load = carga vertical admisible en la lanza
value-outlets = salidas hidráulicas
value-outline = contorno
value-overall-radius = radio exterior del neumático
value-own-seat = asiento propio
value-pair-width = ancho sobre las caras o entre las placas laterales
value-path-turn = si el camino gira en ángulo recto
value-path-width = anchura del camino
value-plate = espesor de la placa
value-pose = posición de la unión
value-power = potencia en la toma de fuerza
value-power-beyond = power beyond (toma directa de la bomba)
value-presence-switch = interruptor de asiento
value-pressure = presión hidráulica
value-ramp = rampa
value-rated-axle = carga admisible por eje del remolque
value-rated-load = carga admisible por eje
value-rated-nose = carga vertical máxima del enganche
value-rated-total = masa total admisible
value-reach = alcance
value-rear-axle-load = carga del eje trasero
value-roll-over-bar = arco antivuelco
value-room-behind = sitio necesario tras el asiento
value-rotation = sentido de giro de la TDF
value-seat-off = si el asiento se quita
value-serials = números de serie
value-setback = distancia del gancho al plano de apoyo
value-shaft-type = tipo de eje de la TDF
value-size = tamaño
value-span = separación de los bulones inferiores
value-speed = régimen de la TDF
value-spread = separación izquierda-derecha
value-standard = norma
value-static-loaded-radius = radio estático bajo carga del neumático
value-stations = puesto abierto o cabina
value-supplier = con qué viene
value-swivel-radius = radio de giro del asiento
value-thread = rosca
value-tolerance = tolerancia
value-track = ancho de vía
value-transport-width = anchura de transporte
value-turning-radius = radio de giro
value-tyre-rating = carga admisible de un neumático
value-tyre-width = anchura del neumático
value-u = posición a lo ancho, desde el cero del plano
value-upper-pin = bulón del tercer punto
value-v = posición a lo alto, desde el cero del plano
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

rotation-clockwise = sentido horario
rotation-counter-clockwise = sentido antihorario
station-open = abierto
station-cab = cabina
axle-front = delantero
axle-rear = trasero
bearer-front-axle = Eje delantero
bearer-front-tyre = Un neumático delantero
bearer-hitch = Enganche
bearer-rear-axle = Eje trasero
bearer-rear-tyre = Un neumático trasero
limit-de-stvzo-22 = StVZO, artículo 22 (4), Alemania
limit-eu-96-53 = Directiva 96/53/CE de la UE
limit-us-23-cfr-658 = 23 CFR 658.15 de los Estados Unidos
limit-us-49-cfr-393-87 = 49 CFR 393.87 de los Estados Unidos, desde donde hay que señalizarla

footprint-length = Longitud total
footprint-width = Anchura total
footprint-height = Altura total
footprint-wheelbase = Distancia entre ejes
footprint-rear-overhang = Voladizo trasero
footprint-front-overhang = Voladizo delantero
footprint-ground-clearance = Despeje del suelo
footprint-departure = Ángulo de salida
footprint-approach = Ángulo de entrada
footprint-breakover = Ángulo ventral
footprint-mass = Masa con operador
footprint-front-load = Carga del eje delantero
footprint-rear-load = Carga del eje trasero
footprint-to-buy = Por comprar
footprint-work = Tiempo de taller
footprint-items-to-buy = Artículos por comprar

remedy-adapter = Poner en medio: { $item }
remedy-seat = Usar { $item } como asiento
remedy-frame = Usar { $item } como bastidor
remedy-hitch = Colgarlo del enganche de tres puntos
remedy-drill = Mandar taladrar los agujeros que faltan, si el fabricante está de acuerdo: { $item }, { $port }
remedy-open-up = Mandar ampliar los agujeros en { $by }, si el fabricante está de acuerdo: { $item }, { $port }
remedy-driver-seat = { $state ->
    [folded] Plegar hacia delante el asiento del operador para trabajar
    [slid] Correr hacia delante el asiento del operador para trabajar
    [turned] Girar el asiento del operador para trabajar
    [off] Quitar el asiento del operador para trabajar
   *[driving] Dejar el asiento del operador como está
}
remedy-rear-seat = { $state ->
    [folded] Plegar el asiento trasero para conducir
    [slid] Correr hacia delante el asiento trasero para conducir
    [turned] Girar el asiento trasero para conducir
    [off] Quitar el asiento trasero para conducir
   *[driving] Dejar el asiento trasero como está
}
remedy-fold-roll-over-bar = Plegar el arco antivuelco solo para pasar, transportar o guardar, nunca para trabajar; levantarlo enseguida
remedy-take-off = Quitar: { $what }
remedy-put-on = Poner: { $what }
remedy-ramps = Usar rampas de { $length }
remedy-gateway = Usar una entrada de al menos { $width } de ancho
remedy-path = Usar un camino de al menos { $width } de ancho
remedy-ballast = Colocar { $mass } de lastre a { $x } por delante del eje trasero
remedy-ballast-behind = Colocar { $mass } de lastre a { $x } por detrás del eje trasero
strip-title = Qué se quita, se mueve y se pone
strip-stays = Dejar puesto: { $what }
strip-own-seat = Quitar el asiento propio: { $item }
strip-fit = Montar: { $item }
strip-hours-unknown = horas sin indicar
strip-at-least = al menos { $work }
bolts-title = Tornillos
bolts-joint = { $carrier } + { $carried } ({ $role })
bolts-number = { $number } × { $thread }
bolts-thread = { $thread }, cuántos: véase el manual
bolts-number-alone = { $number } tornillos, cuáles: véase el manual
bolts-as-in-manual = qué tornillos y cuántos: véase el manual
bolts-on-both-sides = otros tantos en el otro lado de la máquina
bolts-length = { $length } de largo para { $grip } de chapa
bolts-grip = para { $grip } de chapa, largo: véase el manual
bolts-length-unknown = largo: véase el manual
bolts-nuts = con una tuerca cada uno
bolts-tapped = en la rosca de { $item }
bolts-washers = { $count ->
    [one] { $count } arandela cada uno
   *[other] { $count } arandelas cada uno
}
bolts-plate-washer = una arandela gruesa y ancha cada uno sobre { $item }
bolts-class = clase { $class }
bolts-class-unknown = clase: véase el manual
bolts-torque = apretar a { $torque }
bolts-torque-unknown = par de apriete: véase el manual
bolts-class-and-torque-unknown = clase y par de apriete: véase el manual
bolts-drill = { $count ->
    [one] Taladrar { $count } agujero de { $diameter } en { $item }, «{ $port }»
   *[other] Taladrar { $count } agujeros de { $diameter } en { $item }, «{ $port }»
}
bolts-open = { $count ->
    [one] Ampliar { $count } agujero de { $item }, «{ $port }», a { $diameter }
   *[other] Ampliar { $count } agujeros de { $item }, «{ $port }», a { $diameter }
}
bolts-edge = { $edge } del centro al borde de la chapa, hacen falta al menos { $least }
bolts-edge-unknown = compruebe que del centro al borde de la chapa queden al menos { $least }
sets-unbeaten = nada lo supera
sets-items-to-buy = Piezas por comprar
sets-all-kept = Conserva las cuatro elecciones: este es el único conjunto. Deje una abierta para ver qué más se puede montar.
sets-says = Los mejores conjuntos completos, primero el mejor resultado.
sets-none = Ningún conjunto completo se puede montar.
sets-not-all = Hay demasiados conjuntos para mirarlos todos; estos son los mejores de los mirados.
lists-read = { $count ->
    [one] { $count } línea leída
   *[other] { $count } líneas leídas
}
lists-says = Elija o pegue dos listas de piezas. De cada conjunto se dice si es igual, sustituido o distinto, y qué se sigue para su unión.
lists-without-heading = Sin título
lists-same = igual
    .joint = Lo probado de una en esta unión vale para la otra.
lists-replaced-both-ways = números sustituidos, cada uno sirve por el otro
    .joint = Lo probado de una en esta unión vale para la otra.
lists-second-serves-for-first = la segunda lista tiene lo que sustituye piezas de la primera
    .joint = La segunda sirve donde sirve la primera. Al revés no está probado.
lists-first-serves-for-second = la primera lista tiene lo que sustituye piezas de la segunda
    .joint = La primera sirve donde sirve la segunda. Al revés no está probado.
lists-quantities-differ = los mismos números en otra cantidad
    .joint = Sin probar mientras no se sepa qué cantidad es la correcta.
lists-hardware-differs = solo difieren tornillos, tuercas o arandelas
    .joint = Las piezas que llevan la unión son iguales. Ponga los tornillos, tuercas y arandelas de la lista con la que está probada.
lists-differs = difiere
    .joint = Estas listas no prueban esta unión.
lists-only-first = solo en la primera lista
    .joint = Nada se sigue para esta unión: falta en la segunda lista.
lists-only-second = solo en la segunda lista
    .joint = Nada se sigue para esta unión: falta en la primera lista.
lists-line-only-first = { $first }: { $of-first } en la primera lista, ninguna en la segunda
lists-line-only-second = { $second }: ninguna en la primera lista, { $of-second } en la segunda
lists-line-quantity = { $first }: { $of-first } en la primera lista, { $of-second } en la segunda
lists-line-second-replaces = { $second } sustituye a { $first }, no al revés
lists-line-second-replaces-both-ways = { $second } sustituye a { $first }, y al revés
lists-line-first-replaces = { $first } sustituye a { $second }, no al revés
lists-line-first-replaces-both-ways = { $first } sustituye a { $second }, y al revés
lists-line-written-otherwise = { $first } figura como { $second } en la segunda lista
lists-line-same = { $of-first } × { $first } en ambas
lists-fault = Línea { $line }: { $what }.
lists-fault-no-number = no hay número de pieza en «{ $text }»; escriba uno o quite la línea
lists-fault-quantity = «{ $text }» no es una cantidad; escriba un número entero desde 1
lists-fault-doubled = { $text } está también en la línea { $other }; se suman las cantidades
lists-fault-no-list = esto no es una lista de piezas; ponga líneas con número de pieza y cantidad
lists-fault-too-long = la lista tiene más de { $other } líneas; divídala
lists-fault-not-text = esto no es texto; guarde la lista como CSV en UTF-8
remedy-leads-to = Entonces: { $verdict }
answer-to = { $answer } ({ $question })
remedy-costs = { $money } más por comprar
remedy-saves = ahorra { $money }
remedy-price-open = precio a consultar
remedy-takes = { $work } { $way ->
    [less] menos de trabajo
   *[more] más de trabajo
}
remedy-length = { $length } más { $way ->
    [less] corto
   *[more] largo
}
remedy-departure = ángulo de salida { $change } { $way ->
    [less] menor
   *[more] mayor
}
remedy-settles = Resuelve: { $findings }
remedy-leaves = Queda por resolver: { $findings }
remedy-same-price = nada más que comprar
remedy-price-elsewhere = su precio no está en este catálogo
remedy-same-size = longitud y ángulo de salida sin cambio
remedy-with-first = Con la primera propuesta
remedy-as-before = { $value }, sin cambio

total-at-least = al menos { $known }; { $open ->
    [one] { $open } precio sin datos
   *[other] { $open } precios sin datos
}
come-by-buy = por comprar
come-by-on-hand = disponible
come-by-elsewhere = no está en este catálogo
come-by-comes-with = viene con { $item }

date = { $day } de { $month } de { $year }
month-1 = enero
month-2 = febrero
month-3 = marzo
month-4 = abril
month-5 = mayo
month-6 = junio
month-7 = julio
month-8 = agosto
month-9 = septiembre
month-10 = octubre
month-11 = noviembre
month-12 = diciembre

labelled = { $label }: { $value }
clauses = { $first }; { $second }

file-clean = { $file }: sin errores
file-warned = { $file }: { $warnings ->
    [one] { $warnings } aviso
   *[other] { $warnings } avisos
}; el catálogo se puede usar
file-faulty = { $file }: { $errors ->
    [one] { $errors } error
   *[other] { $errors } errores
}, { $warnings ->
    [one] { $warnings } aviso
   *[other] { $warnings } avisos
}
file-unusable = { $errors ->
    [one] El catálogo tiene { $errors } error y no se puede usar; «{ $command }» lo muestra con su remedio.
   *[other] El catálogo tiene { $errors } errores y no se puede usar; «{ $command }» los muestra todos con su remedio.
}
file-error = error
file-warning = aviso
