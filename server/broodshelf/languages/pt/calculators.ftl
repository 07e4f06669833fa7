## As calculadoras.

calculator-about = Cada uma diz como calcula, de onde isso vem e onde deixa de ser verdade.
calculator-without = A água com açúcar pode ser preparada na despensa sem conexão.
calculator-back = Todas as calculadoras
calculator-back-larder = Voltar à despensa
calculator-go = Calcular
calculator-result = O resultado
calculator-how = Como se calcula

calculator-formula = Fórmula:
calculator-source = Fonte:
calculator-limits = Limites:
calculator-open = Deixar em branco
calculator-in-unit = em { $unit }
calculator-range = { $low } a { $high }
calculator-up-to = até { $high }
calculator-left-out = em branco: { $usual }
calculator-may-be-empty = pode ficar em branco

calculator-input-percent = concentração
calculator-input-ml = volume a preparar
calculator-input-sugar-parts = partes de açúcar, em vez de concentração
calculator-input-water-parts = partes de água
calculator-input-parts-by = em que se medem as partes
calculator-input-mol-per-l = molaridade, em vez de concentração
calculator-input-dilute-food = o que diluir
calculator-input-from-c = temperatura agora, ou na primeira de duas leituras
calculator-input-room-c = temperatura do quarto
calculator-input-to-c = temperatura ao oferecer
calculator-input-vessel = recipiente aberto
calculator-input-later-c = uma leitura posterior do seu próprio recipiente
calculator-input-later-min = minutos entre as duas leituras
calculator-input-worker-mm = comprimento de uma operária comum
calculator-input-workers = operárias
calculator-input-days = dias até a próxima refeição
calculator-input-protein-mg = proteína necessária
calculator-input-worker-mg = massa fresca de uma operária
calculator-input-prey-food = só este alimento
calculator-input-majors = a espécie tem majors
calculator-input-hunts-by-sight = caça com a visão
calculator-input-slow = come devagar
calculator-input-in-tube = vivem num tubo de ensaio
calculator-input-first = primeiras porções de uma colônia nova: um terço
calculator-input-bore-mm = diâmetro interno do tubo
calculator-input-length-mm = comprimento do tubo
calculator-input-reservoir-mm = comprimento do reservatório cheio
calculator-input-temp-c = temperatura em volta
calculator-input-humidity-pct = umidade relativa em volta
calculator-input-species = espécie
calculator-input-day-c = temperatura de dia
calculator-input-night-c = temperatura de noite
calculator-input-eggs = ovos de uma rainha fundadora

calculator-usual-night-c = como de dia
calculator-usual-protein-mg = pela massa
calculator-usual-worker-mg = pelo comprimento

calculator-choice-mass = massa
calculator-choice-volume = volume
calculator-choice-drop = gota
calculator-choice-small-glass = copo pequeno
calculator-choice-cup = caneca
calculator-choice-jar = frasco
calculator-choice-pan = panela

calculator-unit-d = dias
calculator-unit-min = minutos
calculator-unit-mg-d = mg por dia
calculator-unit-by-mass = % em massa
calculator-unit-parts = partes
calculator-unit-workers = operárias
calculator-unit-eggs = ovos
calculator-unit-mol-l = mol/L
