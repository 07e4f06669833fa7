### Calor, secura e o repouso anual: por que é preciso fazer algo.

reason-too-hot = { DEGREES($temperature_c) }: acima de { DEGREES($limit_c) } esta espécie está em perigo ({ $source }). Desligue o aquecimento, tire do sol, dê uma ponta fresca e uma úmida. Nada de refrigerador. Anote uma leitura nova quando estiver mais fresco.
reason-too-cold = { DEGREES($temperature_c) }: abaixo de { DEGREES($limit_c) } esta espécie está em perigo enquanto acordada ({ $source }). Leve hoje para um lugar mais quente e deixe aquecer devagar. Anote uma leitura nova quando estiver mais quente.
reason-overheating = O sensor mede { DEGREES($temperature_c) }: acima de { DEGREES($limit_c) } esta espécie está em perigo ({ $source }). Desligue o aquecimento, tire do sol, dê uma ponta fresca e uma úmida. Nada de refrigerador.
reason-freezing = O sensor mede { DEGREES($temperature_c) }: a água congela e o tubo pode rebentar. Leve para um lugar fresco acima de { DEGREES($limit_c) }, sem pressa e sem aquecedor.
reason-rest-colder = O sensor mede { DEGREES($temperature_c) }, menos que os { DEGREES($limit_c) } que esta espécie aguenta no repouso (prática comum). Leve para um lugar fresco acima disso, sem pressa e sem aquecedor.
reason-rising-fast = Está a { DEGREES($temperature_c) } e sobe { DEGREES_APART($rise_c) } por hora: neste ritmo passa em duas horas de { DEGREES($limit_c) }, onde esta espécie está em perigo ({ $source }). Veja se apanha sol ou se o aquecedor não tem fim, e acabe com isso.
reason-heater-on = Há { $hours } horas está { DEGREES_APART($by_c) } mais quente do que o comum a esta hora: agora { DEGREES($temperature_c) }. Se um aquecedor a aquece, veja se o termostato prendeu; senão procure o sol ou um radiador.
reason-heater-off = Há { $hours } horas está { DEGREES_APART($by_c) } mais frio do que o comum a esta hora: agora { DEGREES($temperature_c) }. Se um aquecedor a aquece, veja se ainda funciona; senão procure uma janela aberta.
reason-fridge-open = O refrigerador está a { DEGREES($temperature_c) } em vez de { DEGREES($usual_c) }: veja se a porta está fechada e se ele funciona. Uma colônia que aquece no repouso gasta aquilo de que vive.
reason-dry-air = O ar tem { $humidity_pct } % de umidade em vez de { $usual_pct } %: o ninho seca mais depressa do que antes. Olhe a ponta úmida e dê água se estiver seca.
reason-rest-water =
    Olhado há { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }. No repouso olha-se a água a cada { $low } a { $high } dias (prática comum).
reason-rest-airing = Abra a caixa do refrigerador um minuto uma vez por semana: o ar lá dentro está gasto (prática comum). Arejada pela última vez há { $days } dias.
reason-wake-up = Neste dia termina o repouso: aqueça ao longo de cerca de { $ramp_days } dias, ofereça primeiro açúcar (prática comum) e ponha o estado em “Bem”.
reason-wake-up-summer = Neste dia termina o repouso de verão: ponha o estado em “Bem” e ofereça de novo açúcar e presas pequenas (prática comum).
reason-rest-too-warm = Está marcada em repouso, mas o lugar tem { DEGREES($mean_c) }; acima de { DEGREES($limit_c) } está acordada e gasta as reservas (prática comum). Ou está num lugar mais fresco: escolha esse lugar. Ou esfrie. Ou ponha o estado em “Bem”. Até lá recebe comida como se estivesse acordada.
reason-rest-not-for-species = Está marcada em repouso, mas esta espécie não tem repouso anual: mantenha a pelo menos { DEGREES($least_c) } (prática comum; agora { DEGREES($mean_c) }) e ponha o estado em “Bem”. Até lá recebe comida como se estivesse acordada.
reason-rest-frost = Frio demais no repouso: { DEGREES($coldest_c) }. Leve hoje para um lugar acima de { DEGREES($limit_c) }, sem aquecer (prática comum).

source-common-practice = prática comum
