### Espaço, mudanças e olhadas.

reason-settling = A colônia está em adaptação depois de uma mudança: deixe em paz, recusas não querem dizer nada agora.
reason-room-full = Cerca de { $workers } operárias num recipiente para cerca de { $room } (prática comum).
reason-barrier = A barreira gasta-se em 2 a 8 semanas: olhe uma vez por semana (prática comum).
reason-glance =
    Ninguém olhou esta colônia há { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }.
reason-ask-stage = Ninguém disse em que fase está esta colônia. Dê hoje uma olhada calma e anote uma contagem: uma rainha sozinha, ou quantas operárias e se há larvas.
reason-ask-workers = A última contagem não achou operárias onde devia haver. Dê uma olhada calma e conte de novo: foi engano, ou a rainha está sozinha?
reason-room-fills =
    Neste ritmo o ninho fica cheio, com cerca de { $room } operárias (prática comum), em { $best ->
        [one] { $best } dia
       *[other] { $best } dias
    }, { $low } a { $high }: tenha o próximo pronto.
reason-room-fills-perhaps =
    Neste ritmo o ninho fica cheio, com cerca de { $room } operárias (prática comum), em { $best ->
        [one] { $best } dia
       *[other] { $best } dias
    }, talvez muito mais tarde: tenha o próximo pronto.
reason-room-full-by-now =
    Pelo ritmo, o ninho, para cerca de { $room } operárias (prática comum), pode já estar cheio; a última contagem tem { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }: conte, e tenha o próximo pronto.
reason-room-growth =
    No ritmo de agora dobra em cerca de { $doubling } dias ({ $counts ->
        [one] { $counts } contagem
       *[other] { $counts } contagens
    }).
reason-move-water-low = Este tubo tem pouca água: um tubo novo é água e espaço de uma vez.
reason-move-mould = Há bolor perto da cria ou cobrindo um terço do algodão.
reason-move-flood = O ninho está inundado.
reason-move-dry = O reservatório está seco.
reason-move-beside = Ponha o tubo ou ninho novo boca com boca ao lado do antigo.
reason-move-darken = Escureça o novo.
reason-move-light = Deixe o antigo à luz, sem calor.
reason-move-wait = Dê de 1 a 4 semanas; elas escolhem a noite (prática comum).
reason-move-no-shaking = Nunca sacuda nem vire para fora.
reason-move-force = Você viu que estava seco ou inundado: só agora ajude com a mão. Passe com batidinhas leves para o tubo novo, a cria primeiro, e deixe no escuro.
reason-never-tilt = Nunca incline: repletas que caem estão perdidas.
reason-offer-look =
    Um ninho foi oferecido há { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }: olhe se já mudaram, e anote se sim.
reason-offer-light = Ainda no antigo? Ponha uma luz sobre o antigo, sem calor, e mantenha o novo escuro e úmido numa ponta (prática comum).
reason-offer-last =
    Um ninho foi oferecido há { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }: quatro semanas bastam para escolher (prática comum). Anote se já mudaram.
reason-offer-ends = Ainda no antigo? Então serve para elas: tire o novo, veja se está úmido e escuro o bastante, e ofereça outro mais tarde (prática comum).
reason-offer-water = O tubo antigo deve estar quase seco, e ainda não mudaram: olhe a água e anote o que vê. Só se esvazia com a mão o que você viu seco.
