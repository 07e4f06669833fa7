### Primeiros passos quando há algo errado, e depois de comida que pode levar veneno.

reason-leak = Comunicado como vazamento. Primeiros passos: ponha o tubo de pé sobre um pires com o algodão para cima, veja se há cria molhada, ponha um tubo novo ao lado. Não sacuda.
reason-flood = Primeiros passos: incline para a água correr para longe da cria, absorva com algodão, ofereça um tubo seco.
reason-mould = Manchas distantes: tire uma foto e olhe de novo em 7 dias (prática comum). Perto da cria ou um terço do algodão: ofereça hoje um tubo novo. Só algodão amarelo não é nada.
reason-mould-far = Uma mancha distante não é alarme: tire uma foto agora, e olhe em 7 dias se cresceu (prática comum). Só algodão amarelo não é nada.
reason-mould-look =
    Uma mancha de bolor foi comunicada há { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }: compare com a foto. Não está maior: deixe. Mais perto da cria ou um terço do algodão: comunique de novo como perto (prática comum).
reason-mould-near = Primeiros passos: ofereça hoje um tubo novo, boca com boca ao lado deste, e deixe o antigo à luz. Não raspe, não borrife, não sacuda (prática comum).
reason-fault-over =
    Comunicado há { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }, e ninguém disse desde então que passou. Se passou, marque como resolvido; se não, comunique de novo.
reason-escape = Primeiros passos: feche a tampa, renove a barreira, recolha as fugitivas com um pincel macio. Nunca solte fora de casa.
reason-mites = Primeiros passos: dê comida a esta colônia por último, use a pinça dela, mantenha separada, anote de que lote ela comeu.
reason-many-dead = Primeiros passos: pare com a última comida oferecida, retire, verifique água e temperatura, e escreva o que você vê.
reason-heater = Primeiros passos: desligue o aquecedor, leve a colônia para um lugar de { DEGREES(20) } a { DEGREES(25) } (prática comum), não esfrie num refrigerador.
reason-risk-out =
    Foi dado apesar de recusado, ou outra colônia recebeu o mesmo do mesmo lote: pode levar veneno. Retire já tudo o que resta, { $hours ->
        [one] { $hours } hora
       *[other] { $hours } horas
    } depois de oferecido.
reason-risk-look =
    Foi dada aqui comida que pode levar veneno há { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }: olhe uma vez por dia durante { $of } dias; este é o dia { $day }.
reason-risk-times = Tempos publicados até morrer metade das operárias: 1 a 4 dias com doses fortes de três venenos de isca (Rust et al. 2004), 8 dias com uma dose fraca de ácido bórico (Klotz et al. 1997).
reason-risk-signs = Muitas mortas, operárias lentas ou com espasmos: comunique “Muitas mortas”, e dê água limpa e água com açúcar fresca (prática comum).
