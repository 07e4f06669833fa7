### Presas: quais, de que tamanho, como se oferecem.

reason-prey-size = Estas operárias levam inteiras presas de até cerca de { $longest_mm } mm; as mais longas são cortadas ou ficam de fora (prática comum).
reason-prey-first-third = Uma primeira porção é um terço do que diz o tamanho da colônia; cresce metade quando levam tudo, devagar quando ninguém verifica (prática comum).
reason-portion-rises = Uma porção sobe passo a passo até o que diz o tamanho da colônia: no máximo metade depois de “Levaram tudo”, devagar onde ninguém verificou, nada depois de sobrar algo (prática comum).
reason-portion-at-once =
    Nunca mais do que precisam para { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    } de uma vez, por mais que demore até a próxima: o que sobra estraga (prática comum).
reason-portion-tiny = A primeira comida da vida delas é a menor porção que há (prática comum).
reason-prey-smallest =
    É a menor porção à mão; chega para cerca de { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }.
reason-prey-most = { $pieces } unidades são o máximo que uma porção deve ter (prática comum).
reason-prey-banked = Uma colônia pequena aproveita uma presa por { $days } dias no máximo, por maior que seja (prática comum).
reason-prey-dead = Mate antes: presas vivas podem ferir operárias e cria, ou esconder-se (prática comum).
reason-prey-dead-small = Operárias pequenas: só recém-morta (prática comum).
reason-prey-dead-in-tube = Num tubo de ensaio só presas recém-mortas: nunca nada vivo.
reason-prey-too-big-alive = Elas caçam com a visão, mas esta presa é mais longa que uma operária ou tem de ser cortada: mate antes.
reason-prey-stunned = Elas caçam com a visão: presa que ainda se mexe é achada antes. Atordoe para que não possa morder nem dar patadas (prática comum).
reason-prey-live = Viva porque você pediu: mais curta que uma operária, numa arena, nunca num tubo. Retire se for ignorada por uma hora (prática comum).
reason-prey-piece = Uma migalha: retire antes de estragar.
reason-prey-uncounted = Ninguém publica a proteína deste alimento, por isso não é contada.
