access-unknown = Faltan datos, así que no se sabe si la máquina entra en el lugar.
    .short = Acceso: faltan datos
    .workshop = Acceso: faltan datos de { $item }: { $missing-name }.
adapter-goes-in = { $item } va en medio.
    .short = Necesita { $item }
    .workshop = Montar { $item }{ $work ->
        [none] .
       *[other] : { $work } de taller.
    }
adapter-not-needed = { $item } no hace falta aquí.
    .short = { $item } no hace falta
    .workshop = { $item } no une nada en este montaje y se puede omitir.
arm-on-hitch = No excave con { $item } solo en el enganche de tres puntos: puede salir empujado hacia arriba y caer sobre el operador. Monte un bastidor o, donde el manual lo permita, el tirante del fabricante.
    .short = Retro solo en el enganche
    .workshop = { $item } cuelga solo del enganche de tres puntos, sin bastidor, y puede salir empujado hacia arriba y caer sobre el operador. No excavar así. Montar un bastidor o, donde el manual lo permita, el tirante del fabricante.
axle-overloaded = { $axle ->
    [front] El eje delantero llevaría { $over } más de lo admisible.
   *[rear] El eje trasero llevaría { $over } más de lo admisible.
}
    .short = { $axle ->
        [front] Eje delantero: { $over } de más
       *[rear] Eje trasero: { $over } de más
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
        [front] Eje delantero: quedan { $left }
       *[rear] Eje trasero: quedan { $left }
    }
    .workshop = { $axle ->
        [front] Eje delantero
       *[rear] Eje trasero
    }: carga { $load }, admisible { $rated }, quedan { $left }.
bar-in-the-way = { $bar ->
    [stays-up] El arco antivuelco debe quedar levantado: plegado chocaría con { $item } ({ $overlap }).
    [folded] El arco antivuelco plegado choca con { $item } ({ $overlap }).
   *[up] El arco antivuelco choca con { $item } ({ $overlap }).
}
    .short = { $bar ->
        [stays-up] El arco debe quedar levantado
       *[up] El arco choca { $overlap }
    }
    .workshop = { $bar ->
        [stays-up] Dejar el arco antivuelco levantado: plegado se solaparía { $overlap } con { $item }.
        [folded] El arco antivuelco plegado se solapa { $overlap } con { $item }.
       *[up] El arco antivuelco levantado se solapa { $overlap } con { $item }.
    }
bolt-not-for-tapped = Los tornillos de { $bolt } no entran en los agujeros de { $side }, roscados a { $tapped }.
    .short = Los tornillos no van con la rosca
    .workshop = { $roles-name }: tornillos de { $bolt }, agujeros de { $side } roscados a { $tapped }. No roscan; no forzarlos ni repasar la rosca sin el visto bueno del fabricante.
bolt-too-thick = Los tornillos de { $bolt } no entran en los agujeros de { $hole } de { $side }.
    .short = Tornillos demasiado gruesos
    .workshop = { $roles-name }: agujeros de { $side } { $hole }, tornillos { $bolt }: { $over } de más, más de lo que se agranda un agujero.
bolts-stated-differently = Los tornillos entre { $b } y { $a } constan con dos medidas: { $least } y { $most }. Pregunte cuál vale.
    .short = Tornillos con dos medidas
    .workshop = { $roles-name }: tornillos de { $least } en un lado y de { $most } en el otro. Calculado con { $most }; aclarar cuál vale antes de comprar nada.
bolts-unknown = Solo pasan tornillos por { $bolts } de { $holes } agujeros. El fabricante tiene que decir si bastan.
    .short = ¿Bastan los tornillos?
    .workshop = Una placa tiene { $holes } agujeros y la otra { $bolts }. Preguntar al fabricante cuántos tornillos necesita esta unión.
bolts-will-not-hold = Los agujeros de { $hole } de { $side } son demasiado anchos para tornillos de { $bolt }: cabeza y arandela se cuelan.
    .short = Agujeros demasiado anchos
    .workshop = { $roles-name }: agujeros de { $side } { $hole } con tornillos de { $bolt }; la arandela corriente no los cubre (práctica común).
clearance-hit = { $item } choca con { $other }.
    .short = { $item } choca { $overlap } con { $other }
    .workshop = { $item }, { $shape-name }, se solapa { $overlap } con { $other }, { $other-shape-name }.
clearance-tight = { $item } queda demasiado cerca de { $other }.
    .short = { $item } a solo { $gap } de { $other }
    .workshop = { $item }, { $shape-name }, a { $other }, { $other-shape-name }: quedan { $gap }, hacen falta { $wanted } (práctica común).
clearance-unknown = Uno de los dos no tiene contorno en el catálogo, así que no se conoce la distancia entre ellos.
    .short = Falta el contorno
    .workshop = Faltan datos de { $missing-of }: { $missing-name }.
closure-meets = Atornillado al eje trasero, { $b } también coincide con el anclaje delantero de { $a }.
    .short = Coincide con el anclaje delantero
    .workshop = Anclaje delantero: desviación { $off-by }, { $margin-way ->
        [short] { $margin } de más
       *[spare] sobran { $margin }
    }; los planos pueden variar ±{ $worst-case } en total{ $slot ->
        [none] .
       *[other] ; el agujero alargado da { $slot }.
    }
closure-misses = Atornillado al eje trasero, { $b } no coincide con el anclaje delantero de { $a }: { $longer } { $longer-way ->
    [shorter] demasiado corto
   *[longer] demasiado largo
}.
    .short = Anclaje delantero: { $off-by } desplazado
    .workshop = Anclaje delantero: desviación { $off-by }, { $margin-way ->
        [short] { $margin } de más
       *[spare] sobran { $margin }
    }; los planos pueden variar ±{ $worst-case } en total. Entre sus anclajes el bastidor es { $longer-way ->
        [shorter] { $longer } más corto
       *[longer] { $longer } más largo
    } que la fijación de la máquina.
closure-height-off = Atornillado al eje trasero, { $b } no coincide con el anclaje delantero de { $a }: delante queda { $higher } { $higher-way ->
    [lower] demasiado bajo
   *[higher] demasiado alto
}.
    .short = Anclaje delantero: { $off-by } desplazado
    .workshop = Anclaje delantero: el bastidor queda delante { $higher } { $higher-way ->
        [lower] demasiado bajo
       *[higher] demasiado alto
    }, desviación total { $off-by }, { $margin-way ->
        [short] { $margin } de más
       *[spare] sobran { $margin }
    }; los planos pueden variar ±{ $worst-case } en total. Los tornillos del eje solo lo dejan girar lo que permite su holgura.
closure-aside = Atornillado al eje trasero, { $b } no coincide con el anclaje delantero de { $a }: las placas { $aside-way ->
    [crossing] se cruzan { $off-by }
   *[apart] quedan separadas { $off-by }
}.
    .short = Anclaje delantero: { $off-by } desplazado
    .workshop = Anclaje delantero: de lado, las placas { $aside-way ->
        [crossing] se cruzan { $off-by }; el bastidor cede hasta { $limit }
       *[apart] quedan separadas { $off-by }; los suplementos compensan { $limit }
    } (práctica común).
closure-faces-apart = Atornillado al eje trasero, { $b } no coincide con el anclaje delantero de { $a }: las placas no se miran.
    .short = Placas delanteras mal orientadas
    .workshop = Anclaje delantero: la placa del bastidor no mira a la de la máquina, o no con el mismo lado hacia arriba.
closure-open = Los planos no bastan para decir si { $b } coincide con el anclaje delantero de { $a }. Mida antes.
    .short = Anclaje delantero: { $probability } probable
    .workshop = Anclaje delantero: desviación { $off-by }, { $margin-way ->
        [short] { $margin } de más
       *[spare] sobran { $margin }
    }; los planos pueden variar ±{ $worst-case } en total; { $probability } de probabilidad de que coincida{ $settles ->
        [none] .
       *[other] . Con una medida a ±{ $settles } quedaría resuelto.
    }
closure-unknown = No se sabe dónde está el anclaje delantero; aún no se puede decir si { $b } coincide.
    .short = Anclaje delantero: faltan datos
    .workshop = Anclaje delantero: faltan datos de { $missing-of }: { $missing-name }.
corner-clears = La máquina dobla la esquina tras la puerta de una sola vez.
    .short = Dobla la esquina, bastan { $wanted }
    .workshop = Puerta { $gate }, después en ángulo recto a un camino de { $path }: basta un camino de { $wanted }.
