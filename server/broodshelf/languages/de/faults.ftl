### Was an einem Nest nicht stimmen kann.

fault-leak = Wassertank undicht
    .inside = undichter Wassertank
fault-flood = Nest überflutet
    .inside = überflutetes Nest
fault-mould = Schimmel
    .inside = Schimmel
fault-escape = Ausbruch
    .inside = Ausbruch
fault-mites = Milben
    .inside = Milben
fault-many-dead = Viele Tote
    .inside = viele Tote
fault-heater = Heizung defekt
    .inside = defekte Heizung
