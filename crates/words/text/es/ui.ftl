ui-step-machine = Máquina
ui-step-frame = Bastidor
ui-step-seat = Asiento
ui-step-implement = Implemento
ui-step-choose = Elija uno
ui-on-hitch = En el enganche de tres puntos, sin bastidor
ui-answer = Resultado
ui-joints = Uniones
ui-evidence = Prueba
ui-footprint = Medidas
ui-parts = Piezas a comprar
ui-loading = Carga
ui-site = Lugar
ui-digging = Excavación
ui-weight = Peso
ui-compare = Comparar
ui-saved = Montajes guardados
ui-share = Compartir
ui-fit-sheet = Hoja de montaje
ui-print = Imprimir
ui-undo = Deshacer
ui-redo = Rehacer
ui-clear = Borrar todo
ui-start-again = Empezar de nuevo
ui-close = Cerrar
ui-back = Atrás
ui-next = Siguiente
ui-take = Elegir
ui-taken = Elegido
ui-take-off = Quitar
ui-search = Buscar
ui-sort = Ordenar por
ui-sort-verdict = Resultado
ui-sort-price = Precio
ui-sort-length = Longitud
ui-units = Unidades
ui-units-metric = Métrico
ui-units-us = EE. UU.
ui-language = Idioma
ui-language-missing = No se pudieron cargar los textos para { $language }. Se muestra el inglés en su lugar.
ui-theme = Tema
ui-theme-light = Claro
ui-theme-dark = Oscuro
ui-theme-outdoor = Exterior
ui-on-hand = Ya disponible
ui-to-buy = Por comprar
ui-price-on-request = Precio a consultar
ui-total = Total
ui-quantity = Cantidad
ui-price = Precio
ui-work-time = Tiempo de taller
ui-part-numbers = Referencias
ui-hole-patterns = Patrones de agujeros
ui-margin = Margen
ui-measure = Introducir lo medido
ui-checks = Lo que lo aclararía
ui-remedies = Lo que ayudaría
ui-try-remedy = Probarlo
ui-cautions = Precauciones
ui-details = Detalles
ui-for-shopper = En breve
ui-for-workshop = Para el taller
ui-bare-machine = Máquina sola
ui-side-view = Vista lateral
ui-plan-view = Vista en planta
ui-rear-view = Vista trasera
ui-loading-catalogue = Cargando el catálogo
ui-try-again = Intentar de nuevo
ui-not-known = no se sabe
ui-copy-link = Copiar enlace
ui-copied = Copiado
ui-offline = Funciona sin conexión
ui-new-version = Hay una versión nueva. Empieza al recargar.
ui-catalogue-slow = El catálogo tarda en cargar.
ui-catalogue-missing = No se pudo cargar el catálogo.
ui-catalogue-broken = El catálogo tiene errores y aún no se puede usar.
ui-storage-full = El dispositivo no tiene espacio para guardar. Todo sigue funcionando; exporte el montaje para conservarlo.
ui-link-cut-off = El enlace está cortado o ha cambiado. Pídalo de nuevo.
ui-link-newer = El enlace es de una versión más nueva. Recargue la página para obtenerla.
ui-link-not-ours = Esta dirección no contiene ningún montaje.

ui-not-in-catalogue = { $id } no está en este catálogo
ui-options = { $count ->
    [one] { $count } opción
   *[other] { $count } opciones
}
ui-open-checks = { $count ->
    [one] { $count } comprobación pendiente
   *[other] { $count } comprobaciones pendientes
}
ui-against-bare = { $change } respecto a la máquina sola
ui-reaches = Lo mejor aún alcanzable: { $verdict }
ui-comes-with = Viene con { $item }

ui-verdict-open = Sin empezar
    .meaning = Empiece por lo que tenga: máquina, bastidor, asiento o implemento.
ui-so-far = Nada en contra por ahora. Faltan los demás pasos.
ui-item-list = Lista de elementos
ui-steps = Pasos
ui-settings = Ajustes
ui-views = Vistas
ui-view-fit = Montaje
ui-view-parts = Piezas
ui-view-loading = Carga
ui-view-weight = Peso
ui-view-digging = Excavación
ui-view-site = Obra
ui-look-from = Visto desde
ui-look-side = Lado
ui-look-plan = Arriba
ui-drawing = Dibujo
ui-drawing-none = Elija máquina, bastidor, asiento o implemento. Aquí se dibuja a escala.
ui-short-length = Largo
ui-short-width = Ancho
ui-short-height = Alto
ui-short-ground-clearance = Altura libre
ui-short-departure = Salida
ui-short-mass = Masa
ui-short-front-load = Eje delantero
ui-theme-system = Como el dispositivo
ui-sort-name = Nombre
ui-nothing-found = Nada coincide con la búsqueda.
ui-take-out = Quitar
ui-details-none = Aquí se ve qué se une con qué y qué resulta de ello, en cuanto se elijan dos cosas que se unen.
ui-remedies-none = Ningún adaptador, asiento, bastidor ni trabajo de este catálogo ayuda.
ui-remedies-more = { $count ->
    [one] { $count } más
   *[other] { $count } más
}
ui-beyond-joints = Más allá de las uniones
ui-no-part-number = número de pieza desconocido
ui-forget = Olvidar
ui-measure-what = Qué se midió
ui-measure-value = Valor
ui-measure-tool = Medido con
ui-measure-enter = Introducir
ui-measure-wrong = Introduzca una longitud, por ejemplo 412,5 o 41,2 cm.
ui-item = Elemento
ui-link-missing = No todo lo del enlace está en este catálogo. Lo demás está abierto.
ui-catalogue-no-address = No se indica ningún catálogo. Dé al elemento un atributo catalogue.
ui-catalogue-newer = El catálogo tiene un formato más nuevo que el que lee esta versión. Recargue la página para obtener la nueva.
ui-catalogue-kept = El catálogo anterior sigue en uso.
ui-more-problems = { $count ->
    [one] y { $count } error más
   *[other] y { $count } errores más
}
ui-standing = Condición

ui-incomplete = Aún faltan pasos por responder

ui-also = También en el conjunto

ui-failed = Algo ha fallado en este componente
    .meaning = Lo elegido sigue en la dirección. Recargue la página para continuar.
ui-reload = Recargar
