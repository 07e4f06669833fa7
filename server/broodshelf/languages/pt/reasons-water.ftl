### A água de um tubo ou de um ninho.

reason-water-read =
    Lido há { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }: { $reading }. Um reservatório cheio dura aqui cerca de { $last } dias.
reason-water-look = Ninguém anotou quanta água há, por isso não se sabe: olhe uma vez. Com o nível anotado, o plano pode dizer quando é preciso.
reason-water-look-again =
    Nada foi anotado sobre a água há { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }, mais do que ela dura: de novo não se sabe quanta há. Olhe uma vez e anote o nível.
reason-water-unread = Ninguém leu a água ainda; um reservatório cheio deve durar aqui cerca de { $last } dias.
reason-water-physics = Calculado pelo tamanho do tubo e pelo calor e secura do lugar; as suas leituras dão mais certeza.
reason-water-nest = Um ninho assim é umedecido a cada 3 a 10 dias num quarto, menos no frio (prática comum).
reason-water-learnt = Aprendido das suas próprias leituras: um reservatório cheio dura { $low } a { $high } dias.
reason-water-left-out = Uma leitura da água ficou de fora: um tubo deste tamanho não pode mostrar isso.
reason-water-length-guessed = Ninguém indicou o comprimento do reservatório cheio: a maior leitura, { $mm } mm, conta como cheio.
reason-water-length-unknown = Leituras em mm ficam de fora até você indicar o comprimento do reservatório cheio.
reason-water-fill = Enche com cerca de { VOLUME($ml) }.
reason-water-damp-end = Mantenha uma ponta úmida e outra seca: as formigas escolhem (prática comum).
reason-water-drinker = Tantas formigas precisam também de um bebedouro na arena (prática comum).
reason-leak-suspected =
    Perdeu mais água do que secar e beber explicam: vazamento provável a { $chance } %. Nesse ritmo fica seco em { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }. Olhe hoje se o chão ou a cria estão molhados; pode ser outra coisa.