corner-tight = La máquina no dobla la esquina tras la puerta de una sola vez. Quizá lo haga maniobrando; pruebe.
    .short = { $wanted ->
        [none] Esquina estrecha
       *[other] La esquina pide un camino de { $wanted }
    }
    .workshop = Puerta { $gate }, después en ángulo recto a un camino de { $path }: { $wanted ->
        [none] ningún ancho de camino basta para un solo giro, porque la cola se abre contra la puerta.
       *[other] para un solo giro hace falta un camino de { $wanted }.
    }
coupler-differs = Los acopladores hidráulicos son distintos; la manguera necesita otro enchufe rápido.
    .short = Otro enchufe en la manguera
    .workshop = { $roles-name }: { $carrier } en { $a }, { $carried } en { $b }. Cambiar el enchufe rápido de la manguera.
coupler-fits = Los acopladores hidráulicos coinciden.
    .short = Los acopladores coinciden
    .workshop = { $roles-name }: { $standard } tamaño { $size } en ambos lados.
coupler-unknown = De un lado no se conoce el acoplador hidráulico.
    .short = Acoplador: faltan datos
    .workshop = { $roles-name }: faltan datos de { $missing-of }: { $missing-name }.
coupling-weak = El enganche del remolque admite { $most } de carga vertical; cargado, el remolque necesita al menos { $least }.
    .short = El enganche admite { $most } de { $least }
    .workshop = Carga vertical admisible del enganche { $most }; mínima del remolque cargado { $least }.
driver-seat-cannot = El asiento del operador no puede quedar como lo eligió: { $state ->
    [folded] no se pliega hacia delante.
    [slid] no se corre lo bastante hacia delante.
    [turned] no gira.
   *[other] nada dice que pueda.
}
    .short = El asiento del operador no se mueve así
    .workshop = Asiento del operador: { $state ->
        [folded] tiene que plegarse hacia delante; este no se pliega.
        [slid] tiene que correrse hacia delante; este no se corre lo bastante.
        [turned] tiene que girar; este no gira.
       *[other] nada dice que pueda quedar así.
    }
driver-seat-moves = { $state ->
    [folded] Para trabajar desde el asiento trasero, pliegue hacia delante el asiento del operador.
    [slid] Para trabajar desde el asiento trasero, corra { $by } hacia delante el asiento del operador.
    [turned] Para trabajar, gire el asiento del operador.
   *[off] Para trabajar desde el asiento trasero hay que quitar el asiento del operador.
}
    .short = { $state ->
        [folded] Plegar el asiento del operador
        [slid] Correr el asiento del operador
        [turned] Girar el asiento del operador
       *[off] Quitar el asiento del operador
    }
    .workshop = Asiento del operador mientras se trabaja: { $state ->
        [folded] plegarlo hacia delante, a mano.
        [slid] correrlo { $by } hacia delante, a mano.
        [turned] girarlo, a mano.
       *[off] quitarlo{ $hours ->
            [none] .
           *[other] , { $hours }.
        }
    }
deck-close = { $way ->
    [length] La distancia entre ejes de la máquina es casi tan larga como la plataforma del remolque. Mida ambas antes de cargarla.
   *[width] Medida por fuera de los neumáticos, la máquina es casi tan ancha como la plataforma del remolque. Mida ambas antes de cargarla.
}
    .short = Plataforma: medir antes
    .workshop = { $way ->
        [length] Distancia entre ejes
       *[width] Anchura por fuera de los neumáticos
    } { $size }, plataforma { $deck }: entre las dos puede haber un error de { $off }.
equipment-answers = { $a } se une en «{ $port }» a { $what }, que no está en la máquina. Sin eso la unión no está probada.
    .short = No está en la máquina: { $what }
    .workshop = La conexión «{ $port }» de { $a } se une a { $what }, que no está en la máquina. Móntelo, o anote que está.
equipment-in-the-way = { $what } estorba a { $item } y hay que quitarlo.
    .short = Estorba: { $what }
    .workshop = { $what } ({ $shape }) y { $item } ({ $other-shape }) se solapan { $overlap }. Quítelo.
equipment-lacks = { $item } no tiene a qué ir en la máquina: falta «{ $what }».
    .short = Falta para { $item }: { $what }
    .workshop = { $item } necesita la conexión «{ $what }», que la máquina no tiene tal como está.
equipment-may-be-in-the-way = { $what } quizá estorbe a { $item }.
    .short = Quizá estorbe: { $what }
    .workshop = { $what } ({ $shape }) y { $item } ({ $other-shape }) se solapan { $overlap } vistos de lado. Mire si uno pasa junto al otro.
faces-turned = Cara con cara con { $a }, { $b } quedaría { $way ->
    [half-round] del revés
    [tipped] inclinado
   *[on-its-side] torcido, de lado o cabeza abajo
}.
    .short = Las caras miran mal
    .workshop = { $roles-name }: las dos caras no pueden mirarse con { $b } { $way ->
        [half-round] en su sentido
       *[other] derecho
    }.
frame-idle = { $item } queda vacío: { $other } cuelga del enganche de tres puntos, detrás.
    .short = De { $item } no cuelga nada
    .workshop = { $other } cuelga del enganche y nada de { $item }. Quitar el bastidor o elegir un implemento o un adaptador que entre en su portaimplementos.
frame-in-the-ground = { $item } se metería { $below } en el suelo.
    .short = Se mete { $below } en el suelo
    .workshop = El punto más bajo de { $item } queda { $below } por debajo del suelo.
frame-low = { $item } cuelga a solo { $height } del suelo; hacen falta { $wanted }.
    .short = A solo { $height } del suelo
    .workshop = El punto más bajo de { $item } queda a { $height } del suelo; hacen falta { $wanted } (práctica común).
front-axle-heavy-enough = Queda bastante peso en las ruedas delanteras para dirigir: { $share }; hace falta al menos { $least }.
    .short = Eje delantero { $share }, mínimo { $least }
    .workshop = El eje delantero lleva el { $share } del peso en vacío de la máquina; hace falta al menos { $least } (norma alemana de circulación, y la mayoría de los manuales).
front-axle-lifts = Las ruedas delanteras se levantarían del suelo. No conduzca así: hacen falta al menos { $ballast } de lastre delantero.
    .short = Se levanta delante: { $ballast } de lastre
    .workshop = Las ruedas delanteras se levantan: solo para mantenerlas en el suelo faltan { $lift }. Para la parte mínima, colocar al menos { $ballast } de lastre a { $ballast-at } por delante del eje trasero.
front-axle-light = Las ruedas delanteras quedan demasiado ligeras para dirigir con seguridad. Hacen falta al menos { $ballast } de lastre delantero.
    .short = Necesita { $ballast } de lastre delantero
    .with = lastre delantero
    .workshop = El eje delantero lleva el { $share } del peso en vacío de la máquina; hace falta al menos { $least } (norma alemana de circulación, y la mayoría de los manuales). Para ello, colocar al menos { $ballast } de lastre a { $ballast-at } por delante del eje trasero.
front-axle-near-least = Las ruedas delanteras quizá queden demasiado ligeras para dirigir con seguridad: el error posible de las masas es mayor que lo que sobra. Pese el eje delantero o ponga al menos { $ballast } de lastre delantero.
    .short = Pesar el eje delantero
    .workshop = El eje delantero lleva el { $share } del peso en vacío de la máquina; hace falta al menos { $least }, y su carga puede variar en { $off }. Al menos { $ballast } de lastre a { $ballast-at } por delante del eje trasero lo resuelven.
front-share-of-total-low = Las ruedas delanteras llevan el { $share } de todo lo que descansa sobre las ruedas. Lo habitual, sin fuente, es el { $least }: se alcanza con al menos { $ballast } de lastre delantero.
    .short = Poco peso delante del total
    .workshop = El eje delantero lleva el { $share } del peso total; práctica habitual, sin fuente: { $least }. Se alcanza con al menos { $ballast } de lastre a { $ballast-at } por delante del eje trasero.
gate-close = { $way ->
    [height] La máquina es casi tan alta como la puerta. Mida ambas antes de pasar.
    [folded] Con el arco antivuelco plegado la máquina es casi tan alta como la puerta. Mida ambas antes de pasar y pliegue el arco solo como permita el manual.
   *[width] La máquina es casi tan ancha como la puerta. Mida ambas antes de pasar.
}
    .short = Puerta: medir antes
    .workshop = { $way ->
        [height] Altura
        [folded] Altura con el arco antivuelco plegado
       *[width] Anchura
    } { $size }, puerta { $gate }: entre las dos puede haber un error de { $off }.
