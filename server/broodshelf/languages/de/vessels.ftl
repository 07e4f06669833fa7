### Worin Ameisen leben. Maße: Innendurchmesser × Länge in Millimetern.

vessel-tube-10x70 = Reagenzglas 10 × 70 mm
vessel-tube-12x75 = Reagenzglas 12 × 75 mm
vessel-tube-13x100 = Reagenzglas 13 × 100 mm
vessel-tube-16x100 = Reagenzglas 16 × 100 mm
vessel-tube-16x125 = Reagenzglas 16 × 125 mm
vessel-tube-16x150 = Reagenzglas 16 × 150 mm
vessel-tube-18x150 = Reagenzglas 18 × 150 mm
vessel-tube-20x125 = Reagenzglas 20 × 125 mm
vessel-tube-20x150 = Reagenzglas 20 × 150 mm
vessel-tube-25x150 = Reagenzglas 25 × 150 mm
vessel-tube-25x200 = Reagenzglas 25 × 200 mm
vessel-nest-tiny = winziges Nest für eine junge Kolonie
vessel-nest-small = kleines Nest
vessel-nest-medium = mittleres Nest
vessel-nest-large = großes Nest
vessel-nest-cast = gegossenes Nest, das durch die Wände trinkt
vessel-outworld-small = kleine Box, 120 × 80 mm
vessel-outworld-medium = mittlere Box, 200 × 150 mm
vessel-outworld-large = große Box, 400 × 250 mm
vessel-setup-natural = naturnahes Becken mit Erde
