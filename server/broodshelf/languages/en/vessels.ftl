### What ants live in. Measures are inner diameter × length in millimetres.

vessel-tube-10x70 = test tube 10 × 70 mm
vessel-tube-12x75 = test tube 12 × 75 mm
vessel-tube-13x100 = test tube 13 × 100 mm
vessel-tube-16x100 = test tube 16 × 100 mm
vessel-tube-16x125 = test tube 16 × 125 mm
vessel-tube-16x150 = test tube 16 × 150 mm
vessel-tube-18x150 = test tube 18 × 150 mm
vessel-tube-20x125 = test tube 20 × 125 mm
vessel-tube-20x150 = test tube 20 × 150 mm
vessel-tube-25x150 = test tube 25 × 150 mm
vessel-tube-25x200 = test tube 25 × 200 mm
vessel-nest-tiny = tiny nest for a young colony
vessel-nest-small = small nest
vessel-nest-medium = middling nest
vessel-nest-large = large nest
vessel-nest-cast = cast nest that drinks through its walls
vessel-outworld-small = small box, 120 × 80 mm
vessel-outworld-medium = middling box, 200 × 150 mm
vessel-outworld-large = large box, 400 × 250 mm
vessel-setup-natural = natural set-up with soil
