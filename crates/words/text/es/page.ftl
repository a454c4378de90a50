### What the page says by itself, without the engine. Every key begins with "ui-", and no text has a value in it.

ui-start-says = Fit-up muestra si un apero trasero se puede montar en un tractor compacto, qué hace falta para ello y con qué certeza.
ui-language-unspoken = No se han podido cargar los textos. Se muestra el inglés.
ui-engine-restarted = El cálculo se había detenido. Se ha iniciado de nuevo con la misma selección.
ui-engine-here = El cálculo se ejecuta en la propia página, porque el navegador no le da un lugar aparte. La página puede detenerse a ratos.
ui-engine-missing = No se ha podido cargar el programa de cálculo.
ui-engine-cut-off = El programa de cálculo ha llegado dañado o incompleto.
ui-engine-other-version = El programa de cálculo es de otra versión que esta página. Vuelva a cargar la página.
ui-engine-stopped = El cálculo se ha detenido tres veces seguidas.
ui-engine-kept = Se muestra el estado anterior. Su selección se conserva en este enlace:
ui-stories = Ejemplos del catálogo de demostración
ui-story-listed = Un conjunto de la lista del fabricante: se monta sin más.
ui-story-measured = Una retroexcavadora usada sin papeles: medida con un calibre, y resuelto.
ui-story-two-holes = Una plataforma de asiento en la que hay que taladrar dos agujeros.
ui-update = Hay una versión nueva de Fit-up. Su montaje se conserva.
ui-update-take = Cargarla
ui-copy-kept = La red no responde. El catálogo es la copia guardada en este dispositivo, del:
ui-idle = ¿Sigue ahí?
ui-idle-says = Dentro de un momento todo empieza de nuevo para el siguiente visitante.
ui-idle-stay = Continuar
