## Lo que dice una anotación del diario.

event-kind-feeding = Comida
event-kind-check = Revisión
event-kind-water = Agua
event-kind-fault = Algo va mal
event-kind-count = Recuento
event-kind-move = Mudanza
event-kind-boost = Cría añadida
event-kind-note = Nota
event-kind-climate = Clima
event-kind-photo = Foto
event-kind-later = Aplazado

event-colony = Una colonia

event-repeat = { $told } (quizá repetido, no se cuenta)

event-brood-added = { $brood ->
    [eggs] Cría añadida: huevos
    [larvae] Cría añadida: larvas
   *[pupae] Cría añadida: pupas
  }
event-brood-added-some = { $brood ->
    [eggs] { $count ->
        [one] Cría añadida: { $count } huevo
       *[other] Cría añadida: { $count } huevos
      }
    [larvae] { $count ->
        [one] Cría añadida: { $count } larva
       *[other] Cría añadida: { $count } larvas
      }
   *[pupae] { $count ->
        [one] Cría añadida: { $count } pupa
       *[other] Cría añadida: { $count } pupas
      }
  }
event-leftovers = Restos retirados
event-mended = { $fault } (resuelto)
event-read = Agua leída: { $level }
event-read-mm = Agua leída: { $mm } mm
event-feeder = Comedero: { $level }

event-colour = Color buscado: { $where }
event-colour-nowhere = Color buscado: en ningún sitio

event-water-refill = Agua rellenada
event-water-new-tube = Tubo nuevo ofrecido
event-water-hydrate = Nido humedecido

event-counted = Contado: { $seen }
event-counted-nothing = Contado: cría

event-counted-eggs = { $amount ->
    [none] huevos: ninguno
    [seen] huevos: vistos
    [few] huevos: pocos
    [some] huevos: algunos
   *[many] huevos: muchos
  }
event-counted-larvae = { $amount ->
    [none] larvas: ninguna
    [seen] larvas: vistas
    [few] larvas: pocas
    [some] larvas: algunas
   *[many] larvas: muchas
  }
event-counted-pupae = { $amount ->
    [none] pupas: ninguna
    [seen] pupas: vistas
    [few] pupas: pocas
    [some] pupas: algunas
   *[many] pupas: muchas
  }
event-workers = { $count ->
    [one] { $count } obrera
   *[other] { $count } obreras
  }
event-workers-at-least = al menos { $seen }
event-queens = { $count ->
    [one] { $count } reina
   *[other] { $count } reinas
  }
event-males-only = solo machos

event-workers-roughly = { $amount ->
    [none] Ninguna obrera
    [few] Pocas obreras
    [some] Algunas obreras
   *[many] Muchas obreras
  }

event-stage-larvae = Larvas
event-stage-eggs = Huevos
event-stage-pupae = Pupas

event-outcome-all = Se lo llevaron todo
event-outcome-some = Se llevaron algo
event-outcome-ignored = Ni caso

event-reading-full = Lleno
event-reading-three-quarters = ¾
event-reading-half = ½
event-reading-quarter = ¼
event-reading-empty = Vacío

event-colour-seen-gasters = En el gáster: las obreras bebieron
event-colour-seen-brood = En la cría: se repartió

event-coarse-none = Nada
event-coarse-few = Poco
event-coarse-some = Algo
event-coarse-many = Mucho

event-brood-seen-none = Nada
event-brood-seen-seen = Se ve
event-brood-seen-few = Poco
event-brood-seen-some = Algo
event-brood-seen-many = Mucho

## El diario.

diary-empty = Aún no hay nada anotado.
diary-earlier = Anterior
diary-void = Anular
diary-search = Buscar en el diario
diary-kind = Mostrar
diary-all = Todo
diary-none = No hay nada así en el diario.
diary-looking = Buscando hasta { $day } …
diary-today = Hoy
diary-yesterday = Ayer

## Fotos.

photo-title = Fotos
photo-take = Hacer una foto
photo-busy = Un momento…
photo-remove = Quitar esta foto
photo-unreadable = No se pudo leer esta foto. Prueba con otra, o hazla de nuevo.
photo-too-large = No se pudo reducir bastante esta foto.
photo-of = { $name }, { $day }
photo-large = Ver la foto de { $day }
photo-older = Más antiguas
photo-newer = Más recientes
photo-elsewhere = Esta foto sigue en el teléfono que la hizo.
