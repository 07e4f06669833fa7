## La hoja para anotar.

log-food = Comida
log-more = Más comidas
log-amount = Cantidad
log-size = Tamaño
log-from = De dónde viene
log-lot = Qué lote
log-no-lot = De otro sitio
log-go = Anotar la comida
log-despite = Ya ha pasado: anotarlo igualmente

log-stop-refuse = No ofrezcas esto.
log-stop-wait = Aún no.
log-stop-hold = Retenlo primero.

log-outcome-later = { $hours ->
    [one] Qué fue de ello puede esperar: la ronda pregunta por los restos al cabo de { $hours } hora.
   *[other] Qué fue de ello puede esperar: la ronda pregunta por los restos al cabo de unas { $hours } horas.
  }
log-which-feeding = Qué comida
log-feeder-level = Cómo de lleno está el comedero
log-offered-in = Ofrecido en

log-vessel-drop = Gotas
log-vessel-feeder = Comedero

log-colour-seen = Dónde se ve el color
log-colour-only = Anotar solo dónde se ve
log-colour-when = Mira a las 1, 8, 24 y 72 horas: a través de gásteres claros y estirados y en la cría. Las hormigas oscuras lo esconden (práctica común).
log-what-became = Qué fue de ello
log-leftovers = Restos retirados
log-calm = Mirado, todo en calma
log-barrier-good = El antifugas está bien
log-level = Nivel del agua
log-drag = Arrastra el nivel hasta que sea como el del tubo real, o usa las flechas.
log-bubble = En un tubo tumbado flota una burbuja sobre el agua: lee el extremo junto al algodón.
log-mm = O escríbelo, en mm
log-read = Anotar este nivel
log-filled = Rellenado
log-new-tube = Tubo nuevo ofrecido
log-hydrate = Nido humedecido
log-wrong = Qué va mal
log-report = Comunicarlo
log-workers = Obreras vistas
log-guess = (vale a ojo)
log-count = Anotar el recuento
log-more-brood = Huevos, pupas, reinas
log-move-words = Ofrece el tubo nuevo junto al viejo, oscurécelo e ilumina el viejo. Dales de 1 a 4 semanas (práctica común). Nunca las saques a sacudidas, salvo que el viejo esté inundado o seco.
log-offered = Nido nuevo ofrecido
log-moved = Se han mudado
log-note = Nota
log-keep-note = Guardar la nota
log-mould-where = Dónde está

log-mould-far = Manchas lejos de la cría
log-mould-near = Cerca de la cría, o un tercio del algodón (práctica común)

log-queens = Reinas vistas
log-queens-hint = (déjalo en blanco si no miraste; 0 quiere decir que no queda ninguna)
log-males-only = Solo salieron machos
log-donor = De qué colonia
log-from-elsewhere = De otro sitio
log-which-brood = Qué se añadió
log-how-many = Cuánto
log-boost = Anotar la cría
log-boost-words = Solo cría de la misma especie (para una reina parásita: de su hospedadora), de una colonia sana. Las pupas se aceptan mejor (práctica común).

## Aplazar una tarea, o saltarla con un motivo.

later-title = Más tarde, o esta vez no
later-when = Recordarlo en la ronda
later-hour = En una hora
later-evening = Esta noche
later-tomorrow = Mañana
later-skip = O saltarlo esta vez, porque

later-own = Tu motivo
later-go = Saltarlo
later-cannot-wait = Esto puede esperar como mucho una noche: alguien tiene que mirar.

## Varias colonias a la vez.

several-title = Varias a la vez
several-what = Qué recibieron
several-who = Qué colonias
several-none = Elige al menos una colonia.
several-water = Rellenado
several-look = Mirado, todo en calma
several-go = { $count ->
    [one] Anotar para { $count } colonia
   *[other] Anotar para { $count } colonias
  }
