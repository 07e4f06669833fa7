### Avisos: lo que muestra un teléfono bloqueado, y las líneas de un correo. Corto.

nudge-one-food = { $need } para { $colony }
nudge-one-todo = { $todo }: { $colony }
nudge-same-need = { $need } para { $n } colonias
nudge-same-todo = { $todo }: { $n } colonias
nudge-one-colony = { $colony }: { $needs }
nudge-colonies = { $n } colonias: { $needs }
nudge-need-for = { $need } para { $n }
nudge-line = { $colony }: { $what }
nudge-more = y { $n } más

## El mensaje en su forma más corta, y la prueba.

nudge-short-title = Toca la ronda
nudge-short-body = Abre la app para ver qué necesitan tus colonias.
nudge-test-title = Los avisos funcionan en este teléfono
nudge-test-body = Es solo una prueba. No toca nada por ella.

## Lo que se cuenta de la casa a los demás criadores.

nudge-new-phone-title = Ha entrado un teléfono nuevo
nudge-new-phone-body = { $phone }, para { $person }. Si no fue nadie de la casa, cierra su sesión en Casa.
nudge-link-made-title = Enlace nuevo: { $pass }
nudge-link-made-body = Lo creó { $person }. Quien tenga el enlace puede abrir el pase; un enlace nuevo lo anula.
nudge-pass-opened-title = { $pass }: pase abierto
nudge-pass-opened-body = En: { $phone }. Si no debía ser, retira el pase.
nudge-sensor-silent-title = { $sensor } ya no dice nada
nudge-sensor-silent-body =
    No llega nada de él desde hace { $hours ->
        [one] { $hours } hora
       *[other] { $hours } horas
    } ({ $place }). Mira su corriente y su camino al servidor; hasta que vuelva a hablar, los planes siguen lo que leas o fijes.
nudge-sensor-broken-title = { $sensor } mide disparates
nudge-sensor-broken-body = Lo que envía no puede ser ({ $place }). Mira su cable y su corriente; lo que envía se omite hasta que vuelva a tener sentido.
