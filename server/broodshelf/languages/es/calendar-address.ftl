## Las rondas en un calendario.

calendar-address-title = Ver las rondas en un calendario
calendar-address-about = Los calendarios miran cada 1 a 24 horas, y muchos omiten nuestras alarmas: pon allí una alerta tuya. Quien tenga la dirección puede leer las rondas. Caduca al cabo de un año; una nueva anula la anterior.
calendar-address-once = Añade esta dirección como suscripción de calendario. Solo se muestra una vez.
calendar-address-copy = Copiar la dirección
calendar-address-copied = Copiada.
calendar-address-make = Crear la dirección
calendar-address-anew = Crear una dirección nueva
calendar-address-end = Anular la dirección
calendar-address-ended = La dirección del calendario está anulada.
