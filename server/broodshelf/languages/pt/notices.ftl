### O que se diz de uma colônia além das tarefas: fase, estação, dúvidas.

notice-plan-failed = Este plano não pôde ser refeito: o que você vê é um antigo, uma estimativa. Siga o que vê no ninho e nos tubos. O servidor tenta de novo dentro de uma hora; o registro dele diz onde falhou.
notice-claustral = Uma rainha fundadora vive das suas reservas: nem comida nem perturbação, no máximo uma olhada calma por semana. Primeira comida 2 a 7 dias depois das primeiras operárias (prática comum).
notice-claustral-fungus = Uma rainha fundadora vive das suas reservas e cultiva o seu jardim da migalha de fungo que trouxe: nem folhas nem perturbação, no máximo uma olhada calma por semana. Primeiras folhas 2 a 7 dias depois das primeiras operárias (prática comum).
notice-stage-unknown = Ninguém disse em que fase está esta colônia, por isso o plano é cuidadoso com ambas: só o que não faz mal a uma rainha fundadora e o que uma colônia mais precisa. Uma fase ou uma contagem acerta o plano.
notice-settling = Em adaptação: alguns dias calmos.
notice-resting = Em hibernação.
notice-resting-summer = No repouso de verão, com o ninho fechado: não toma comida, só se olha a água (prática comum).
notice-rest-window = Esta espécie repousa { $low_months } a { $high_months } meses, de { DEGREES($low_c) } a { DEGREES($high_c) } (prática comum). Uma faixa, não uma regra.
notice-queen-lays = A rainha está marcada em dúvida, mas por último foram contados ovos: se virarem larvas, ponha o estado em “Bem”. Até lá não há previsões.
notice-queenless = A rainha está em dúvida: não há previsões. Nunca escave para procurar por ela.
notice-quarantine = Separada das outras: dê comida a ela por último, com pinça própria.
notice-length-clamped = As fórmulas da massa não chegam a { $given_mm } mm de comprimento: calcula-se com { $used_mm } mm.
notice-mass-clamped-low = Pelo comprimento, algumas destas operárias podem pesar menos de { $limit_mg } mg, o mínimo para o qual se conhecem os valores: usa-se esse.
notice-mass-clamped-high = Pelo comprimento, algumas destas operárias podem pesar mais de { $limit_mg } mg, o máximo para o qual se conhecem os valores: usa-se esse.
notice-temperature-clamped = Os valores são conhecidos de { DEGREES(10) } a { DEGREES(40) }: a { DEGREES($mean_c) } calcula-se como a { DEGREES($used_c) }.
notice-colder-than-set = Mais frio do que você definiu: pelo sensor, { DEGREES($measured_c) } nos últimos três dias em vez de { DEGREES($set_c) }. O plano segue o sensor.
notice-warmer-than-set = Mais quente do que você definiu: pelo sensor, { DEGREES($measured_c) } nos últimos três dias em vez de { DEGREES($set_c) }. O plano segue o sensor.
notice-species-unknown = A espécie não está na lista: o plano segue o comprimento das operárias e a prática comum.
notice-quiet-for =
    Deixe a rainha no escuro por mais { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    } (prática comum); depois uma olhada calma está bem.
notice-quiet-look = Hoje uma olhada calma está bem; depois, nenhuma por uma semana.
notice-fed-queens-choice = Você escolhe: rainhas claustrais não precisam de comida, mas num estudo publicado (Lasius niger) as rainhas alimentadas criaram mais pupas e operárias. Se der, uma gota minúscula, raramente e sem luz nem sacudidas.
notice-first-food-soon =
    As primeiras operárias chegaram. Espere { $low } a { $high ->
        [one] { $high } dia
       *[other] { $high } dias
    } com a primeira comida (prática comum).
notice-first-food-now =
    As primeiras operárias chegaram: é hora da primeira comida, dentro de { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    } (prática comum); não mais do que dizem as tarefas.
