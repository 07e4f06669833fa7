## Lo que hay en el nido y lo que saldrá: los días, la pregunta y el porqué.

brood-first = Las primeras obreras
brood-next = Nuevas obreras

brood-days = { $high ->
    [one] En { $low } a { $high } día.
   *[other] En { $low } a { $high } días.
  }
brood-days-about = { $days ->
    [one] En cerca de { $days } día.
   *[other] En unos { $days } días.
  }
brood-between = Entre { $from } y { $to }
brood-on = Hacia { $day }
brood-any-by = Cualquier día, hasta { $day }
brood-any = Cualquier día
brood-at-latest = { $days ->
    [one] Como muy tarde en { $days } día.
   *[other] Como muy tarde en { $days } días.
  }
brood-not-before = No antes de { $day }
brood-likely = { $days ->
    [one] Lo más probable: hacia { $best }, en { $days } día; quizá tan tarde como { $high }
   *[other] Lo más probable: hacia { $best }, en { $days } días; quizá tan tarde como { $high }
  }
brood-perhaps = Quizá tan tarde como { $high }

brood-no-end = Cuánto tiempo después, aún no se puede decir.

brood-warm = A { DEGREES($mean_c) }.
brood-none = Con el calor de ahora no se espera ninguna en medio año.

brood-ask-by-seen = { $brood ->
    [eggs] Debería haber huevos ({ $day }): ¿los has visto?
    [larvae] Debería haber larvas ({ $day }): ¿las has visto?
   *[pupae] Debería haber pupas ({ $day }): ¿las has visto?
  }
brood-ask-by = { $brood ->
    [eggs] Debería haber huevos como tarde: { $day }
    [larvae] Debería haber larvas como tarde: { $day }
   *[pupae] Debería haber pupas como tarde: { $day }
  }
brood-ask-now-seen = { $brood ->
    [eggs] Ya debería haber huevos: ¿los has visto?
    [larvae] Ya debería haber larvas: ¿las has visto?
   *[pupae] Ya debería haber pupas: ¿las has visto?
  }
brood-ask-now = { $brood ->
    [eggs] Ya debería haber huevos.
    [larvae] Ya debería haber larvas.
   *[pupae] Ya debería haber pupas.
  }
brood-ask-yes = Sí
brood-ask-not-yet = Aún no
brood-ask-cannot-see = No se ve
brood-ask-early = Ya se ven
brood-ask-looked = Ya se miró ({ $day }). La próxima pregunta: { $again }. Hasta entonces ayuda más la calma.
brood-ask-told = { $brood ->
    [eggs] Huevos vistos: { $day }
    [larvae] Larvas vistas: { $day }
   *[pupae] Pupas vistas: { $day }
  }
brood-ask-waits = Los días se calculan de nuevo con la próxima conexión.

brood-ask-remark = { $brood ->
    [eggs] Se buscaron huevos, no se veía
    [larvae] Se buscaron larvas, no se veía
   *[pupae] Se buscaron pupas, no se veía
  }

brood-open = La cría en una línea de tiempo

brood-why-title = Por qué estos días
brood-why-nothing = Nada de lo visto los ha movido aún: son los de su tipo con este calor.
brood-why-eight = De diez colonias como esta, ocho caen dentro del margen.
brood-why-unmeasured = Nadie ha medido cuánto duran las fases de su grupo. Los días se basan en la práctica común, por eso el margen es ancho. Lo que veas lo estrecha.
brood-why-source = Punto de partida: { $source }.

brood-why-line = { $day }: { $seen }, { $moved }.
brood-why-counted = { $count ->
    [0] ninguna obrera
    [one] { $count } obrera contada
   *[other] { $count } obreras contadas
  }
brood-why-workers = obreras contadas

brood-why-seen-none = { $brood ->
    [eggs] ningún huevo
    [larvae] ninguna larva
    [pupae] ninguna pupa
   *[workers] ninguna obrera
  }
brood-why-seen-seen = { $brood ->
    [eggs] huevos vistos
    [larvae] larvas vistas
    [pupae] pupas vistas
   *[workers] obreras vistas
  }
brood-why-seen-few = { $brood ->
    [eggs] pocos huevos
    [larvae] pocas larvas
    [pupae] pocas pupas
   *[workers] pocas obreras
  }
brood-why-seen-some = { $brood ->
    [eggs] algunos huevos
    [larvae] algunas larvas
    [pupae] algunas pupas
   *[workers] algunas obreras
  }
brood-why-seen-many = { $brood ->
    [eggs] muchos huevos
    [larvae] muchas larvas
    [pupae] muchas pupas
   *[workers] muchas obreras
  }
