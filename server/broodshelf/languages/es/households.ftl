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
household-export-no-json = Las fotos no caben en un documento JSON: nombra un archivo que acabe en .zip o una carpeta nueva.
household-export-done = Escrito en { $path }: { $n } anotaciones, { $pictures } fotos. Las claves y los teléfonos conectados no están.
household-unknown = Aquí no hay ninguna casa { $id }; 'broodshelf household list' muestra las que hay.
household-delete-would = Esto borraría { $name }: { $n } anotaciones, { $pictures } fotos, sus teléfonos, enlaces e historia. Saca antes todo ('household export'); con --yes se hace.
household-delete-done = Borrado: { $n } filas, sus fotos y lo anotado junto a la base de datos. Las copias anteriores aún la tienen; al recuperar una, no vuelve.
household-not-in-backup = { $path } no tiene la casa { $id }; tiene { $households }.
household-restore-done = Recuperado: { $n } filas. Sus teléfonos envían lo que le falta a la copia al conectarse; las demás casas siguen igual.
command-move = copiar todo a otra base de datos, de SQLite a PostgreSQL o al revés, con el servidor parado
command-move-to = la otra base de datos: sqlite:///RUTA o postgresql://USUARIO@EQUIPO/NOMBRE
move-same = Esa es la base de datos que el servidor ya usa.
move-foreign = La otra base de datos tiene casas que esta no conoce ({ $n }, la primera: { $first }); nombra una vacía o una que un traslado anterior empezó a llenar.
move-connected = Alguien más está conectado a la base de datos { $name }: para los servidores y avisadores y traslada entonces.
move-differs = Las dos difieren en la tabla { $table }: { $here } filas aquí, { $there } allí. Aquí no cambió nada; empieza otra vez el traslado.
move-step = { $number } de { $of }: { $id }, { $n } filas
move-there = { $number } de { $of }: { $id } ya está allí, fila a fila
move-done = Trasladadas { $n } filas; cada tabla se comparó y es igual. Pon { $setting } en la otra base de datos y arranca el servidor. La de aquí queda como estaba.
