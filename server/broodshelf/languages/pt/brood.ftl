## O que há no ninho e o que vem daí: os dias, a pergunta e o porquê.

brood-first = As primeiras operárias
brood-next = Novas operárias

brood-days = { $high ->
    [one] Em { $low } a { $high } dia.
   *[other] Em { $low } a { $high } dias.
  }
brood-days-about = { $days ->
    [one] Em cerca de { $days } dia.
   *[other] Em cerca de { $days } dias.
  }
brood-between = Entre { $from } e { $to }
brood-on = Por volta de { $day }
brood-any-by = A qualquer dia, até { $day }
brood-any = A qualquer dia
brood-at-latest = { $days ->
    [one] No máximo em { $days } dia.
   *[other] No máximo em { $days } dias.
  }
brood-not-before = Não antes de { $day }
brood-likely = { $days ->
    [one] Mais provável: por volta de { $best }, em { $days } dia; talvez só { $high }
   *[other] Mais provável: por volta de { $best }, em { $days } dias; talvez só { $high }
  }
brood-perhaps = Talvez só { $high }

brood-no-end = Quanto tempo depois, ainda não se pode dizer.

brood-warm = A { DEGREES($mean_c) }.
brood-none = Com o calor de agora, nenhuma à vista em meio ano.

brood-ask-by-seen = { $brood ->
    [eggs] Já deveria haver ovos (até { $day }): viu?
    [larvae] Já deveria haver larvas (até { $day }): viu?
   *[pupae] Já deveria haver pupas (até { $day }): viu?
  }
brood-ask-by = { $brood ->
    [eggs] Deveria haver ovos até { $day }
    [larvae] Deveria haver larvas até { $day }
   *[pupae] Deveria haver pupas até { $day }
  }
brood-ask-now-seen = { $brood ->
    [eggs] Já deveria haver ovos: viu?
    [larvae] Já deveria haver larvas: viu?
   *[pupae] Já deveria haver pupas: viu?
  }
brood-ask-now = { $brood ->
    [eggs] Já deveria haver ovos.
    [larvae] Já deveria haver larvas.
   *[pupae] Já deveria haver pupas.
  }
brood-ask-yes = Sim
brood-ask-not-yet = Ainda não
brood-ask-cannot-see = Não se vê
brood-ask-early = Já se vê
brood-ask-looked = Alguém olhou ({ $day }). A próxima pergunta vem a partir de { $again }: até lá, o sossego ajuda mais.
brood-ask-told = { $brood ->
    [eggs] Ovos vistos: { $day }
    [larvae] Larvas vistas: { $day }
   *[pupae] Pupas vistas: { $day }
  }
brood-ask-waits = Os dias são calculados de novo com a próxima conexão.

brood-ask-remark = { $brood ->
    [eggs] Procurados ovos, não se via
    [larvae] Procuradas larvas, não se via
   *[pupae] Procuradas pupas, não se via
  }

brood-open = A cria numa linha do tempo

brood-why-title = Por que estes dias
brood-why-nothing = Nada do que foi visto mudou estes dias ainda: são os do seu tipo com este calor.
brood-why-eight = De dez colônias como esta, oito ficam dentro da faixa.
brood-why-unmeasured = Ninguém mediu quanto duram as fases deste grupo. Os dias vêm da prática comum, por isso a faixa é larga. O que você vir estreita a faixa.
brood-why-source = Ponto de partida: { $source }.

brood-why-line = { $day }: { $seen }, { $moved }.
brood-why-counted = { $count ->
    [0] nenhuma operária
    [one] { $count } operária contada
   *[other] { $count } operárias contadas
  }
brood-why-workers = operárias contadas

brood-why-seen-none = { $brood ->
    [eggs] nenhum ovo
    [larvae] nenhuma larva
    [pupae] nenhuma pupa
   *[workers] nenhuma operária
  }
brood-why-seen-seen = { $brood ->
    [eggs] ovos vistos
    [larvae] larvas vistas
    [pupae] pupas vistas
   *[workers] operárias vistas
  }
brood-why-seen-few = { $brood ->
    [eggs] poucos ovos
    [larvae] poucas larvas
    [pupae] poucas pupas
   *[workers] poucas operárias
  }
brood-why-seen-some = { $brood ->
    [eggs] alguns ovos
    [larvae] algumas larvas
    [pupae] algumas pupas
   *[workers] algumas operárias
  }
brood-why-seen-many = { $brood ->
    [eggs] muitos ovos
    [larvae] muitas larvas
    [pupae] muitas pupas
   *[workers] muitas operárias
  }
