access-unknown = No se sabe si la máquina entra en el lugar, porque falta un dato del que depende.
    .short = Acceso sin datos
    .workshop = Acceso: no consta { $missing-name } de { $item }.
adapter-goes-in = { $item } va en medio.
    .short = Necesita { $item }
    .workshop = Montar { $item }{ $work ->
        [none] .
       *[other] : { $work } de taller.
    }
adapter-not-needed = { $item } no hace falta aquí.
    .short = { $item } no hace falta
    .workshop = { $item } no une nada en este montaje y se puede omitir.
arm-on-hitch = Un brazo excavador en un enganche de tres puntos sin más puede levantarse hacia el operador. Pregunte si el fabricante ofrece un tirante para él.
    .short = Brazo excavador en el enganche
    .workshop = { $item } cuelga del enganche de tres puntos sin más y puede levantarse y volcarse hacia el operador. Use un bastidor o, donde el manual lo permita, el tirante del fabricante.
axle-overloaded = { $axle ->
    [front] El eje delantero llevaría más carga de la admisible.
   *[rear] El eje trasero llevaría más carga de la admisible.
}
    .short = { $axle ->
        [front] Eje delantero sobrecargado
       *[rear] Eje trasero sobrecargado
    }
    .workshop = { $axle ->
        [front] Eje delantero
       *[rear] Eje trasero
    }: carga { $load }, admisible { $rated }, { $over } de más.
axle-within-rating = { $axle ->
    [front] El eje delantero lleva su carga dentro de lo admisible.
   *[rear] El eje trasero lleva su carga dentro de lo admisible.
}
    .short = { $axle ->
        [front] Eje delantero dentro de lo admisible
       *[rear] Eje trasero dentro de lo admisible
    }
    .workshop = { $axle ->
        [front] Eje delantero
       *[rear] Eje trasero
    }: carga { $load }, admisible { $rated }, quedan { $left }.
bar-in-the-way = { $bar ->
    [stays-up] Con { $item } montado, el arco antivuelco no se puede plegar.
   *[up] El arco antivuelco y { $item } se estorban.
}
    .short = { $bar ->
        [stays-up] El arco antivuelco queda levantado
       *[up] El arco antivuelco estorba
    }
    .workshop = { $bar ->
        [stays-up] Plegado, el arco antivuelco se solaparía { $overlap } con { $item }.
        [folded] El arco antivuelco plegado se solapa { $overlap } con { $item }.
       *[up] El arco antivuelco levantado se solapa { $overlap } con { $item }.
    }
bolts-unknown = Pasan tornillos por { $bolts } de { $holes } agujeros, y no se indica si bastan.
    .short = Número de tornillos no indicado
    .workshop = Una placa tiene { $holes } agujeros y la otra { $bolts }. Preguntar al fabricante cuántos tornillos necesita esta unión.
clearance-hit = { $item } y { $other } se estorban.
    .short = { $item } choca con { $other }
    .workshop = { $shape-name } de { $item } se solapa { $overlap } con { $other-shape-name } de { $other }.
clearance-tight = { $item } queda cerca de { $other }.
    .short = { $item } cerca de { $other }
    .workshop = { $shape-name } de { $item } a { $other-shape-name } de { $other }: quedan { $gap }, se piden { $wanted }.
clearance-unknown = Uno de los dos no está dibujado, así que aún no se puede decir si se estorban.
    .short = Contorno sin datos
    .workshop = { $missing-of }: no consta { $missing-name }.
closure-meets = Atornillado al eje trasero, { $b } también coincide con el anclaje delantero de { $a }.
    .short = Coincide con el anclaje delantero
    .workshop = Anclaje delantero: desviación { $off-by }, margen { $margin }, peor caso ±{ $worst-case }{ $slot ->
        [none] .
       *[other] ; el agujero alargado da { $slot }.
    }
closure-misses = Atornillado al eje trasero, { $b } no coincide con el anclaje delantero de { $a }.
    .short = No coincide con el anclaje delantero
    .workshop = Anclaje delantero: desviación { $off-by }, margen { $margin }, peor caso ±{ $worst-case }. Entre sus anclajes el bastidor es { $longer-way ->
        [shorter] { $longer } más corto
       *[longer] { $longer } más largo
    } que la fijación de la máquina.
closure-open = Por los planos no se puede decir si { $b } coincide con el anclaje delantero de { $a }: está muy justo.
    .short = Anclaje delantero muy justo
    .workshop = Anclaje delantero: desviación { $off-by }, margen { $margin }, peor caso ±{ $worst-case }; probabilidad { $probability }{ $settles ->
        [none] .
       *[other] . Con una medida a ±{ $settles } quedaría claro.
    }
closure-unknown = No consta dónde está el anclaje delantero; aún no se puede decir si { $b } coincide.
    .short = Anclaje delantero sin datos
    .workshop = Anclaje delantero de { $missing-of }: no consta { $missing-name }.
