### Passos para quem nunca viu um tubo de formigas. Frases curtas, palavras do dia a dia, nenhuma do ofício.
### Nomeiam um botão: “Há algo errado” deve ler-se como nele.

reason-tube-step-still = Deixe o tubo onde está: não levante, incline, abra nem sacuda.
reason-tube-step-find = Procure a rolha branca dentro do tubo. De um lado vivem as formigas, do outro está a água.
reason-tube-step-good = A água clara toca na rolha: está tudo bem. Não é preciso encher nada.
reason-tube-step-bad = Não resta água atrás da rolha, ou há água onde estão as formigas: toque em “Há algo errado” e ligue.
reason-nest-step-look = Olhe de fora, sem abrir nada: a ponta úmida ainda está mais escura que a seca? Então está tudo bem.
reason-nest-step-place = Procure por onde entra a água: uma abertura, uma bandeja ou uma esponja fora das câmaras. Se não achar, ligue.
reason-nest-step-drip-ml = Puxe { VOLUME($ml) } de água simples à temperatura ambiente, e deixe entrar devagar.
reason-nest-step-drip = Deixe entrar devagar um pouco de água simples à temperatura ambiente, até a esponja ou o gesso de lá ficar escuro.
reason-nest-step-stop = Pare assim que já não for absorvida.
reason-nest-step-bad = Há água onde estão as formigas, ou o ninho está seco e claro por todo lado: toque em “Há algo errado” e ligue.
reason-helper-call = Não abra, mova nem sacuda nada, e não dê nada a mais. Ligue e diga o que vê.
reason-helper-wet = Até lá ponha papel de cozinha em volta, para nada correr para outros ninhos.
reason-helper-escape = Até lá feche a tampa e a porta do quarto. Varra as fugitivas com um pincel macio para uma caixa fechada; nunca para fora.
reason-helper-fridge = Feche a porta do refrigerador. Se está fechada, veja se ele funciona.
reason-helper-heater = Até lá desligue o aquecimento da estante, e feche a cortina se bater sol.
reason-helper-dead = Mate antes: nada vivo entra enquanto o criador está fora.
reason-helper-glance = Olhe um momento de fora, sem abrir, levantar nem sacudir nada. Movem-se com calma?

# Como dar comida. A porção, por exemplo “2 gotas de água com açúcar”, está acima dos passos.
reason-drop-step-take = Pegue a garrafa onde o criador a guarda, e um conta-gotas limpo. Deixe ficar à temperatura ambiente: nunca quente.
reason-drop-step-place = Abra só a caixa de comida, nunca o ninho. Ponha as gotas no pratinho ou na folha lá dentro, não sobre uma formiga.
reason-drop-step-small = Não dê mais do que diz aqui, nem gotas maiores: formigas pequenas afogam-se nelas.
reason-feeder-step-out = Tire o comedouro com a pinça. Varra as formigas com cuidado, de volta para a caixa.
reason-feeder-step-fill = Enxágue com água simples, e encha com o que está acima. À temperatura ambiente: nunca quente.
reason-feeder-step-back = Ponha de volta onde estava, direito, para não pingar.
reason-prey-step-take = Pegue no congelador ou na caixa que o criador mostrou, e deixe descongelar dez minutos. Tem de estar morta.
reason-prey-step-cut = Corte uma vez ao meio, sobre papel, para as formigas chegarem ao mole de dentro.
reason-prey-step-place = Abra só a caixa de comida. Deixe com a pinça perto do caminho para o ninho, num ponto seco.
reason-seed-step-take = Pegue sementes secas do saco do criador, não outras: as compradas para pássaros podem ter tratamento químico.
reason-seed-step-place = Deixe cair na caixa de comida, num ponto seco longe da água.
reason-leaf-step-take = Corte folhas da planta que o criador mostrou, não outras: folhas com pesticida matam a colônia.
reason-leaf-step-rinse = Enxágue com água fria, e sacuda até secar.
reason-leaf-step-place = Ponha na caixa de comida, e tire as secas da última vez.
reason-piece-step-take = Pegue onde o criador o guarda, e corte tão pequeno como diz acima.
reason-piece-step-place = Abra só a caixa de comida. Ponha no pratinho ou na folha lá dentro, num ponto seco.
reason-food-step-only = Mais nada: insetos apanhados e comida da cozinha podem levar veneno.
reason-food-step-close = Feche a tampa já, e veja se há alguma formiga fora.
reason-food-step-bad = Há muitas formigas paradas, há formigas fora, ou você tem dúvida? Deixe fechado e ligue.

# Como retirar os restos.
reason-left-step-find = Olhe onde foi posta comida: o que está seco, escuro ou peludo, peles vazias, gotas pegajosas.
reason-left-step-take = Abra só a caixa de comida. Tire com a pinça; limpe um ponto pegajoso com papel úmido.
reason-left-step-held = As formigas seguram? Deixe por uma hora, e nunca puxe.
reason-left-step-bin = Ponha num lixo fechado, não na compostagem. Feche a tampa já.

# Como olhar a barreira: a borda escorregadia que mantém as formigas dentro.
reason-barrier-step-look = Olhe de fora a borda da caixa de comida, toda em volta.
reason-barrier-step-bridge = Há um cabelo, uma folha ou algodão atravessado? Tire com a pinça.
reason-barrier-step-still = Não toque na borda, e não ponha nada de novo nela.
reason-barrier-step-bad = Há formigas na borda ou fora: toque em “Há algo errado” e ligue.

# Como dar uma olhada, arejar a caixa do refrigerador e vigiar depois de comida duvidosa.
reason-glance-step-calm = Algumas formigas mexem-se, a maioria está junta: está tudo bem.
reason-glance-step-bad = Muitas estão paradas, muitas correm, ou há uma formiga fora: toque em “Há algo errado” e ligue.
reason-air-step-open = Abra a caixa no refrigerador por um minuto, sem deixar a porta do refrigerador aberta mais do que isso.
reason-air-step-still = Não tire as formigas, e não as aqueça na mão. Elas dormem: está bem se nada se mexer.
reason-air-step-close = Feche a caixa e o refrigerador, e veja se a porta está fechada.
reason-risk-step-signs = Podem ter comido algo mau. Conte quantas estão paradas, ou andam como bêbadas.
reason-nest-step-still = Não é preciso abrir nem encher nada.
reason-helper-tell = Diga qual é a colônia, o que vê e desde quando. Uma foto ajuda.
