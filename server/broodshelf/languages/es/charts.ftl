## Las palabras de los gráficos.

chart-growth = Crecimiento
chart-water = Agua
chart-feeding = Comida
chart-which = Gráfico
chart-day = Día
chart-workers = Obreras
chart-level = Nivel
chart-share = Compartir como imagen
chart-no-picture = No se pudo crear la imagen.
chart-few = Un gráfico necesita al menos dos recuentos con número.
chart-few-water = Aún no hay lecturas del agua.
chart-few-food = Aún no hay comidas anotadas.
chart-week = Semana de
chart-sugar = Azúcar
chart-protein = Proteína y otra comida

chart-growth-words = Obreras contadas: de { $first } a { $last }.
chart-water-words = { $days ->
    [one] A este ritmo falta { $days } día para que toque.
   *[other] A este ritmo faltan { $days } días para que toque.
  }
chart-never = El nivel no baja por ahora.
chart-due-now = El agua toca ahora.
chart-food-words = { $count ->
    [one] { $count } comida en el último medio año.
   *[other] { $count } comidas en el último medio año.
  }
chart-estimate = La línea a trazos es una estimación; la sombra, su margen.
chart-growth-ahead = A este ritmo, unas { $best } para { $day }, entre { $low } y { $high }.
chart-behind = La forma de detrás: el calor medido en su lugar, { $low } a { $high }.