corner-clears = La máquina dobla la esquina tras la puerta de una sola vez.
    .short = Dobla la esquina
    .workshop = Puerta { $gate }, después en ángulo recto a un camino de { $path }: basta un camino de { $wanted }.
corner-tight = La máquina no dobla la esquina tras la puerta de una sola vez. Pruebe si lo hace con unas maniobras.
    .short = Esquina estrecha
    .workshop = Puerta { $gate }, después en ángulo recto a un camino de { $path }: { $wanted ->
        [none] ningún ancho de camino basta para un solo giro, porque la cola se abre contra la puerta.
       *[other] un solo giro pide un camino de { $wanted }.
    }
coupler-differs = Los acopladores hidráulicos son distintos; una manguera necesita otro extremo.
    .short = La manguera necesita otro extremo
    .workshop = { $roles-name }: { $carrier } en { $a }, { $carried } en { $b }. Cambiar el extremo de la manguera.
coupler-fits = Los acopladores hidráulicos coinciden.
    .short = Los acopladores coinciden
    .workshop = { $roles-name }: { $standard } tamaño { $size } en ambos lados.
coupler-unknown = No consta uno de los acopladores hidráulicos.
    .short = Acoplador sin datos
    .workshop = { $roles-name } de { $missing-of }: no consta { $missing-name }.
frame-idle = { $item } queda vacío: { $other } cuelga del enganche de tres puntos, detrás.
    .short = De { $item } no cuelga nada
    .workshop = { $other } cuelga del enganche y nada de { $item }. Quitar el bastidor o elegir un implemento o un adaptador que entre en su soporte trasero.
frame-in-the-ground = { $item } se metería en el suelo.
    .short = Se mete en el suelo
    .workshop = El punto más bajo de { $item } queda { $below } por debajo del suelo.
frame-low = { $item } cuelga cerca del suelo.
    .short = Cerca del suelo
    .workshop = El punto más bajo de { $item } queda a { $height } del suelo; se piden { $wanted }.
front-axle-heavy-enough = Queda bastante peso en las ruedas delanteras para dirigir.
    .short = Eje delantero con peso suficiente
    .workshop = El eje delantero lleva el { $share } de la masa en vacío de la máquina; lo mínimo es { $least }.
front-axle-lifts = Las ruedas delanteras se levantarían del suelo.
    .short = Se levantan las ruedas delanteras
    .workshop = Al eje delantero le faltan { $lift } para seguir en el suelo. { $ballast } a { $ballast-at } por delante del eje trasero lo llevan a la parte mínima.
front-axle-light = Las ruedas delanteras quedan demasiado ligeras para dirigir con seguridad. Unos { $ballast } de lastre delantero lo arreglarían.
    .short = Necesita lastre delantero
    .workshop = El eje delantero lleva el { $share } de la masa en vacío de la máquina; lo mínimo es { $least }. Se alcanza con { $ballast } a { $ballast-at } por delante del eje trasero.
front-seat-in-the-way = { $need ->
    [flips-forward] El asiento del operador tendría que plegarse hacia delante, y en esta máquina no se pliega.
    [comes-off] Hay que quitar el asiento del operador para hacer sitio.
   *[other] El asiento del operador tendría que correrse hacia delante más de lo que puede.
}
    .short = { $need ->
        [flips-forward] El asiento delantero no se pliega
        [comes-off] Hay que quitar el asiento delantero
       *[other] El asiento delantero estorba
    }
    .workshop = { $need ->
        [flips-forward] Asiento del operador: tiene que plegarse hacia delante; este no se pliega.
        [comes-off] Asiento del operador: desatornillar y quitar.
       *[other] Asiento del operador: tiene que correrse { $need }; se corre { $has }.
    }
gate-low = { $folded ->
    [none] La máquina es demasiado alta para la puerta.
   *[other] Con el arco antivuelco levantado la máquina es demasiado alta para la puerta; con el arco plegado pasa.
}
    .short = Puerta demasiado baja
    .workshop = Altura { $height }, puerta { $gate }, { $beyond } de más{ $folded ->
        [none] .
       *[other] ; con el arco antivuelco plegado { $folded }.
    }
gate-narrow = La máquina es { $beyond } más ancha que la puerta.
    .short = Puerta demasiado estrecha
    .workshop = Anchura { $width }, puerta { $gate }: { $beyond } de más.
gate-passes = La máquina pasa por la puerta y quedan { $left } a cada lado.
    .short = Pasa por la puerta
    .workshop = Anchura { $width }, puerta { $gate }: quedan { $left } a cada lado.
ground-carries = El suelo del lugar soporta el eje más cargado de la máquina.
    .short = El suelo lo soporta
    .workshop = { $axle ->
        [front] Eje delantero
       *[rear] Eje trasero
    }: carga { $load }, el suelo soporta { $most }, quedan { $left }.
