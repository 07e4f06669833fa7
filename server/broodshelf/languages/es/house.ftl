## La casa: personas, teléfonos, correo, y lo que pasó en las puertas.

house-title = La casa
house-look = Aspecto
house-language = Idioma
house-language-as-phone = Como el teléfono
house-good-to-know = Conviene saber

house-build = Versión { $build }
house-advice = Broodshelf da consejos generales de cría, no consejo veterinario ni médico.
house-never = No sueltes nunca hormigas ni insectos alimento. Tener y transportar especies depende de la ley de tu lugar: pregunta a la autoridad.
house-hours = Nombres y horas
house-shelf-name = Nombre del estante
house-zone = Zona horaria
house-first = Primera hora de cuidado
house-second = Segunda hora de cuidado
house-quiet-from = Silencio desde
house-quiet-to = Silencio hasta
house-backup-patience = Avisar si la última copia tiene más de estos días
house-backup-patience-hint = 0: nunca. Donde nunca hubo copia no se dice nada.
house-save = Guardar
house-sign-out = Cerrar sesión

house-on-this-phone = En este teléfono
house-this-phone = este teléfono
house-last-synced = Última sincronización: { $when }
house-not-synced = Aún sin sincronizar.
house-not-sent = Sin enviar: { $count }.
house-nothing-waits = No espera nada.
house-kept = El navegador ha prometido conservar los datos.
house-not-kept = El navegador puede borrar datos de apps que no se usan; la copia del servidor es la garantía. Ayuda instalar la app en la pantalla de inicio.
house-sync-now = Sincronizar ya
house-export = Exportar lo no enviado
house-left = De { $who } en este teléfono, sin enviar: { $count }. Se envía solo cuando { $who } vuelva a iniciar sesión aquí.
house-leave = ¿Cerrar la sesión de { $who }?
house-leave-unsent = { $count ->
    [one] { $count } anotación no está enviada y se queda en este teléfono. ¿Cerrar la sesión de todos modos?
   *[other] { $count } anotaciones no están enviadas y se quedan en este teléfono. ¿Cerrar la sesión de todos modos?
  }

## El aspecto de la app.

look-light = Luz
look-degrees = Temperaturas en
look-volumes = Volúmenes en
look-as-phone = Como el teléfono
look-day = Claro
look-dark = Oscuro
look-red = Rojo tenue
look-red-why = El rojo tenue es para mirar dentro de un nido oscuro: las hormigas apenas ven el rojo profundo (práctica común).
look-all-parts = Ver todas las partes de la app
