### 'broodshelf doctor': qué se miró y cómo está. Se lee «qué: lo que se encontró».

## Cómo está: una marca delante de cada línea.

doctor-good = bien
doctor-look = mirar
doctor-bad = MAL

## Qué se miró.

doctor-about-data-folder = carpeta de datos
doctor-about-disk = disco
doctor-about-revoked = teléfonos y pases retirados
doctor-about-marks = marcas
doctor-about-set-aside = apartado
doctor-about-database = base de datos
doctor-about-database-role = rol en la base de datos
doctor-about-households = casas
doctor-about-history = historia
doctor-about-push-key = clave de avisos
doctor-about-nudger = proceso de avisos
doctor-about-mail = correo
doctor-about-proxy = proxy
doctor-about-public-address = dirección pública
doctor-about-certificate = certificado
doctor-about-server = servidor
doctor-about-clock = reloj

## Qué se encontró.

doctor-folder-missing = { $path } aún no está; se crea en el primer arranque
doctor-folder-good = se puede escribir en { $path }
doctor-folder-locked = este usuario no puede escribir en { $path }; cambia su dueño
doctor-disk = hay { $mib } MiB libres; un disco lleno rechaza anotaciones
doctor-revoked-unreadable =
    { $n ->
        [one] { $n } línea
       *[other] { $n } líneas
    } de { $path } sin poder leerse; el próximo arranque guarda una copia y todo lo legible. Antes de recuperar una copia antigua, repón el archivo desde la más reciente
doctor-mark-unreadable = no se puede leer { $path }; en el próximo arranque sus teléfonos lo reciben todo de nuevo
doctor-was-set-aside = { $path } estaba dañado y se apartó; míralo, consérvalo o quítalo
doctor-database-gone = falta, aunque aquí había un estante; 'broodshelf restore FILE' recupera una copia
doctor-database-none = aún no hay; se crea en el primer arranque
doctor-database-silent = no responde: { $error }; ¿está en marcha?
doctor-database-damaged = está dañada ({ $path }): conserva el archivo y luego recupera una copia
doctor-database-unsound = está dañada: { $found }; recupera una copia
doctor-database-schema = su esquema es { $at }, esta versión quiere { $head }; 'broodshelf migrate' lo arregla
doctor-database-empty = su esquema está vacío, esta versión quiere { $head }; 'broodshelf migrate' lo arregla
doctor-database-good = responde, tablas: { $n }, esquema { $at }
doctor-role-free = este rol puede saltarse la seguridad por filas (row-level security); dale al servidor uno propio (docs/self-hosting.md)
doctor-role-good = la seguridad por filas (row-level security) lo limita a una casa cada vez
doctor-households = { $n } en este servidor
doctor-history =
    { $households ->
        [one] en un año llegaron { $n } cambios de { $households } casa; con historia y respuestas unos { $kib } KiB de texto, más los índices (se aclara a los 400 días: self-hosting.md)
       *[other] en un año llegaron { $n } cambios de { $households } casas; con historia y respuestas unos { $kib } KiB de texto cada una, más los índices (se aclara a los 400 días: self-hosting.md)
    }
doctor-history-some = en un año llegaron unos { $n } cambios de unas { $households } casas, calculado a partir de { $looked } de ellas; con historia y respuestas unos { $kib } KiB de texto cada una, más los índices (se aclara a los 400 días: self-hosting.md)
doctor-key-none = aún no hay; se crea en el primer arranque
doctor-key-wrong = { $file } no contiene una clave P-256 en PEM; repón la antigua desde la copia, o el próximo arranque crea una nueva, que aún no oye ningún teléfono
doctor-key-changed =
    se cambió: { $n ->
        [one] { $n } teléfono no oye nada hasta que se abra allí la app
       *[other] { $n } teléfonos no oyen nada hasta que se abra allí la app
    }; mejor repón el { $file } antiguo desde la copia
doctor-key-good = { $key }…, solo la lee su dueño
doctor-key-sealed = { $key }…, sellada en la base de datos
doctor-nudger-never = nunca ha funcionado aquí; 'broodshelf serve' pone uno en marcha
doctor-nudger-ahead = funcionó por última vez { $s } s en el futuro: el reloj de esta máquina se atrasó
doctor-nudger-good = funcionó hace { $s } s y no espera nada
doctor-nudger-late = funcionó por última vez hace { $s } s, o hay avisos esperando; ¿está en marcha 'broodshelf serve'?
doctor-mail-refused = { $server } no nos acepta: { $error }; ver BROODSHELF_SMTP_*
doctor-mail-good = { $server } acepta nuestro correo
doctor-proxy-good = la dirección del visitante se toma de los proxies de delante: { $n }
doctor-proxy-none = BROODSHELF_TRUSTED_PROXY_HOPS es 0, así que todos los visitantes de la dirección https comparten un límite; ponlo en 1
doctor-address-good = { $url } es https, como necesitan los teléfonos
doctor-address-local = { $url } funciona solo en esta máquina; los teléfonos necesitan https (docs/self-hosting.md)
doctor-server-silent = { $url } no responde desde aquí como lo haría este servidor ({ $error })
doctor-server-other = en { $url } responde otra cosa (versión { $version }, aquí { $here })
doctor-server-good = la versión { $version } responde en { $url }
doctor-server-unwell = dice él mismo que no está bien: { $told }
doctor-clock = el reloj del servidor y este difieren en { $s } s
doctor-certificate-good =
    { $n ->
        [one] esta máquina confía en él, queda { $n } día
       *[other] esta máquina confía en él, quedan { $n } días
    }
doctor-certificate-short = esta máquina confía en él; dura días u horas y el proxy lo renueva, como con una autoridad propia
doctor-certificate-late =
    { $n ->
        [one] queda solo { $n } día y nadie lo ha renovado
       *[other] quedan solo { $n } días y nadie lo ha renovado
    }; mira el registro del proxy: los puertos 80 y 443 del nombre deben llegar a él (docs/https.md)
doctor-certificate-name = nadie conoce aquí el nombre { $host }; ponlo donde te dieron el nombre o en tu router (docs/https.md)
doctor-certificate-port = { $host } no responde desde aquí en el puerto { $port }; ¿funciona el proxy y lleva el router el puerto hasta él?
doctor-certificate-plain = { $host } habla http sin cifrar en el puerto { $port }: pon delante un proxy con certificado (docs/https.md)
doctor-certificate-expired = el certificado de { $host } ha caducado, o el reloj de esta máquina va mal; el proxy debe renovarlo
doctor-certificate-other-name = el certificado es de otro nombre que { $host }; da este nombre al proxy, o pon el suyo en BROODSHELF_PUBLIC_URL
doctor-certificate-authority = esta máquina no conoce a quien firmó el certificado de { $host }; los teléfonos lo conocen solo donde instalaste tu propia autoridad (docs/https.md, el quinto camino)
doctor-certificate-hello = { $host } cortó en el puerto { $port } antes de mostrar un certificado; mira el registro del proxy