ground-overloaded = El eje más cargado de la máquina pasa en { $over } lo que soporta el suelo del lugar.
    .short = Demasiado pesada para el suelo
    .workshop = { $axle ->
        [front] Eje delantero
       *[rear] Eje trasero
    }: carga { $load }, el suelo soporta { $most }, { $over } de más.
hitch-differs = Los enganches de tres puntos son de tamaños distintos y { $b } no entra.
    .short = Categorías de enganche distintas
    .workshop = Categoría de enganche { $carrier } en { $a }, { $carried } en { $b }: los bulones son demasiado gruesos.
hitch-dimension-misfits = Una medida del enganche de tres puntos no conviene a { $b }: no entra.
    .short = La medida del enganche no conviene
    .workshop = { $dimension-name }: { $carrier } en { $a }, { $carried } en { $b }, { $over } de más.
hitch-dimension-open = Por sus medidas no se puede decir si { $b } entra en el enganche de tres puntos: está muy justo.
    .short = Enganche muy justo
    .workshop = { $dimension-name }: { $carrier } en { $a }, { $carried } en { $b }; probabilidad { $probability }{ $settles ->
        [none] .
       *[other] . Conocido con ±{ $settles } quedaría resuelto.
    }
hitch-fits = El enganche de tres puntos es del tamaño correcto.
    .short = La categoría de enganche coincide
    .workshop = Categoría de enganche { $category } (ISO 730) en ambos lados.
hitch-frame-stiff = Los ganchos del marco de enganche rápido tienen otra separación que { $b }.
    .short = El marco de enganche rápido no conviene
    .workshop = Categoría de enganche { $carrier } en { $a } con marco de enganche rápido, { $carried } en { $b }: los ganchos no se pueden mover. Quitar el marco.
hitch-needs-bushings = El enganche es un tamaño mayor de lo que { $b } necesita; se compensa con casquillos.
    .short = Necesita casquillos de reducción
    .workshop = Categoría de enganche { $carrier } en { $a }, { $carried } en { $b }: montar casquillos de reducción.
hitch-other-span = Hay que mover los brazos inferiores a la separación de { $b }.
    .short = Brazos inferiores por mover
    .workshop = Categoría de enganche { $carrier } en { $a }, { $carried } en { $b }: los bulones son iguales, la separación no. Mover los brazos inferiores y ajustar sus estabilizadores.
hitch-unknown = No consta el tamaño de un enganche de tres puntos.
    .short = Tamaño del enganche sin datos
    .workshop = Enganche de { $missing-of }: no consta { $missing-name }.
holes-drilled = { $drill ->
    [one] Se taladra { $drill } agujero en { $side }, como se decidió.
   *[other] Se taladran { $drill } agujeros en { $side }, como se decidió.
}
    .short = { $drill ->
        [one] { $drill } agujero taladrado
       *[other] { $drill } agujeros taladrados
    }
    .workshop = { $roles-name }: marcar { $drill ->
        [one] { $drill } agujero
       *[other] { $drill } agujeros
    } a través sobre { $port } de { $side } y taladrar; luego { $bolts ->
        [one] entra { $bolts } tornillo
       *[other] entran { $bolts } tornillos
    } con un margen de { $margin }. { $work } de taller.
holes-may-meet = Por los planos no se puede decir si los agujeros de { $b } y { $a } coinciden: está muy justo.
    .short = Agujeros muy justos
    .workshop = { $roles-name }: { $bolts ->
        [one] { $bolts } tornillo
       *[other] { $bolts } tornillos
    }, margen { $margin }, peor caso ±{ $worst-case }; probabilidad { $probability }{ $settles ->
        [none] .
       *[other] . Con una medida a ±{ $settles } quedaría claro.
    }
holes-meet = Los agujeros de { $b } y { $a } coinciden.
    .short = Los agujeros coinciden
    .workshop = { $roles-name }: { $bolts ->
        [one] entra { $bolts } tornillo
       *[other] entran { $bolts } tornillos
    }, margen { $margin }, peor caso ±{ $worst-case }.
holes-miss = Los agujeros de { $b } y { $a } no coinciden.
    .short = Los agujeros no coinciden
    .workshop = { $roles-name }: { $bolts ->
        [one] hace falta { $bolts } tornillo
       *[other] hacen falta { $bolts } tornillos
    } y ninguna posición sirve, ni agrandando ni taladrando agujeros{ $margin ->
        [none] .
       *[other] ; a lo sumo el margen es { $margin }, peor caso ±{ $worst-case }.
    }
holes-need-drilling = { $drill ->
    [one] Hay que taladrar { $drill } agujero en { $side }.
   *[other] Hay que taladrar { $drill } agujeros en { $side }.
}
    .short = { $drill ->
        [one] { $drill } agujero por taladrar
       *[other] { $drill } agujeros por taladrar
    }
    .workshop = { $roles-name }: taladrar { $drill ->
        [one] { $drill } agujero
       *[other] { $drill } agujeros
    } en { $side }; después { $bolts ->
        [one] entra { $bolts } tornillo
       *[other] entran { $bolts } tornillos
    } con un margen de { $margin }.
