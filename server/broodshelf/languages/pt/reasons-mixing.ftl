### Água com açúcar: misturar e esfriar.

reason-sugar-near-saturation = Perto de tudo o que a água pode dissolver ({ $limit } % a { DEGREES(20) }): cristaliza em tubos e comedouros.
reason-sugar-thick = Mais grossa que a que melhor enche o papo (43 % numa formiga-carpinteira: Josens et al. 1998): bebe-se devagar.
reason-sugar-thin = Rala: as formigas bebem, mas enche o papo com pouco açúcar e estraga antes.
reason-sugar-good-range = Na faixa que as formigas bebem bem: numa formiga-carpinteira a ingestão foi mais rápida a 31 % e o papo mais cheio a 43 % (Josens et al. 1998).
reason-sugar-dissolve-warm = Se aquecer para dissolver o açúcar, deixe esfriar a { DEGREES(30) } ou menos antes de oferecer. Xarope quente queima as mãos e mata formigas.
reason-cooling-check = Verifique antes de oferecer: um termômetro a { DEGREES(30) } ou menos, ou nenhum calor no lado de dentro do pulso (prática comum).
reason-cooling-spread = Uma tampa, uma tigela larga ou uma corrente de ar mudam muito isto: duas leituras de termômetro do seu próprio recipiente são melhores.
