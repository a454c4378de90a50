problem-line-column = línea { $line }, columna { $column }
problem-cell = { $table }, fila { $row }{ $column ->
    [none] {""}
   *[other] , columna { $column }
}
problem-suggestion = ¿Quería decir «{ $suggestion }»?

sort-value = un valor
sort-null = null
sort-flag = true o false
sort-number = un número
sort-whole-number = un número entero
sort-number-or-stated = un número o un registro con value, plus_minus y source
sort-text = texto
sort-list = una lista
sort-record = un registro
sort-word-or-record = una palabra o un registro
sort-field-name = el nombre de un campo entre comillas dobles
sort-colon = dos puntos
sort-comma-or-close-bracket = una coma o ]
sort-comma-or-close-brace = una coma o {"}"}
sort-end-of-file = el final del archivo

problem-not-text = Esto no es texto UTF-8: el byte { $byte } no pertenece a ningún carácter.
    .mend = Guarde el archivo como UTF-8.
problem-syntax = Esto no es JSON; encontrado: { $found ->
    [end-of-file] el final del archivo
   *[other] «{ $found }»
}, esperado: { $expected }.
    .mend = Corrija aquí la puntuación; JSON no admite comentarios ni una coma antes de un corchete o una llave de cierre.
problem-too-large = El archivo tiene { $found } bytes; se leen como máximo { $greatest }.
    .mend = Reparta el catálogo en varios.
problem-too-many-values = El archivo contiene más de { $greatest } valores.
    .mend = Reparta el catálogo en varios.
problem-too-deep = Las listas y los registros están anidados a más de { $greatest } niveles.
    .mend = Un catálogo no necesita tantos niveles: compare con la descripción del formato.
problem-more-problems = Hay más errores; se muestran los primeros { $shown }.
    .mend = Corrija estos primero.
problem-missing-format = El archivo no dice en qué formato está.
    .mend = Empiece con "format": { $expected }.
problem-newer-format = El archivo está en el formato { $found }, más nuevo que el formato { $expected } que lee este programa.
    .mend = Use una versión más nueva de este programa.
problem-unknown-format = No existe el formato «{ $found }».
    .mend = El formato es el número { $expected }.
problem-unknown-table = No existe la tabla «{ $found }» en el formato.
    .mend = Corrija su nombre, o empiécelo con # y un espacio si es una hoja propia.
problem-missing-table = Falta la tabla «{ $table }».
    .mend = Añada lo que falta.
problem-duplicate-table = «{ $found }» es una segunda hoja de una tabla que ya está; no se ha leído nada de ella.
    .mend = Ponga sus filas en la primera hoja, o empiece su nombre con # y un espacio.
problem-unknown-column = La tabla no tiene ninguna columna «{ $found }».
    .mend = Corrija el encabezado, o empiécelo con # y un espacio si la columna es propia.
problem-no-heading = «{ $found }» está en una columna sin encabezado y se perdería.
    .mend = Escriba el encabezado en la fila 1; «remarks» si es una nota propia.
problem-unit-in-heading = El encabezado dice { $found }, pero la cabecera dice { $expected }.
    .mend = Escriba todos los números en { $expected }, y así todos los encabezados; o corrija la cabecera.
problem-merged-cells = Las celdas { $found } están combinadas: solo la primera contiene algo.
    .mend = Sepárelas y rellene cada celda.
problem-hidden-rows = { $last ->
    [none] La fila { $first } está oculta y se lee
   *[other] Las filas { $first } a { $last } están ocultas y se leen
} como las demás.
    .mend = Muestre las filas y borre lo que ya no valga.
problem-cell-error = La celda contiene el error { $found }, no un valor.
    .mend = Corrija la fórmula, o escriba el valor mismo.
problem-formula-without-value = La celda contiene una fórmula, pero no su valor.
    .mend = Abra el libro en una hoja de cálculo, deje que calcule y guárdelo; o escriba el valor mismo.