gate-low = { $folded ->
    [none] La máquina es { $beyond } demasiado alta para la puerta.
   *[other] Con el arco antivuelco levantado la máquina es { $beyond } demasiado alta para la puerta. Pliegue el arco solo para pasar, en terreno llano, al paso, como permita el manual, y vuelva a levantarlo. Con el arco plegado no se ponga el cinturón.
}
    .short = Puerta { $beyond } demasiado baja
    .with = el arco antivuelco plegado
    .workshop = Altura { $height }, puerta { $gate }, { $beyond } demasiado alta{ $folded ->
        [none] .
       *[other] ; con el arco antivuelco plegado { $folded }. Plegarlo solo para pasar, en terreno llano, al paso, como permita el manual, y volver a levantarlo.
    }
gate-narrow = La máquina es { $beyond } más ancha que la puerta.
    .short = Puerta { $beyond } demasiado estrecha
    .workshop = Anchura { $width }, puerta { $gate }: { $beyond } demasiado ancha.
gate-passes = La máquina pasa por la puerta y quedan { $left } a cada lado.
    .short = Puerta: { $left } a cada lado
    .workshop = Anchura { $width }, puerta { $gate }: quedan { $left } a cada lado.
ground-carries = El suelo del lugar soporta el eje más cargado de la máquina.
    .short = Suelo: quedan { $left }
    .workshop = { $axle ->
        [front] Eje delantero
       *[rear] Eje trasero
    }: carga { $load }, el suelo soporta { $most }, quedan { $left }.
ground-load-near = El eje más cargado de la máquina está tan cerca de lo que soporta el suelo del lugar que hay que pesarlo.
    .short = Pesar el eje por el suelo
    .workshop = { $axle ->
        [front] Eje delantero
       *[rear] Eje trasero
    }: carga { $load }, con un error de { $off } como máximo, el suelo soporta { $most }.
ground-overloaded = El eje más cargado de la máquina supera en { $over } lo que soporta el suelo del lugar.
    .short = { $over } de más para el suelo
    .workshop = { $axle ->
        [front] Eje delantero
       *[rear] Eje trasero
    }: carga { $load }, el suelo soporta { $most }, { $over } de más.
hitch-differs = El enganche de tres puntos es demasiado pequeño para { $b }: los bulones no entran.
    .short = Categorías de enganche distintas
    .workshop = Categoría de enganche { $carrier } en { $a }, { $carried } en { $b }: los bulones son demasiado gruesos.
hitch-dimension-misfits = { $b } no entra en el enganche de tres puntos: una medida no coincide.
    .short = Medida del enganche: { $over } de más
    .workshop = { $dimension-name }: { $carrier } en { $a }, { $carried } en { $b }, { $over } de más.
hitch-dimension-open = Las medidas no bastan para decir si { $b } entra en el enganche de tres puntos. Mida antes.
    .short = Enganche: { $probability } probable
    .workshop = { $dimension-name }: { $carrier } en { $a }, { $carried } en { $b }; { $probability } de probabilidad de que entre{ $settles ->
        [none] .
       *[other] . Con esa medida a ±{ $settles } quedaría resuelto.
    }
hitch-fits = El enganche de tres puntos es del tamaño correcto.
    .short = La categoría de enganche coincide
    .workshop = Categoría de enganche { $category } (ISO 730) en ambos lados.
hitch-frame-stiff = Los ganchos del enganche rápido tienen otra separación que los bulones de { $b }.
    .short = El enganche rápido no encaja
    .workshop = Categoría de enganche { $carrier } en { $a } con enganche rápido, { $carried } en { $b }: los ganchos no se pueden mover. Quitar el enganche rápido.
hitch-needs-bushings = El enganche es un tamaño mayor de lo que { $b } necesita; se compensa con casquillos de reducción.
    .short = Necesita casquillos de reducción
    .workshop = Categoría de enganche { $carrier } en { $a }, { $carried } en { $b }: montar casquillos de reducción.
hitch-other-span = Hay que ajustar los brazos inferiores a la separación de bulones de { $b }.
    .short = Brazos inferiores por ajustar
    .workshop = Categoría de enganche { $carrier } en { $a }, { $carried } en { $b }: los bulones son iguales, la separación no. Mover los brazos inferiores y ajustar sus estabilizadores.
hitch-unknown = No se conoce el tamaño de un enganche de tres puntos.
    .short = Enganche: faltan datos
    .workshop = Enganche de tres puntos: faltan datos de { $missing-of }: { $missing-name }.
holes-drilled = { $drill ->
    [one] Ha elegido taladrar { $drill } agujero en { $side }. Pregunte al fabricante antes de taladrar.
   *[other] Ha elegido taladrar { $drill } agujeros en { $side }. Pregunte al fabricante antes de taladrar.
}
    .short = { $drill ->
        [one] { $drill } agujero por taladrar (elegido)
       *[other] { $drill } agujeros por taladrar (elegido)
    }
    .workshop = { $roles-name }, si el fabricante está de acuerdo: marcar { $drill ->
        [one] { $drill } agujero
       *[other] { $drill } agujeros
    } a través sobre { $side }, { $port }, y taladrar; luego { $bolts ->
        [one] entra { $bolts } tornillo
       *[other] entran { $bolts } tornillos
    } y sobran { $margin }. { $work } de taller.
holes-may-meet = Los planos no bastan para decir si los agujeros de { $b } y { $a } coinciden. Mida antes.
    .short = Agujeros: { $probability } probable
    .workshop = { $roles-name }: { $bolts ->
        [one] { $bolts } tornillo
       *[other] { $bolts } tornillos
    }, { $margin-way ->
        [short] faltan { $margin }
       *[spare] sobran { $margin }
    }; los planos pueden variar ±{ $worst-case } en total; { $probability } de probabilidad de que entren todos los tornillos{ $settles ->
        [none] .
       *[other] . Con una medida a ±{ $settles } quedaría resuelto.
    }
holes-meet = Los agujeros de { $b } y { $a } coinciden.
    .short = Agujeros: sobran { $margin }
    .workshop = { $roles-name }: { $bolts ->
        [one] entra { $bolts } tornillo
       *[other] entran { $bolts } tornillos
    }, sobran { $margin }; los planos pueden variar ±{ $worst-case } en total.
holes-miss = Los agujeros de { $b } y { $a } no coinciden.
    .short = { $margin ->
        [none] Los agujeros no coinciden
       *[other] { $margin-way ->
            [short] Agujeros: faltan { $margin }
           *[spare] Los agujeros no coinciden
        }
    }
    .workshop = { $roles-name }: { $bolts ->
        [one] hace falta { $bolts } tornillo
       *[other] hacen falta { $bolts } tornillos
    } y no hay posición que sirva, ni ampliando ni taladrando agujeros{ $margin ->
        [none] .
       *[other] ; en el mejor caso { $margin-way ->
            [short] faltan { $margin }
           *[spare] sobran { $margin }
        }, y los planos pueden variar ±{ $worst-case } en total.
    }
holes-need-drilling = { $drill ->
    [one] Hay que taladrar { $drill } agujero en { $side }.
   *[other] Hay que taladrar { $drill } agujeros en { $side }.
}
    .short = { $drill ->
        [one] { $drill } agujero por taladrar
       *[other] { $drill } agujeros por taladrar
    }
    .workshop = { $roles-name }, si el fabricante está de acuerdo: { $drill ->
        [one] taladrar { $drill } agujero en { $side }
       *[other] taladrar { $drill } agujeros en { $side }
    }{ $port ->
        [none] {""}
       *[other] {" "}({ $port })
    }; { $bolts ->
        [one] después entra { $bolts } tornillo
       *[other] después entran { $bolts } tornillos
    } y sobran { $margin }.{ $work ->
        [none] {""}
       *[other] {" "}{ $work } de taller.
    }
holes-need-opening = Hay que ampliar el diámetro de los agujeros en { $open-by } como máximo.
    .short = Ampliar agujeros { $open-by }
    .workshop = { $roles-name }, si el fabricante está de acuerdo: ampliar el diámetro de los agujeros en { $open-by } como máximo{ $open-carrier ->
        [none] {""}
       *[other] ; { $a }, { $carrier-port }: { $open-carrier }
    }{ $open-carried ->
        [none] {""}
       *[other] ; { $b }, { $carried-port }: { $open-carried }
    }; { $bolts ->
        [one] después entra { $bolts } tornillo
       *[other] después entran { $bolts } tornillos
    }.{ $margin-way ->
        [short] {" "}Tal como están, faltan { $margin }.
       *[spare] {""}
    }{ $work ->
        [none] {""}
       *[other] {" "}{ $work } de taller.
    }
