### Alimentos, cómo se sirven, y una ración en palabras.
### `.of` va siempre detrás de «de», sin artículo: «1 gota de agua azucarada», «1 pata de grillo».

food-sugar-water = agua azucarada
    .counted = agua azucarada
    .of = agua azucarada

food-honey-water = agua con miel
    .counted = agua con miel
    .of = agua con miel

food-honey = miel
    .counted = miel
    .of = miel

food-maple-syrup = sirope de arce
    .counted = sirope de arce
    .of = sirope de arce

food-jam = mermelada
    .counted = mermelada
    .of = mermelada

food-white-sugar = azúcar blanco
    .counted = azúcar blanco
    .of = azúcar blanco

food-fruit = fruta
    .counted = fruta
    .of = fruta

food-fruit-fly = mosca de la fruta
    .counted =
        { $n ->
            [one] mosca de la fruta
           *[other] moscas de la fruta
        }
    .of = mosca de la fruta

food-web-spider = araña de tela
    .counted =
        { $n ->
            [one] araña de tela
           *[other] arañas de tela
        }
    .of = araña de tela

food-hunting-spider = araña cazadora
    .counted =
        { $n ->
            [one] araña cazadora
           *[other] arañas cazadoras
        }
    .of = araña cazadora

food-cricket = grillo
    .counted =
        { $n ->
            [one] grillo
           *[other] grillos
        }
    .of = grillo

food-mealworm = tenebrio
    .counted =
        { $n ->
            [one] tenebrio
           *[other] tenebrios
        }
    .of = tenebrio

food-waxworm = gusano de la cera
    .counted =
        { $n ->
            [one] gusano de la cera
           *[other] gusanos de la cera
        }
    .of = gusano de la cera

food-superworm = zofoba
    .counted =
        { $n ->
            [one] zofoba
           *[other] zofobas
        }
    .of = zofoba

food-roach-nymph = ninfa de cucaracha comprada
    .counted =
        { $n ->
            [one] ninfa de cucaracha comprada
           *[other] ninfas de cucaracha compradas
        }
    .of = ninfa de cucaracha comprada

food-silkworm = gusano de seda
    .counted =
        { $n ->
            [one] gusano de seda
           *[other] gusanos de seda
        }
    .of = gusano de seda

food-egg = huevo cocido
    .counted = huevo cocido
    .of = huevo cocido

food-protein-jelly = gelatina de proteína
    .counted = gelatina de proteína
    .of = gelatina de proteína

food-seeds = semillas
    .counted =
        { $n ->
            [one] semilla
           *[other] semillas
        }
    .of = semillas

food-chia = semillas de chía
    .counted =
        { $n ->
            [one] semilla de chía
           *[other] semillas de chía
        }
    .of = semillas de chía

food-dandelion-seed = semillas de diente de león
    .counted =
        { $n ->
            [one] semilla de diente de león
           *[other] semillas de diente de león
        }
    .of = semillas de diente de león

food-canary-seed = alpiste
    .counted =
        { $n ->
            [one] grano de alpiste
           *[other] granos de alpiste
        }
    .of = alpiste

food-leaves = hojas
    .counted =
        { $n ->
            [one] hoja
           *[other] hojas
        }
    .of = hojas

## Cómo se sirve, al final de una ración: sin género ni número, para que valga con todo.

form-whole-dead = sin vida
form-cut = sin vida y a trozos
form-stunned = tras aturdir
form-live = con vida
form-feeder = en comedero
form-crushed = a trocitos

## Tamaños de presa, como los llaman los vendedores. Van entre paréntesis, detrás del animal.

size-tiny = diminuto
size-extra-small = muy pequeño
size-small = pequeño
size-medium = mediano
size-large = grande

## Una ración.

portion-piece = { $n } { $food }
portion-piece-sized = { $n } { $food } (tamaño { $size })
portion-crumb =
    { $n ->
        [one] { $n } migaja
       *[other] { $n } migajas
    } de { $food }
portion-drop =
    { $n ->
        [one] { $n } gota
       *[other] { $n } gotas
    } de { $food }
portion-ml = { VOLUME($n) } de { $food }
portion-mg = { $n } mg de { $food }
portion-leg =
    { $n ->
        [one] { $n } pata
       *[other] { $n } patas
    } de { $food }
portion-leg-sized =
    { $n ->
        [one] { $n } pata
       *[other] { $n } patas
    } de { $food } (tamaño { $size })
portion-slice =
    { $n ->
        [one] { $n } rodaja
       *[other] { $n } rodajas
    } de { $food }
portion-slice-sized =
    { $n ->
        [one] { $n } rodaja
       *[other] { $n } rodajas
    } de { $food } (tamaño { $size })
portion-seed = { $n } { $food }
portion-leaf = { $n } { $food }
portion-with-form = { $portion }, { $form }