holes-need-opening = Hay que agrandar un poco los agujeros.
    .short = Agujeros por agrandar
    .workshop = { $roles-name }: agrandar los agujeros hasta { $open-by } de diámetro; después { $bolts ->
        [one] entra { $bolts } tornillo
       *[other] entran { $bolts } tornillos
    } con un margen de { $margin }.
holes-opened = Se agrandan los agujeros de { $side }, como se decidió.
    .short = Agujeros agrandados
    .workshop = { $roles-name }: agrandar los agujeros de { $port } en { $side } { $open-by } de diámetro; luego { $bolts ->
        [one] entra { $bolts } tornillo
       *[other] entran { $bolts } tornillos
    } con un margen de { $margin }. { $work } de taller.
holes-plan-not-needed = { $kind ->
    [opening] Aquí no hace falta agrandar los agujeros de { $item }.
   *[drilling] Aquí no hace falta taladrar { $item }.
}
    .short = { $kind ->
        [opening] No hace falta agrandar
       *[drilling] No hace falta taladrar
    }
    .workshop = { $kind ->
        [opening] Está decidido agrandar { $port } de { $item }, y ninguna unión de este montaje lo aprovecha.
       *[drilling] Está decidido taladrar { $port } de { $item }, y ninguna unión de este montaje lo aprovecha.
    }
holes-plan-not-possible = { $kind ->
    [opening] Está decidido agrandar agujeros de { $item }, pero así no se puede.
   *[drilling] Está decidido taladrar { $item }, pero así no se puede.
}
    .short = { $kind ->
        [opening] No se puede agrandar
       *[drilling] No se puede taladrar
    }
    .workshop = { $reason ->
        [no-port] { $item } no tiene { $port }.
        [no-holes] { $port } de { $item } no tiene agujeros.
       *[too-much] { $port } de { $item }: los agujeros se agrandan más que nada y 1 mm como máximo.
    } Decidir de nuevo.
holes-too-many = Hay demasiados agujeros para probar todas las posiciones de { $b } sobre { $a }. Ponga uno sobre otro o compare los números de pieza.
    .short = Demasiados agujeros para comparar
    .workshop = { $roles-name }: { $holes } agujeros; se comparan { $most } como máximo, menos donde su disposición es irregular.
holes-unknown = En un lado no constan los agujeros; aún no se puede decir si coinciden.
    .short = Agujeros sin datos
    .workshop = { $roles-name } de { $missing-of }: no consta { $missing-name }.
hooks-hold = Los ganchos de { $b } asientan en la barra de { $a } y el pasador entra.
    .short = Ganchos y pasador encajan
    .workshop = { $roles-name }: ganchos y pasador dentro de { $limit }; juego { $play }.
hooks-may-hold = Por los planos no se puede decir si los ganchos de { $b } encajan en { $a }: está muy justo.
    .short = Ganchos muy justos
    .workshop = { $roles-name }: { $dimension-name }, { $play } entre los dos, se admite hasta { $limit }; probabilidad { $probability }{ $settles ->
        [none] .
       *[other] . Conocido a ±{ $settles } quedaría claro.
    }
hooks-misfit = Los ganchos de { $b } no encajan en { $a }.
    .short = Los ganchos no encajan
    .workshop = { $roles-name }: { $dimension-name } { $carrier } en { $a }, { $carried } en { $b }: { $off-by } de diferencia, se admite hasta { $limit }.
hooks-unknown = No consta una medida de los ganchos.
    .short = Ganchos sin datos
    .workshop = { $roles-name } de { $missing-of }: no consta { $missing-name }.
hydraulics-flow-high = La máquina bombea más aceite del que admite el implemento.
    .short = Demasiado caudal
    .workshop = Caudal { $flow }; el implemento admite { $most } como máximo. Montar un divisor de caudal o preguntar a su fabricante.
hydraulics-flow-short = La máquina bombea menos aceite del que pide el implemento, así que trabaja despacio.
    .short = Poco caudal
    .workshop = Caudal { $flow }; el implemento pide { $least }. Cada carrera tarda { $time-ratio } veces más.
hydraulics-match = La hidráulica de la máquina conviene al implemento.
    .short = La hidráulica conviene
    .workshop = Caudal { $flow } a { $pressure }: { $power } de potencia hidráulica.
hydraulics-no-power-beyond = El implemento pide su propia alimentación de la bomba (salida de presión continua), y la máquina aún no la tiene.
    .short = Necesita salida de presión continua
    .workshop = Salida de presión continua: la pide el implemento y la máquina no la tiene. Montar un kit.
hydraulics-outlets-short = La máquina tiene pocas salidas hidráulicas.
    .short = Faltan salidas hidráulicas
    .workshop = Salidas: hay { $has }, hacen falta { $need }. Añadir una válvula o un desviador.