holes-need-washers = Los agujeros de { $hole } de { $side } son anchos para tornillos de { $bolt }: ponga arandelas gruesas y anchas.
    .short = Necesita arandelas anchas
    .workshop = { $roles-name }: agujeros de { $side } { $hole } con tornillos de { $bolt }, más anchos que la serie basta; poner arandelas gruesas y anchas bajo cabeza y tuerca (práctica común).
holes-opened = Ha elegido ampliar en { $open-by } el diámetro de los agujeros de { $side }.
    .short = Ampliar agujeros { $open-by } (elegido)
    .workshop = { $roles-name }: ampliar en { $open-by } el diámetro de los agujeros de { $side }, { $port }; luego { $bolts ->
        [one] entra { $bolts } tornillo
       *[other] entran { $bolts } tornillos
    } y sobran { $margin }. { $work } de taller.
holes-plan-not-needed = { $kind ->
    [opening] Aquí no hace falta ampliar los agujeros de { $item }.
   *[drilling] Aquí no hace falta taladrar { $item }.
}
    .short = { $kind ->
        [opening] No hace falta ampliar
       *[drilling] No hace falta taladrar
    }
    .workshop = { $kind ->
        [opening] Se eligió ampliar agujeros ({ $item }, { $port }), y ninguna unión de este montaje lo necesita.
       *[drilling] Se eligió taladrar ({ $item }, { $port }), y ninguna unión de este montaje lo necesita.
    }
holes-plan-not-possible = { $kind ->
    [opening] La ampliación de agujeros elegida en { $item } no se puede hacer.
   *[drilling] El taladrado elegido en { $item } no se puede hacer.
}
    .short = { $kind ->
        [opening] No se puede ampliar
       *[drilling] No se puede taladrar
    }
    .workshop = { $reason ->
        [no-port] { $item } no tiene { $port }.
        [no-holes] { $item }, { $port }: no hay agujeros.
       *[too-much] { $item }, { $port }: se pueden ampliar 1 mm como máximo (práctica común).
    } Elegir de nuevo.
holes-too-many = Hay demasiados agujeros para probar todas las posiciones de { $b } sobre { $a }. Ponga uno sobre otro o compare las referencias.
    .short = Demasiados agujeros para comparar
    .workshop = { $roles-name }: { $holes } agujeros; se comparan { $most } como máximo, menos donde su disposición es irregular.
holes-unknown = De un lado no se conocen los agujeros; aún no se puede decir si coinciden.
    .short = Agujeros: faltan datos
    .workshop = { $roles-name }: faltan datos de { $missing-of }: { $missing-name }.
hooks-hold = Los ganchos de { $b } asientan en la barra de { $a } y el pasador entra.
    .short = Ganchos y pasador encajan
    .workshop = { $roles-name }: ganchos y pasador dentro de los { $limit } habituales; juego { $play }.
hooks-may-hold = Los planos no bastan para decir si los ganchos de { $b } encajan en { $a }. Mida antes.
    .short = Ganchos: { $probability } probable
    .workshop = { $roles-name }: { $dimension-name }, { $play } entre los dos, lo habitual es hasta { $limit }; { $probability } de probabilidad de que encajen{ $settles ->
        [none] .
       *[other] . Con esa medida a ±{ $settles } quedaría resuelto.
    }
hooks-misfit = Los ganchos de { $b } no encajan en { $a }.
    .short = Los ganchos no encajan: { $off-by }
    .workshop = { $roles-name }: { $dimension-name } { $carrier } en { $a }, { $carried } en { $b }: { $off-by } de diferencia, lo habitual es hasta { $limit }.
hooks-need-bush = La unión de { $b } y { $a } tiene { $play } de holgura. Se compensa con un casquillo.
    .short = Necesita un casquillo
    .workshop = { $roles-name }: { $dimension-name } { $carrier } en { $a }, { $carried } en { $b }: holgura { $play }, como mucho { $limit } (práctica común). Poner un casquillo si el fabricante lo permite.
hooks-unknown = No se conoce una medida de los ganchos.
    .short = Ganchos: faltan datos
    .workshop = { $roles-name }: faltan datos de { $missing-of }: { $missing-name }.
hydraulic-lines-unknown = No se sabe si se pueden unir las líneas hidráulicas, porque faltan datos.
    .short = Líneas hidráulicas sin datos
    .workshop = Líneas hidráulicas: falta un dato de { $missing-of }: { $missing-name }.
hydraulics-flow-high = La máquina bombea más aceite del que admite el implemento.
    .short = Caudal { $flow }, máximo { $most }
    .workshop = Caudal { $flow }; el implemento admite { $most } como máximo. Montar un divisor de caudal o preguntar a su fabricante.
hydraulics-flow-short = La máquina bombea { $flow } de aceite, menos de los { $least } con los que trabaja el implemento.
    .short = Poco caudal
    .workshop = Caudal { $flow }; el implemento necesita { $least }. Cada carrera dura { $time-ratio } veces lo normal.
hydraulics-match = La hidráulica de la máquina es compatible con el implemento.
    .short = Hidráulica: { $flow } a { $pressure }
    .workshop = Caudal { $flow } a { $pressure }: { $power } de potencia hidráulica.
hydraulics-no-power-beyond = El implemento necesita su propia alimentación de la bomba (power beyond, toma directa), y la máquina aún no la tiene.
    .short = Necesita kit power beyond
    .workshop = Power beyond (toma directa de la bomba): la necesita el implemento y la máquina no la tiene. Montar un kit.
hydraulics-outlets-short = A la máquina le faltan salidas hidráulicas.
    .short = Salidas hidráulicas: { $has }, hacen falta { $need }
    .workshop = Salidas hidráulicas: tiene { $has }, necesita { $need }. Añadir un distribuidor o una válvula desviadora.
hydraulics-pressure-high = La presión hidráulica de la máquina es mayor de la que admite el implemento. No lo conecte hasta que un taller baje el tarado de la válvula limitadora.
    .short = Presión { $pressure }, máximo { $most }
    .workshop = Presión de tarado { $pressure }; el implemento admite { $most } como máximo. No conectarlo antes de bajar el tarado de la válvula limitadora.
hydraulics-pressure-short = La presión hidráulica de la máquina es de { $pressure }, menos de los { $least } con los que trabaja el implemento.
    .short = Poca presión hidráulica
    .workshop = Presión de tarado { $pressure }; el implemento necesita { $least }.
hydraulics-unknown = Faltan datos de la hidráulica. No conecte el implemento sin conocer la presión y el caudal.
    .short = Hidráulica: faltan datos
    .workshop = Hidráulica: faltan datos de { $missing-of }: { $missing-name }.
implement-own-seat = Se eligió el asiento propio del implemento, y este no tiene.
    .short = Sin asiento propio del implemento
    .workshop = Asiento: se eligió el propio del implemento; este no tiene.
joint-listed = En la guía del fabricante figuran juntos { $a } y { $b }.
    .short = Figuran juntos en la guía
    .workshop = { $roles-name }: el fabricante los da juntos { $guide ->
        [none] fuera de la guía.
       *[other] en { $guide } del { $date }.
    }
joint-replaced-part = Según los registros de sustitución del fabricante, { $a } y { $b } se unen con las mismas piezas que un conjunto de su guía.
    .short = Piezas sustituidas de la guía
    .workshop = { $roles-name }: por sustitución, { $part } lleva al conjunto de la guía «{ $witness }» + «{ $witness-other }».
joint-same-part = { $a } y { $b } se unen con las mismas piezas que un conjunto de la guía del fabricante.
    .short = Mismas piezas que en la guía
    .workshop = { $roles-name }: la misma pieza, { $part }, hace esta unión en el conjunto de la guía «{ $witness }» + «{ $witness-other }».
kinds-differ = { $b } y { $a } se conectan de formas distintas.
    .short = Formas de unión distintas
    .workshop = { $roles-name }: { $carrier-name } en { $a }, { $carried-name } en { $b }.
lift-enough = El enganche puede levantar el implemento; sobran { $left }.
    .short = Elevación: sobran { $left }
    .workshop = Capacidad de elevación { $lift } donde cuelga el implemento, masa { $mass }: sobran { $left }.
