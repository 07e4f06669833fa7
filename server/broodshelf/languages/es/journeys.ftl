## Before the keeper goes away.

holiday-title = Antes de irte
holiday-about = Dos fechas dicen qué colonias no necesitan a nadie y qué rellenar el último día.
holiday-leave = Te vas
holiday-back = Vuelves
holiday-go = Mirar adelante
holiday-none = Aún no hay ninguna colonia con plan.
holiday-verdict-nobody = No necesita a nadie.
holiday-verdict-nobody-after-top-up = No necesita a nadie si se rellena antes.
holiday-visit = { $days ->
    [one] Necesita una visita cada día.
   *[other] Necesita una visita cada { $days } días.
  }
holiday-top-up = Tu último día:
holiday-full = rellenar del todo
holiday-travel = Si una colonia viaja contigo
holiday-pass = Crear un pase para las visitas
