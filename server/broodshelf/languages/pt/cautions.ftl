### O que pode ferir uma pessoa ou uma colônia. A primeira frase está sempre à vista, o resto ao tocar.

caution-stings = Esta espécie ferroa.
    .more = Pessoas alérgicas precisam aqui da ajuda de outras; falta de ar, inchaço, sensação de desmaio ou vômitos depois de uma ferroada: ligue já para o número de emergência.
caution-blade = Corte as presas sobre uma tábua, longe dos dedos.
caution-dead-only = Só presas recém-mortas: num tubo nunca nada vivo.
caution-never-tilt = Nunca incline nem vire este ninho: as repletas pendem do teto e são a reserva.
caution-sting-allergy = As ferroadas deste tipo são conhecidas por reações alérgicas graves.
    .more = Deite a pessoa na horizontal, use um injetor de adrenalina se houver e ligue para o número de emergência. Nunca trabalhe a sós com esta colônia.
caution-bites = As operárias grandes mordem até atravessar a pele: use pinça ou pincel, não os dedos.
caution-tint = Corante alimentar: azul sem carmim, o tom mais fraco que se veja, uma colônia, um dia, com água com açúcar sem cor ao lado.
    .more = Não foi encontrada nenhuma concentração, tempo de desbotar ou prova de segurança publicada para formigas, e criadores contam mortes com um vermelho (prática comum, sem fonte).
caution-sprays = Lança ácido fórmico: mantenha os olhos longe da abertura e areje o quarto.
