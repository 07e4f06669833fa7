### O que pode estar errado num ninho.

fault-leak = Vazamento de água
    .inside = vazamento de água
fault-flood = Ninho inundado
    .inside = ninho inundado
fault-mould = Bolor
    .inside = bolor
fault-escape = Fuga
    .inside = fuga
fault-mites = Ácaros
    .inside = ácaros
fault-many-dead = Muitas mortas
    .inside = muitas mortas
fault-heater = Aquecedor com defeito
    .inside = aquecedor com defeito