lift-short = El enganche no puede levantar el implemento: pesa { $over } de más.
    .short = { $over } de más para el enganche
    .workshop = Capacidad de elevación { $lift } donde cuelga el implemento, masa { $mass }: { $over } de más.
lift-unknown = No se sabe si el enganche puede levantar el implemento.
    .short = Elevación: faltan datos
    .workshop = Elevación: faltan datos de { $missing-of }: { $missing-name }.
listing-and-dimensions-disagree = En la guía del fabricante figuran juntos { $a } y { $b }, pero por sus medidas no se unen. Uno de los dos datos está mal. No compre nada antes de aclararlo.
    .short = Guía y medidas no concuerdan
    .workshop = { $roles-name }: figuran juntos, pero por las medidas no se unen{ $margin ->
        [none] .
       *[other] : { $margin-way ->
            [short] faltan { $margin }
           *[spare] sobran { $margin }
        }{ $worst-case ->
            [none] .
           *[other] ; los planos pueden variar ±{ $worst-case } en total.
        }
    } Comparar las referencias en las unidades antes de comprar nada.
load-long = La carga sobresale por detrás del remolque más que un límite de circulación. Pregunte a la autoridad de tráfico antes de viajar con ella.
    .short = La carga sobresale mucho
    .workshop = Sobresale { $overhang } por detrás, límite { $most } ({ $limit-name }): { $beyond } de más.
load-near-rating = { $bearer ->
    [front-axle] El eje delantero está tan cerca de su carga admisible que hay que pesarlo.
    [rear-axle] El eje trasero está tan cerca de su carga admisible que hay que pesarlo.
    [front-tyre] Los neumáticos delanteros están tan cerca de su carga admisible que hay que pesar el eje.
    [rear-tyre] Los neumáticos traseros están tan cerca de su carga admisible que hay que pesar el eje.
   *[hitch] El implemento está tan cerca de lo que levanta el enganche que hay que pesarlo.
}
    .short = { $bearer ->
        [front-axle] Pesar el eje delantero
        [rear-axle] Pesar el eje trasero
        [front-tyre] Pesar por los neumáticos delanteros
        [rear-tyre] Pesar por los neumáticos traseros
       *[hitch] Pesar el implemento
    }
    .workshop = { $bearer-name }: carga { $load }, con un error de { $off } como máximo, admisible { $rated }.
load-wide = La carga es más ancha que un límite de circulación. Pregunte a la autoridad de tráfico antes de viajar con ella.
    .short = Carga { $beyond } demasiado ancha
    .workshop = Anchura { $width }, límite { $most } ({ $limit-name }): { $beyond } de más.
loading-unknown = Faltan datos, así que no se sabe cómo viaja la máquina en el remolque.
    .short = Transporte: faltan datos
    .workshop = Transporte: faltan datos de { $item }: { $missing-name }.
loads-unknown = Faltan datos, así que no se conocen las cargas por eje. No levante el implemento ni conduzca con él antes de conocerlas.
    .short = Cargas por eje: faltan datos
    .workshop = Cargas por eje: faltan datos de { $item }: { $missing-name }.
measured-against-listing = En la guía figuran juntos { $a } y { $b }, pero por lo medido en { $unit } no se unen{ $margin ->
    [none] .
   *[other] : { $margin-way ->
        [short] faltan { $margin }
       *[spare] sobran { $margin }
    }.
}
    .short = Medido: no se une, aunque figura
    .workshop = { $roles-name }: figuran juntos, pero por lo medido en la unidad no se unen{ $margin ->
        [none] .
       *[other] : { $margin-way ->
            [short] faltan { $margin }
           *[spare] sobran { $margin }
        }.
    } Para esta unidad vale lo medido. Medir otra vez antes de comprar nada.
measurement-not-used = Una medida de { $item } no se puede usar. Vuelva a tomarla.
    .short = Medida sin usar
    .workshop = { $item }, { $port }, { $dimension-name }: { $reason ->
        [no-port] { $item } no tiene { $port }.
        [no-dimension] { $port } no tiene esa medida.
        [half-range] no puede tener tanta imprecisión.
       *[impossible] ese valor no puede ser correcto.
    }
metal-too-little = Un agujero de { $hole } en { $side } dejaría muy poco metal: { $metal } hasta { $towards ->
    [hole] el agujero siguiente
   *[edge] el borde
}, y hacen falta { $least }.
    .short = Muy poco metal junto al agujero
    .workshop = { $roles-name }: { $side }, { $port }: del centro de un agujero de { $hole }, { $metal } hasta { $towards ->
        [hole] el centro del siguiente
       *[edge] el borde de la placa
    }; hacen falta al menos { $least } (según las reglas europeas de estructuras de acero, como orientación).
metal-unknown = Antes de hacer un agujero de { $hole } en { $side }, mire hasta dónde llega la placa: desde su centro hasta el borde hacen falta { $least }.
    .short = Distancia al borde desconocida
    .workshop = { $roles-name }: { $side }, { $port }: medir de los agujeros exteriores al borde de la placa. Un agujero de { $hole } necesita { $least } desde su centro (según las reglas europeas de estructuras de acero, como orientación).
must-come-off = Hay que quitar de la máquina: { $what }.
    .short = Hay que quitar: { $what }
    .workshop = Para { $item } hay que quitar de la máquina: { $what }.
must-go-on = La máquina tiene que llevar: { $what }.
    .short = Necesita: { $what }
    .workshop = Para { $item } la máquina tiene que llevar: { $what }.
needs-frame = { $item } necesita un bastidor de montaje.
    .short = Necesita un bastidor de montaje
    .workshop = { $item } se engancha en un portaimplementos; el enganche de tres puntos solo no lo tiene.
nose-load-in-range = { $heading ->
    [backward] Mirando hacia atrás, la máquina puede ir en el remolque con la carga vertical en la lanza correcta.
   *[forward] Mirando hacia delante, la máquina puede ir en el remolque con la carga vertical en la lanza correcta.
}
    .short = Carga en la lanza { $nose }
    .workshop = Carga vertical en la lanza { $nose } (admisible { $most-way ->
        [same] { $least }
       *[range] de { $least } a { $most }
    }), con la máquina mirando hacia { $heading ->
        [backward] atrás
       *[forward] delante
    } y su eje trasero { $to-way ->
        [same] a { $from }
       *[range] de { $from } a { $to }
    } por delante del borde trasero de la plataforma.
nose-load-near = De la exactitud de las masas depende que la carga vertical en la lanza pueda quedar dentro de lo admisible en esta plataforma. Pésela en el enganche antes de circular.
    .short = Pesar en el enganche
    .workshop = Carga vertical en la lanza { $nose }, con un error de { $off } como máximo, admisible { $most-way ->
        [same] { $least }
       *[range] de { $least } a { $most }
    }, con la máquina mirando { $heading ->
        [backward] hacia atrás
       *[forward] hacia delante
    }.
nose-load-out-of-range = En ningún punto de la plataforma del remolque es correcta la carga vertical en la lanza.
    .short = Carga en la lanza incorrecta: { $nose }
    .workshop = Carga vertical en la lanza { $nose } en el mejor punto de la plataforma, admisible { $most-way ->
        [same] { $least }
       *[range] de { $least } a { $most }
    }.
nothing-answers = { $role ->
    [axle-anchor] { $a } no tiene dónde atornillarse en el eje trasero.
    [front-anchor] { $a } no tiene dónde atornillarse delante.
    [rack] A { $a } le falta un portaimplementos.
    [hitch] A { $a } le falta un enganche de tres puntos.
    [seat-deck] A { $a } le falta una plataforma de asiento.
    [power-take-off] A { $a } le falta una toma de fuerza.
    [pressure] { $a } necesita una línea de presión que aún falta.
    [return] { $a } necesita una línea de retorno que aún falta.
    [case-drain] { $a } necesita una línea de drenaje que aún falta.
   *[wiring] { $a } necesita un cableado que aún falta.
}
    .short = { $role ->
        [axle-anchor] Falta el anclaje del eje
        [front-anchor] Falta el anclaje delantero
        [rack] Falta el portaimplementos
        [hitch] Falta el enganche de tres puntos
        [seat-deck] Falta la plataforma del asiento
        [power-take-off] Falta la toma de fuerza
        [pressure] Línea de presión por tender
        [return] Línea de retorno por tender
        [case-drain] Línea de drenaje por tender
       *[wiring] Cableado por tender
    }
    .workshop = { $a }, { $port }: nada en este montaje le corresponde ({ $role-name }).
