### La hoja de montaje. Todas las claves empiezan por «ui-».

ui-fit-sheet = Hoja de montaje
ui-print-sheet = Imprimir la hoja de montaje
ui-date = Fecha
ui-catalogue = Catálogo
ui-no-trailer = No se ha elegido remolque; no se ha examinado.
ui-no-site = No se ha elegido lugar de trabajo; no se ha examinado.
ui-joints = Uniones
ui-joint = Unión
ui-carries = Soporta
ui-carried = Va montado
ui-evidence = Fundamento
ui-observed = Medido y leído en las unidades
ui-dimension = Cota
ui-measured = Medido
ui-serial = Número de serie
ui-step = Paso
ui-hours = Horas
ui-parts-all = Piezas, por comprar y disponibles
ui-template = Plantilla de los agujeros por taladrar
ui-template-of = Por taladrar: { $item }, { $port }, { $count ->
    [one] { $count } agujero, dibujado con línea llena
   *[other] { $count } agujeros, dibujados con línea llena
}. Los agujeros de trazos ya existen. Vista de la cara que se apoya en { $other }. Haga coincidir la plantilla con los agujeros existentes antes de marcar los centros.
ui-template-joined = Recorte las { $count } hojas por el borde y júntelas: los números son fila y columna.
ui-template-bar = La barra mide 100 mm: compruébelo con una regla antes de usar la plantilla. Imprima al 100 %, sin ajustar a la página.
ui-signed = Visto y conforme
    .meaning = Esta hoja dice lo que se sabía en su fecha. Es un plan, no una autorización de trabajo.
ui-sign-place = Lugar y fecha
ui-sign-name = Nombre
ui-sign = Firma
