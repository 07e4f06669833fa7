## Who comes in: phones, mail, and what happened at the doors.

house-phones = Teléfonos
house-this-one = { $phone } (este)
house-last-seen = visto por última vez: { $when }
house-sign-out-other = ¿Cerrar la sesión de { $name }?
house-new-phone = Dejar entrar un teléfono
house-new-phone-hint = escribe el código que muestra
house-look-up = Buscarlo
house-asks = Pide entrar: { $phone }. ¿De quién es?
house-somebody-new = Alguien nuevo
house-new-keeper = Nombre del nuevo criador
house-let-in = El teléfono ya está dentro
house-mail-title = Avisos por correo
house-mail-about = Para quien no tiene un teléfono que reciba avisos. Una dirección vale cuando su código se escribe aquí.
house-mail-address = Dirección
house-mail-send = Enviar un código
house-mail-asked = Se envió un código. Vale una hora.
house-mail-code = El código del correo
house-mail-confirm = Confirmar
house-mail-anew = Enviar otro código
house-mail-comes = Los avisos llegan aquí.
house-mail-remove = Quitarla
house-mail-on = Los avisos llegarán allí desde ahora
house-mail-removed = Allí ya no va más correo
house-mail-not-sent = No se pudo enviar el correo: { $why }.
house-doors-title = Lo que pasó en las puertas
house-doors-about = Teléfonos, enlaces y códigos. De un teléfono nuevo, un enlace y un pase abierto se avisa enseguida a los demás criadores.
house-doors-offline = Esto se guarda en el servidor, así que hace falta conexión.
house-doors-all = Ver los { $count }
house-door-new-phone = Teléfono nuevo: { $phone }, para { $who }
house-door-new-phone-by-nobody = Teléfono nuevo: { $phone }, para alguien
house-door-phone-removed = { $who } cerró la sesión de un teléfono: { $phone }
house-door-phone-removed-by-nobody = Alguien cerró la sesión de un teléfono: { $phone }
house-door-person-removed = { $who } quitó a { $name }, con todos sus teléfonos
house-door-person-removed-by-nobody = Alguien quitó a { $name }, con todos sus teléfonos
house-door-way-back = Quien lleva el servidor creó un enlace para volver a entrar, para { $who }
house-door-way-back-by-nobody = Quien lleva el servidor creó un enlace para volver a entrar, para un criador
house-door-link-made = { $who } creó un enlace: { $pass }
house-door-link-made-by-nobody = Alguien creó un enlace: { $pass }
house-door-pass-opened = { $pass }: el pase se abrió en: { $phone }
house-door-pass-ended = { $who } retiró un pase: { $pass }
house-door-pass-ended-by-nobody = Alguien retiró un pase: { $pass }
house-door-wrong-codes = { $where ->
    [claim] { $count ->
        [one] { $count } código erróneo para volver a entrar, escrito por { $who }
       *[other] { $count } códigos erróneos para volver a entrar, escritos por { $who }
      }
    [pass] { $count ->
        [one] { $count } código erróneo para un pase, escrito por { $who }
       *[other] { $count } códigos erróneos para un pase, escritos por { $who }
      }
    [pairing] { $count ->
        [one] { $count } código erróneo para un teléfono nuevo, escrito por { $who }
       *[other] { $count } códigos erróneos para un teléfono nuevo, escritos por { $who }
      }
   *[mail] { $count ->
        [one] { $count } código erróneo para una dirección de correo, escrito por { $who }
       *[other] { $count } códigos erróneos para una dirección de correo, escritos por { $who }
      }
  }
house-door-wrong-codes-by-nobody = { $where ->
    [claim] { $count ->
        [one] { $count } código erróneo para volver a entrar
       *[other] { $count } códigos erróneos para volver a entrar
      }
    [pass] { $count ->
        [one] { $count } código erróneo para un pase
       *[other] { $count } códigos erróneos para un pase
      }
    [pairing] { $count ->
        [one] { $count } código erróneo para un teléfono nuevo
       *[other] { $count } códigos erróneos para un teléfono nuevo
      }
   *[mail] { $count ->
        [one] { $count } código erróneo para una dirección de correo
       *[other] { $count } códigos erróneos para una dirección de correo
      }
  }
house-door-export = Quien lleva el servidor escribió una exportación
house-door-import = Quien lleva el servidor incorporó una exportación
house-door-restore = Quien lleva el servidor recuperó una copia
