## El marco de cada página.

frame-name = Broodshelf

frame-opening = El estante se está abriendo. Si este texto no se va, este navegador tiene JavaScript o los módulos desactivados, o es demasiado antiguo: Broodshelf necesita Chrome 91, Safari 16.4 o Firefox 147, o más nuevo. Lo que anotaste en este teléfono sigue en él.
frame-description = Cuidado de un estante de colonias de hormigas, también sin conexión.
frame-close = Cerrar
frame-loading = Un momento…
frame-missing = No se pudo cargar esta parte de la app. Vuelve a cargarla; no se ha perdido nada de lo que anotaste.
frame-screens = Páginas

frame-nav-round = Ronda
frame-nav-shelf = Estante
frame-nav-larder = Despensa
frame-nav-handover = Relevo
frame-nav-settings = Casa

frame-banner-unsent = Anotaciones sin enviar
frame-banner-sign-in = Volver a iniciar sesión
frame-banner-update = Hay una versión nueva lista.
frame-banner-update-waits = La versión nueva llega cuando guardes o dejes lo que estás escribiendo aquí.
frame-banner-use-it = Usarla ya
frame-banner-emptied = El navegador había vaciado su memoria en este teléfono, así que el estante se trajo de nuevo del servidor. Lo que se anotó aquí antes y no se envió se ha perdido: repasa el diario, por favor, y anota otra vez lo que falte.
frame-banner-understood = Leído
frame-banner-signed-out = Este teléfono tiene la sesión cerrada. Lo que no ha enviado se queda aquí.

frame-clock-ahead = { $unit ->
    [minutes] { $count ->
        [one] El reloj de este teléfono va { $count } minuto adelantado. Lo que toca, y cuándo anotas algo, va por el del servidor.
       *[other] El reloj de este teléfono va { $count } minutos adelantado. Lo que toca, y cuándo anotas algo, va por el del servidor.
      }
    [hours] { $count ->
        [one] El reloj de este teléfono va { $count } hora adelantado. Lo que toca, y cuándo anotas algo, va por el del servidor.
       *[other] El reloj de este teléfono va { $count } horas adelantado. Lo que toca, y cuándo anotas algo, va por el del servidor.
      }
   *[days] { $count ->
        [one] El reloj de este teléfono va { $count } día adelantado. Lo que toca, y cuándo anotas algo, va por el del servidor.
       *[other] El reloj de este teléfono va { $count } días adelantado. Lo que toca, y cuándo anotas algo, va por el del servidor.
      }
  }
frame-clock-behind = { $unit ->
    [minutes] { $count ->
        [one] El reloj de este teléfono va { $count } minuto atrasado. Lo que toca, y cuándo anotas algo, va por el del servidor.
       *[other] El reloj de este teléfono va { $count } minutos atrasado. Lo que toca, y cuándo anotas algo, va por el del servidor.
      }
    [hours] { $count ->
        [one] El reloj de este teléfono va { $count } hora atrasado. Lo que toca, y cuándo anotas algo, va por el del servidor.
       *[other] El reloj de este teléfono va { $count } horas atrasado. Lo que toca, y cuándo anotas algo, va por el del servidor.
      }
   *[days] { $count ->
        [one] El reloj de este teléfono va { $count } día atrasado. Lo que toca, y cuándo anotas algo, va por el del servidor.
       *[other] El reloj de este teléfono va { $count } días atrasado. Lo que toca, y cuándo anotas algo, va por el del servidor.
      }
  }

frame-banner-ended-pass-revoked = El criador ha retirado este pase. Lo que este teléfono no ha enviado se queda aquí para exportarlo.
frame-banner-ended-pass-ended = Este pase ha terminado. Gracias. Lo que este teléfono no ha enviado se queda aquí para exportarlo.
frame-banner-ended-device-revoked = Un criador ha cerrado la sesión de este teléfono. Lo que no ha enviado se queda aquí para exportarlo.
frame-banner-ended-session-old = La sesión de este teléfono ha caducado. Lo que no ha enviado se queda aquí.

## Las partes de muchas páginas.

part-table = Las cifras en una tabla
part-needs-server = Esto necesita el servidor, y ahora no hay conexión.
part-again = Probar otra vez

part-labelled = { $label }: { $value }
part-labelled-twice = { $label }: { $first }, { $second }
part-percent = { $percent } %

part-less = { $label }: menos
part-more = { $label }: más

## Dónde está una anotación.

saving-saved = Guardado en este teléfono
saving-not-saved = No guardado: este teléfono no pudo almacenarlo. Libera algo de espacio o cierra otras pestañas y prueba otra vez.
saving-no-connection = Sin conexión con el servidor. Lo que anotes se queda en este teléfono.
saving-asks-sign-in = Algo entre este teléfono y el servidor pide iniciar sesión.
saving-failed = El servidor no pudo hacerlo.
saving-not-signed-in = Este teléfono no tiene la sesión iniciada.

saving-unsent-title = Anotaciones sin enviar de Broodshelf
saving-taken-back = Deshecho

saving-state-synced = Sincronizado
saving-state-saved = En este teléfono
saving-state-attention = Te necesita

saving-waiting = { $count } en este teléfono
saving-attention = { $count ->
    [one] { $count } te necesita
   *[other] { $count } te necesitan
  }
saving-synced = Todo sincronizado
saving-joining = Trayendo tu estante
saving-offline = Sin conexión
saving-syncing = Sincronizando…

saving-told-database-damaged = En su repaso diario el servidor encontró dañada su base de datos. Díselo a quien lleva el servidor: hay que recuperar una copia.
saving-told-backup-old = La última copia del servidor es de { $day }. Díselo a quien lleva el servidor, o di en Casa cuánto puede tardar.

saving-problem-disk-full = El disco del servidor está lleno. Lo que anotes se queda en este teléfono; díselo a quien lleva el servidor.
saving-problem-database-locked = El servidor está ocupado. Lo que anotes se queda en este teléfono y se envía más tarde.
saving-problem-database-away = El servidor no llega a sus datos. Lo que anotes se queda en este teléfono y se envía más tarde.
saving-problem-database-read-only = El servidor no puede escribir. Lo que anotes se queda en este teléfono; díselo a quien lleva el servidor.
saving-problem-database-damaged = El servidor ha perdido parte de sus datos. Lo que anotes se queda en este teléfono; díselo a quien lleva el servidor.

## On a nudge itself: the worker reads these three, so they stay on one line and are told nothing.

phone-nudges-done = Hecho así
phone-nudges-in-an-hour = En una hora
phone-nudges-something = En el estante toca algo.
