## La despensa, y qué conseguir.

larder-title = La despensa
larder-empty = No hay comida anotada. Anota lo que hay en casa, y al anotar una comida se ofrecerá primero.
larder-used = Gastado
larder-left-now = Cuánto queda

larder-by-logs = quedan unos { $left } de { $whole }, según las comidas anotadas
larder-no-amount = Escribe un número.
larder-used-up = Marcado como gastado
larder-use-by = usar antes de { $day }
larder-got = desde { $day }
larder-never = No lo ofrezcas nunca.
larder-held = { $days ->
    [one] Retenido hasta { $day }, queda { $days } día.
   *[other] Retenido hasta { $day }, quedan { $days } días.
  }
larder-over = Pasado de fecha: tíralo.
larder-left = { $days ->
    [0] Úsalo hoy.
    [one] Bueno { $days } día más.
   *[other] Bueno { $days } días más.
  }
larder-add = Añadir comida
larder-mix = Preparar agua azucarada
larder-size = Tamaño
larder-size-open = Mezclado o no se sabe
larder-tint = Colorante que lleva
larder-no-tint = Ninguno
larder-tint-why = Para ver quién bebió: un colorante alimentario azul sin carmín, el tono más débil que se vea, una colonia, un día, con agua azucarada sin teñir al lado. Práctica común: no se encontró ninguna concentración, tiempo de desaparición ni prueba de seguridad publicados para hormigas; hay criadores que cuentan muertes con uno rojo.
larder-food = Comida
larder-origin = De dónde viene
larder-name = Nombre
larder-use-by-field = Usar antes de
larder-refused = Esto no entra en la despensa.
larder-go = Añadir
larder-percent = Azúcar
larder-of-weight = % de azúcar en peso
larder-water = Agua
larder-of-water = { $unit } de agua

larder-recipe = Disuelve { $sugar_g } g de azúcar en { VOLUME($water_ml) } de agua tibia: salen unos { VOLUME($total_ml) }.
larder-cool = Deja que se enfríe hasta que lo notes frío en la muñeca. El agua caliente puede quemar: aléjala de los niños.
larder-keeps = En la nevera, unos 7 días (práctica común); tíralo cuando esté turbio.
larder-batch = Guardar esta mezcla en la despensa

larder-batch-name = agua azucarada { $percent } %
larder-lots = En casa

larder-get-title = Qué conseguir
larder-get-today = Consíguelo hoy.
larder-get-by = Conseguirlo antes de { $day }
larder-get-spoils = Lo primero en estropearse

calculator-title = Calculadoras
