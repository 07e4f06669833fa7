## Die Rechner.

calculator-about = Jeder sagt, wie er rechnet, woher das stammt und wo es nicht mehr stimmt.
calculator-without = Zuckerwasser lässt sich im Vorrat auch ohne Verbindung mischen.
calculator-back = Alle Rechner
calculator-back-larder = Zurück zum Vorrat
calculator-go = Ausrechnen
calculator-result = Was herauskommt
calculator-how = Wie gerechnet wird

calculator-formula = Formel:
calculator-source = Quelle:
calculator-limits = Grenzen:
calculator-open = Offen lassen
calculator-in-unit = in { $unit }
calculator-range = { $low } bis { $high }
calculator-up-to = bis { $high }
calculator-left-out = wenn leer: { $usual }
calculator-may-be-empty = darf leer bleiben

calculator-input-percent = Stärke
calculator-input-ml = Menge, die entstehen soll
calculator-input-sugar-parts = Teile Zucker, statt einer Stärke
calculator-input-water-parts = Teile Wasser
calculator-input-parts-by = Teile wovon
calculator-input-mol-per-l = Molarität, statt einer Stärke
calculator-input-dilute-food = was verdünnt wird
calculator-input-from-c = Temperatur jetzt oder bei der ersten von zwei Messungen
calculator-input-room-c = Temperatur im Raum
calculator-input-to-c = Temperatur beim Anbieten
calculator-input-vessel = offenes Gefäß
calculator-input-later-c = eine spätere Messung an deinem eigenen Gefäß
calculator-input-later-min = Minuten zwischen beiden Messungen
calculator-input-worker-mm = Länge einer üblichen Arbeiterin
calculator-input-workers = Arbeiterinnen
calculator-input-days = Tage bis zur nächsten Fütterung
calculator-input-protein-mg = Bedarf an Eiweiß
calculator-input-worker-mg = Frischmasse einer Arbeiterin
calculator-input-prey-food = nur dieses Futter
calculator-input-majors = die Art hat Majore
calculator-input-hunts-by-sight = sie jagt mit den Augen
calculator-input-slow = sie frisst langsam
calculator-input-in-tube = sie leben im Reagenzglas
calculator-input-first = erste Portionen einer neuen Kolonie: ein Drittel
calculator-input-bore-mm = Innendurchmesser des Reagenzglases
calculator-input-length-mm = Länge des Reagenzglases
calculator-input-reservoir-mm = Länge des vollen Wassertanks
calculator-input-temp-c = Temperatur ringsum
calculator-input-humidity-pct = relative Luftfeuchte ringsum
calculator-input-species = Art
calculator-input-day-c = Temperatur am Tag
calculator-input-night-c = Temperatur in der Nacht
calculator-input-eggs = Eier einer gründenden Königin

calculator-usual-night-c = wie am Tag
calculator-usual-protein-mg = nach Masse
calculator-usual-worker-mg = nach Länge

calculator-choice-mass = Masse
calculator-choice-volume = Volumen
calculator-choice-drop = Tropfen
calculator-choice-small-glass = kleines Glas
calculator-choice-cup = Tasse
calculator-choice-jar = Einmachglas
calculator-choice-pan = Topf

calculator-unit-d = Tage
calculator-unit-min = Minuten
calculator-unit-mg-d = mg am Tag
calculator-unit-by-mass = % der Masse
calculator-unit-parts = Teile
calculator-unit-workers = Arbeiterinnen
calculator-unit-eggs = Eier
calculator-unit-mol-l = mol/L
