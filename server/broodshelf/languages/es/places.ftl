## Lugares y su clima.

place-title = Lugares
place-about = Armario, habitación, sótano o nevera: su calor y su sequedad mueven la comida, el agua y la cría en cada plan.
place-empty = No hay ningún lugar anotado. Sin él se supone una habitación a { DEGREES(22) } (práctica común).
place-add = Añadir un lugar
place-change = Cambiar
place-reading = Anotar una lectura
place-log = Anotar la lectura
place-sensors = Sensores
place-chart = Con el tiempo
place-close = Cerrar
place-open = Ver los lugares
place-name = Nombre del lugar
place-type = Qué es

place-type-cabinet = Armario
place-type-room = Habitación
place-type-cellar = Sótano
place-type-fridge = Nevera

place-nobody = Aún no hay ninguna colonia aquí: elige este lugar en la colonia, en «Cambiar».

place-day-temp = De día, { $unit }
place-night-temp = De noche, { $unit }
place-humidity = Humedad, %
place-temperature = Temperatura, { $unit }
place-stands = Está en
place-nowhere = sin decir
place-none-yet = Añade antes un lugar, en Casa.
place-day = { $warm } de día
place-night = { $warm } de noche
place-moist = { $percent } % de humedad

place-last = Última lectura: { $what } ({ $when })
place-bad-temp = Esta temperatura no puede ser: escríbela en { $unit }.
place-bad-moist = La humedad está entre 0 y 100 %.
place-nothing = Escribe una temperatura o una humedad.
