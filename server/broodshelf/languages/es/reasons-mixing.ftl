### Agua azucarada: mezclar y enfriar.

reason-sugar-near-saturation = Cerca de todo lo que el agua puede disolver ({ $limit } % a { DEGREES(20) }): cristaliza en tubos y comederos.
reason-sugar-thick = Más espesa que la que mejor llena el buche (43 % en una hormiga carpintera: Josens et al. 1998): se bebe despacio.
reason-sugar-thin = Floja: las hormigas la beben, pero llena el buche con poco azúcar y se estropea antes.
reason-sugar-good-range = En el margen que las hormigas beben bien: en una hormiga carpintera la toma fue más rápida al 31 % y el buche más lleno al 43 % (Josens et al. 1998).
reason-sugar-dissolve-warm = Si la calientas para disolver el azúcar, deja que se enfríe a { DEGREES(30) } o menos antes de ofrecerla. El sirope caliente quema las manos y mata hormigas.
reason-cooling-check = Comprueba antes de ofrecerla: un termómetro a { DEGREES(30) } o menos, o nada de calor en la cara interior de la muñeca (práctica común).
reason-cooling-spread = Una tapa, un cuenco ancho o una corriente de aire cambian mucho esto: son mejores dos lecturas de termómetro de tu propio recipiente.
