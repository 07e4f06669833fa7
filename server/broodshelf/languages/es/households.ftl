### Lo que muestra 'broodshelf household'.

command-of-households = casas de este servidor: quiénes son, invitaciones, llevarse todo, borrar, recuperar
command-household-list = quién está, cuándo habló por última vez un teléfono suyo y cuánto ocupa cada una
command-household-invite = hacer enlaces de un solo uso, cada uno para una casa propia
command-invite-count = cuántas
command-invite-days = cuántos días valen
command-invite-sheet = escribir una hoja para imprimir, con un código QR para cada una
command-invite-take-back = no hacer ninguna; anular las que nadie ha usado
command-household-export = escribir todas las anotaciones y fotos de una casa en un .zip o una carpeta
command-household-delete = borrar una casa con todo lo que tiene
command-household-restore = recuperar una sola casa de una copia de todo el servidor
command-household-id = su identificador, como lo muestra 'household list'
command-list-name = nombre
command-list-id = identificador
command-list-people = personas
command-list-seen = última vez (UTC)
command-list-records = anotaciones
command-list-pictures = fotos
command-list-mib = MiB
command-list-share = parte
command-list-invitations = Invitaciones: { $open } sin usar, { $used } usadas, { $expired } caducadas.
command-invite-closed = BROODSHELF_SIGNUP está en closed, así que ninguna invitación abriría nada: ponlo en invited, para el servidor y para esta orden.
command-invite-range = { $name }: da un número entero de 1 a { $most }.
command-invite-done =
    { $n ->
        [one] Este enlace abre
       *[other] Cada uno de estos enlaces abre
    } una casa, una sola vez, en { $days ->
        [one] { $days } día
       *[other] { $days } días
    }. No se muestra otra vez.
command-invite-sheet-done =
    { $n ->
        [one] Hay { $n } invitación
       *[other] Hay { $n } invitaciones
    } en { $path }. Ábrelo en un navegador e imprímelo; cada una deja entrar a alguien, así que guárdalo para ti.
command-invite-taken-back =
    { $n ->
        [one] Se anuló { $n } invitación sin usar.
       *[other] Se anularon { $n } invitaciones sin usar.
    }
sheet-title = Broodshelf: invitaciones
sheet-number = Invitación { $number }
sheet-how = Escanéalo con la cámara del teléfono: empieza un estante propio, una sola vez.
sheet-until = Vale hasta el { $on }, incluido.
sheet-or-code = O abre { $server } y escribe este código:
signup-begin = Empezar un estante propio