problem-date-instead = La celda contiene la fecha { $found }, en la que la hoja de cálculo convirtió lo escrito.
    .mend = Dé a la celda el formato «texto» y escríbalo de nuevo.
problem-blanks-around = «{ $found }» tiene espacios delante o detrás.
    .mend = Quite los espacios.
problem-comma-in-list = «{ $found }» tiene una coma donde se lee una lista: sería una sola entrada.
    .mend = Separe las entradas con punto y coma; la que lleve una coma propia va entre comillas rectas.

problem-wrong-type = Encontrado: { $found }; esperado: { $expected }.
    .mend = Escriba un valor de la clase esperada, o deje fuera un campo opcional.
problem-not-number = «{ $found }» no es un número.
    .mend = Escriba solo el número, con punto decimal y sin separar los millares; déjelo vacío si no se conoce.
problem-number-with-unit = «{ $found }» lleva «{ $unit }» junto al número.
    .mend = Escriba solo { $number } si está en la unidad de la cabecera; si no, conviértalo antes.
problem-not-flag = «{ $found }» no es ni sí ni no.
    .mend = Escriba yes o no en una tabla, true o false en JSON; déjelo vacío si no se sabe.
problem-unknown-field = Aquí no existe el campo «{ $found }».
    .mend = Valores posibles: { $expected }.
problem-missing-field = Falta el campo «{ $field }».
    .mend = Añada lo que falta.
problem-duplicate-field = El campo «{ $field }» aparece dos veces.
    .mend = Quite uno de los dos.
problem-unknown-word = «{ $found }» no es una de las palabras que pueden estar aquí.
    .mend = Valores posibles: { $expected }.
problem-not-exactly-one = { $found ->
    [none] Aquí no hay nada; se pide exactamente uno.
   *[other] Aquí hay varios ({ $found }); se pide exactamente uno.
}
    .mend = Valores posibles: { $expected }.
problem-wrong-count = Valores en la lista: { $found }; se piden: { $expected }.
    .mend = Escriba tantos valores como se piden.
problem-empty-list = La lista está vacía; hace falta al menos una entrada.
    .mend = Añada una entrada, o deje fuera una lista opcional.
problem-number-not-finite = { $found } no es un número finito.
    .mend = Corrija el número, o deje fuera el campo si no se conoce.
problem-number-out-of-range = { $found } está fuera del intervalo de { $least } a { $greatest }.
    .mend = Corrija el número, o deje fuera el campo si no se conoce.
problem-number-not-whole = { $found } no es un número entero.
    .mend = Corrija el número, o deje fuera el campo si no se conoce.
problem-unsafe-character = El texto tiene el carácter { $found }, que es invisible o invierte el sentido del texto.
    .mend = Quite el carácter.
problem-text-too-long = El texto tiene { $found } bytes; el máximo es { $greatest }.
    .mend = Acorte el texto.
problem-blank-text = El texto está vacío.
    .mend = Rellénelo.
problem-empty-record = El registro no dice nada.
    .mend = Déjelo fuera.
problem-unknown-unit = «{ $found }» no es una unidad conocida aquí.
    .mend = Valores posibles: { $expected }.
problem-unknown-currency = «{ $found }» no es un código de moneda de tres letras mayúsculas.
    .mend = Escriba el código de ISO 4217, por ejemplo USD, EUR o GBP.
problem-bad-date = «{ $found }» no es una fecha como 2014-02-01.
    .mend = Escriba año, mes y día con guiones.

problem-bad-id = «{ $found }» no es un identificador: letras minúsculas, cifras y guiones.
    .mend = Dele otro.
problem-reserved-id = El identificador «{ $found }» tiene un sentido propio en la guía.
    .mend = Dele otro.
problem-duplicate-id = El identificador «{ $found }» ya lo tiene { $other }.
    .mend = Dele otro.
problem-duplicate-part = La referencia «{ $found }» ya la tiene { $other }.
    .mend = Deje una sola fila por referencia.
problem-duplicate-port = Otra conexión de este artículo tiene el nombre «{ $found }».
    .mend = Dele otro.
