## Lo que fue rechazado, y dónde se encontraron dos teléfonos.

attention-title = Necesita tu atención
attention-none = Todo lo de este teléfono está enviado.
attention-export = Exportar todo esto
attention-met = { $name }: cambiado en dos teléfonos

attention-values = { $field }: aquí «{ $here }»; { $who }: «{ $there }» ({ $when }).
attention-other-phone = otro teléfono
attention-theirs = El otro cambio fue posterior y es el que vale.
attention-mine = Tu cambio fue posterior y es el que vale.
attention-leave = Dejarlo así
attention-bring = Recuperar lo mío
attention-damaged = Anotación dañada
attention-drop = Descartar
attention-sure = ¿Descartarlo para siempre? Si tienes dudas, expórtalo antes.
attention-mend = Volver a enviar
attention-again = Enviar otra vez
attention-again-why = Si mientras tanto se recuperó aquello a lo que pertenece, se puede volver a enviar.

attention-code-not-allowed = Este teléfono no puede hacer esto.
attention-code-outside-pass = Esto queda fuera del pase: otra colonia u otro día.
attention-code-missing-field = Falta algo.
attention-code-unknown-field = El servidor no conoce este campo.
attention-code-unknown-kind = El servidor no conoce este tipo de anotación.
attention-code-failed = El servidor falló con esta. Se guarda aquí y nada espera por ella: escríbela de nuevo o expórtala.
attention-code-kind-differs = El servidor tiene otra cosa con este identificador.
attention-code-too-large = Es demasiado largo.
attention-code-last-keeper = No se puede quitar al último criador; deja entrar antes a otro.
attention-code-purged = Esto se borró hace mucho y ya no se guarda.
attention-code-parent-missing = Aquello a lo que pertenece ya no está en el servidor.
