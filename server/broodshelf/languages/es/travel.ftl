### Reglas para llevar una colonia.

travel-no-loose-liquid = Sin líquido suelto: ni gotas ni comedero; deja secar la zona de forrajeo.
travel-plugs-tight = Todos los tapones y tapas firmes, con un poco de aire.
travel-dark-and-calm = A oscuras, tumbada como siempre, envuelta para que nada ruede.
travel-travel-warmth = { DEGREES($low_c) } a { DEGREES($high_c) } todo el camino; nunca en un vehículo estacionado (práctica común).
travel-quiet-after = Después, { $low } a { $high } días de calma: que rechace comida no dice nada (práctica común).
travel-never-tilt = No la inclines nunca: las repletas que caen se pierden.
travel-double-lid = Pica: una segunda caja cerrada alrededor, con una etiqueta.
