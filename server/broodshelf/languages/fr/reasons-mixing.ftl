reason-sugar-near-saturation = Près de tout ce que l’eau peut tenir ({ $limit } % à { DEGREES(20) }) : cela cristallise dans les tubes et les abreuvoirs.
reason-sugar-thick = Plus épais que ce qui remplit le mieux les jabots (43 % chez une fourmi charpentière : Josens et al. 1998) : lent à boire.
reason-sugar-thin = Très clair : les fourmis le boivent, mais il remplit un jabot de peu de sucre et se gâte plus tôt.
reason-sugar-good-range = Dans la fourchette que les fourmis boivent bien : chez une fourmi charpentière l’absorption était la plus rapide à 31 % et les jabots les plus pleins à 43 % (Josens et al. 1998).
reason-sugar-dissolve-warm = Si tu chauffes pour dissoudre le sucre, laisse refroidir à { DEGREES(30) } ou moins avant d’offrir. Le sirop chaud brûle les mains et tue les fourmis.
reason-cooling-check = Vérifie avant d’offrir : un thermomètre à { DEGREES(30) } ou moins, ou aucune chaleur sur l’intérieur de ton poignet (usage courant).
reason-cooling-spread = Un couvercle, un bol large ou un courant d’air changent beaucoup : deux mesures au thermomètre dans ton récipient valent mieux.
