## Cómo estuvo un lugar con el tiempo, y los archivos de sus sensores.

climate-which = Qué se dibuja
climate-span = Durante cuánto
climate-temperature = Temperatura
climate-humidity = Humedad

climate-span-of-days = Dos semanas
climate-span-of-weeks = Tres meses
climate-span-of-year = Un año

climate-nothing = En este tiempo no se midió ni anotó nada aquí, y no hay nada fijado.

climate-summary = De media { $mean }, { $low } a { $high }.
climate-measured-all = Todo se midió o se leyó.
climate-measured = { $days ->
    [one] { $measured } de { $days } día medido o leído.
   *[other] { $measured } de { $days } días medidos o leídos.
  }
climate-key = La sombra va del mínimo al máximo de un día. A trazos: supuesto, según lo fijado.
climate-key-weeks = La sombra va del mínimo al máximo de una semana. A trazos: supuesto, según lo fijado.
climate-comfort = La franja de detrás: lo que va bien a todas las que viven aquí, { $low } a { $high }.
climate-no-comfort = Ninguna temperatura va bien a todas las que viven aquí.

climate-degree-days = { $name }: { $sum } grados-día por encima de { $threshold } desde { $since }.
climate-degree-days-assumed = { $name }: { $sum } grados-día por encima de { $threshold } desde { $since }; un { $percent } % es supuesto.
climate-day = Día
climate-week = Semana de
climate-mean = Media
climate-low = Mínimo
climate-high = Máximo
climate-basis = Cómo se sabe

climate-basis-measured = medido
climate-basis-typed = leído
climate-basis-assumed = supuesto

climate-file = Un archivo de un sensor
climate-file-hint = una tabla en CSV, con los títulos en la primera línea
climate-too-large = Este archivo pasa de 4 MB: tráelo por partes, cada una con los títulos en la primera línea.
climate-time-column = Columna de la hora
climate-temperature-column = Columna de la temperatura
climate-humidity-column = Columna de la humedad
climate-no-column = ninguna
climate-unit = Medido en
climate-dates = Las horas están escritas así

climate-date-form-iso = 2026-12-31 18:30
climate-date-form-dmy = 31.12.2026 18:30
climate-date-form-mdy = 12/31/2026 6:30 PM
climate-date-form-unix = segundos desde 1970

climate-zone = Las horas son de

climate-zone-of-household = la casa
climate-zone-of-utc = UTC

climate-look = Mirarlo antes
climate-take = Incorporarlo
climate-taken = { $hours ->
    [one] Incorporado: { $hours } hora. Los días se dibujan en diez minutos.
   *[other] Incorporado: { $hours } horas. Los días se dibujan en diez minutos.
  }
climate-found = { $rows ->
    [one] { $rows } lectura de { $from } a { $until }.
   *[other] { $rows } lecturas de { $from } a { $until }.
  }
climate-found-nothing = No se puede leer ninguna fila.
climate-range = De { $low } a { $high }.
climate-new-hours-all = { $hours ->
    [one] { $hours } hora, nueva.
   *[other] { $hours } horas, todas nuevas.
  }
climate-new-hours = { $hours ->
    [one] { $hours } hora, nuevas: { $new }. Las demás ya estaban medidas y se quedan como están.
   *[other] { $hours } horas, nuevas: { $new }. Las demás ya estaban medidas y se quedan como están.
  }
climate-bad-rows = { $rows ->
    [one] { $rows } fila no se puede leer y se omitirá:
   *[other] { $rows } filas no se pueden leer y se omitirán:
  }

climate-bad-line = Línea { $line }: { $why }
climate-give-out = Guardar todas las horas en un archivo