brood-why-seen-taken = insetos tomados
brood-why-seen-refused = insetos recusados

brood-why-moved-census-more = mais que o esperado
brood-why-moved-census-fewer = menos que o esperado
brood-why-moved-census-sooner = portanto esta cria é mais rápida do que se pensava
brood-why-moved-census-later = portanto esta cria é mais lenta do que se pensava

brood-why-none = quando se esperava ver algo

brood-why-larvae-census-more = portanto há mais larvas do que se pensava
brood-why-larvae-census-fewer = portanto há menos larvas do que se pensava

## Uma fundação que parou, e o que os criadores fazem (prática comum).

stalled-title = Esta fundação provavelmente parou
stalled-days = { $days ->
    [one] Em nove de cada dez fundações como esta, as operárias teriam vindo há { $days } dia ou antes.
   *[other] Em nove de cada dez fundações como esta, as operárias teriam vindo há { $days } dias ou antes.
  }
stalled-about = O que os criadores fazem, nesta ordem (prática comum):
stalled-unfed-1 = Deixe o tubo no escuro e em paz por duas semanas, no meio do calor de que a espécie gosta. Muitas rainhas comem a cria porque são olhadas vezes demais.
stalled-unfed-2 = Não dê comida nestas semanas: ela vive das suas reservas, e a comida estraga ao lado dela.
stalled-unfed-3 = Depois olhe uma vez. Cria que avançou, por exemplo larvas onde havia ovos, só precisa de mais tempo.
stalled-unfed-4 = Sem cria, ou menos que antes: ofereça uma gota de água com açúcar e um pedacinho de inseto, e retire o resto depois de um dia. Uma rainha que comeu a sua cria pode voltar a pôr.
stalled-fed-1 = Deixe a rainha no escuro e em sossego, no meio do calor de que a espécie gosta, e olhe no máximo uma vez por semana.
stalled-fed-2 = Continue a dar comida: açúcar e um inseto pequeno a cada 3 a 5 dias, e retire o resto depois de um dia. Uma rainha com fome come a sua cria.
stalled-fed-3 = Depois de duas semanas, olhe com atenção. Cria que avançou, por exemplo larvas onde havia ovos, só precisa de mais tempo.
stalled-last-1 = Sem água, ou bolor perto da cria: ponha um tubo novo diante do dela e deixe que ela mude sozinha.
stalled-last-2 = Nenhum ovo em seis a oito semanas quentes: provavelmente nunca foi fecundada, ou está esgotada. Cria da sua própria espécie, de uma colônia saudável, é a última coisa a tentar.

## A cria numa linha do tempo.

brood-line-ahead = Até quando

brood-line-reach-56 = 8 semanas
brood-line-reach-182 = Meio ano

brood-line-stage-eggs = Ovos
brood-line-stage-small-larvae = Larvas pequenas
brood-line-stage-large-larvae = Larvas grandes
brood-line-stage-pupae = Pupas
brood-line-stage-workers = Operárias

brood-line-day = Dia
brood-line-today = hoje

brood-line-now = agora { $number }

brood-line-about = { $best } ({ $low }–{ $high })

brood-line-summary = { $best ->
    [one] Hoje, provavelmente: { $counts }. Até { $day }: cerca de { $best } operária, entre { $low } e { $high }.
   *[other] Hoje, provavelmente: { $counts }. Até { $day }: cerca de { $best } operárias, entre { $low } e { $high }.
  }

brood-line-count-eggs = { $count ->
    [0] nenhum ovo
    [one] { $count } ovo
   *[other] { $count } ovos
  }
brood-line-count-small-larvae = { $count ->
    [0] nenhuma larva pequena
    [one] { $count } larva pequena
   *[other] { $count } larvas pequenas
  }
brood-line-count-large-larvae = { $count ->
    [0] nenhuma larva grande
    [one] { $count } larva grande
   *[other] { $count } larvas grandes
  }
brood-line-count-pupae = { $count ->
    [0] nenhuma pupa
    [one] { $count } pupa
   *[other] { $count } pupas
  }
brood-line-count-workers = { $count ->
    [0] nenhuma operária
    [one] { $count } operária
   *[other] { $count } operárias
  }

brood-line-mark-line = o mais provável; tracejado: ainda por vir
brood-line-mark-band = oito em cada dez
brood-line-mark-dot = você contou, ou viu alguma coisa
brood-line-mark-hollow = você olhou, e não havia nada
brood-line-mark-due = quando nascem operárias

brood-line-scale = Cada linha tem a sua própria altura. O passado é desenhado como se pensava naquele momento.
