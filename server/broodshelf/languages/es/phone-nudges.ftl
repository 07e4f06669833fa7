## Avisos en este teléfono.

phone-nudges-title = Avisos en este teléfono
phone-nudges-last = El último llegó: { $when }
phone-nudges-none = Aún no ha llegado ninguno.
phone-nudges-silent = { $name } lleva un tiempo sin responder: abre allí la app.
phone-nudges-somebody = Alguien

phone-nudges-elsewhere-unheard = Los avisos no llegan a { $who } ({ $phone }): pídele que abra allí la app.
phone-nudges-elsewhere-unseen = { $who } no ha abierto la app en un mes ({ $phone }), así que allí quizá ya no llegan avisos.

phone-nudges-ask = Avísame cuando toque algo
phone-nudges-test = Enviar una prueba
phone-nudges-stop = Desactivar aquí

phone-nudges-state-unsupported = Este navegador no puede recibir avisos. Aquí la ronda está siempre al día cuando abres la app.
phone-nudges-state-install-first = En un iPhone o iPad pon antes la app en la pantalla de inicio: Compartir, y luego «Añadir a pantalla de inicio». Ábrela allí y vuelve a esta página.
phone-nudges-state-denied = Los avisos están bloqueados para esta app en los ajustes del navegador. Permite allí las notificaciones y vuelve.
phone-nudges-state-off = Los avisos están apagados. Cuando toque algo en tus horas de cuidado, este teléfono puede decírtelo.
phone-nudges-state-on = Los avisos llegan a este teléfono.

phone-nudges-tested-waiting = Enviado; a la espera de que este teléfono diga que llegó…
phone-nudges-tested-heard = Ha llegado. Los avisos funcionan en este teléfono.
phone-nudges-tested-silent = No ha llegado.

phone-nudges-not-taken = El servicio de avisos no lo aceptó: { $outcome }.
phone-nudges-not-heard = Se envió, pero este teléfono no dijo que llegara.
