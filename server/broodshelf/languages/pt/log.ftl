## A folha para anotar.

log-food = Comida
log-more = Mais comidas
log-amount = Quantidade
log-size = Tamanho
log-from = De onde vem
log-lot = Qual lote
log-no-lot = De outro lugar
log-go = Anotar a refeição
log-despite = Já aconteceu: anotar mesmo assim

log-stop-refuse = Não ofereça isto.
log-stop-wait = Ainda não.
log-stop-hold = Retenha antes.

log-outcome-later = { $hours ->
    [one] Em que deu pode esperar: a ronda pergunta pelos restos depois de cerca de { $hours } hora.
   *[other] Em que deu pode esperar: a ronda pergunta pelos restos depois de cerca de { $hours } horas.
  }
log-which-feeding = Qual refeição
log-feeder-level = Quão cheio está o comedouro
log-offered-in = Oferecido em

log-vessel-drop = Gotas
log-vessel-feeder = Comedouro

log-colour-seen = Onde se vê a cor
log-colour-only = Anotar só onde se vê
log-colour-when = Olhe depois de 1, 8, 24 e 72 horas: através de gásteres claros e esticados e na cria. Formigas escuras escondem a cor (prática comum).
log-what-became = Em que deu
log-leftovers = Restos retirados
log-calm = Olhei, tudo calmo
log-barrier-good = A barreira está boa
log-level = Nível da água
log-drag = Arraste o nível até ficar como no tubo real, ou use as setas.
log-bubble = Num tubo deitado uma bolha flutua sobre a água: leia a ponta junto ao algodão.
log-mm = Ou digite, em mm
log-read = Anotar este nível
log-filled = Completado
log-new-tube = Tubo novo oferecido
log-hydrate = Ninho umedecido
log-wrong = O que está errado
log-report = Comunicar
log-workers = Operárias vistas
log-guess = (por alto chega)
log-count = Anotar a contagem
log-more-brood = Ovos, pupas, rainhas
log-move-words = Ofereça o tubo novo ao lado do antigo, escureça o novo e ilumine o antigo. Dê de 1 a 4 semanas (prática comum). Nunca sacuda para fora, a não ser que o antigo esteja inundado ou seco.
log-offered = Ninho novo oferecido
log-moved = Já mudaram
log-note = Nota
log-keep-note = Guardar a nota
log-mould-where = Onde está

log-mould-far = Manchas longe da cria
log-mould-near = Perto da cria, ou um terço do algodão (prática comum)

log-queens = Rainhas vistas
log-queens-hint = (deixe em branco se não olhou; 0 quer dizer que não resta nenhuma)
log-males-only = Só saíram machos
log-donor = De que colônia
log-from-elsewhere = De outro lugar
log-which-brood = O que foi adicionado
log-how-many = Quanto
log-boost = Anotar a cria
log-boost-words = Só cria da mesma espécie (para uma rainha parasita: da sua hospedeira), de uma colônia saudável. As pupas são mais bem aceitas (prática comum).

## Adiar uma tarefa, ou saltar com um motivo.

later-title = Mais tarde, ou desta vez não
later-when = Lembrar na ronda
later-hour = Em uma hora
later-evening = Hoje à noite
later-tomorrow = Amanhã
later-skip = Ou saltar desta vez, porque

later-own = O seu motivo
later-go = Saltar
later-cannot-wait = Isto pode esperar no máximo uma noite: alguém tem de olhar.

## Várias colônias de uma vez.

several-title = Várias de uma vez
several-what = O que receberam
several-who = Quais colônias
several-none = Escolha pelo menos uma colônia.
several-water = Completado
several-look = Olhei, tudo calmo
several-go = { $count ->
    [one] Anotar para { $count } colônia
   *[other] Anotar para { $count } colônias
  }
