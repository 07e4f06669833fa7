### Por que é hora de comida, e quanto.

reason-interval-band = O comum para este tipo e tamanho: a cada { $low } a { $high } dias (prática comum).
reason-interval-keeper =
    Você definiu: { $days ->
        [one] a cada { $days } dia
       *[other] a cada { $days } dias
    }.
reason-interval-chosen = Nos dias e à hora que você definiu.
reason-last-fed =
    Oferecido pela última vez há { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }.
reason-never-fed = Ainda não há refeição anotada.
reason-no-larvae = Não foram vistas larvas: a proteína pode esperar mais.
reason-slow-species = Esta espécie come devagar: os intervalos são metade mais longos (prática comum).
reason-ignored-did-not-count = A última oferta foi ignorada, por isso não conta.
reason-leftovers =
    Oferecido há { $hours ->
        [one] { $hours } hora
       *[other] { $hours } horas
    }; retire o resto antes de estragar (prática comum: depois de { $after } horas).
reason-crop-lasts =
    Um papo cheio dura, a { DEGREES($temp_c) }, cerca de { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }; metade fica de reserva.
reason-freshness-rules =
    O que se oferece fica bom por cerca de { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    } (prática comum); mais quantidade não dura mais.
reason-amount-rules = Foram oferecidos { $mg } mg de açúcar e a colônia usa cerca de { $mg_per_day } mg por dia, por isso acaba antes.
reason-band-rules =
    Pela estimativa seria outro ritmo; fica em { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }, entre metade e o dobro dos { $low } a { $high } dias comuns (prática comum).
reason-brood-grows =
    Cerca de { $larvae ->
        [one] { $larvae } larva precisa
       *[other] { $larvae } larvas precisam
    } de { $mg_per_day } mg de proteína por dia a { DEGREES($temp_c) }.
reason-prey-rules =
    { $mg } mg de proteína são cerca de { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    } de crescimento.
reason-bank-rules =
    A cria não consegue guardar proteína por mais de cerca de { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }, por maior que seja a presa (prática comum).
reason-no-brood-expected = Não se esperam novas operárias, e ninguém contou larvas nas últimas 4 semanas: só um pouco de proteína (prática comum).
reason-quiet-season = Pelo seu relógio anual esta espécie abranda agora, e ninguém contou larvas nas últimas 4 semanas: só um pouco de proteína. As larvas que você contar recebem comida (prática comum).
reason-maintenance-only = Sem larvas: basta um pouco de proteína para manter bem as operárias.
reason-appetite-learnt =
    Aprendido de { $checks ->
        [one] { $checks } verificação
       *[other] { $checks } verificações
    }: esta colônia come cerca de { $times } vezes o comum.
reason-appetite-at-least =
    Levaram tudo em cada verificação que diz alguma coisa ({ $checks ->
        [one] { $checks }
       *[other] { $checks }
    }): esta colônia come pelo menos cerca de { $times } vezes o comum. Quanto mais, vê-se quando sobrar algo.
reason-appetite-at-most =
    Sobrou algo em cada verificação que diz alguma coisa ({ $checks ->
        [one] { $checks }
       *[other] { $checks }
    }): esta colônia come no máximo cerca de { $times } vezes o comum. Quanto menos, não se pode aprender enquanto sobrar até da menor porção.
reason-appetite-hidden = Quanto esta colônia come não se pode aprender destas verificações: dificilmente dariam outro resultado, como uma gota inteira diante de um punhado de formigas. O plano fica no comum para o tamanho dela.
reason-refusal-food = A última oferta ficou: culpe primeiro a comida e tente outra.
reason-refusal-state = A última oferta ficou, mas a colônia está em adaptação, abranda antes do repouso, ou toda a cria são pupas: isso nada diz do apetite.
reason-protein-outweighs-sugar = Mais proteína ({ $protein_mg } mg) que açúcar ({ $sugar_mg } mg) em { $weeks } semanas: uma dieta assim encurtou a vida das operárias (Dussutour e Simpson 2012). Ofereça mais açúcar; as larvas amenizam o dano.
reason-census-guessed = Ninguém contou ainda: pela fase supõem-se cerca de { $workers } operárias (prática comum).
reason-census-unknown = Ninguém contou ainda e nenhuma fase está posta: anote uma contagem; até lá as quantidades são um palpite.
reason-census-old =
    A última contagem tem { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }; uma olhada nova daria mais certeza.
reason-workers-fell-to-zero = A última olhada não achou operárias onde as havia. Se foi engano, anote uma contagem nova.
