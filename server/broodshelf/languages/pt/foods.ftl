### Alimentos, como se servem, e uma porção em palavras.
### `.of` vem sempre depois de “de”, sem artigo: “1 gota de água com açúcar”, “1 pata de grilo”.

food-sugar-water = água com açúcar
    .counted = água com açúcar
    .of = água com açúcar

food-honey-water = água com mel
    .counted = água com mel
    .of = água com mel

food-honey = mel
    .counted = mel
    .of = mel

food-maple-syrup = xarope de bordo
    .counted = xarope de bordo
    .of = xarope de bordo

food-jam = geleia
    .counted = geleia
    .of = geleia

food-white-sugar = açúcar branco
    .counted = açúcar branco
    .of = açúcar branco

food-fruit = fruta
    .counted = fruta
    .of = fruta

food-fruit-fly = mosca-da-fruta
    .counted =
        { $n ->
            [one] mosca-da-fruta
           *[other] moscas-da-fruta
        }
    .of = mosca-da-fruta

food-web-spider = aranha de teia
    .counted =
        { $n ->
            [one] aranha de teia
           *[other] aranhas de teia
        }
    .of = aranha de teia

food-hunting-spider = aranha caçadora
    .counted =
        { $n ->
            [one] aranha caçadora
           *[other] aranhas caçadoras
        }
    .of = aranha caçadora

food-cricket = grilo
    .counted =
        { $n ->
            [one] grilo
           *[other] grilos
        }
    .of = grilo

food-mealworm = tenébrio
    .counted =
        { $n ->
            [one] tenébrio
           *[other] tenébrios
        }
    .of = tenébrio

food-waxworm = larva de traça-da-cera
    .counted =
        { $n ->
            [one] larva de traça-da-cera
           *[other] larvas de traça-da-cera
        }
    .of = larva de traça-da-cera

food-superworm = tenébrio gigante
    .counted =
        { $n ->
            [one] tenébrio gigante
           *[other] tenébrios gigantes
        }
    .of = tenébrio gigante

food-roach-nymph = ninfa de barata comprada
    .counted =
        { $n ->
            [one] ninfa de barata comprada
           *[other] ninfas de barata compradas
        }
    .of = ninfa de barata comprada

food-silkworm = bicho-da-seda
    .counted =
        { $n ->
            [one] bicho-da-seda
           *[other] bichos-da-seda
        }
    .of = bicho-da-seda

food-egg = ovo cozido
    .counted = ovo cozido
    .of = ovo cozido

food-protein-jelly = gelatina de proteína
    .counted = gelatina de proteína
    .of = gelatina de proteína

food-seeds = sementes
    .counted =
        { $n ->
            [one] semente
           *[other] sementes
        }
    .of = sementes

food-chia = sementes de chia
    .counted =
        { $n ->
            [one] semente de chia
           *[other] sementes de chia
        }
    .of = sementes de chia

food-dandelion-seed = sementes de dente-de-leão
    .counted =
        { $n ->
            [one] semente de dente-de-leão
           *[other] sementes de dente-de-leão
        }
    .of = sementes de dente-de-leão

food-canary-seed = alpiste
    .counted =
        { $n ->
            [one] grão de alpiste
           *[other] grãos de alpiste
        }
    .of = alpiste

food-leaves = folhas
    .counted =
        { $n ->
            [one] folha
           *[other] folhas
        }
    .of = folhas

## Como se serve, no fim de uma porção: sem gênero nem número, para servir a tudo.

form-whole-dead = sem vida
form-cut = sem vida e em pedaços
form-stunned = após atordoar
form-live = com vida
form-feeder = em comedouro
form-crushed = em pedacinhos

## Tamanhos de presa, como os vendedores os chamam. Vão entre parênteses, depois do animal.

size-tiny = minúsculo
size-extra-small = muito pequeno
size-small = pequeno
size-medium = médio
size-large = grande

## Uma porção.

portion-piece = { $n } { $food }
portion-piece-sized = { $n } { $food } (tamanho { $size })
portion-crumb =
    { $n ->
        [one] { $n } migalha
       *[other] { $n } migalhas
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
    } de { $food } (tamanho { $size })
portion-slice =
    { $n ->
        [one] { $n } fatia
       *[other] { $n } fatias
    } de { $food }
portion-slice-sized =
    { $n ->
        [one] { $n } fatia
       *[other] { $n } fatias
    } de { $food } (tamanho { $size })
portion-seed = { $n } { $food }
portion-leaf = { $n } { $food }
portion-with-form = { $portion }, { $form }