hydraulics-pressure-high = La presión hidráulica de la máquina es mayor de la que aguanta el implemento.
    .short = Demasiada presión hidráulica
    .workshop = Presión de alivio { $pressure }; el implemento aguanta { $most }.
hydraulics-pressure-short = La presión hidráulica de la máquina es baja para el implemento; excava o levanta con menos fuerza.
    .short = Poca presión hidráulica
    .workshop = Presión de alivio { $pressure }; el implemento pide { $least }.
hydraulics-unknown = No consta todo sobre la hidráulica de la máquina.
    .short = Hidráulica sin datos
    .workshop = Hidráulica de { $missing-of }: no consta { $missing-name }.
implement-own-seat = Este asiento viene con un implemento, y el elegido no trae ninguno.
    .short = El implemento no trae asiento
    .workshop = Asiento: se eligió el propio del implemento; este no tiene.
joint-listed = El fabricante ofrece { $a } y { $b } juntos.
    .short = Ofrecidos juntos
    .workshop = { $roles-name }: ofrecidos juntos { $guide ->
        [none] por el fabricante, fuera de la guía.
       *[other] en { $guide } de { $date }.
    }
joint-replaced-part = Los registros de sustitución del fabricante enlazan las piezas que unen { $a } y { $b } con un conjunto que ofrece.
    .short = Enlazados por piezas sustituidas
    .workshop = { $roles-name }: { $part } se enlaza por sustitución con el conjunto { $witness } con { $witness-other }, que el fabricante ofrece.
joint-same-part = { $a } y { $b } se unen con las mismas piezas que un conjunto que el fabricante ofrece.
    .short = Mismas piezas que un conjunto de la guía
    .workshop = { $roles-name }: { $part } hace también la unión de { $witness } con { $witness-other }, que el fabricante ofrece.
kinds-differ = { $b } se une de otra forma que la que ofrece { $a }.
    .short = Formas de unión distintas
    .workshop = { $roles-name }: { $carrier-name } en { $a }, { $carried-name } en { $b }.
lift-enough = El enganche puede levantar el implemento.
    .short = El enganche lo levanta
    .workshop = Capacidad de elevación { $lift } donde cuelga el implemento, masa { $mass }: quedan { $left }.
lift-short = El enganche no puede levantar el implemento.
    .short = Demasiado pesado para el enganche
    .workshop = Capacidad de elevación { $lift } donde cuelga el implemento, masa { $mass }: { $over } de más.
lift-unknown = No consta si el enganche puede levantar el implemento.
    .short = Elevación sin datos
    .workshop = Elevación: no consta { $missing-name } de { $missing-of }.
listing-and-dimensions-disagree = El fabricante ofrece { $a } y { $b } juntos, pero por sus medidas no se unen. Uno de los dos datos está mal.
    .short = La guía y las medidas no concuerdan
    .workshop = { $roles-name }: ofrecidos juntos, pero las medidas dicen que no{ $margin ->
        [none] .
       *[other] : margen { $margin }, peor caso ±{ $worst-case }.
    } Comparar las referencias en las unidades antes de comprar nada.
loading-unknown = No se sabe cómo viaja la máquina en el remolque, porque falta un dato del que depende.
    .short = Carga sin datos
    .workshop = Carga: no consta { $missing-name } de { $item }.
loads-unknown = No se conocen las cargas por eje, porque falta un dato del que dependen.
    .short = Cargas por eje sin datos
    .workshop = Cargas por eje: no consta { $missing-name } de { $item }.
measurement-not-used = Una medida de { $item } no se puede usar. Vuelva a tomarla.
    .short = Medida sin usar
    .workshop = { $port } de { $item }, { $dimension-name }: { $reason ->
        [no-port] { $item } no tiene { $port }.
        [no-dimension] { $port } no tiene esa medida.
       *[impossible] ninguna unidad tiene ese valor.
    }
must-come-off = Hay que quitar de la máquina: { $what }.
    .short = Hay que quitar: { $what }
    .workshop = Para { $item } hay que quitar de la máquina: { $what }.
must-go-on = La máquina tiene que llevar: { $what }.
    .short = Necesita: { $what }
    .workshop = Para { $item } la máquina tiene que llevar: { $what }.
needs-frame = { $item } necesita un bastidor.
    .short = Necesita un bastidor
    .workshop = { $item } cuelga de un soporte trasero; el enganche de tres puntos sin más no lo tiene.
nose-load-in-range = { $heading ->
    [backward] Con la trasera hacia delante, la máquina puede ir en el remolque con la carga sobre el enganche en su margen.
   *[forward] Con el frente hacia delante, la máquina puede ir en el remolque con la carga sobre el enganche en su margen.
}
    .short = Carga sobre el enganche correcta
    .workshop = Carga sobre el enganche { $nose }, margen de { $least } a { $most }, con el eje trasero de { $from } a { $to } por delante del borde trasero de la plataforma y { $heading ->
        [backward] la trasera hacia delante.
       *[forward] el frente hacia delante.
    }