problem-unknown-reference = «{ $found }» no está { $table ->
    [items] en las tablas de artículos
   *[other] en la tabla «{ $table }»
}.
    .mend = Corrija la escritura o añada la fila.
problem-unknown-part = La referencia «{ $found }» no está en la tabla de piezas.
    .mend = Corrija la escritura o añada la fila.
problem-named-twice = «{ $found }» figura dos veces en esta lista.
    .mend = Déjelo una sola vez.
problem-listed-with-itself = Un artículo figura consigo mismo.
    .mend = Nombre los artículos con los que figura, o quite la entrada.

problem-mass-not-positive = Una masa de { $found } no es posible: tiene que ser mayor que cero.
    .mend = Corrija el número, o deje fuera el campo si no se conoce.
problem-not-positive = { $found } no es posible: tiene que ser mayor que cero.
    .mend = Corrija el número, o deje fuera el campo si no se conoce.
problem-negative = { $found } no es posible: tiene que ser cero o más.
    .mend = Corrija el número, o deje fuera el campo si no se conoce.
problem-range-upside-down = El intervalo está al revés: termina en { $greatest }, por debajo de su comienzo en { $least }.
    .mend = Intercambie los dos o corrija el equivocado.
problem-outside-own-range = { $found } está fuera de su propio intervalo, de { $least } a { $greatest }.
    .mend = Corrija el número, o deje fuera el campo si no se conoce.
problem-share-out-of-range = Una proporción de { $found } no es posible: está entre 0 y 1.
    .mend = Corrija el número, o deje fuera el campo si no se conoce.
problem-folded-seat-not-outlined = El asiento se pliega y nada lo dibuja plegado.
    .mend = Añada formas con la función seat_folded que lo muestren plegado, o indique que no se pliega.
problem-folded-seat-not-stated = Hay un asiento dibujado plegado y nada dice que este asiento se pliegue.
    .mend = Indique que el asiento se pliega o quite las formas con la función seat_folded.
problem-own-seat-not-there = Se describe un asiento propio y nada dice que el apero lo traiga.
    .mend = Ponga own_seat en true o quite esto.
problem-price-too-fine = El precio { $found } es más fino que centésimas y se redondea.
    .mend = Redondéelo usted.
problem-half-range-too-great = El semiintervalo { $found } no es menor que el valor { $value } al que pertenece.
    .mend = Indique cuánto puede apartarse el valor real del indicado, en la misma unidad.
problem-unlikely-size = { $found } difícilmente es correcto aquí: lo usual es de { $least } a { $greatest }.
    .mend = Compruebe que el número está en la unidad de la cabecera y que no se ha corrido ninguna cifra ni la coma.
problem-loads-not-mass = Los ejes cargan { $loads } entre los dos, pero la masa es { $found }.
    .mend = Pese de nuevo, o corrija la masa o una de las cargas en vacío.
problem-load-above-rating = El eje carga { $found } ya en vacío, más que los { $rated } admisibles.
    .mend = Corrija la carga o la carga admisible.
problem-wheels-overlap = Las ruedas se cortan: radios de { $rear } y { $front } no caben en una batalla de { $found }.
    .mend = Corrija el radio equivocado; quizá figure un diámetro.
problem-tyre-above-machine = La rueda mide { $found } de alto, más que todo lo dibujado de la máquina ({ $top }).
    .mend = Corrija el radio; quizá figure un diámetro.
problem-parts-outweigh-whole = El brazo pesa { $found }, pero solo sus tramos pesan { $parts }.
    .mend = Corrija la masa: revise la unidad de la cabecera y el punto decimal.
problem-far-from-its-kind = { $found } queda lejos de los de su clase: el del medio es { $usual }.
    .mend = Compruebe que el número esté en la unidad de la cabecera y que no se haya corrido ninguna cifra ni el punto decimal.
problem-port-far-away = La conexión está en x = { $found }, muy lejos de la máquina.
    .mend = Corrija su posición: x cuenta hacia delante desde el eje trasero, en la unidad de la cabecera.
