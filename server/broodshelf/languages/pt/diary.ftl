## O que diz uma anotação do diário.

event-kind-feeding = Refeição
event-kind-check = Verificação
event-kind-water = Água
event-kind-fault = Há algo errado
event-kind-count = Contagem
event-kind-move = Mudança de ninho
event-kind-boost = Cria adicionada
event-kind-note = Nota
event-kind-climate = Clima
event-kind-photo = Foto
event-kind-later = Adiado

event-colony = Uma colônia

event-repeat = { $told } (talvez repetido, não contado)

event-brood-added = { $brood ->
    [eggs] Cria adicionada: ovos
    [larvae] Cria adicionada: larvas
   *[pupae] Cria adicionada: pupas
  }
event-brood-added-some = { $brood ->
    [eggs] { $count ->
        [one] Cria adicionada: { $count } ovo
       *[other] Cria adicionada: { $count } ovos
      }
    [larvae] { $count ->
        [one] Cria adicionada: { $count } larva
       *[other] Cria adicionada: { $count } larvas
      }
   *[pupae] { $count ->
        [one] Cria adicionada: { $count } pupa
       *[other] Cria adicionada: { $count } pupas
      }
  }
event-leftovers = Restos retirados
event-mended = { $fault } (resolvido)
event-read = Água lida: { $level }
event-read-mm = Água lida: { $mm } mm
event-feeder = Comedouro: { $level }

event-colour = Cor procurada: { $where }
event-colour-nowhere = Cor procurada: em lugar nenhum

event-water-refill = Água completada
event-water-new-tube = Tubo novo oferecido
event-water-hydrate = Ninho umedecido

event-counted = Contado: { $seen }
event-counted-nothing = Contado: cria

event-counted-eggs = { $amount ->
    [none] ovos: nenhum
    [seen] ovos: vistos
    [few] ovos: poucos
    [some] ovos: alguns
   *[many] ovos: muitos
  }
event-counted-larvae = { $amount ->
    [none] larvas: nenhuma
    [seen] larvas: vistas
    [few] larvas: poucas
    [some] larvas: algumas
   *[many] larvas: muitas
  }
event-counted-pupae = { $amount ->
    [none] pupas: nenhuma
    [seen] pupas: vistas
    [few] pupas: poucas
    [some] pupas: algumas
   *[many] pupas: muitas
  }
event-workers = { $count ->
    [one] { $count } operária
   *[other] { $count } operárias
  }
event-workers-at-least = pelo menos { $seen }
event-queens = { $count ->
    [one] { $count } rainha
   *[other] { $count } rainhas
  }
event-males-only = só machos

event-workers-roughly = { $amount ->
    [none] Nenhuma operária
    [few] Poucas operárias
    [some] Algumas operárias
   *[many] Muitas operárias
  }

event-stage-larvae = Larvas
event-stage-eggs = Ovos
event-stage-pupae = Pupas

event-outcome-all = Levaram tudo
event-outcome-some = Levaram um pouco
event-outcome-ignored = Ignorado

event-reading-full = Cheio
event-reading-three-quarters = ¾
event-reading-half = ½
event-reading-quarter = ¼
event-reading-empty = Vazio

event-colour-seen-gasters = No gáster: as operárias beberam
event-colour-seen-brood = Na cria: foi passado adiante

event-coarse-none = Nada
event-coarse-few = Pouco
event-coarse-some = Algum
event-coarse-many = Muito

event-brood-seen-none = Nada
event-brood-seen-seen = Visto
event-brood-seen-few = Pouco
event-brood-seen-some = Algum
event-brood-seen-many = Muito

## O diário.

diary-empty = Ainda não há nada anotado.
diary-earlier = Antes
diary-void = Anular
diary-search = Procurar no diário
diary-kind = Mostrar
diary-all = Tudo
diary-none = Nada assim no diário.
diary-looking = Procurando até { $day } …
diary-today = Hoje
diary-yesterday = Ontem

## Fotos.

photo-title = Fotos
photo-take = Tirar uma foto
photo-busy = Um momento…
photo-remove = Retirar esta foto
photo-unreadable = Não foi possível ler esta foto. Tente outra, ou tire de novo.
photo-too-large = Não foi possível reduzir o bastante esta foto.
photo-of = { $name }, { $day }
photo-large = Ver a foto: { $day }
photo-older = Mais antigas
photo-newer = Mais recentes
photo-elsewhere = Esta foto ainda está no telefone que a tirou.