nose-load-out-of-range = En ningún punto de la plataforma del remolque la carga sobre el enganche queda en su margen.
    .short = Carga sobre el enganche fuera de margen
    .workshop = Carga sobre el enganche { $nose } en el mejor punto de la plataforma, margen de { $least } a { $most }.
nothing-answers = { $role ->
    [axle-anchor] { $a } no encuentra dónde atornillarse en el eje trasero.
    [front-anchor] { $a } no encuentra dónde atornillarse delante.
    [rack] { $a } no encuentra soporte trasero.
    [hitch] { $a } no encuentra enganche de tres puntos.
    [seat-deck] { $a } no encuentra base donde apoyarse.
    [power-take-off] { $a } no encuentra toma de fuerza.
    [pressure] { $a } necesita una línea hidráulica que aún falta.
    [return] { $a } necesita una línea de retorno que aún falta.
    [case-drain] { $a } necesita una línea de drenaje que aún falta.
   *[wiring] { $a } necesita un cable que aún falta.
}
    .short = { $role ->
        [axle-anchor] Sin anclaje de eje para él
        [front-anchor] Sin anclaje delantero para él
        [rack] Sin soporte trasero para él
        [hitch] Sin enganche para él
        [seat-deck] Sin base para el asiento
        [power-take-off] Sin toma de fuerza para él
        [pressure] Línea de presión por tender
        [return] Línea de retorno por tender
        [case-drain] Línea de drenaje por tender
       *[wiring] Cable por tender
    }
    .workshop = { $a }, { $port }: nada en este montaje le corresponde ({ $role-name }).
pins-enter = Los bulones de { $b } y { $a } encajan.
    .short = Los bulones encajan
    .workshop = { $roles-name }, { $point }: juego { $running }, se admite hasta { $limit }.
pins-may-enter = Por los planos no se puede decir si los bulones de { $b } y { $a } encajan: está muy justo.
    .short = Bulones muy justos
    .workshop = { $roles-name }{ $point ->
        [none] {""}
       *[other] , { $point }
    }: { $dimension-name } deja { $running } de juego, se admite hasta { $limit }; probabilidad { $probability }{ $settles ->
        [none] .
       *[other] . Conocido a ±{ $settles } quedaría claro.
    }
pins-need-sleeve = El bulón es más delgado que su agujero. Se compensa con un casquillo.
    .short = Necesita un casquillo
    .workshop = { $roles-name }, { $point }: agujero { $bore }, bulón { $pin }, juego { $running }; por encima de { $limit } necesita un casquillo.
pins-side-play = La unión tiene juego lateral. Se compensa con arandelas.
    .short = Necesita arandelas
    .workshop = { $roles-name }, { $point }: juego lateral { $play }; por encima de { $limit } necesita arandelas.
pins-sleeved = { $item } ajusta el bulón a su agujero.
    .short = Con casquillo { $item }
    .workshop = { $roles-name }: { $item } reviste el agujero de { $bore } para el bulón de { $pin }.
pins-spread-off = Las orejas de { $b } están { $off-by } demasiado abiertas o cerradas para { $a }.
    .short = La separación no coincide
    .workshop = { $roles-name }: separación { $carrier } en { $a }, { $carried } en { $b }: { $off-by } de diferencia, se admite hasta { $limit }.
pins-unknown = No consta una medida de los bulones.
    .short = Bulones sin datos
    .workshop = { $roles-name } de { $missing-of }: no consta { $missing-name }.
pins-will-not-enter = { $dimension ->
    [width] Una oreja es demasiado ancha para la horquilla donde tiene que entrar.
   *[diameter] Un bulón es demasiado grueso para su agujero.
}
    .short = { $dimension ->
        [width] Oreja demasiado ancha
       *[diameter] Bulón demasiado grueso
    }
    .workshop = { $roles-name }, { $point }: { $dimension-name } { $carrier } en { $a }, { $carried } en { $b }: { $over } de más.
port-looked-missing = Lo que la unión necesita no está en esta unidad.
    .short = Falta en esta unidad
    .workshop = { $roles-name }: { $port }, buscado y no encontrado.
port-not-on-serial = Las unidades con este número de serie no tienen lo que la unión necesita.
    .short = No en este número de serie
    .workshop = { $roles-name }: el número de serie { $serial } viene sin { $port }.
port-serial-unknown = Solo algunas unidades tienen lo que la unión necesita. Mire la suya o introduzca su número de serie.
    .short = Depende del número de serie
    .workshop = { $roles-name }: solo algunos números de serie tienen { $port }.
place-unknown = No se indica dónde va { $item } en la máquina; lo que depende de ello no se puede calcular.
    .short = Posición desconocida
    .workshop = Ninguna unión de los datos dice dónde queda { $item }. Medirlo o preguntar al fabricante.
power-high = La máquina tiene más potencia de la que admite el implemento.
    .short = Demasiada potencia
    .workshop = Potencia en la toma { $power }; el implemento aguanta { $most }.
