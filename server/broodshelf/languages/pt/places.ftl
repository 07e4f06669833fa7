## Lugares e o seu clima.

place-title = Lugares
place-about = Armário, quarto, porão ou refrigerador: o calor e a secura deles movem comida, água e cria em cada plano.
place-empty = Nenhum lugar anotado. Sem ele supõe-se um quarto a { DEGREES(22) } (prática comum).
place-add = Adicionar um lugar
place-change = Mudar
place-reading = Anotar uma leitura
place-log = Anotar a leitura
place-sensors = Sensores
place-chart = Ao longo do tempo
place-close = Fechar
place-open = Ver os lugares
place-name = Nome do lugar
place-type = O que é

place-type-cabinet = Armário
place-type-room = Quarto
place-type-cellar = Porão
place-type-fridge = Refrigerador

place-nobody = Ainda não há colônia aqui: escolha este lugar na colônia, em “Mudar”.

place-day-temp = De dia, { $unit }
place-night-temp = De noite, { $unit }
place-humidity = Umidade, %
place-temperature = Temperatura, { $unit }
place-stands = Está em
place-nowhere = não dito
place-none-yet = Adicione antes um lugar, em Casa.
place-day = { $warm } de dia
place-night = { $warm } de noite
place-moist = { $percent } % de umidade

place-last = Última leitura: { $what } ({ $when })
place-bad-temp = Esta temperatura não pode ser: digite em { $unit }.
place-bad-moist = A umidade fica entre 0 e 100 %.
place-nothing = Digite uma temperatura ou uma umidade.
