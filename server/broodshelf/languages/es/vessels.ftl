### Dónde viven las hormigas. Medidas: diámetro interior × longitud en milímetros.

vessel-tube-10x70 = tubo de ensayo 10 × 70 mm
vessel-tube-12x75 = tubo de ensayo 12 × 75 mm
vessel-tube-13x100 = tubo de ensayo 13 × 100 mm
vessel-tube-16x100 = tubo de ensayo 16 × 100 mm
vessel-tube-16x125 = tubo de ensayo 16 × 125 mm
vessel-tube-16x150 = tubo de ensayo 16 × 150 mm
vessel-tube-18x150 = tubo de ensayo 18 × 150 mm
vessel-tube-20x125 = tubo de ensayo 20 × 125 mm
vessel-tube-20x150 = tubo de ensayo 20 × 150 mm
vessel-tube-25x150 = tubo de ensayo 25 × 150 mm
vessel-tube-25x200 = tubo de ensayo 25 × 200 mm
vessel-nest-tiny = nido diminuto para una colonia joven
vessel-nest-small = nido pequeño
vessel-nest-medium = nido mediano
vessel-nest-large = nido grande
vessel-nest-cast = nido moldeado que bebe por sus paredes
vessel-outworld-small = caja pequeña, 120 × 80 mm
vessel-outworld-medium = caja mediana, 200 × 150 mm
vessel-outworld-large = caja grande, 400 × 250 mm
vessel-setup-natural = montaje natural con tierra
