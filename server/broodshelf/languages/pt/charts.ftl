## As palavras dos gráficos.

chart-growth = Crescimento
chart-water = Água
chart-feeding = Comida
chart-which = Gráfico
chart-day = Dia
chart-workers = Operárias
chart-level = Nível
chart-share = Enviar como imagem
chart-no-picture = Não foi possível criar a imagem.
chart-few = Um gráfico precisa de pelo menos duas contagens com número.
chart-few-water = Ainda não há leitura da água.
chart-few-food = Ainda não há refeição anotada.
chart-week = Semana de
chart-sugar = Açúcar
chart-protein = Proteína e outra comida

chart-growth-words = Operárias contadas: de { $first } a { $last }.
chart-water-words = { $days ->
    [one] Neste ritmo falta { $days } dia até ser preciso.
   *[other] Neste ritmo faltam { $days } dias até ser preciso.
  }
chart-never = Por enquanto o nível não desce.
chart-due-now = A água é para agora.
chart-food-words = { $count ->
    [one] { $count } refeição no último meio ano.
   *[other] { $count } refeições no último meio ano.
  }
chart-estimate = A linha tracejada é uma estimativa; a sombra, a sua faixa.
chart-growth-ahead = Neste ritmo, cerca de { $best } até { $day }, entre { $low } e { $high }.
chart-behind = A forma atrás: o calor medido no lugar, { $low } a { $high }.