nothing-to-put-on = La máquina tiene que llevar: { $what }. El catálogo no tiene ninguno para ella.
    .short = Necesita: { $what }
    .workshop = { $item } necesita { $what } en la máquina, y el catálogo no tiene ninguno para ella. Pregunte al fabricante.
own-seat-comes-off = El asiento propio del apero no es el elegido. Hay que quitarlo.
    .short = Quitar el asiento del apero
    .workshop = Quitar el asiento propio del apero: { $hours }.
own-seat-unknown = No se sabe si el apero lleva asiento propio, ni si ese se puede quitar.
    .short = Asiento del apero desconocido
    .workshop = Asiento propio del apero: faltan datos de { $missing-of }: { $missing-name }.
number-read-differs = La referencia leída en { $item } no es la que el catálogo indica allí{ $rests ->
    [listed] , pero un conjunto con la pieza leída está en la guía.
    [measured] . Decide lo que se midió en ella.
   *[nothing] . Puede que lo que el catálogo dice de esta unión no valga para esta unidad.
}
    .short = Otra referencia que en el catálogo
    .workshop = { $item }, { $port }: { $read } leída en la unidad, { $listed } en el catálogo. { $rests ->
        [listed] Decide la referencia leída: es parte de un conjunto de la guía.
        [measured] Decide lo que se midió en la unidad.
       *[nothing] Nada de lo que la fila indica de esta pieza cuenta hasta que se mida.
    }
pins-count-differs = { $a } tiene { $carrier } puntos de bulón, { $b } tiene { $carried }.
    .short = Puntos de bulón: { $carrier } y { $carried }
    .workshop = { $roles-name }: { $carrier } puntos en { $a }, { $carried } en { $b }. Cada oreja necesita su horquilla.
pins-heights-off = Los puntos de bulón de { $b } no están a las alturas de los de { $a }.
    .short = Alturas de bulones: { $over } de más
    .workshop = { $roles-name }: las alturas de los puntos difieren { $off-by } entre sí, { $over } más que la holgura de los bulones.
pins-enter = Los bulones de { $b } y { $a } encajan.
    .short = Los bulones encajan
    .workshop = { $roles-name }, { $point }: juego { $running }, lo habitual es hasta { $limit }.
pins-may-enter = Los planos no bastan para decir si los bulones de { $b } y { $a } encajan. Mida antes.
    .short = Bulones: { $probability } probable
    .workshop = { $roles-name }{ $point ->
        [none] {""}
       *[other] , { $point }
    }, { $dimension-name }: { $running } de juego, lo habitual es hasta { $limit }; { $probability } de probabilidad de que encajen{ $settles ->
        [none] .
       *[other] . Con esa medida a ±{ $settles } quedaría resuelto.
    }
pins-need-sleeve = El bulón es más delgado que su alojamiento. Se compensa con un casquillo.
    .short = Casquillo necesario: { $running } de juego
    .workshop = { $roles-name }, { $point }: alojamiento { $bore }, bulón { $pin }, juego { $running }; por encima de { $limit } necesita un casquillo (práctica común).
pins-side-play = La unión tiene juego lateral. Se compensa con arandelas de ajuste.
    .short = Arandelas: { $play } de juego lateral
    .workshop = { $roles-name }, { $point }: juego lateral { $play }; por encima de { $limit } necesita arandelas de ajuste (práctica común).
pins-sleeved = { $item } ajusta el bulón a su alojamiento.
    .short = Con casquillo { $item }
    .workshop = { $roles-name }: { $item } reviste el alojamiento de { $bore } para el bulón de { $pin }.
pins-spread-off = Las orejas de { $b } están { $off-by } demasiado { $carried-way ->
    [narrow] juntas
   *[wide] separadas
} para { $a }.
    .short = Separación: { $off-by } de diferencia
    .workshop = { $roles-name }: separación { $carrier } en { $a }, { $carried } en { $b }: { $off-by } { $carried-way ->
        [narrow] de menos
       *[wide] de más
    }, lo habitual es hasta { $limit }.
pins-unknown = No se conoce una medida de los bulones.
    .short = Bulones: faltan medidas
    .workshop = { $roles-name }: faltan datos de { $missing-of }: { $missing-name }.
pins-will-not-enter = { $dimension ->
    [width] Una oreja es demasiado ancha para su horquilla.
   *[diameter] Un bulón es demasiado grueso para su alojamiento.
}
    .short = { $dimension ->
        [width] Oreja { $over } demasiado ancha
       *[diameter] Bulón { $over } demasiado grueso
    }
    .workshop = { $roles-name }, { $point }: { $dimension-name } { $carrier } en { $a }, { $carried } en { $b }: { $over } de más.
plates-may-fit = Los planos no dicen si las placas laterales de { $b } entran sobre { $a }. Mida antes.
    .short = Ancho de las placas: demasiado justo
    .workshop = { $roles-name }: { $between } entre las placas, { $over } sobre las caras de la máquina, hueco { $gap }; tiene que estar entre 0 y { $limit }, y los datos pueden variar ±{ $worst-case } en total; probabilidad de que entre { $probability }{ $settles ->
        [none] .
       *[other] . Un ancho conocido a ±{ $settles } lo aclararía.
    }
plates-need-shims = { $b } es { $gap } más ancho entre sus placas laterales que { $a }. Se rellena con suplementos.
    .short = Suplementos en las placas laterales
    .workshop = { $roles-name }: { $between } entre las placas, { $over } sobre las caras de la máquina: { $gap } de suplementos, la mitad por lado; se suplementa hasta { $limit } (práctica común).
plates-too-narrow = { $b } no entra sobre { $a }: sus placas laterales están { $short } demasiado juntas.
    .short = Placas laterales demasiado juntas
    .workshop = { $roles-name }: { $between } entre las placas, { $over } sobre las caras de la máquina: faltan { $short }. No abrir el bastidor a la fuerza.
plates-too-wide = { $b } es demasiado ancho para { $a }: quedan { $gap } de hueco entre las placas laterales y la máquina.
    .short = Placas laterales demasiado separadas
    .workshop = { $roles-name }: { $between } entre las placas, { $over } sobre las caras de la máquina: hueco de { $gap }; los suplementos compensan { $limit } (práctica común).
plates-unknown = No se sabe qué ancho tiene { $a } sobre sus caras o { $b } entre sus placas laterales.
    .short = Ancho de las placas desconocido
    .workshop = { $roles-name }: faltan datos de { $missing-of }: { $missing-name }.
port-looked-missing = A esta unidad le falta lo que la unión necesita.
    .short = Falta en esta unidad
    .workshop = { $roles-name }: buscado y no encontrado: { $port }.
port-not-on-serial = Las unidades con este número de serie no tienen lo que la unión necesita.
    .short = No en este número de serie
    .workshop = { $roles-name }: el número de serie { $serial } no lo lleva: { $port }.
port-serial-unknown = Solo algunas unidades tienen lo que la unión necesita. Mire la suya o introduzca su número de serie.
    .short = Depende del número de serie
    .workshop = { $roles-name }: solo en algunos números de serie: { $port }.
place-unknown = No se sabe dónde va { $item } en la máquina; lo que depende de ello no se puede calcular.
    .short = Posición desconocida
    .workshop = Ninguna unión de los datos dice dónde queda { $item }. Medirlo o preguntar al fabricante.
power-high = La máquina tiene más potencia de la que admite el implemento.
    .short = Potencia { $power }, máximo { $most }
    .workshop = Potencia en la TDF { $power }; el implemento admite { $most } como máximo.
power-short = La máquina tiene poca potencia para el implemento.
    .short = Potencia { $power }, hacen falta { $least }
    .workshop = Potencia en la TDF { $power }; el implemento necesita { $least }.
power-unknown = No se conoce la potencia de la máquina en la toma de fuerza (TDF).
    .short = Potencia: faltan datos
    .workshop = Faltan datos de { $missing-of }: { $missing-name }.
pto-differs = { $dimension ->
    [speed] La toma de fuerza (TDF) no gira al régimen que el implemento necesita.
    [rotation] La toma de fuerza (TDF) gira al revés.
   *[shaft-type] La transmisión cardán necesita otra horquilla.
}
    .short = { $dimension ->
        [speed] Régimen de la TDF distinto
        [rotation] La TDF gira al revés
       *[shaft-type] El cardán necesita otra horquilla
    }
    .workshop = { $dimension ->
        [speed] { $dimension-name }: { $carrier-name } rpm en { $a }, { $carried-name } rpm en { $b }.
       *[other] { $dimension-name }: { $carrier-name } en { $a }, { $carried-name } en { $b }.
    }
