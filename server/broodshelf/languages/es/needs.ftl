### Lo que necesita una colonia, y lo que pide una tarea.

## Necesidades. `.inside` es lo mismo dentro de una frase o una lista.

need-sugar = Azúcar
    .inside = azúcar
need-protein = Proteína
    .inside = proteína
need-seeds = Semillas
    .inside = semillas
need-leaves = Hojas
    .inside = hojas
need-water = Agua
    .inside = agua
need-leftovers = Restos
    .inside = restos
need-room = Espacio
    .inside = espacio
need-barrier = Antifugas
    .inside = antifugas
need-rest = Reposo anual
    .inside = reposo anual
need-glance = Un vistazo tranquilo
    .inside = un vistazo tranquilo

## Lo que pide una tarea.

todo-water = Ocúpate del agua
todo-water-look = Mira cuánta agua hay
todo-leak = Mira si gotea
todo-too-hot = Enfríala
todo-too-cold = Llévala a un sitio más cálido
todo-overheating = Enfríala enseguida
todo-freezing = Sácala de la helada
todo-rising-fast = Mira por qué se calienta tan deprisa
todo-heater-on = Mira si la calefacción no se apaga
todo-heater-off = Mira si la calefacción ha fallado
todo-fridge-open = Cierra la nevera
todo-dry-air = Mira el agua: el aire está seco
todo-risk-look = Mira si están bien
todo-move-look = Mira si se han mudado
todo-move-end = Mira si se han mudado
todo-leftovers = Retira los restos
todo-room = Ofrece un nido nuevo
todo-mould-look = Mira otra vez el moho
todo-barrier = Mira el antifugas
todo-glance = Echa un vistazo tranquilo
todo-rest = Ocúpate de su reposo
todo-rest-air = Abre un minuto la caja de la nevera
todo-rest-fits = Corrige su reposo
todo-wake-up = Despiértala
todo-ask = Mira y cuenta
