## Las palabras del primer arranque.

start-welcome = Cada colonia con comida, agua y un vistazo.
start-what = Broodshelf lleva la ronda de tu estante de hormigas: qué toca, cuánto y por qué. Funciona sin cobertura.
start-have-code = Tengo el código del servidor
start-join-one = Unirme a un estante
start-have-pass = Me dieron un pase
start-back = Atrás
start-claim = Hacer mío este estante
start-code = Código
start-code-hint = de una invitación o del servidor
start-your-name = Tu nombre
start-more = Nombre del estante y zona horaria
start-shelf-name = Nombre del estante
start-our-shelf = Nuestro estante
start-zone = Zona horaria
start-claim-it = Hacerlo mío
start-known = Hola de nuevo, { $name }
start-come-in = Entrar
start-join = Unirse a un estante
start-join-how = En un teléfono con la sesión iniciada, abre «Casa» y escribe este código, o escanéalo allí.
start-waiting = Esperando a un criador…
start-pass = Abrir un pase
start-pass-hint = te lo dio el criador
start-open-pass = Abrir el pase
start-language = Idioma

start-phone-name = { $system }: teléfono o navegador
start-phone-unnamed = Teléfono o navegador
start-handed = Te han confiado un estante
start-handed-what = Con este teléfono puedes cuidar algunas colonias unos días. No hace falta cuenta.
start-only-a-look = { $count ->
    [one] Tu sesión es de criador, así que esto es solo una mirada: el pase es para { $count } colonia ({ $from } a { $to }).
   *[other] Tu sesión es de criador, así que esto es solo una mirada: el pase es para { $count } colonias ({ $from } a { $to }).
  }

## Tras la primera colonia: su plan, y la pantalla de inicio.

welcome-title = { $name } está en el estante
welcome-plan = El plan
welcome-wait = El plan llega con la próxima conexión.
welcome-nothing = No toca nada. Déjalas en calma.
welcome-install = Ponla en tu pantalla de inicio
welcome-why-install = Así se abre como cualquier app, funciona en el estante sin cobertura y guarda tus anotaciones a salvo de los navegadores que hacen limpieza.
welcome-installed = Ya está en esta pantalla de inicio.
welcome-go = Ir a la ronda
welcome-again = Añadir otra colonia
welcome-ios-1 = Toca el botón de compartir de Safari (el cuadrado con la flecha).
welcome-ios-2 = Elige «Añadir a pantalla de inicio» y luego «Añadir».
welcome-ios-3 = Abre Broodshelf desde allí. Tiene una memoria propia: haz tuyo el estante o únete en ella, o déjala entrar desde Safari en Casa, «Dejar entrar un teléfono».
welcome-android-1 = Abre el menú del navegador (tres puntos).
welcome-android-2 = Elige «Instalar app» o «Añadir a pantalla de inicio».
welcome-android-3 = Abre Broodshelf desde allí.
welcome-desktop-1 = Chrome o Edge: el botón de instalar al final de la barra de direcciones.
welcome-desktop-2 = Safari en un Mac: Archivo, y luego «Añadir al Dock».
welcome-desktop-3 = Firefox en el escritorio: basta un marcador.
welcome-now = Instalarla ahora
