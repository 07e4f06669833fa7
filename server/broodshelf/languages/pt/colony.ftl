## Uma colônia: a sua página, as fases e os estados.

colony-gone = Não está aqui
colony-gone-why = Esta colônia não está neste telefone. Talvez tenha sido apagada, ou o telefone ainda não sincronizou.
colony-change = Mudar
colony-new = Uma colônia nova
colony-log = Anotar
colony-plan = O plano
colony-diary = Diário
colony-charts = Ao longo dos meses
colony-paper = Imprimir a ficha
colony-past = Histórico
colony-no-plan = O plano vem com a próxima conexão ao servidor. Anotar já funciona.

colony-stage-founding = Rainha fundadora
colony-stage-nanitics = Nanitics
colony-stage-growing = Em crescimento
colony-stage-mature = Madura

colony-condition-well = Bem
colony-condition-settling = Em adaptação
colony-condition-resting = Em repouso
colony-condition-queenless-suspected = Rainha em dúvida
colony-condition-quarantine = Quarentena
colony-condition-given-away = Doada
colony-condition-dead = Morta

## O que um criador diz de uma colônia.

colony-form-change = Mudar { $name }
colony-form-name = Nome
colony-form-number = Número no recipiente

colony-form-optional = (opcional)
colony-form-species = Espécie
colony-form-species-hint = da lista, ou nas suas palavras
colony-form-length = Comprimento de uma operária em mm
colony-form-length-hint = (só é preciso se a espécie não estiver na lista)
colony-form-lives = Vive em
colony-form-not-listed = não está na lista
colony-form-outworld = Tem arena
colony-form-stage = Fase
colony-form-condition = Estado
colony-form-roughly = Operárias, mais ou menos
colony-form-few = Poucas (menos de 20)
colony-form-some = Algumas (20 a 100)
colony-form-many = Muitas
colony-form-larvae = Larvas
colony-form-needed = Dê um nome à colônia.
colony-form-save = Guardar
colony-form-add = Adicionar a colônia
colony-form-more = Recipiente, número e mais
colony-form-stings = Esta espécie ferroa. Pessoas alérgicas precisam aqui da ajuda de outras.

colony-form-fate-rests-since = Em repouso desde
colony-form-fate-wakes-on = Acordar em
colony-form-fate-went-to = Para quem foi
colony-form-fate-died-of = De que morreu, se souber
colony-form-fate-came-from = De onde veio
colony-form-fate-host = Espécie da hospedeira

colony-form-own-species = A sua própria espécie
colony-form-own-eats = Come
colony-form-own-founds = A rainha funda
colony-form-own-stings = Ferroa

colony-form-own-guild-omnivore = Açúcar e insetos
colony-form-own-guild-predator = Sobretudo insetos
colony-form-own-guild-harvester = Sementes
colony-form-own-guild-honeypot = Guarda açúcar em repletas
colony-form-own-guild-fungus-grower = Folhas para o seu fungo

colony-form-own-founding-claustral = Sozinha, sem comida
colony-form-own-founding-semi-claustral = Sai para buscar comida
colony-form-own-founding-parasitic = Com operárias da hospedeira

colony-form-own-vessel = O seu próprio recipiente
colony-form-own-bore = Largura ou diâmetro interno em mm
colony-form-own-vessel-length = Comprimento em mm
