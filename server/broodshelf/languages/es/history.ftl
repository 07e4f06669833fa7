## El pasado de una anotación.

history-title = Historial
history-offline = El historial se guarda en el servidor, así que hace falta conexión.
history-again = Probar otra vez
history-unsent = Aún sin enviar. Su historial empieza con la próxima conexión.
history-somebody = Alguien

history-made = { $who } lo anotó
history-changed = { $who } lo cambió
history-out = { $who } lo borró
history-back = { $who } lo recuperó

history-was = antes: { $value }
history-not-stood = { $field }: «{ $value }» no valió: hubo un cambio posterior en otro teléfono.
history-bring = Recuperar «{ $value }»
history-clear = Dejarlo vacío otra vez
history-brought = Recuperado

history-gone-title = Lo que se fue
history-gone-about = Lo último que se borró o anuló. Todo se puede recuperar, con lo que tenía dentro.
history-gone-none = No se borró nada.
history-gone-take-back = Recuperar
history-gone-back = De vuelta: { $what }
history-gone-link = Lo que se fue

history-gone-by = { $who }, { $when }

history-register-household = La casa
history-register-person = Persona
history-register-colony = Colonia
history-register-vessel = Recipiente
history-register-place = Lugar
history-register-lot = Comida en la despensa
history-register-rule = Ritmo propio
history-register-tasting = Cata
history-register-pass = Pase

history-field-resting-since = En reposo desde
history-field-condition-until = Hasta
history-field-came-from = Vino de
history-field-went-to = Fue a
history-field-died-of = Murió de
history-field-host-species-code = Hospedadora
history-field-name = Nombre
history-field-stage = Fase
history-field-condition = Estado
history-field-number = Número
history-field-species-code = Especie
history-field-species-name = Especie
history-field-queens = Reinas
history-field-gone = Borrado
history-field-worker-length-mm = Longitud de una obrera en mm
history-field-guild = Qué come
history-field-founding-mode = Cómo funda su reina
history-field-stings = Pica
history-field-vessel-id = Recipiente
history-field-place-id = Lugar
history-field-interval-days = Tus propios intervalos
history-field-amount = Cantidad
history-field-unit = Unidad
history-field-text = Texto
history-field-zone = Zona horaria
history-field-care-hours = Horas de cuidado
history-field-remark = Observación
history-field-happened-at = Cuándo
history-field-need = Para qué
history-field-food-code = Comida
history-field-lot-id = Lote
history-field-origin = De dónde viene
history-field-size-class = Tamaño
history-field-feeding-id = Comida dada
history-field-outcome = Qué fue de ello
history-field-leftovers-removed = Restos retirados
history-field-level = Nivel del comedero
history-field-colour-seen = Dónde se ve el color
history-field-tint = Colorante
history-field-action = Qué se hizo
history-field-reading = Nivel
history-field-level-mm = Nivel en mm
history-field-workers = Obreras
history-field-workers-coarse = Obreras, más o menos
history-field-fault = Qué va mal
history-field-resolved-at = Resuelto
history-field-colony-ids = Colonias
history-field-food-codes = Alimentos
history-field-started-on = Primer día
history-field-ended-on = Terminado
history-field-use-by = Usar antes de
history-field-got-on = Desde
history-field-tasting-id = Cata
history-field-despite = Anotado a pesar de
history-field-until = Aplazado hasta
history-field-why = Motivo
history-field-day-temp-c = De día
history-field-night-temp-c = De noche
history-field-temperature-c = Temperatura
history-field-humidity-pct = Humedad, %
history-field-place-type = Qué es
history-field-vessel-code = Recipiente
history-field-has-outworld = Zona de forrajeo
history-field-founded-on = Fundada
history-field-acquired-on = Contigo desde
history-field-finished-on = Gastado
history-field-starts-on = Primer día
history-field-ends-on = Último día

history-value-empty = vacío
history-value-yes = sí
history-value-no = no
history-value-elsewhere = no está en este teléfono

history-value-every = { $days ->
    [one] { $need }: cada día
   *[other] { $need }: cada { $days } días
  }
history-value-read = Leído
