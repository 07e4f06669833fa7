### Por qué el servidor no pudo hacer lo que se le pidió. Cada frase dice qué iba mal y qué hacer.
### Lo que está en un teléfono sin enviar se queda allí: que ninguna frase suene a que algo se ha perdido.

## Títulos, por tipo de problema.

problem-title-failed = Algo fue mal en el servidor.
problem-title-bad-request = Esta dirección no entiende la petición.
problem-title-signed-out = Este teléfono no tiene la sesión iniciada.
problem-title-not-allowed = Aquí no puedes hacer esto.
problem-title-not-found = No hay nada en esta dirección.
problem-title-wrong-device = La sesión es de otro dispositivo; no se guardó nada.
problem-title-gone = Esto ha terminado.
problem-title-too-large = La petición es demasiado grande.
problem-title-wrong-media-type = Envía JSON (Content-Type: application/json).
problem-title-upgrade-required = Esta copia de la app es demasiado antigua para el servidor; vuelve a cargarla. En el teléfono no se pierde nada.
problem-title-store-full = No queda sitio en el servidor; no se guardó nada.
problem-title-busy = El servidor no puede hacerlo ahora; no se guardó nada.
problem-title-too-many = Demasiados intentos; espera un poco.

## El servidor

problem-unforeseen = No se guardó nada. Prueba otra vez; si sigue, díselo a quien lleva el servidor: { $reference }.
problem-disk-full = El disco del servidor está lleno; no se guardó nada.
problem-database-locked = Otro programa retiene la base de datos del servidor; no se guardó nada.
problem-database-away = La base de datos del servidor no responde; no se guardó nada.
problem-database-read-only = El servidor no puede escribir en su base de datos; no se guardó nada.
problem-database-damaged = Se ha perdido una parte de la base de datos del servidor; no se guardó nada.
problem-no-household = No existe esa casa en este servidor.
problem-no-file = Este archivo no es de ninguna versión que se guarde aquí; vuelve a cargar la app.
problem-foreign-origin = Esta petición no viene de { $url }. Abre la app en esa dirección, o pon en BROODSHELF_PUBLIC_URL la que usas.
problem-keepers-only = Solo un criador de esta casa puede hacer esto.
problem-no-record = No existe esa anotación en esta casa.
problem-no-place = No existe ese lugar.
problem-no-place-yet = No existe ese lugar. Deja que este teléfono sincronice y prueba otra vez.
problem-no-person-yet = No existe esa persona en esta casa. Deja que este teléfono sincronice y prueba otra vez.

## Teléfonos, códigos y sesiones

problem-code-used-now = Este código se usó hace un momento.
problem-claim-code-ended = Este código no se conoce, ya se usó o ha caducado. Pide otro a quien lleva el servidor ('broodshelf pair', 'broodshelf household invite').
problem-signup-closed = Este servidor no admite casas nuevas ahora. Pregunta a quien lo lleva.
problem-signup-code-needed = Este servidor pide un código para una casa nueva. Pide una invitación a quien lo lleva.
problem-signup-address = Hoy se han empezado muchas casas desde aquí. Prueba mañana o pide una invitación a quien lleva el servidor.
problem-founding-incomplete = Una casa nueva necesita tu nombre, el suyo y su zona horaria.
problem-too-many-phones-ask = Ahora mismo piden entrar demasiados teléfonos; prueba otra vez pronto.
problem-no-keeper = No existe ese criador en esta casa.
problem-pairing-over = Este código ha caducado. Muestra uno nuevo.
problem-pairing-used = Este código ya se usó.
problem-pairing-unknown = Ningún teléfono muestra ahora este código. Los códigos duran diez minutos.
problem-device-id-taken = Este id de dispositivo ya está en uso; el teléfono debe crear otro.
problem-device-revoked = Un criador ha cerrado la sesión de este teléfono. Lo que no ha enviado se puede exportar.
problem-session-old = Esta sesión ha terminado porque no se usó en mucho tiempo. Vuelve a unir el teléfono.
problem-person-removed = Un criador te ha quitado de esta casa.
problem-no-phone = No existe ese teléfono en esta casa.
problem-one-of-two = Da { $one } o { $other }, uno de los dos.
problem-quota-address = De esta dirección ha llegado muchísimo en una hora. Lo que está en este teléfono se queda allí y sigue solo.
problem-quota-pass = Este pase ha enviado lo máximo que puede un pase en un día. Lo que está en este teléfono se queda allí y sale mañana, o con un pase nuevo.
problem-quota-household = Esta casa ha enviado lo máximo que puede una en un día. Lo que está en este teléfono se queda allí y sale mañana.
problem-room-records = Esta casa tiene tantas anotaciones como le deja este servidor ({ $most }). Lo que hay en este teléfono se queda en él y sale cuando haya sitio: borra lo que nadie necesita o pregunta a quien lleva el servidor.
problem-room-pictures = Esta casa tiene tantas fotos como le deja este servidor ({ $most }). Esta se queda en el teléfono y sale cuando haya sitio: borra alguna o pregunta a quien lleva el servidor.
problem-room-mib = Esta casa ocupa en el servidor todo lo que puede ({ $most } MiB). Lo que hay en este teléfono se queda en él y sale cuando haya sitio: pregunta a quien lleva el servidor.
room-nearly-full = Esta casa ha llenado el { $percent } % de su sitio en el servidor: { $records } de { $most_records } anotaciones, { $pictures } de { $most_pictures } fotos, { $mib } de { $most_mib } MiB. No se pierde nada; pide más a quien lleva el servidor antes de que se llene.

