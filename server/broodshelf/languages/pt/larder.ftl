## A despensa, e o que arranjar.

larder-title = A despensa
larder-empty = Nenhuma comida anotada. Anote o que há em casa, e ao anotar uma refeição isso aparece primeiro.
larder-used = Gasto
larder-left-now = Quanto resta

larder-by-logs = restam cerca de { $left } de { $whole }, pelas refeições anotadas
larder-no-amount = Digite um número.
larder-used-up = Marcado como gasto
larder-use-by = usar até { $day }
larder-got = desde { $day }
larder-never = Nunca ofereça isto.
larder-held = { $days ->
    [one] Retido até { $day }, mais { $days } dia.
   *[other] Retido até { $day }, mais { $days } dias.
  }
larder-over = Passou do prazo: jogue no lixo.
larder-left = { $days ->
    [0] Use hoje.
    [one] Bom por mais { $days } dia.
   *[other] Bom por mais { $days } dias.
  }
larder-add = Adicionar comida
larder-mix = Preparar água com açúcar
larder-size = Tamanho
larder-size-open = Misturado ou não se sabe
larder-tint = Corante que leva
larder-no-tint = Nenhum
larder-tint-why = Para ver quem bebeu: um corante alimentar azul sem carmim, o tom mais fraco que se veja, uma colônia, um dia, com água com açúcar sem cor ao lado. Prática comum: não foi encontrada nenhuma concentração, tempo de desbotar ou prova de segurança publicada para formigas; criadores contam mortes com um vermelho.
larder-food = Comida
larder-origin = De onde vem
larder-name = Nome
larder-use-by-field = Usar até
larder-refused = Isto não entra na despensa.
larder-go = Adicionar
larder-percent = Açúcar
larder-of-weight = % de açúcar em peso
larder-water = Água
larder-of-water = { $unit } de água

larder-recipe = Misture { $sugar_g } g de açúcar em { VOLUME($water_ml) } de água morna: dá cerca de { VOLUME($total_ml) }.
larder-cool = Deixe esfriar até parecer frio no pulso. Água quente pode queimar: mantenha longe das crianças.
larder-keeps = No refrigerador, cerca de 7 dias (prática comum); jogue fora quando ficar turvo.
larder-batch = Pôr esta mistura na despensa

larder-batch-name = água com açúcar { $percent } %
larder-lots = Em casa

larder-get-title = O que arranjar
larder-get-today = Arranje hoje.
larder-get-by = Arranjar até { $day }
larder-get-spoils = Estraga primeiro

calculator-title = Calculadoras