brood-why-seen-taken = insectos aceptados
brood-why-seen-refused = insectos rechazados

brood-why-moved-census-more = más de lo esperado
brood-why-moved-census-fewer = menos de lo esperado
brood-why-moved-census-sooner = así que esta cría va más deprisa de lo pensado
brood-why-moved-census-later = así que esta cría va más despacio de lo pensado

brood-why-none = cuando se esperaba ver algo

brood-why-larvae-census-more = así que hay más larvas de lo pensado
brood-why-larvae-census-fewer = así que hay menos larvas de lo pensado

## Una fundación que se ha parado, y lo que hacen los criadores (práctica común).

stalled-title = Esta fundación probablemente se ha parado
stalled-days = { $days ->
    [one] En nueve de cada diez fundaciones como esta habría habido obreras hace { $days } día o antes.
   *[other] En nueve de cada diez fundaciones como esta habría habido obreras hace { $days } días o antes.
  }
stalled-about = Lo que hacen los criadores, en este orden (práctica común):
stalled-unfed-1 = Deja el tubo a oscuras y en paz dos semanas, con el calor medio que le gusta a su especie. Muchas reinas se comen la cría porque se las mira demasiado.
stalled-unfed-2 = No le des comida en estas semanas: vive de sus reservas, y la comida se pudre a su lado.
stalled-unfed-3 = Luego mira una vez. Si la cría ha avanzado, por ejemplo larvas donde había huevos, solo necesita más tiempo.
stalled-unfed-4 = Sin cría, o menos que antes: ofrece una gota de agua azucarada y una pizca de insecto, y retira al cabo de un día lo que sobre. Una reina que se ha comido su cría puede volver a poner.
stalled-fed-1 = Déjala a oscuras y en calma, con el calor medio que le gusta a su especie, y mira como mucho una vez por semana.
stalled-fed-2 = Sigue dándole comida: azúcar y un insecto pequeño cada 3 a 5 días, y retira al cabo de un día lo que sobre. Una reina con hambre se come su cría.
stalled-fed-3 = A las dos semanas mira con atención. Si la cría ha avanzado, por ejemplo larvas donde había huevos, solo necesita más tiempo.
stalled-last-1 = Sin agua, o moho cerca de la cría: pon un tubo nuevo delante del suyo y deja que se mude sola.
stalled-last-2 = Ningún huevo en seis a ocho semanas cálidas: probablemente nunca fue fecundada o está agotada. Cría de su misma especie, de una colonia sana, es lo último que se puede probar.

## La cría en una línea de tiempo.

brood-line-ahead = Hasta cuándo

brood-line-reach-56 = 8 semanas
brood-line-reach-182 = Medio año

brood-line-stage-eggs = Huevos
brood-line-stage-small-larvae = Larvas pequeñas
brood-line-stage-large-larvae = Larvas grandes
brood-line-stage-pupae = Pupas
brood-line-stage-workers = Obreras

brood-line-day = Día
brood-line-today = hoy

brood-line-now = ahora { $number }

brood-line-about = { $best } ({ $low }–{ $high })

brood-line-summary = { $best ->
    [one] Hoy, probablemente: { $counts }. Para { $day }: cerca de { $best } obrera, entre { $low } y { $high }.
   *[other] Hoy, probablemente: { $counts }. Para { $day }: unas { $best } obreras, entre { $low } y { $high }.
  }

brood-line-count-eggs = { $count ->
    [0] ningún huevo
    [one] { $count } huevo
   *[other] { $count } huevos
  }
brood-line-count-small-larvae = { $count ->
    [0] ninguna larva pequeña
    [one] { $count } larva pequeña
   *[other] { $count } larvas pequeñas
  }
brood-line-count-large-larvae = { $count ->
    [0] ninguna larva grande
    [one] { $count } larva grande
   *[other] { $count } larvas grandes
  }
brood-line-count-pupae = { $count ->
    [0] ninguna pupa
    [one] { $count } pupa
   *[other] { $count } pupas
  }
brood-line-count-workers = { $count ->
    [0] ninguna obrera
    [one] { $count } obrera
   *[other] { $count } obreras
  }

brood-line-mark-line = lo más probable; a trazos: aún por venir
brood-line-mark-band = ocho de cada diez
brood-line-mark-dot = contaste, o viste algo
brood-line-mark-hollow = miraste, y no había nada
brood-line-mark-due = cuándo nacen obreras

brood-line-scale = Cada fila tiene su propia altura. El pasado se dibuja como se creía entonces.