pto-fits = La toma de fuerza (TDF) es compatible con el implemento.
    .short = TDF compatible
    .workshop = TDF: tipo { $shaft-type } (ISO 500-1), { $speed } rpm en ambos lados.
pto-unknown = Faltan datos de la toma de fuerza (TDF).
    .short = TDF: faltan datos
    .workshop = Faltan datos de { $missing-of }: { $missing-name }.
ramp-axle-light = Al subir la rampa queda poco peso en el { $axle ->
        [front] eje delantero
       *[rear] eje trasero
    }: { $load }; hacen falta al menos { $least }. Apenas dirige, y una sacudida puede levantarlo.
    .short = { $axle ->
        [front] Rampa: solo { $load } en el eje delantero
       *[rear] Rampa: solo { $load } en el eje trasero
    }
    .workshop = En la rampa, { $way ->
        [forward] hacia delante
       *[backward] marcha atrás
    }: { $axle ->
        [front] eje delantero
       *[rear] eje trasero
    } { $load }, hacen falta { $least } (propuesta propia, sin valor publicado).
ramp-clears = { $way ->
    [forward] Hacia delante, la máquina sube la rampa del remolque sin rozar.
    [backward] Marcha atrás, la máquina sube la rampa del remolque sin rozar.
   *[either] La máquina sube la rampa del remolque sin rozar.
}
    .short = Rampa: quedan { $clearance }
    .workshop = Rampa { $ramp }: { $item } es lo que más se acerca, quedan { $clearance }.
ramp-drags = { $item } roza { $drags-by } en la rampa del remolque. { $shortest ->
    [none] Ni la rampa transportable más larga basta.
   *[other] Bastan unas rampas de al menos { $shortest }.
}
    .short = Roza { $drags-by } en la rampa
    .with = rampas más largas
    .workshop = Rampa { $ramp }, { $way ->
        [backward] marcha atrás
       *[forward] hacia delante
    }: { $item } está { $drags-by } demasiado bajo, { $distance } { $place ->
        [ahead] por delante del eje trasero, ante las ruedas delanteras
        [between] por delante del eje trasero, entre las ruedas
       *[behind] por detrás del eje trasero
    }. { $shortest ->
        [none] Ni la rampa transportable más larga deja los { $wanted } necesarios (práctica común).
       *[other] Unas rampas de al menos { $shortest } dejan los { $wanted } necesarios (práctica común).
    }
ramp-near = { $item } pasa tan cerca de la rampa del remolque que hay que medir, y ni la rampa transportable más larga deja con seguridad los { $wanted } necesarios. Mida antes de cargar; después suba muy despacio mientras alguien observa desde un lado, lejos de la rampa.
    .short = Rampa: medir antes
    .workshop = Rampa { $ramp }, { $way ->
        [backward] marcha atrás
       *[forward] hacia delante
    }: según el plano, { $item } queda { $clearance } por encima de la rampa; hacen falta { $wanted } (práctica común); las longitudes pueden tener un error de { $off }.
ramp-steep = La rampa del remolque sube a { $angle }: por ahí no sube ninguna máquina. { $shortest ->
    [none] Use otro remolque.
   *[other] Use rampas de al menos { $shortest }.
}
    .short = Rampa demasiado empinada
    .with = rampas más largas
    .workshop = Rampa o cola inclinada a { $angle }; a partir de 60° ya no es una rampa (práctica común).
ramp-tight = Solo quedan { $clearance } entre { $item } y la rampa del remolque; hacen falta { $wanted }. { $shortest ->
    [none] Ni la rampa transportable más larga basta.
   *[other] Bastan unas rampas de al menos { $shortest }.
}
    .short = Solo { $clearance } sobre la rampa
    .with = rampas más largas
    .workshop = Rampa { $ramp }, { $way ->
        [backward] marcha atrás
       *[forward] hacia delante
    }: { $clearance } bajo { $item }, { $distance } { $place ->
        [ahead] por delante del eje trasero, ante las ruedas delanteras
        [between] por delante del eje trasero, entre las ruedas
       *[behind] por detrás del eje trasero
    }. { $shortest ->
        [none] Ni la rampa transportable más larga deja los { $wanted } necesarios (práctica común).
       *[other] Unas rampas de al menos { $shortest } dejan los { $wanted } necesarios (práctica común).
    }
ramp-tips = La máquina vuelca en la rampa: el { $axle ->
        [front] eje delantero
       *[rear] eje trasero
    } se levanta al subir.
    .short = Vuelca en la rampa
    .workshop = En la rampa ({ $ramp }), { $way ->
        [forward] hacia delante
       *[backward] marcha atrás
    }: se levanta el { $axle ->
        [front] eje delantero
       *[rear] eje trasero
    }.
rear-seat-cannot = { $item } no puede quedar como lo eligió mientras se conduce.
    .short = { $item } no se mueve así
    .workshop = { $item } mientras se conduce: { $state ->
        [folded] tiene que plegarse; este asiento no se pliega.
        [slid] tiene que correrse; este asiento no se corre.
        [turned] tiene que girar; este asiento no gira.
       *[other] nada dice que pueda quedar así.
    }
rear-seat-moves = { $state ->
    [folded] Para conducir hay que plegar: { $item }.
    [slid] Para conducir hay que correr { $by } hacia delante: { $item }.
   *[off] Para conducir hay que quitar: { $item }.
}
    .short = { $state ->
        [folded] Plegar para conducir: { $item }
        [slid] Correr para conducir: { $item }
       *[off] Quitar para conducir: { $item }
    }
    .workshop = { $item } mientras se conduce: { $state ->
        [folded] plegarlo, a mano.
        [slid] correrlo { $by } hacia delante, a mano.
       *[off] quitarlo{ $hours ->
            [none] .
           *[other] , { $hours }.
        }
    }
room-close = El sitio entre el asiento y las palancas es casi justo el necesario: { $room }, como mínimo { $least }. Mídalo.
    .short = Sitio en el asiento: medir antes
    .workshop = Del punto índice del asiento a las palancas { $room }, con un error de { $off } como máximo; como mínimo { $least }.
seat-faces-forward = El implemento se maneja mirando hacia atrás, y este asiento solo mira hacia delante.
    .short = El asiento solo mira hacia delante
    .workshop = Asiento: mira hacia delante; las palancas del implemento quedan detrás.
seat-reach-far = Las palancas quedan demasiado lejos del asiento: { $distance }, como mucho { $most }.
    .short = Palancas a { $distance }, máximo { $most }
    .workshop = Del punto índice del asiento a las palancas { $distance }; como mucho { $most }.
seat-reach-unknown = No se sabe a qué distancia del asiento quedan las palancas.
    .short = Alcance de las palancas sin datos
    .workshop = Alcance de las palancas: falta un dato de { $missing-of }: { $missing-name }.
seat-room = Hay sitio para las rodillas entre el asiento y las palancas: { $room }; hace falta al menos { $least }.
    .short = Hay sitio en el asiento
    .workshop = Del punto índice del asiento a las palancas { $room }; como mínimo { $least }.
seat-room-short = Entre el asiento y las palancas faltan { $short } de sitio.
    .short = Faltan { $short } en el asiento
    .workshop = Del punto índice del asiento a las palancas { $room }; como mínimo { $least }: faltan { $short }.
seat-room-unknown = No se sabe cuánto sitio hay en el asiento.
    .short = Sitio en el asiento: faltan datos
    .workshop = Sitio en el asiento: faltan datos de { $missing-of }: { $missing-name }.
seat-station-differs = { $station ->
    [cab] Este asiento no está hecho para una máquina con cabina.
   *[open] Este asiento no está hecho para una máquina abierta.
}
    .short = { $station ->
        [cab] El asiento no es para cabinas
       *[open] El asiento no es para máquinas abiertas
    }
    .workshop = { $a }: no hecho para este puesto ({ $station-name }).
seat-station-unknown = No se sabe si este asiento es para máquinas abiertas o con cabina.
    .short = Asiento: ¿abierta o cabina?
    .workshop = { $a }: puesto abierto o cabina: falta el dato.