## Pases y calendarios

problem-no-pass = No existe ese pase.
problem-no-pass-yet = No existe ese pase. Deja que este teléfono sincronice y prueba otra vez.
problem-pass-taken-back = Este pase se retiró; crea uno nuevo.
problem-pass-taken-back-here = El criador ha retirado este pase. Lo que este teléfono no ha enviado se puede exportar.
problem-pass-unknown = Este pase no se conoce o se retiró. Pide al criador un enlace nuevo.
problem-pass-ended = Este pase terminó ({ $on }).
problem-pass-ended-still-taken = Este pase terminó ({ $on }). Lo que se anotó hasta entonces aún se acepta.
problem-pass-over = Este pase ha terminado o se retiró.
problem-pass-full = Teléfonos que ya abrieron este pase: { $n }. El criador puede quitar uno.
problem-no-feed = Esta dirección de calendario no se conoce o está anulada. Crea una nueva en la app.

## Correo y avisos

problem-mail-off = Este servidor no envía correo; quien lo lleva puede configurarlo (docs/self-hosting.md).
problem-no-mail-address = Esta dirección de correo no sirve; ejemplo: name@example.org.
problem-no-mail-code = No hay ningún código abierto para esta persona; pide uno nuevo.
problem-mail-code-over = Este código ha terminado; pide uno nuevo.
problem-mail-code-wrong = No es el código que se envió.
problem-not-subscribed = Este teléfono aún no escucha; activa primero sus avisos.
problem-push-too-long = Esta dirección de avisos no sirve: pasa de { $most } caracteres.
problem-push-not-https = Esta dirección de avisos no sirve: no es una dirección https simple en el puerto 443.
problem-push-unknown = Esta dirección de avisos no sirve: no es de un servicio conocido. Quien lleva el servidor puede permitir más servicios.
problem-push-private = Esta dirección de avisos no sirve: su nombre lleva a una red privada.
problem-push-other-key = El teléfono escucha con una clave antigua de este servidor; activa los avisos de nuevo.
problem-push-taken = Otro teléfono escucha en esta dirección; activa los avisos de nuevo para tener una propia.
problem-push-too-many = Teléfonos que ya escuchan por ti: { $n }. Cierra antes la sesión de uno.

## Fotos

problem-picture-slow = Esta foto tarda demasiado en leerse.
problem-picture-not-now = El servidor no pudo mirar esta foto ahora.
problem-picture-busy = El servidor está ocupado con fotos.
problem-picture-scans = Esta foto está guardada en demasiadas pasadas.
problem-picture-unreadable = No es una foto JPEG que se pueda leer.
problem-picture-pixels = Esta foto tiene demasiados píxeles.
problem-picture-damaged = La foto llegó dañada; envíala otra vez.
problem-pictures-full = Las fotos de esta casa llenan su espacio; borra algunas, o pregunta a quien lleva el servidor.
problem-picture-not-sent = El teléfono de esta foto aún no la ha enviado.
problem-no-picture = No existe esa foto en esta casa.
problem-picture-itself = Envía la propia foto (Content-Type: image/jpeg).
problem-picture-large = Una foto puede tener como mucho { $most } bytes.

## Sensores y sus tablas