notice-semi-claustral = Esta rainha caça enquanto funda: açúcar e presas pequenas a cada { $low } a { $high } dias (prática comum).
notice-semi-claustral-harvester = Esta rainha recolhe enquanto funda: sementes esmagadas sempre ao alcance, presas pequenas a cada { $low } a { $high } dias (prática comum).
notice-semi-claustral-fungus-grower = Esta rainha sai para buscar folhas enquanto funda: pedaços frescos para o seu jardim a cada { $low } a { $high } dias, sem presas e sem açúcar (prática comum).
notice-alone = Uma rainha sem operárias, passada a fundação: as reservas acabaram. Açúcar e presas pequenas a cada { $low } a { $high } dias (prática comum), pouca luz, sem sacudidas.
notice-alone-harvester = Uma rainha sem operárias, passada a fundação: as reservas acabaram. Sementes esmagadas ao alcance e presas pequenas a cada { $low } a { $high } dias (prática comum), pouca luz, sem sacudidas.
notice-alone-fungus-grower = Uma rainha sem operárias, passada a fundação: tem de cuidar sozinha do seu jardim. Pedaços de folha frescos a cada { $low } a { $high } dias (prática comum), pouca luz, sem sacudidas.
notice-colony-empty = Não foi contada nem rainha nem operárias: não se dá comida. Se restam pupas, ainda podem nascer: anote então uma contagem. Senão ponha a colônia em “Morta”, com a causa.
notice-parasitic = Esta rainha não consegue criar sem operárias de uma hospedeira: dê algumas a ela, ou pupas da hospedeira, assim que puder. Até lá uma gota de açúcar, sem presas (prática comum).
notice-parasitic-pupae = Há pupas com esta rainha: o que nascer das de uma hospedeira vai dar comida a ela. Até lá uma gota de açúcar, sem presas (prática comum).
notice-parasitic-hosts = Operárias da hospedeira dão comida a esta rainha, e ela põe ovos.
notice-note-host = Anote a espécie hospedeira, quantas você deu a ela e de que colônia.
notice-settles = Acabou de mudar: deixe em paz por mais { $low } a { $high } dias. Comida recusada não quer dizer nada agora (prática comum).
notice-too-cold-for-protein = A { DEGREES($day_c) } não há proteína: abaixo de { DEGREES($limit_c) } estraga sem ser comida (prática comum).
notice-too-cold-perhaps-rest = A { DEGREES($day_c) } não há proteína: abaixo de { DEGREES($limit_c) } estraga sem ser comida (prática comum). Se for a hibernação, ponha o estado em “Em repouso”.
notice-too-cold-for-species = A { DEGREES($day_c) } não há proteína: abaixo de { DEGREES($limit_c) } estraga sem ser comida (prática comum). Esta espécie não tem repouso anual: leve para um lugar mais quente, pelo menos a { DEGREES(20) } (prática comum).
notice-yearly-clock = Tarde no seu ano esta espécie abranda mesmo com calor: poucos ovos não preocupam. Ninguém contou larvas nas últimas 4 semanas: só um pouco de proteína até alguém contar.
notice-yearly-clock-larvae = Tarde no seu ano esta espécie abranda mesmo com calor; mas foram contadas larvas, por isso recebem comida. O que sobrar sem ser comido não preocupa agora.
notice-yearly-clock-none = Tarde no seu ano esta espécie abranda mesmo com calor: nenhuma larva e poucos ovos não preocupam.
notice-yearly-clock-summer = Esta espécie abranda no verão: poucos ovos não preocupam. Ninguém contou larvas nas últimas 4 semanas: só um pouco de proteína até alguém contar.
notice-yearly-clock-larvae-summer = Esta espécie abranda no verão; mas foram contadas larvas, por isso recebem comida. O que sobrar sem ser comido não preocupa agora.
notice-yearly-clock-none-summer = Esta espécie abranda no verão: nenhuma larva e poucos ovos não preocupam.
notice-queen-doubt = Nenhum ovo nas suas contagens há { $weeks } semanas ativas (prática comum: 6 a 8): talvez falte a rainha. Continue a dar comida, olhe de novo em duas semanas; nunca escave para procurar por ela.
notice-no-queen = Nenhuma rainha foi contada: as operárias vivem ainda meses, mas não vêm novas. As larvas que há recebem comida, depois só um pouco de proteína; não há previsões. Nunca escave para procurar por ela.
notice-gamergates = Nenhuma rainha foi contada; nesta espécie operárias fecundadas põem ovos, portanto pode estar tudo certo: ovos e larvas dirão.
notice-eggs-without-larvae = Ovos nas suas contagens há { $weeks } semanas ativas e nunca uma larva (prática comum: dúvida a partir de 6): podem não estar fecundados, ou são comidos. Deixe em paz e com calor bastante, e olhe de novo em duas semanas.
notice-eggs-too-cold = Ovos nas suas contagens há { $weeks } semanas e nunca uma larva: o lugar é frio demais para nascerem. Aqueça devagar e olhe de novo em um mês.
notice-males-only = Só saem machos: talvez falte a rainha ou não esteja fecundada. Não há previsões; nunca escave para procurar por ela.
notice-quarantine-left = Mantenha separada por mais { $low } a { $high } dias (prática comum: 2 a 4 semanas).
notice-quarantine-over =
    Separada há { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }: o comum são 2 a 4 semanas. Se nada foi visto, termine.
notice-keep-apart = Nova em casa: mantenha separada das outras por mais { $low } a { $high } dias (prática comum).
notice-granary = Sementes que germinam querem dizer que o celeiro está úmido demais: dê a ele um canto mais seco (prática comum).
notice-cocoon-substrate = As larvas fiam casulos: quando forem grandes, ofereça uma pitada de substrato fino e seco (prática comum).
notice-wakes-in =
    Acordar em { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }.
