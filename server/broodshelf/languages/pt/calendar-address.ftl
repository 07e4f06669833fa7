## As rondas num calendário.

calendar-address-title = Ver as rondas num calendário
calendar-address-about = Os calendários olham a cada 1 a 24 horas, e muitos deixam os nossos alarmes de fora: ponha lá um alerta seu. Quem tiver o endereço pode ler as rondas. Ele acaba depois de um ano; um novo encerra o antigo.
calendar-address-once = Adicione este endereço como assinatura de calendário. Só é mostrado uma vez.
calendar-address-copy = Copiar o endereço
calendar-address-copied = Copiado.
calendar-address-make = Criar o endereço
calendar-address-anew = Criar um endereço novo
calendar-address-end = Encerrar o endereço
calendar-address-ended = O endereço do calendário foi encerrado.
