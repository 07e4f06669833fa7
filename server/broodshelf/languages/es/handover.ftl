## El relevo: pases.

handover-title = Relevo
handover-about = Con un pase, alguien de la familia o una amistad cuida algunas colonias unos días, sin cuenta.

handover-state-back = retirado
handover-state-ended = terminado
handover-state-now = de turno ahora
handover-state-from = desde { $day }

handover-days = { $from } a { $to }
handover-done-by = Hecho por { $who }
handover-nothing = No se anotó nada.
handover-link-once = Envía este enlace o deja que lo escaneen. Solo se muestra una vez.
handover-by-code = O con un código:
handover-share = Compartir
handover-share-title = Pase para { $who }
handover-make-link = Crear el enlace
handover-new-link = Crear otro enlace
handover-take-back = Retirarlo
handover-sure = ¿Retirar el pase de { $who }? Su teléfono se detiene al momento.
handover-print = Imprimir la hoja
handover-preview = Verlo como lo verán
handover-preview-title = Como lo ve { $who }
handover-new = Pase nuevo
handover-who = Quién
handover-colonies = Colonias
handover-all = Todas

handover-stings = { $colony } (pica)
handover-first = Primer día
handover-last = Último día
handover-know = Lo que deben saber
handover-call = A quién llamar
handover-none = Elige al menos una colonia.
handover-backwards = El último día es anterior al primero.
handover-go = Crear el pase
handover-calendar = Calendario de todo el estante
handover-stings-words = Has elegido una colonia que pica. Pregunta antes si alguien allí tiene alergia; déjala solo si lo saben seguro.

## Lo que se imprime.

paper-sheet = Cuidar el estante: { $who }
paper-record = Ficha de { $name }
paper-print = Imprimir
paper-colony = Colonia
paper-what = Qué hacer
paper-done = Hecho
paper-nothing = Nada que hacer.
paper-over = El último día de este pase ya pasó.
paper-ahead = Los días se calcularon hoy. Lo que hagas o anotes hasta que empiece el pase los mueve: imprime la hoja otra vez la tarde anterior.
paper-colonies = Las colonias

paper-call = Llamar a:
paper-made = Impreso: { $day }
paper-gone = Aquí no hay nada que imprimir.
paper-species = Especie
paper-lives = Vive en
paper-count = Último recuento
paper-when = Cuándo
paper-event = Qué
paper-by = Quién

## Lo que ve quien te releva.

stand-in-from = Desde { $day }

stand-in-today = { $count ->
    [one] Hoy: { $count } cosa, unos { $minutes } min
   *[other] Hoy: { $count } cosas, unos { $minutes } min
  }
stand-in-nothing = Hoy nada
stand-in-calm = Si se salta un día no pasa nada. No abras el nido, no lo sacudas y no des nada de más.
stand-in-from-keeper = Del criador
stand-in-call = Llamar a { $who }
stand-in-yours = Tus colonias

# Los botones de una tarea: lo que se hizo, en primera persona.
stand-in-gave = Se lo he dado
stand-in-looked = He mirado
stand-in-took = Lo he retirado
stand-in-watered = He dado agua
stand-in-could-not = No he podido
stand-in-why = ¿Qué lo impidió?
stand-in-why-none = No quedaba nada que dar
stand-in-why-closed = No pude abrirlo
stand-in-why-unsure = No sabía bien cómo
stand-in-why-away = No estaba allí
stand-in-why-other = Otra cosa
stand-in-note = No se pudo: { $task }. { $why }
stand-in-told = Anotado para el criador. Sigue en la lista.
stand-in-read-aloud = Léemelo
stand-in-quiet = Dejar de leer
stand-in-how = Cómo se hace
stand-in-practice = Tiempos y cantidades de los pasos: práctica común.

# Lo que el criador añade a cada colonia para quien le releva: una frase y una foto.
stand-in-hint = Para quien te releve
stand-in-hint-example = por ejemplo: las moscas están en la puerta del congelador
stand-in-hint-picture = Una foto para ayudar
stand-in-hint-about = Aparece sobre los pasos de cada tarea de esta colonia.

# En la hoja impresa: el tamaño de una ración.
paper-true-size = Tamaño real
paper-drop-of = Una gota de unos { $ul } µL
paper-prey-of = Un trozo de unos { NUMBER($mm) } mm
paper-ruler = Regla en milímetros: compárala con la tuya
