### Lo que solo dice un correo.

mail-code-title = { $code } es tu código
mail-code-body = Escríbelo en la app, y los avisos llegarán también a esta dirección. Vale una hora. · Si nadie en tu casa lo pidió, no hagas nada: no llegará más correo.
mail-foot = Este correo llega porque esta dirección se confirmó en Casa; un criador puede quitarla allí.
