counting-open = Contar en una foto
counting-again = Ver otra vez el recuento
counting-looking = Buscando hormigas…
counting-range = Probablemente de { $low } a { $high }, al menos { $least }
counting-crowded = Están demasiado juntas para verlas todas: al menos { $least }, probablemente de { $low } a { $high }
counting-brood = Cría: { $count }
counting-plain = Cuánto debe destacar una hormiga
counting-tap = Un toque marca
counting-sets-worker = Hormigas
counting-sets-brood = Cría
counting-sets-frame = Marco
counting-sets-size = Tamaño
counting-hint-worker = Toca una hormiga sin punto; toca un punto para quitarlo.
counting-hint-brood = Toca cría sin punto; toca un punto para quitarlo.
counting-hint-frame = Arrastra las dos esquinas alrededor de lo que cuenta.
counting-hint-size = Pon los dos extremos en algo de longitud conocida.
counting-spans = Entre los extremos hay
counting-spans-worker = Una obrera
counting-spans-bore = El interior del tubo
counting-spans-length = Una longitud en mm
counting-length = Longitud en mm
counting-corner = { $which ->
    [first] Esquina superior izquierda
   *[other] Esquina inferior derecha
  }
counting-end = { $which ->
    [first] Un extremo
   *[other] Otro extremo
  }
counting-picture = Foto con { $count } puntos. Re Pág y Av Pág van de uno a otro, las flechas mueven el elegido, Supr lo quita, Intro pone uno.
counting-dot = Punto { $at } de { $count }: { $what ->
    [brood] cría
   *[worker] obrera
  }{ $sure ->
    [no] , no es seguro
   *[yes] {""}
  }
counting-previous = Punto anterior
counting-next = Punto siguiente
counting-take-away = Quitar este punto
counting-nearer = Más grande
counting-farther = Más pequeña
counting-whole = La foto entera
counting-part = Solo se ve una parte del nido
counting-pale = Las hormigas son más claras que su fondo
counting-keep = Guardar este recuento
counting-kept = El recuento está guardado.
counting-failed = No se pudo examinar esta foto. Se pueden poner puntos a mano.
counting-heic = Este navegador no lee fotos HEIC y no se ha guardado nada. Pon la cámara en JPEG o guarda la foto como JPEG y elígela otra vez.
counting-growth = Crecimiento en fotos
counting-film = Compartir como película
counting-strip = Compartir una junto a otra
counting-making = Un momento…
counting-still = Este teléfono no hace películas; comparte las fotos una junto a otra.
counting-shown = Mostrar los puntos
counting-few = Cuenta en dos fotos o más y estarán aquí una junto a otra.
