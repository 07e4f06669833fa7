## Las calculadoras.

calculator-about = Cada una dice cómo calcula, de dónde viene eso y dónde deja de ser cierto.
calculator-without = El agua azucarada se puede preparar en la despensa sin conexión.
calculator-back = Todas las calculadoras
calculator-back-larder = Volver a la despensa
calculator-go = Calcular
calculator-result = Lo que sale
calculator-how = Cómo se calcula

calculator-formula = Fórmula:
calculator-source = Fuente:
calculator-limits = Límites:
calculator-open = Dejarlo en blanco
calculator-in-unit = en { $unit }
calculator-range = { $low } a { $high }
calculator-up-to = hasta { $high }
calculator-left-out = en blanco: { $usual }
calculator-may-be-empty = puede quedar en blanco

calculator-input-percent = concentración
calculator-input-ml = volumen que quieres preparar
calculator-input-sugar-parts = partes de azúcar, en vez de concentración
calculator-input-water-parts = partes de agua
calculator-input-parts-by = en qué se miden las partes
calculator-input-mol-per-l = molaridad, en vez de concentración
calculator-input-dilute-food = qué quieres diluir
calculator-input-from-c = temperatura ahora, o en la primera de dos lecturas
calculator-input-room-c = temperatura de la habitación
calculator-input-to-c = temperatura al ofrecerlo
calculator-input-vessel = recipiente abierto
calculator-input-later-c = una lectura posterior de tu propio recipiente
calculator-input-later-min = minutos entre las dos lecturas
calculator-input-worker-mm = longitud de una obrera normal
calculator-input-workers = obreras
calculator-input-days = días hasta la próxima comida
calculator-input-protein-mg = proteína necesaria
calculator-input-worker-mg = masa fresca de una obrera
calculator-input-prey-food = solo este alimento
calculator-input-majors = la especie tiene majors
calculator-input-hunts-by-sight = caza con la vista
calculator-input-slow = come despacio
calculator-input-in-tube = viven en un tubo de ensayo
calculator-input-first = primeras raciones de una colonia nueva: un tercio
calculator-input-bore-mm = diámetro interior del tubo
calculator-input-length-mm = longitud del tubo
calculator-input-reservoir-mm = longitud del depósito lleno
calculator-input-temp-c = temperatura alrededor
calculator-input-humidity-pct = humedad relativa alrededor
calculator-input-species = especie
calculator-input-day-c = temperatura de día
calculator-input-night-c = temperatura de noche
calculator-input-eggs = huevos de una reina fundadora

calculator-usual-night-c = como de día
calculator-usual-protein-mg = según la masa
calculator-usual-worker-mg = según la longitud

calculator-choice-mass = masa
calculator-choice-volume = volumen
calculator-choice-drop = gota
calculator-choice-small-glass = vaso pequeño
calculator-choice-cup = taza
calculator-choice-jar = tarro
calculator-choice-pan = cazo

calculator-unit-d = días
calculator-unit-min = minutos
calculator-unit-mg-d = mg al día
calculator-unit-by-mass = % en masa
calculator-unit-parts = partes
calculator-unit-workers = obreras
calculator-unit-eggs = huevos
calculator-unit-mol-l = mol/L