problem-unlikely-year = { $found } difícilmente es un año de fabricación.
    .mend = Corrija el año, o déjelo vacío si no se conoce.
problem-future-date = La fecha { $found } aún no ha llegado: hoy es { $today }.
    .mend = Corrija la fecha.
problem-long-label = La denominación tiene { $found } caracteres y no cabe donde se muestran.
    .mend = Acórtela a { $greatest } y ponga el resto en la nota.
problem-same-label = «{ $found }» es también la denominación de { $other }, y ni años, ni números de serie, ni serie distinguen a los dos.
    .mend = Dé a cada uno su propia denominación, o indique qué los distingue.
problem-rare-word = «{ $found }» figura solo aquí.
    .mend = Corrija la ortografía si se refiere a otra palabra.
problem-similar-part = «{ $found }» y «{ $like }» ({ $other }) son el mismo número salvo por cómo están escritos.
    .mend = Conserve una fila y escriba el número igual en todas partes.
problem-line-twice = La línea ya figura en { $other }.
    .mend = Quite una, o corrija su posición.
problem-sleeve-inside-out = El diámetro interior { $inner } del casquillo no es menor que su diámetro exterior { $outer }.
    .mend = Intercambie los dos diámetros.

problem-no-holes = El patrón de agujeros no tiene agujeros.
    .mend = Añádalos, o deje fuera la conexión si no se conocen.
problem-too-many-holes = El patrón de agujeros tiene { $found } agujeros; el máximo es { $greatest }.
    .mend = Deje fuera los agujeros que no usa ningún tornillo de la unión.
problem-holes-coincide = Los agujeros { $first } y { $second } están en el mismo sitio.
    .mend = Quite uno o corrija su posición.
problem-holes-overlap = Los agujeros { $first } y { $second } distan { $apart } y se cortan.
    .mend = Corrija la posición de uno, o haga de los dos un agujero rasgado.
problem-bolt-above-hole = Un tornillo de { $bolt } no pasa por un agujero de { $found }.
    .mend = Corrija el agujero o el tornillo de la conexión.
problem-holes-off-reference = Todos los agujeros quedan lejos de la referencia de la conexión, con su centro en u = { $u }, v = { $v }.
    .mend = Cuente u y v desde el punto que da la posición, o lleve la posición a los agujeros.
problem-more-bolts-than-holes = Se piden más tornillos que agujeros hay: { $required } tornillos, { $holes } agujeros.
    .mend = Corrija el número o añada los agujeros.
problem-thread-not-read = { $found } no es una rosca que se conozca aquí.
    .mend = Escríbala como M12, M12x1.25 o 1/2-13 UNC.
problem-no-points = La conexión de bulones no tiene puntos.
    .mend = Añádalos, o deje fuera la conexión si no se conocen.
problem-pose-not-square = Una cara que mira hacia «{ $faces }» no puede tener «{ $up }» como sentido hacia arriba.
    .mend = Elija un sentido hacia arriba en ángulo recto con el sentido en que mira la cara.
problem-pose-missing = La conexión no dice dónde está, así que no se puede colocar nada por ella.
    .mend = Añada la posición (pose).
problem-looks-away = La conexión ({ $role }) mira a { $found }, en sentido contrario a lo que ha de encontrar.
    .mend = Haga que mire a { $expected }; desde allí se ven sus agujeros.
problem-kind-not-of-role = Una conexión de la clase «{ $kind }» no puede servir de «{ $role }».
    .mend = Valores posibles: { $expected }.
problem-machine-carried = Una máquina no puede ser el lado llevado.
    .mend = Ponga "carrier" como extremo (end) de la conexión.
problem-adapter-leads-nowhere = El adaptador no lleva de una conexión a otra.
    .mend = Dele una conexión llevada y otra que lleve, o un casquillo.
problem-mount-without-port = El implemento no tiene conexión por la que montarse ({ $mount }).
    .mend = Añada una conexión llevada de esa función, o corrija el montaje (mount).
