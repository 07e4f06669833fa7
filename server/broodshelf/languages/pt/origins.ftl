### De onde vem um alimento, e se pode ser oferecido. Uma palavra descuidada aqui pode matar uma colônia.

origin-bought-or-bred = comprado ou criado como alimento
origin-home-mixed = preparado em casa
origin-shop-fruit = fruta de loja
origin-garden-fruit = fruta de um jardim
origin-hot-syrup = xarope ainda quente
origin-wild-web-spider = aranha apanhada na sua teia
origin-wild-insect = inseto apanhado fora
origin-wild-hunter = caçador errante apanhado fora
origin-home-cockroach = barata de uma casa
origin-unknown = origem desconhecida

## Por que pode ser oferecido, ou não.

origin-why-bought-or-bred = Criado como alimento: tudo bem.
origin-why-home-mixed = Tudo bem, depois de frio.
origin-why-shop-fruit = Lave e descasque: a casca pode ter pesticida.
origin-why-garden-fruit = Só se nada foi pulverizado por perto. Lave e descasque.
origin-why-hot-syrup = Xarope quente mata. Deixe esfriar até parecer frio no pulso, depois ofereça.
origin-why-wild-web-spider = Mantenha separada pelo menos 2 dias e observe: se andar mal ou morrer, não ofereça (prática comum). Congelar mata ácaros, não tira veneno. A espera baixa o risco, não prova nada.
origin-why-wild-insect = Pode ter tocado em isca ou pesticida. Mantenha separado por 7 dias (prática comum); congelar mata ácaros, não veneno. Insetos comprados são mais seguros.
origin-why-wild-hunter = Anda por aí e come o que a isca matou. Mantenha separado pelo menos 7 dias (prática comum). Congelar mata ácaros, não tira veneno. Insetos comprados são mais seguros.
origin-why-home-cockroach = Nunca: baratas de casas podem levar isca, e um pouco dela mata uma colônia em semanas.
origin-why-unknown = Não ofereça o que não sabe de onde vem: isca e pesticida não se veem.