seat-switch-missing = El asiento no tiene el interruptor de asiento, que avisa a la máquina de que hay alguien sentado. Hay que montar uno según el manual del fabricante. No lo puentee.
    .short = Interruptor de asiento por montar
    .with = un interruptor de asiento
    .workshop = Interruptor de asiento: el asiento no lo tiene. Montar y cablear según el manual de la máquina. No puentearlo.
seat-switch-unknown = No se sabe si el asiento tiene un interruptor de asiento, que avisa a la máquina de que hay alguien sentado.
    .short = ¿Interruptor de asiento?
    .workshop = Interruptor de asiento: faltan datos del asiento. No usar la máquina con el interruptor puenteado.
seat-turns-not = El asiento del operador de esta máquina no gira.
    .short = El asiento no gira
    .workshop = Asiento: se eligió uno giratorio; el de la máquina no gira.
seat-without-its-supplier = { $supplier ->
    [machine] Este asiento solo viene con otra máquina.
    [frame] Este asiento solo viene con otro bastidor.
   *[implement] Este asiento solo viene con otro implemento.
}
    .short = { $supplier ->
        [machine] Solo con otra máquina
        [frame] Solo con otro bastidor
       *[implement] Solo con otro implemento
    }
    .workshop = { $a }: viene con algo que no está en este montaje ({ $supplier-name }). Averiguar si se vende suelto.
seats-clash = { $used ->
    [working] Mientras se trabaja, { $item } y el asiento del operador ocupan el mismo sitio.
   *[driving] Mientras se conduce, { $item } y el asiento del operador ocupan el mismo sitio.
}
    .short = Dos asientos en el mismo sitio
    .workshop = { $item } se solapa { $overlap } con el asiento del operador { $used ->
        [working] mientras se trabaja
       *[driving] mientras se conduce
    }{ $driver ->
        [folded] , con el asiento del operador plegado.
        [slid] , con el asiento del operador corrido hacia delante.
        [turned] , con el asiento del operador girado.
       *[other] { $behind ->
            [folded] , con { $item } plegado.
            [slid] , con { $item } corrido hacia delante.
           *[other] .
        }
    }
seats-unknown = { $used ->
    [working] No se sabe si el asiento del operador deja sitio al asiento trasero mientras se trabaja.
   *[driving] No se sabe si el asiento trasero deja sitio al asiento del operador mientras se conduce.
}
    .short = Sitio para ambos asientos desconocido
    .workshop = Ambos asientos, { $used ->
        [working] mientras se trabaja
       *[driving] mientras se conduce
    }: faltan datos de { $missing-of }: { $missing-name }.
site-unknown = Faltan datos de { $site }: { $missing-name }.
    .short = Lugar: faltan datos
    .workshop = Faltan datos de { $site }: { $missing-name }.
serial-of-another = El número de serie { $serial } no es de { $item } tal como figura aquí. Compruebe qué unidad es.
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
station-unknown = No se sabe si este bastidor es para máquinas abiertas o para cabinas.
    .short = ¿Abierta o cabina?
    .workshop = { $a }: puesto abierto o cabina: faltan datos.
swivel-close = Al girar, el asiento quizá golpee { $item }. Mídalo.
    .short = El asiento quizá golpee al girar
    .workshop = Asiento giratorio: barre un radio de { $radius }; { $item } está a { $room }, con un error de { $off } como máximo.
swivel-hits = El asiento golpea { $item } al girar.
    .short = El asiento golpea al girar
    .workshop = Asiento giratorio: barre un radio de { $radius }; { $item } está a { $room }.
swivel-unknown = No se sabe si el asiento tiene sitio para girar.
    .short = Sitio para girar sin datos
    .workshop = Asiento giratorio: falta un dato de { $missing-of }: { $missing-name }.
thread-depth-unknown = No se sabe qué profundidad tiene la rosca de { $side } ni en qué metal. Con { $least } de rosca basta en cualquiera.
    .short = Profundidad de rosca desconocida
    .workshop = { $roles-name }: averiguar profundidad y metal de los agujeros roscados de { $side }. { $least } de rosca bastan en acero, fundición y aluminio; en los más duros puede bastar menos (práctica común).
thread-too-short = La rosca de { $side } tiene { $depth } de profundidad; los tornillos piden { $least }.
    .short = Rosca demasiado corta
    .workshop = { $roles-name }: rosca en { $side } { $depth }, hacen falta al menos { $least } (práctica común). Una rosca corta se arranca.
thread-unknown = La medida sola ({ $size }) no dice qué rosca llevan los tornillos de { $side }: métrica o en pulgadas, gruesa o fina. Averígüelo antes.
    .short = Rosca desconocida
    .workshop = { $roles-name }: { $side }, { $size }: averiguar la rosca con un peine de roscas o en la lista de piezas. M12 y 1/2 in, M16 y 5/8 in se parecen y no roscan entre sí.
threads-differ = Los tornillos son { $bolt } y los agujeros de { $side } están roscados a { $tapped }: no roscan entre sí.
    .short = Roscas distintas
    .workshop = { $roles-name }: tornillos { $bolt }, agujeros de { $side } roscados a { $tapped }. Misma medida, dos roscas: empiezan y se agarrotan.
tie-downs-needed = { $count ->
    [one] Amarre la máquina con al menos { $count } cadena o cinta de { $each } de carga de trabajo (norma de EE. UU.). Vale la ley del lugar donde circule.
   *[other] Amarre la máquina con al menos { $count } cadenas o cintas de { $each } de carga de trabajo cada una (norma de EE. UU.). Vale la ley del lugar donde circule.
}
    .short = { $count ->
        [one] { $count } amarre de { $each }
       *[other] { $count } amarres de { $each } cada uno
    }
    .workshop = Norma de EE. UU. (49 CFR 393.106, 393.110): al menos { $count ->
        [one] { $count } amarre de
       *[other] { $count } amarres, cada uno de
    } { $each } o más de carga de trabajo; un amarre directo cuenta la mitad, lo que da los { $together } necesarios. Amarrar las cuatro esquinas si el manual lo pide; la ley local prevalece.
trailer-carries = { $rating ->
    [axle] Los ejes del remolque llevan su carga dentro de lo admisible.
   *[total] Máquina y remolque juntos no superan el peso admisible.
}
    .short = { $rating ->
        [axle] Ejes del remolque: quedan { $left }
       *[total] Remolque: quedan { $left }
    }
    .workshop = { $rating ->
        [axle] Ejes del remolque
       *[total] Remolque con la máquina
    }: { $load }, admisible { $rated }, quedan { $left }.
trailer-load-near = { $rating ->
    [axle] Los ejes del remolque están tan cerca de su carga admisible que hay que pesarlos.
   *[total] La máquina y el remolque juntos están tan cerca de lo admisible que hay que pesarlos.
}
    .short = Pesar antes de cargar
    .workshop = { $rating ->
        [axle] Ejes del remolque
       *[total] Máquina y remolque
    }: carga { $load }, con un error de { $off } como máximo, admisible { $rated }.
trailer-narrow = Medida por fuera de los neumáticos, la máquina es { $beyond } más ancha que la plataforma del remolque.
    .short = Remolque { $beyond } demasiado estrecho
    .workshop = Anchura por fuera de los neumáticos { $width }, plataforma { $deck }: { $beyond } demasiado ancha.
trailer-overloaded = { $rating ->
    [axle] Los ejes del remolque llevarían { $over } más de lo admisible.
   *[total] Máquina y remolque juntos superan en { $over } el peso admisible.
}
    .short = { $rating ->
        [axle] Ejes del remolque: { $over } de más
       *[total] Remolque: { $over } de más
    }
    .workshop = { $rating ->
        [axle] Ejes del remolque
       *[total] Remolque con la máquina
    }: { $load }, admisible { $rated }, { $over } de más.
trailer-short = La plataforma del remolque es más corta que la distancia entre ejes de la máquina.
    .short = Plataforma de solo { $deck }
    .workshop = Distancia entre ejes { $wheelbase }, plataforma { $deck }.
trailer-unknown = Faltan datos de { $trailer }: { $missing-name }.
    .short = Remolque: faltan datos
    .workshop = Faltan datos de { $trailer }: { $missing-name }.
tyre-overloaded = { $axle ->
    [front] Cada neumático delantero llevaría { $over } más de lo admisible.
   *[rear] Cada neumático trasero llevaría { $over } más de lo admisible.
}
    .short = { $axle ->
        [front] Cada neumático delantero: { $over } de más
       *[rear] Cada neumático trasero: { $over } de más
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
