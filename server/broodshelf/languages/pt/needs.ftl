### O que uma colônia precisa, e o que uma tarefa pede.

## Necessidades. `.inside` é o mesmo dentro de uma frase ou lista.

need-sugar = Açúcar
    .inside = açúcar
need-protein = Proteína
    .inside = proteína
need-seeds = Sementes
    .inside = sementes
need-leaves = Folhas
    .inside = folhas
need-water = Água
    .inside = água
need-leftovers = Restos
    .inside = restos
need-room = Espaço
    .inside = espaço
need-barrier = Barreira
    .inside = barreira
need-rest = Repouso anual
    .inside = repouso anual
need-glance = Uma olhada calma
    .inside = uma olhada calma

## O que uma tarefa pede.

todo-water = Cuide da água
todo-water-look = Olhe quanta água há
todo-leak = Olhe se está vazando
todo-too-hot = Esfrie a colônia
todo-too-cold = Leve para um lugar mais quente
todo-overheating = Esfrie a colônia já
todo-freezing = Tire do gelo
todo-rising-fast = Veja por que aquece tão depressa
todo-heater-on = Olhe se o aquecedor não desliga
todo-heater-off = Olhe se o aquecedor falhou
todo-fridge-open = Feche o refrigerador
todo-dry-air = Olhe a água: o ar está seco
todo-risk-look = Olhe se estão bem
todo-move-look = Olhe se já mudaram
todo-move-end = Olhe se já mudaram
todo-leftovers = Retire os restos
todo-room = Ofereça um ninho novo
todo-mould-look = Olhe o bolor de novo
todo-barrier = Olhe a barreira
todo-glance = Dê uma olhada calma
todo-rest = Cuide do repouso
todo-rest-air = Abra a caixa do refrigerador um minuto
todo-rest-fits = Corrija o repouso
todo-wake-up = Acorde a colônia
todo-ask = Olhe e conte
