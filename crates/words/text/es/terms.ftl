verdict-bolts-up = Se monta
    .meaning = Se monta y se puede trabajar tal como está.
verdict-bolts-up-with-work = Se monta con adaptación
    .meaning = Se monta una vez puestas las piezas o hechos los trabajos que se indican.
verdict-check-first = Comprobar antes
    .meaning = Hay que mirar o medir algo antes de poder decirlo.
verdict-wont-mount = No se monta
    .meaning = De esta forma no se puede montar, o no se debe trabajar.

question-fit = Montaje
question-work = Trabajo
question-travel = Transporte
question-site = Lugar
question-open = aún sin decidir
question-in-order = { $count ->
    [one] { $count } punto correcto
   *[other] { $count } puntos correctos
}
question-tightest = { $tightest } ({ $count })
headline-open = Aún sin decidir
headline-at-best = En el mejor caso: { $verdict }

fit-yes = Se monta
fit-with = { $what ->
    [none] Se monta con adaptación
   *[other] Se monta con adaptación: { $what }
}
fit-check = Comprobar antes
fit-no = No se monta
work-yes = Apto para trabajar
work-with = { $what ->
    [none] Apto para trabajar con cambios
   *[other] Apto para trabajar con { $what }
}
work-check = Comprobar antes
work-no = No apto para trabajar
travel-yes = Se puede cargar
travel-with = { $what ->
    [none] Se puede cargar con cambios
   *[other] Se puede cargar con { $what }
}
travel-check = Comprobar antes
travel-no = No se puede cargar
site-yes = Entra
site-with = { $what ->
    [none] Entra con cambios
   *[other] Entra con { $what }
}
site-check = Comprobar antes
site-no = No entra

finding-in-order = Correcto
finding-with-work = Por hacer
finding-check = Comprobar antes
finding-no = No sirve

standing-listed = En la guía
    .meaning = La guía del fabricante incluye este conjunto.
standing-off-guide = No está en la guía
    .meaning = La guía del fabricante no incluye este conjunto. El resultado se ha deducido aquí de piezas y medidas.

grade-listed = guía
    .meaning = En la guía del fabricante figuran juntos.
grade-same-part = misma pieza
    .meaning = La misma referencia hace la unión en un conjunto de la guía.
grade-replaced-part = pieza sustituida
    .meaning = Un registro de sustitución enlaza la pieza con otra de un conjunto de la guía.
grade-measured = medido
    .meaning = Se basa en lo medido en la unidad.
grade-drawing = plano
    .meaning = Se basa en planos o documentación, no en la propia unidad.
grade-none = sin datos
    .meaning = Todavía no se sabe nada.

role-axle-anchor = anclaje del eje
role-front-anchor = anclaje delantero
role-rack = portaimplementos
role-hitch = enganche de tres puntos
role-seat-deck = plataforma del asiento
role-power-take-off = toma de fuerza
role-pressure = línea de presión
role-return = línea de retorno
role-case-drain = línea de drenaje
role-wiring = cableado

kind-machine = máquina
kind-frame = bastidor
kind-seat = asiento
kind-implement = implemento
kind-adapter = adaptador
kind-equipment = equipamiento

tool-caliper = calibre
tool-tape = cinta métrica
tool-photograph = foto

caution-planning-aid = Fit-up es una ayuda para planificar. Los manuales del fabricante, las cargas admisibles, la ley local y el criterio de un taller cualificado van primero.
    .title = Ayuda para planificar
caution-arm-on-hitch = Un brazo retroexcavador (retro) solo en el enganche de tres puntos, sin bastidor, puede salir empujado hacia arriba y caer sobre el operador. No excave así. Necesita un bastidor o el tirante del fabricante; el manual dice cuál de los dos.
    .title = Retro en el enganche
caution-roll-over-bar-up = Trabaje con el arco antivuelco levantado y el cinturón puesto. Pliegue el arco solo para pasar bajo algo, transportar o guardar, según permita el manual de la máquina, y levántelo enseguida. Con el arco plegado no se ponga el cinturón.
    .title = Arco antivuelco levantado
caution-drilling-or-welding = Taladrar o soldar un bastidor, una estructura antivuelco o la propia máquina (cárter del eje, caja de cambios, cabina) es decisión del fabricante o de un ingeniero. Pregunte antes de taladrar o soldar.
    .title = Taladrar y soldar
caution-light-front-axle = Con un eje delantero demasiado ligero no se dirige ni se frena con seguridad. Siga el manual de la máquina sobre lastre y cargas máximas por eje.
    .title = Eje delantero ligero
caution-hydraulic-pressure = El aceite a presión puede penetrar en la piel. No busque nunca fugas con la mano; una herida, por pequeña que sea, necesita un médico enseguida. Pare el motor, baje todo y descargue la presión antes de tocar un acoplador.
    .title = Presión hidráulica
caution-raised-parts = No trabaje bajo piezas levantadas que solo sujeta la hidráulica. Apuntálelas como indica el manual.
    .title = Piezas levantadas
caution-slopes = Un ángulo de vuelco estático no es una pendiente segura de trabajo. Baches, frenadas, giros y una carga levantada vuelcan la máquina mucho antes; valen los límites del manual.
    .title = Pendientes
caution-excavations = Antes de excavar haga localizar cables y tuberías enterrados. Las paredes de la zanja deben entibarse o ataluzarse según las normas locales.
    .title = Excavación
caution-loading-ramps = Las rampas deben tener carga admisible suficiente para la máquina con su implemento, estar fijadas al remolque y secas. Siga los manuales de las rampas y del remolque.
    .title = Rampas de carga
caution-tie-down = Amarre la máquina con cadenas o cintas de carga de trabajo suficiente en los puntos que indica su manual, en las cuatro esquinas si lo pide. La ley local fija el número y la resistencia mínimos.
    .title = Amarre
caution-road-limits = Los límites de masa, anchura, longitud y velocidad en carretera varían según el lugar. Compruebe los locales antes de circular.
    .title = Límites en carretera
caution-rotating-shafts = Un eje que gira atrapa ropa, pelo y miembros en un instante. Haga funcionar la transmisión cardán y el implemento solo con todas las protecciones puestas y enteras. Pare el motor, quite la llave y espere a que todo esté parado antes de acercarse.
    .title = Ejes giratorios y protecciones
caution-hoisting = Mientras el implemento cuelga de un aparato de elevación, nadie se pone debajo ni al lado. Use aparato y eslingas con carga suficiente para su peso, en los puntos de elevación que indica su manual. Apuntale implemento y máquina antes de meter la mano entre ellos y antes de poner un bulón o un tornillo.
    .title = Elevar y apuntalar

shape-rear-tyre = neumático trasero
shape-front-tyre = neumático delantero