notice-first-workers-in = Primeiras operárias em cerca de { $low } a { $high } dias a { DEGREES($mean_c) }.
notice-next-workers-in = Novas operárias em cerca de { $low } a { $high } dias a { DEGREES($mean_c) }.
notice-coming-wide-flight = Estes dias estão muito afastados porque ninguém anotou o dia do voo, e a cria pode ter qualquer idade: olhar larvas e pupas aproxima os dias.
notice-coming-wide-look = Estes dias estão muito afastados porque ninguém olhou larvas e pupas nas últimas duas semanas: uma olhada aproxima os dias.
notice-coming-wide-kind = Estes dias estão muito afastados porque ninguém mediu quanto demora a cria deste tipo (em vez disso vale a prática comum).
notice-founding-stalled =
    As primeiras operárias estão { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    } atrasadas: esta fundação provavelmente parou. Deixe no escuro e em paz por duas semanas, depois olhe uma vez (prática comum).
## Por que mudaram os dias das próximas operárias.

notice-census-more =
    Mais { $seen ->
        [eggs] ovos
        [larvae] larvas
        [pupae] pupas
       *[workers] operárias
    } que o esperado ({ $on }).
notice-census-fewer =
    Menos { $seen ->
        [eggs] ovos
        [larvae] larvas
        [pupae] pupas
       *[workers] operárias
    } que o esperado ({ $on }).
notice-census-sooner =
    O que se viu { $seen ->
        [eggs] dos ovos
        [larvae] das larvas
        [pupae] das pupas
       *[workers] das operárias
    } ({ $on }) diz que esta cria é rápida.
notice-census-later =
    O que se viu { $seen ->
        [eggs] dos ovos
        [larvae] das larvas
        [pupae] das pupas
       *[workers] das operárias
    } ({ $on }) diz que esta cria é lenta.

## Estações e repouso

notice-brood-no-forecast = Sem previsão para a cria a { DEGREES($value) }: os números valem de { DEGREES($low_c) } a { DEGREES($high_c) }.
notice-rest-over =
    O repouso devia terminar há { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }: aqueça a colônia, ofereça primeiro açúcar e ponha o estado em “Bem”. Até lá conta como em repouso.
notice-rest-by-sensor = Há { $days } dias o sensor mede { DEGREES($mean_c) } em média, na época do repouso: conta como em repouso, e não se dá comida. Ponha o estado em “Em repouso” para dizer quando deve acordar.
notice-rest-over-by-sensor = Depois de { $cold } dias frios o sensor mede { DEGREES($mean_c) } há { $days } dias: com isso o repouso terminou, e a colônia recebe comida de novo, açúcar primeiro. Ponha o estado em “Bem”.
notice-wakes-later =
    Pelo sensor, { $warm } dias do repouso foram quentes demais para contar, por isso acorda { $later ->
        [one] { $later } dia
       *[other] { $later } dias
    } mais tarde do que definido.
notice-rest-unmarked = Está a { DEGREES($mean_c) } na época do repouso (comum: { DEGREES($low_c) } a { DEGREES($high_c) }, prática comum): se repousa, ponha o estado em “Em repouso”, e não se dá comida.
notice-rest-missed = Esta espécie repousa { $low_months } a { $high_months } meses no inverno, de { DEGREES($low_c) } a { DEGREES($high_c) }, e já devia ter começado; nenhum repouso está marcado. Um tardio é melhor que nenhum: esfrie ao longo de cerca de { $ramp_days } dias (prática comum).
notice-rest-after-first = Esta espécie repousa no inverno e nenhum repouso está marcado, mas as primeiras operárias devem nascer entre { $low_on } e { $high_on }: deixe a colônia aquecida até elas nascerem e comerem; depois esfrie até { DEGREES($low_c, unit: "none") } a { DEGREES($high_c) } ao longo de cerca de { $ramp_days } dias (prática comum).
notice-rest-larvae-wait = Cerca de { $low } a { $high } larvas provavelmente esperam no ninho até a colônia acordar; ovos e pupas se perdem no frio. Não é preciso olhar.
notice-rest-no-brood = Provavelmente não resta cria no ninho: ovos e pupas se perdem no frio, e a rainha volta a pôr quando a colônia está acordada e aquecida. Não é preciso olhar.
notice-rest-begins-summer = O repouso de verão pode começar em { $low } a { $high } dias: a colônia fecha o ninho e não toma comida. Quando já não tomar nada, ponha o estado em “Em repouso” (prática comum).
notice-rest-begins = A hibernação pode começar em { $low } a { $high } dias, quando o dia descer a cerca de { $hours } horas: esfrie até { DEGREES($low_c) } a { DEGREES($high_c) } ao longo de cerca de { $ramp_days } dias. Uma faixa, não uma regra (prática comum).
notice-rest-may-end =
    O repouso pode terminar agora, no máximo em { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    } (prática comum).
notice-tint-offered = Foi oferecida água com açúcar colorida: olhe depois de 1, 8, 24 e 72 horas através de gásteres claros e esticados e na cria, e diga numa verificação onde se vê (prática comum; formigas escuras escondem a cor).
notice-tint-in-gasters = Cor no gáster: as operárias beberam, e talvez tenham passado umas às outras.
notice-tint-in-brood = Cor na cria: o que as operárias beberam chegou às larvas.
notice-tint-nowhere = Nenhuma cor foi vista. Isso diz pouco: gásteres escuros ou vazios escondem a cor.
