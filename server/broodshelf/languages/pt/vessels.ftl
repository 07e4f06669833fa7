### Onde vivem as formigas. Medidas: diâmetro interno × comprimento em milímetros.

vessel-tube-10x70 = tubo de ensaio 10 × 70 mm
vessel-tube-12x75 = tubo de ensaio 12 × 75 mm
vessel-tube-13x100 = tubo de ensaio 13 × 100 mm
vessel-tube-16x100 = tubo de ensaio 16 × 100 mm
vessel-tube-16x125 = tubo de ensaio 16 × 125 mm
vessel-tube-16x150 = tubo de ensaio 16 × 150 mm
vessel-tube-18x150 = tubo de ensaio 18 × 150 mm
vessel-tube-20x125 = tubo de ensaio 20 × 125 mm
vessel-tube-20x150 = tubo de ensaio 20 × 150 mm
vessel-tube-25x150 = tubo de ensaio 25 × 150 mm
vessel-tube-25x200 = tubo de ensaio 25 × 200 mm
vessel-nest-tiny = ninho minúsculo para uma colônia jovem
vessel-nest-small = ninho pequeno
vessel-nest-medium = ninho médio
vessel-nest-large = ninho grande
vessel-nest-cast = ninho moldado que bebe pelas paredes
vessel-outworld-small = caixa pequena, 120 × 80 mm
vessel-outworld-medium = caixa média, 200 × 150 mm
vessel-outworld-large = caixa grande, 400 × 250 mm
vessel-setup-natural = montagem natural com terra