problem-frame-without-port = El bastidor no tiene la conexión «{ $role }» ({ $end }), que todo bastidor necesita.
    .mend = Añada la conexión, con lo que se sepa de ella.
problem-equipment-for-nothing = El equipamiento no es para ninguna máquina.
    .mend = Nombre las máquinas para las que es.
problem-equipment-blocks-own = El equipamiento bloquea una conexión que él mismo añade ({ $port }).
    .mend = Quite la conexión de una de las dos listas.
problem-equipment-names-nothing = Ninguna de las máquinas para las que es el equipamiento tiene «{ $found }».
    .mend = Corrija el nombre o las máquinas.
problem-equipment-port-taken = El equipamiento añade una conexión «{ $port }» que { $machine } ya tiene.
    .mend = Dé otro nombre a la conexión o bloquee la de la máquina.
problem-fitted-not-for-machine = La máquina se vende con { $found }, que no es para ella.
    .mend = Añada la máquina a ese equipamiento o quítelo aquí.
problem-kind-of-no-equipment = Ningún equipamiento es de la clase «{ $found }».
    .mend = Corrija la palabra o añada equipamiento de esa clase.

problem-path-unreadable = No se pueden leer los datos del trazo: «{ $found }».
    .mend = Use las órdenes M L H V C Q A Z; la primera, una M.
problem-path-out-of-range = Los datos del trazo tienen una coordenada más allá de { $greatest }.
    .mend = Corrija la coordenada.
problem-path-curved = Una cara inferior se hace de líneas rectas; esta tiene curvas.
    .mend = Use solo M, L, H, V y Z.
problem-draws-nothing = El trazado de «{ $shape }» no tiene dos puntos distintos y no dibuja nada.
    .mend = Dele sus puntos, o quite la forma.
problem-outline-crosses-itself = El contorno de «{ $shape }» se cruza consigo mismo en ({ $x }, { $y }).
    .mend = Ponga sus puntos en orden alrededor del contorno.
problem-outline-too-detailed = Los contornos tienen demasiado detalle para comprobarlos, desde «{ $shape }» en adelante.
    .mend = Dibújelo con menos puntos.
problem-centre-of-gravity-outside = El centro de gravedad ({ $x }, { $y }) queda fuera del contorno en la vista { $view ->
    [side] lateral
   *[plan] en planta
}.
    .mend = Corrija el centro de gravedad, o dibuje lo que falta del contorno.
problem-carrier-without-arm = La forma «{ $shape }» se mueve con «{ $carrier }», pero el artículo no es un brazo retroexcavador.
    .mend = Añada el brazo, o haga que la forma se mueva con el artículo.

problem-lineage-circle = Las piezas se sustituyen unas a otras en círculo: { $chain }.
    .mend = Quite el registro equivocado.
problem-lineage-contradictory = Que { $by } sustituyó a { $part } consta en ambos sentidos y también solo hacia delante; el otro registro es { $other }.
    .mend = Quite el registro equivocado.
problem-replaced-by-nothing = La pieza no queda sustituida por nada.
    .mend = Nombre lo que la sustituye, o deje fuera "replaced".

problem-set-names-nothing = El conjunto no nombra ningún artículo.
    .mend = Nombre al menos un artículo por su identificador.
problem-duplicate-set = El conjunto ya está en la guía, en { $other }.
    .mend = Quite uno de los dos.
problem-bolts-disagree = El conjunto está en la guía, pero en la conexión ({ $role }) «{ $a }» indica un tornillo de { $bolt_a } y «{ $b }» uno de { $bolt_b }.
    .mend = Corrija el lado equivocado.
problem-listed-blocked = El conjunto está en la guía, pero según sus datos no se puede montar así: { $reason }.
    .mend = Corrija lo que está mal; «fitup coverage» explica el motivo por completo.
problem-listed-cannot-mate = El conjunto está en la guía, pero por las medidas de sus conexiones «{ $a }» no puede llevar «{ $b }» ({ $role }).
    .mend = Compare ambas conexiones con los planos; una de las medidas o la guía está mal.
