### Lo que puede hacer daño a una persona o a una colonia. La primera frase se ve siempre, el resto al tocar.

caution-stings = Esta especie pica.
    .more = Las personas alérgicas necesitan aquí la ayuda de otras; dificultad para respirar, hinchazón, sensación de desmayo o vómitos tras una picadura: llama enseguida al teléfono de emergencias.
caution-blade = Corta las presas sobre una tabla, lejos de los dedos.
caution-dead-only = Solo presas recién muertas: en un tubo nunca nada vivo.
caution-never-tilt = No inclines ni gires nunca este nido: las repletas cuelgan del techo y son la reserva.
caution-sting-allergy = Las picaduras de este tipo son conocidas por causar reacciones alérgicas graves.
    .more = Tumba a la persona en horizontal, usa un inyector de adrenalina si lo hay y llama al teléfono de emergencias. No trabajes a solas con esta colonia.
caution-bites = Las obreras grandes muerden hasta atravesar la piel: usa pinzas o un pincel, no los dedos.
caution-tint = Colorante alimentario: azul sin carmín, el tono más débil que se vea, una colonia, un día, con agua azucarada sin teñir al lado.
    .more = No se encontró ninguna concentración, tiempo de desaparición ni prueba de seguridad publicados para hormigas, y hay criadores que cuentan muertes con uno rojo (práctica común, sin fuente).
caution-sprays = Lanza ácido fórmico: aparta los ojos de la abertura y ventila la habitación.