power-short = La máquina tiene poca potencia para el implemento.
    .short = Poca potencia
    .workshop = Potencia en la toma { $power }; el implemento necesita { $least }.
power-unknown = No consta la potencia de la máquina en la toma de fuerza.
    .short = Potencia sin datos
    .workshop = Accionamiento de { $missing-of }: no consta { $missing-name }.
pto-differs = { $dimension ->
    [speed] La toma de fuerza no gira a la velocidad que el implemento necesita.
    [rotation] La toma de fuerza gira al revés.
   *[shaft-type] El árbol de transmisión necesita otro extremo.
}
    .short = { $dimension ->
        [speed] Velocidad de la toma distinta
        [rotation] La toma gira al revés
       *[shaft-type] El árbol necesita otro extremo
    }
    .workshop = Toma de fuerza: { $dimension-name } { $carrier-name } en { $a }, { $carried-name } en { $b }.
pto-fits = La toma de fuerza conviene al implemento.
    .short = La toma de fuerza conviene
    .workshop = Toma de fuerza: tipo { $shaft-type } (ISO 500-1), { $speed } vueltas por minuto en ambos lados.
pto-unknown = No consta todo sobre la toma de fuerza.
    .short = Toma de fuerza sin datos
    .workshop = Toma de fuerza de { $missing-of }: no consta { $missing-name }.
ramp-clears = { $way ->
    [forward] Hacia delante, la máquina sube la rampa del remolque sin rozar.
    [backward] Marcha atrás, la máquina sube la rampa del remolque sin rozar.
   *[either] La máquina sube la rampa del remolque sin rozar.
}
    .short = Libra la rampa
    .workshop = Rampa { $ramp }: { $item } es lo que más se acerca, quedan { $clearance }.
ramp-drags = { $item } roza { $drags-by } en la rampa del remolque. { $shortest ->
    [none] Ninguna rampa que viaje en un remolque lo libra.
   *[other] Unas rampas de { $shortest } lo libran.
}
    .short = Roza en la rampa
    .workshop = Rampa { $ramp }, { $way ->
        [backward] marcha atrás
       *[forward] hacia delante
    }: { $item } está { $drags-by } demasiado bajo, { $distance } { $place ->
        [ahead] por delante del eje trasero, ante las ruedas delanteras
        [between] por delante del eje trasero, entre las ruedas
       *[behind] por detrás del eje trasero
    }. { $shortest ->
        [none] Ninguna rampa que viaje en un remolque deja { $wanted }.
       *[other] Una rampa de { $shortest } deja { $wanted }.
    }
ramp-tight = { $item } queda a { $clearance } de la rampa del remolque; se quieren { $wanted }. { $shortest ->
    [none] Ninguna rampa que viaje en un remolque los deja.
   *[other] Unas rampas de { $shortest } los dejan.
}
    .short = Rampa justa
    .workshop = Rampa { $ramp }, { $way ->
        [backward] marcha atrás
       *[forward] hacia delante
    }: { $clearance } bajo { $item }, { $distance } { $place ->
        [ahead] por delante del eje trasero, ante las ruedas delanteras
        [between] por delante del eje trasero, entre las ruedas
       *[behind] por detrás del eje trasero
    }. { $shortest ->
        [none] Ninguna rampa que viaje en un remolque deja { $wanted }.
       *[other] Una rampa de { $shortest } deja { $wanted }.
    }
seat-faces-forward = El implemento se maneja mirando hacia atrás, y este asiento solo mira hacia delante.
    .short = El asiento solo mira hacia delante
    .workshop = Asiento: mira hacia delante; las palancas del implemento quedan detrás.
seat-reach-far = Las palancas quedan demasiado lejos del asiento.
    .short = Palancas lejos
    .workshop = Del punto índice del asiento a las palancas { $distance }; como mucho { $most }.
seat-room = Hay sitio para las rodillas entre el asiento y las palancas.
    .short = Hay sitio en el asiento
    .workshop = Del punto índice del asiento a las palancas { $room }; como mínimo { $least }.
seat-room-short = Hay poco sitio entre el asiento y las palancas.
    .short = Poco sitio en el asiento
    .workshop = Del punto índice del asiento a las palancas { $room }; como mínimo { $least }: faltan { $short }.
seat-room-unknown = No consta cuánto sitio hay en el asiento.
    .short = Sitio en el asiento sin datos
    .workshop = Sitio en el asiento: no consta { $missing-name } de { $missing-of }.
seat-station-differs = { $station ->
    [cab] Este asiento no está hecho para una máquina con cabina.
   *[open] Este asiento no está hecho para una máquina abierta.
}
    .short = { $station ->
        [cab] El asiento no es para cabinas
       *[open] El asiento no es para máquinas abiertas
    }
    .workshop = { $a }: no hecho para este puesto ({ $station-name }).