problem-broker-and-topic = Da un broker y un tema, o ninguno.
problem-no-broker = El servidor no escucha a ningún broker con ese nombre.
problem-topic-not-yours = Da un tema completo que encaje con { $wanted }.
problem-too-many-sensors = Una casa tiene como mucho { $most } sensores. Anula uno antes.
problem-topic-taken = Ya hay un sensor que escucha este tema.
problem-bad-token = Envía la clave de un sensor que aún valga ('Authorization: Bearer …'). En Casa, Lugares, se crean nuevas.
problem-no-sensor = No existe ese sensor en esta casa.
problem-no-csv = La línea { $line } no es CSV: { $why }. Guarda el archivo otra vez como CSV.
problem-no-such-column =
    { $n ->
        [0] Ninguna columna se llama '{ $name }'; nombra una de la primera línea.
        [one] { $n } columna se llama '{ $name }'; nombra una de la primera línea.
       *[other] { $n } columnas se llaman '{ $name }'; nombra una de la primera línea.
    }
problem-name-a-column = Nombra la columna de la temperatura o de la humedad.

## Calculadoras y viajes

problem-holiday-days = Elige un día de vuelta posterior al de ida, dentro de un año.
problem-no-calculator = No existe esa calculadora.
problem-input-wrong = Con esto no se puede calcular: { $why }.
problem-no-input = { $calculator } no tiene la entrada { $name }.
problem-input-number = { $name } debe ser un número.
problem-input-choice = { $name } debe ser una de las opciones.
problem-input-yes-no = { $name } debe ser sí o no.
problem-out-of-range = { $what }: { $value } { $unit } no vale; debe estar entre { $low } { $unit } y { $high } { $unit }.
problem-not-a-choice = { $name } es { $value }; debe ser uno de { $choices }.
problem-parts-by = Di si las partes son en masa ({ $mass } %) o en volumen ({ $volume } %).

## Entre la app y el servidor: para quien escriba programas para él.

problem-no-json = El contenido no es el JSON que acepta esta dirección: { $why }.
problem-not-an-object = { $where } debe ser un objeto.
problem-body-not-an-object = El contenido debe ser un objeto JSON.
problem-not-a-list = '{ $where }' debe ser una lista.
problem-not-a-uuid = '{ $where }' debe ser un UUID en minúsculas.
problem-address-not-a-uuid = El id de la dirección no es un UUID.
problem-not-a-whole-number = '{ $where }' debe ser un número entero de { $low } a { $high }.
problem-not-a-short-text = { $where } debe ser un texto corto.
problem-not-a-flag = { $where } debe ser true o false.
problem-not-a-pair = { $where } debe contener [ms, device] en cada caso.
problem-empty-set = { $where } debe ser un objeto con al menos un campo.
problem-too-many-fields = { $where } tiene más de { $most } campos.
problem-wrong-cursor = 'cursor' debe ser lo que dio la última respuesta, o null.
problem-wrong-fields = Estos campos están mal o faltan: { $names }.
problem-wrong-auth-key = { $where } debe ser 16 bytes en base64url.
problem-wrong-point-key = { $where } debe ser un punto P-256 sin comprimir (65 bytes) en base64url.
problem-app-newer = La app de este teléfono es más nueva que el servidor; actualiza el servidor.
problem-too-many-operations = Como mucho { $most } operaciones por petición; envía el resto en la siguiente.
problem-too-many-bytes = Aquí se aceptan como mucho { $most } bytes.

refused-one-household = Una casa tiene un solo registro de sí misma, y ya está.
refused-household-stays = La casa misma no se puede borrar.
refused-let-in = Las personas se añaden dejando entrar un teléfono o con un pase.
refused-no-role = Una persona es criador o sustituye a uno; esta no es ninguna de las dos cosas.
refused-last-keeper = No se puede quitar al último criador; deja entrar antes a otro.

problem-row-no-number = «{ $cell }» no es un número.
problem-row-no-time = «{ $cell }» no es una hora en la forma elegida.
problem-row-too-early = La hora es anterior al año 2000.
problem-row-not-a-number = No contiene ningún número.
problem-row-nothing-measured = No contiene ni temperatura ni humedad.
problem-row-broken-temperature = Ningún lugar puede tener esa temperatura.
problem-row-broken-humidity = La humedad queda fuera de 0 a 100 %.
problem-row-too-old = Es demasiado antiguo.
problem-row-in-the-future = Queda en el futuro.
