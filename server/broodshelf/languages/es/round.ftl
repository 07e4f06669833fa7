## La ronda: qué toca y cuándo, y qué se hace.

round-due-never = no toca
round-due-now = toca ahora
round-due-since = { $days ->
    [one] toca desde hace { $days } día
   *[other] toca desde hace { $days } días
  }
round-due-hours = { $hours ->
    [one] toca en { $hours } hora
   *[other] toca en { $hours } horas
  }
round-due-days = { $days ->
    [one] toca en { $days } día
   *[other] toca en { $days } días
  }

round-title = La ronda
round-now = Ahora
round-today = Hoy más tarde
round-next = Próximos días
round-done = Hecho
round-quiet = Ahora no toca nada.
round-next-at = Nada hasta { $day }
round-calm = Todos los tubos tienen bastante. Déjalas en calma.
round-as-suggested = Hecho así
round-done-short = Hecho
round-offered = Nido nuevo ofrecido
round-not-moved = Aún no se mudan
round-moved = Se han mudado
round-other = De otra forma
round-count = Contar
round-change = Cambiar la colonia
round-later = Más tarde
round-resolved = Ya está resuelto
round-urgent = urgente
round-why = Por qué
round-all = { $count ->
    [one] Hecho así: { $colony }
   *[other] Hechas así las { $count }
  }
round-by = por { $who }
round-undo = Deshacer
round-empty-shelf = El estante está vacío. Añade la primera colonia.
round-joining = Tu estante viene de camino a este teléfono.
round-joined = { $count ->
    [0] Ya llegan las primeras entradas.
    [one] { $count } entrada por ahora
   *[other] { $count } entradas por ahora
  }
round-progress = { $part } de { $whole } hechas
round-finished = La ronda está hecha.
round-many = Varias a la vez
round-add = Añadir una colonia

## El estante y su lista de colonias.

shelf-title = El estante
shelf-search = Buscar una colonia
shelf-none = Ninguna colonia tiene esto en su nombre o especie.
shelf-labels = Etiquetas de tubos
shelf-scan = Escanear etiqueta
shelf-species-unknown = Especie sin indicar
shelf-no-plan = El plan llega con la próxima conexión.
shelf-next = { $need }: { $due }
shelf-level = { $need }: { $level }

## What was put off or skipped, and why.

later-was-skipped = { $need }: saltado esta vez ({ $why })
later-was-put-off = { $need }: aplazado
later-why-still-food = Aún hay comida
later-why-leave-quiet = Dejarlas tranquilas
later-why-nothing-in-the-house = No hay nada en casa
later-why-other = Otro motivo
