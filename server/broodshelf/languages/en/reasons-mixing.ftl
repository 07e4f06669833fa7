### Sugar water: mixing and cooling.

reason-sugar-near-saturation = Close to all that water can hold ({ $limit } % at { DEGREES(20) }): it crystallises in tubes and feeders.
reason-sugar-thick = Thicker than what fills crops best (43 % in one carpenter ant: Josens et al. 1998): slow to drink.
reason-sugar-thin = Thin: ants drink it, but it fills a crop with little sugar and spoils sooner.
reason-sugar-good-range = In the range that ants drink well: in one carpenter ant intake was fastest at 31 % and crops fullest at 43 % (Josens et al. 1998).
reason-sugar-dissolve-warm = If you warm it to dissolve the sugar, let it cool to { DEGREES(30) } or less before you offer it. Hot syrup burns hands and kills ants.
reason-cooling-check = Check before you offer it: a thermometer at { DEGREES(30) } or less, or no warmth on the inside of your wrist (common practice).
reason-cooling-spread = A lid, a wide bowl or a draught changes this much: two thermometer readings of your own vessel are better.
