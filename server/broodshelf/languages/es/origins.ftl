### De dónde viene un alimento, y si se puede ofrecer. Una palabra descuidada aquí puede matar una colonia.

origin-bought-or-bred = comprado o criado como alimento
origin-home-mixed = preparado en casa
origin-shop-fruit = fruta de tienda
origin-garden-fruit = fruta de un jardín
origin-hot-syrup = sirope aún caliente
origin-wild-web-spider = araña atrapada en su tela
origin-wild-insect = insecto atrapado fuera
origin-wild-hunter = cazador errante atrapado fuera
origin-home-cockroach = cucaracha de una vivienda
origin-unknown = origen desconocido

## Por qué se puede ofrecer, o no.

origin-why-bought-or-bred = Criado como alimento: bien.
origin-why-home-mixed = Bien, cuando se haya enfriado.
origin-why-shop-fruit = Lávala y pélala: la piel puede llevar pesticida.
origin-why-garden-fruit = Solo si no se fumigó nada cerca. Lávala y pélala.
origin-why-hot-syrup = El sirope caliente mata. Deja que se enfríe hasta que lo notes frío en la muñeca, y entonces ofrécelo.
origin-why-wild-web-spider = Tenla aparte al menos 2 días y obsérvala: si se mueve mal o muere, no la ofrezcas (práctica común). Congelar mata ácaros, no quita el veneno. La espera baja el riesgo, no demuestra nada.
origin-why-wild-insect = Puede haber tocado cebo o pesticida. Tenlo aparte 7 días (práctica común); congelar mata ácaros, no el veneno. Los insectos comprados son más seguros.
origin-why-wild-hunter = Va de un lado a otro y come lo que ha matado el cebo. Tenlo aparte al menos 7 días (práctica común). Congelar mata ácaros, no quita el veneno. Los insectos comprados son más seguros.
origin-why-home-cockroach = Nunca: las cucarachas de viviendas pueden llevar cebo, y un poco mata una colonia en semanas.
origin-why-unknown = No ofrezcas lo que no sabes de dónde viene: el cebo y el pesticida no se ven.
