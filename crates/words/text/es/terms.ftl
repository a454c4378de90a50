verdict-bolts-up = Se monta
    .meaning = Se monta tal como está.
verdict-bolts-up-with-work = Se monta con trabajo
    .meaning = Se monta una vez puestas las piezas o hecho el trabajo que se indica.
verdict-check-first = Comprobar antes
    .meaning = Hay que mirar o medir algo antes de poder decirlo.
verdict-wont-mount = No se monta
    .meaning = De esta forma no se puede montar.

standing-listed = En la guía
    .meaning = La guía del fabricante incluye este conjunto.
standing-off-guide = Fuera de la guía
    .meaning = La guía del fabricante no incluye este conjunto. El resultado se ha deducido de piezas y medidas.

grade-listed = guía
    .meaning = El fabricante los ofrece juntos.
grade-same-part = misma pieza
    .meaning = La misma referencia hace la unión en un conjunto que el fabricante ofrece.
grade-replaced-part = pieza sustituida
    .meaning = Un registro de sustitución enlaza la pieza con otra de un conjunto que el fabricante ofrece.
grade-measured = medido
    .meaning = Se basa en lo medido en la unidad.
grade-drawing = plano
    .meaning = Se basa en planos o documentación, no en la propia unidad.
grade-none = nada
    .meaning = Todavía no se sabe nada.

role-axle-anchor = anclaje del eje
role-front-anchor = anclaje delantero
role-rack = soporte trasero
role-hitch = enganche de tres puntos
role-seat-deck = base del asiento
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

tool-caliper = calibre
tool-tape = cinta métrica

caution-planning-aid = Fit-up es una ayuda para planificar. Los manuales del fabricante, las cargas admisibles, la ley local y el criterio de un taller cualificado van primero.
    .title = Ayuda para planificar
caution-arm-on-hitch = Un brazo excavador en un enganche de tres puntos sin más puede levantarse y volcarse hacia el operador. Necesita un bastidor o el tirante del fabricante; el manual dice cuál.
    .title = Brazo excavador en el enganche
caution-roll-over-bar-up = Trabaje con el arco antivuelco levantado y el cinturón puesto. Un arco que haya que plegar se pliega solo para transportar y guardar, según permita el manual de la máquina.
    .title = Arco antivuelco levantado
caution-drilling-or-welding = Taladrar o soldar un bastidor o una estructura antivuelco es decisión del fabricante o de un ingeniero. Pregunte antes de taladrar.
    .title = Taladrar y soldar
caution-light-front-axle = Con un eje delantero demasiado ligero no se dirige ni se frena con seguridad. Siga el manual de la máquina sobre lastre y cargas máximas por eje.
    .title = Eje delantero ligero
caution-hydraulic-pressure = El aceite hidráulico a presión puede penetrar en la piel. Pare el motor, baje todo y descargue la presión antes de tocar un acoplador.
    .title = Presión hidráulica
caution-raised-parts = No trabaje bajo piezas levantadas que solo sujeta la hidráulica. Apuntálelas como indica el manual.
    .title = Piezas levantadas
caution-slopes = Un ángulo de vuelco estático no es una pendiente segura de trabajo. Baches, frenadas, giros y una carga levantada vuelcan la máquina mucho antes; valen los límites del manual.
    .title = Pendientes
caution-excavations = Antes de excavar haga localizar cables y tuberías enterrados. Las paredes de la zanja se protegen según las normas locales.
    .title = Excavación
caution-loading-ramps = Las rampas deben ser aptas para la máquina, estar fijadas al remolque y secas. Siga los manuales de las rampas y del remolque.
    .title = Rampas de carga
caution-tie-down = Amarre la máquina con amarres aptos para ella en los puntos que indica su manual. La ley local fija el número y la resistencia mínimos.
    .title = Amarre
caution-road-limits = Los límites de masa, anchura, longitud y velocidad en carretera varían según el lugar. Compruebe los locales antes de circular.
    .title = Límites en carretera

shape-rear-tyre = Neumático trasero
shape-front-tyre = Neumático delantero
