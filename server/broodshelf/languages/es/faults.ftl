### Lo que puede ir mal en un nido.

fault-leak = Depósito con fuga
    .inside = depósito con fuga
fault-flood = Nido inundado
    .inside = nido inundado
fault-mould = Moho
    .inside = moho
fault-escape = Fuga de hormigas
    .inside = fuga de hormigas
fault-mites = Ácaros
    .inside = ácaros
fault-many-dead = Muchas muertas
    .inside = muchas muertas
fault-heater = Calefacción averiada
    .inside = calefacción averiada
