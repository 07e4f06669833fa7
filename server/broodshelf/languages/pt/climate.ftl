## Como um lugar esteve ao longo do tempo, e os arquivos dos seus sensores.

climate-which = O que se desenha
climate-span = Por quanto tempo
climate-temperature = Temperatura
climate-humidity = Umidade

climate-span-of-days = Duas semanas
climate-span-of-weeks = Três meses
climate-span-of-year = Um ano

climate-nothing = Neste tempo nada foi medido ou anotado aqui, e nada está definido.

climate-summary = Em média { $mean }, { $low } a { $high }.
climate-measured-all = Tudo foi medido ou lido.
climate-measured = { $days ->
    [one] { $measured } de { $days } dia medido ou lido.
   *[other] { $measured } de { $days } dias medidos ou lidos.
  }
climate-key = A sombra vai do mínimo ao máximo de um dia. Tracejado: suposto, conforme definido.
climate-key-weeks = A sombra vai do mínimo ao máximo de uma semana. Tracejado: suposto, conforme definido.
climate-comfort = A faixa atrás: o que serve a todas as que vivem aqui, { $low } a { $high }.
climate-no-comfort = Nenhuma temperatura serve a todas as que vivem aqui.

climate-degree-days = { $name }: { $sum } graus-dia acima de { $threshold } desde { $since }
climate-degree-days-assumed = { $name }: { $sum } graus-dia acima de { $threshold } desde { $since }; { $percent } % supostos.
climate-day = Dia
climate-week = Semana de
climate-mean = Média
climate-low = Mínimo
climate-high = Máximo
climate-basis = Como se sabe

climate-basis-measured = medido
climate-basis-typed = lido
climate-basis-assumed = suposto

climate-file = Um arquivo de um sensor
climate-file-hint = uma tabela em CSV, com os títulos na primeira linha
climate-too-large = Este arquivo passa de 4 MB: traga em partes, cada uma com os títulos na primeira linha.
climate-time-column = Coluna da hora
climate-temperature-column = Coluna da temperatura
climate-humidity-column = Coluna da umidade
climate-no-column = nenhuma
climate-unit = Medido em
climate-dates = As horas estão escritas assim

climate-date-form-iso = 2026-12-31 18:30
climate-date-form-dmy = 31.12.2026 18:30
climate-date-form-mdy = 12/31/2026 6:30 PM
climate-date-form-unix = segundos desde 1970

climate-zone = As horas são de

climate-zone-of-household = a casa
climate-zone-of-utc = UTC

climate-look = Olhar antes
climate-take = Incluir
climate-taken = { $hours ->
    [one] Incluído: { $hours } hora. Os dias são desenhados em dez minutos.
   *[other] Incluído: { $hours } horas. Os dias são desenhados em dez minutos.
  }
climate-found = { $rows ->
    [one] { $rows } leitura de { $from } a { $until }
   *[other] { $rows } leituras de { $from } a { $until }
  }
climate-found-nothing = Nenhuma linha pode ser lida.
climate-range = De { $low } a { $high }.
climate-new-hours-all = { $hours ->
    [one] { $hours } hora, nova.
   *[other] { $hours } horas, todas novas.
  }
climate-new-hours = { $hours ->
    [one] { $hours } hora, novas: { $new }. As outras já estavam medidas e ficam como estão.
   *[other] { $hours } horas, novas: { $new }. As outras já estavam medidas e ficam como estão.
  }
climate-bad-rows = { $rows ->
    [one] { $rows } linha não pode ser lida e fica de fora:
   *[other] { $rows } linhas não podem ser lidas e ficam de fora:
  }

climate-bad-line = Linha { $line }: { $why }
climate-give-out = Guardar todas as horas num arquivo