seat-switch-missing = El asiento no tiene el interruptor que avisa a la máquina de que hay alguien sentado. Hay que montar uno según el manual del fabricante.
    .short = Interruptor de asiento por montar
    .workshop = Interruptor de presencia: el asiento no lo tiene. Montar y cablear según el manual de la máquina.
seat-switch-unknown = No consta si el asiento tiene un interruptor que avise a la máquina de que hay alguien sentado.
    .short = Interruptor de asiento sin datos
    .workshop = Interruptor de presencia: no consta para el asiento.
seat-turns-not = El asiento del operador de esta máquina no gira.
    .short = El asiento no gira
    .workshop = Asiento: se eligió uno giratorio; el de la máquina no gira.
seat-without-its-supplier = { $supplier ->
    [machine] Este asiento solo viene con otra máquina.
    [frame] Este asiento solo viene con otro bastidor.
   *[implement] Este asiento solo viene con otro implemento.
}
    .short = { $supplier ->
        [machine] Viene con otra máquina
        [frame] Viene con otro bastidor
       *[implement] Viene con otro implemento
    }
    .workshop = { $a }: viene con algo que no está en este montaje ({ $supplier-name }). Averiguar si se vende suelto.
site-unknown = No consta de { $site }: { $missing-name }.
    .short = Lugar sin datos
    .workshop = { $site }: no consta { $missing-name }.
serial-of-another = El número de serie { $serial } no es de { $item } tal como figura aquí. Mire otra vez cuál es.
    .short = Número de serie de otra serie
    .workshop = { $item }: el número de serie { $serial } queda fuera del intervalo de esta entrada.
station-differs = { $station ->
    [cab] Este bastidor no está hecho para una máquina con cabina.
   *[open] Este bastidor no está hecho para una máquina abierta.
}
    .short = { $station ->
        [cab] El bastidor no es para cabinas
       *[open] El bastidor no es para máquinas abiertas
    }
    .workshop = { $a }: no hecho para este puesto ({ $station-name }).
station-unknown = No consta si este bastidor es para máquinas abiertas o para cabinas.
    .short = Abierta o cabina, sin datos
    .workshop = { $a }: no constan los puestos.
swivel-hits = El asiento golpea { $item } al girar.
    .short = El asiento golpea al girar
    .workshop = Asiento giratorio: barre un radio de { $radius }; hasta { $item } hay { $room }.
tie-downs-needed = { $count ->
    [one] Sujete la máquina con al menos { $count } amarre.
   *[other] Sujete la máquina con al menos { $count } amarres.
}
    .short = Amarres necesarios
    .workshop = Al menos { $count } amarres que juntos aguanten { $together }: directos del remolque a la máquina, { $each } cada uno (49 CFR 393.106, 393.110).
trailer-carries = { $rating ->
    [axle] Los ejes del remolque llevan su carga dentro de lo admisible.
   *[total] Máquina y remolque juntos no pasan del peso admisible.
}
    .short = El remolque la lleva
    .workshop = { $rating ->
        [axle] Ejes del remolque
       *[total] Remolque con la máquina
    }: { $load }, admisible { $rated }, quedan { $left }.
trailer-narrow = Los neumáticos de la máquina ocupan { $beyond } más que la plataforma del remolque.
    .short = Remolque demasiado estrecho
    .workshop = Sobre los neumáticos { $width }, plataforma { $deck }: { $beyond } de más.
trailer-overloaded = { $rating ->
    [axle] Los ejes del remolque llevarían { $over } más de lo admisible.
   *[total] Máquina y remolque juntos pasan en { $over } el peso admisible.
}
    .short = Remolque sobrecargado
    .workshop = { $rating ->
        [axle] Ejes del remolque
       *[total] Remolque con la máquina
    }: { $load }, admisible { $rated }, { $over } de más.
trailer-short = La plataforma del remolque es más corta que la distancia entre ejes de la máquina.
    .short = Remolque demasiado corto
    .workshop = Distancia entre ejes { $wheelbase }, plataforma { $deck }.
trailer-unknown = No consta de { $trailer }: { $missing-name }.
    .short = Remolque sin datos
    .workshop = { $trailer }: no consta { $missing-name }.
tyre-overloaded = { $axle ->
    [front] Los neumáticos delanteros llevarían más carga de la admisible.
   *[rear] Los neumáticos traseros llevarían más carga de la admisible.
}
    .short = { $axle ->
        [front] Neumáticos delanteros sobrecargados
       *[rear] Neumáticos traseros sobrecargados
    }
    .workshop = { $axle ->
        [front] Cada neumático delantero
       *[rear] Cada neumático trasero
    }: carga { $load }, admisible { $rated }, { $over } de más.
wiring-differs = Los conectores eléctricos son distintos; hay que cambiar uno.
    .short = Conector por cambiar
    .workshop = { $roles-name }: { $carrier } en { $a }, { $carried } en { $b }.
wiring-fits = Los conectores eléctricos coinciden.
    .short = Los conectores coinciden
    .workshop = { $roles-name }: { $connector } en ambos lados.
