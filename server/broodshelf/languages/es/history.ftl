## El pasado de una anotación.

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

history-gone-by = { $who }, { $when }
