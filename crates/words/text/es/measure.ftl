### Longitudes escritas que no pueden valer, cada una con lo que hay que escribir. $typed es lo escrito.

misread-nothing = No hay ninguna longitud escrita. Escríbala con su unidad, por ejemplo 51,6 mm o 2 1/32 in.
misread-no-length = «{ $typed }» no es una longitud. Escriba un número y su unidad, por ejemplo 51,6 mm o 2 1/32 in.
misread-thousands = «{ $typed }» puede significar dos cosas. Quite los signos entre millares o escriba los decimales como 1,2.
misread-metric-fraction = «{ $typed }» es una fracción, y los milímetros no las tienen. Si son pulgadas, escríbalo: 2 1/32 in.
misread-not-above-zero = «{ $typed }» no es mayor que cero, y una medida de la máquina sí lo es. Escriba lo que marca el instrumento.
misread-too-long = «{ $typed }» supera los 100 m. Revise el número y la unidad.
misread-plus-minus = En «{ $typed }», el ± es menor que cero o mayor que la propia longitud. Escriba cuánto puede desviarse la lectura, por ejemplo ± 0,5.

identify-candidate = { $item }, { $port }: { $likelihood }
identify-measured = { $count ->
    [one] { $count } medida tomada coincide con lo indicado.
   *[other] { $count } medidas tomadas coinciden con lo indicado.
}
identify-measured-not = Lo medido se aparta de lo indicado más de lo que ambos pueden desviarse.
identify-bears = Lleva la referencia leída.
identify-bears-not = Lleva otra referencia.
identify-counts = Tiene tantos agujeros o puntos.
identify-counts-not = Tiene otra cantidad de agujeros o puntos.
identify-more = { $count ->
    [one] { $count } más es menos probable.
   *[other] { $count } más son menos probables.
}
identify-none = Nada en este catálogo indica lo observado.
identify-next-measure = Medir a continuación: { $what }. { $first } apunta a { $a }; { $second }, a { $b }.
identify-next-read = Leer a continuación la referencia. { $first } apunta a { $a }; { $second }, a { $b }.
identify-next-count = Contar a continuación los agujeros o puntos. { $first } apuntan a { $a }; { $second }, a { $b }.
