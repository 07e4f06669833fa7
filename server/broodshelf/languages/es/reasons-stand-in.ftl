### Pasos para quien releva y nunca vio un tubo de hormigas. Frases cortas, palabras de cada día, ninguna del oficio.
### Nombran un botón: «Algo va mal» debe leerse como en él.

reason-tube-step-still = Deja el tubo donde está: no lo levantes, inclines, abras ni sacudas.
reason-tube-step-find = Busca el tapón blanco dentro del tubo. A un lado viven las hormigas, al otro está el agua.
reason-tube-step-good = El agua clara toca el tapón: todo va bien. No hace falta rellenar nada.
reason-tube-step-bad = No queda agua tras el tapón, o hay agua donde están las hormigas: toca «Algo va mal» y llama.
reason-nest-step-look = Mira desde fuera, sin abrir nada: ¿sigue el extremo húmedo más oscuro que el seco? Entonces todo va bien.
reason-nest-step-place = Busca por dónde entra el agua: una abertura, una bandeja o una esponja fuera de las cámaras. Si no la encuentras, llama.
reason-nest-step-drip-ml = Toma { VOLUME($ml) } de agua normal a temperatura ambiente y deja que entre despacio.
reason-nest-step-drip = Deja entrar despacio un poco de agua normal a temperatura ambiente, hasta que la esponja o la escayola de allí se vea oscura.
reason-nest-step-stop = Para en cuanto ya no se absorba.
reason-nest-step-bad = Hay agua donde están las hormigas, o el nido está seco y claro por todas partes: toca «Algo va mal» y llama.
reason-helper-call = No abras, muevas ni sacudas nada, y no des nada de más. Llama y di lo que ves.
reason-helper-wet = Mientras tanto pon papel de cocina alrededor, para que no llegue nada a otros nidos.
reason-helper-escape = Mientras tanto cierra la tapa y la puerta de la habitación. Barre a las fugadas con un pincel suave a una caja cerrada; nunca fuera.
reason-helper-fridge = Cierra la puerta de la nevera. Si está cerrada, mira si la nevera funciona.
reason-helper-heater = Mientras tanto apaga la calefacción del estante, y corre la cortina si le da el sol.
reason-helper-dead = Mátala antes: no entra nada vivo mientras el criador está fuera.
reason-helper-glance = Mira un momento desde fuera, sin abrir, levantar ni sacudir nada. ¿Se mueven con calma?

# Cómo dar comida. La ración, por ejemplo «2 gotas de agua azucarada», está encima de los pasos.
reason-drop-step-take = Toma la botella de donde la guarda el criador, y un cuentagotas limpio. Deja que tome la temperatura ambiente: nunca caliente.
reason-drop-step-place = Abre solo la caja de comida, nunca el nido. Pon las gotas en el platito o papel de dentro, no sobre una hormiga.
reason-drop-step-small = No des más de lo que dice aquí, ni gotas más grandes: las hormigas pequeñas se ahogan en ellas.
reason-feeder-step-out = Saca el comedero con pinzas. Barre con suavidad las hormigas, de vuelta a la caja.
reason-feeder-step-fill = Enjuágalo con agua normal y llénalo con lo que se nombra arriba. A temperatura ambiente: nunca caliente.
reason-feeder-step-back = Ponlo donde estaba, derecho, para que no gotee.
reason-prey-step-take = Tómala del congelador o de la caja que te enseñó el criador, y deja que se descongele diez minutos. Tiene que estar muerta.
reason-prey-step-cut = Córtala una vez por la mitad, sobre papel, para que las hormigas lleguen a lo blando de dentro.
reason-prey-step-place = Abre solo la caja de comida. Déjala con pinzas cerca del camino al nido, en un sitio seco.
reason-seed-step-take = Toma semillas secas de la bolsa del criador, no otras: las compradas para pájaros pueden estar tratadas.
reason-seed-step-place = Déjalas caer en la caja de comida, en un sitio seco lejos del agua.
reason-leaf-step-take = Corta hojas de la planta que te enseñó el criador, no otras: las hojas fumigadas matan la colonia.
reason-leaf-step-rinse = Enjuágalas con agua fría y sacúdelas hasta que estén secas.
reason-leaf-step-place = Ponlas en la caja de comida, y saca las secas de la última vez.
reason-piece-step-take = Tómalo de donde lo guarda el criador, y córtalo tan pequeño como dice arriba.
reason-piece-step-place = Abre solo la caja de comida. Ponlo en el platito o papel de dentro, en un sitio seco.
reason-food-step-only = Nada más: los insectos cazados y la comida de la cocina pueden llevar veneno.
reason-food-step-close = Cierra la tapa enseguida, y mira si hay alguna hormiga fuera.
reason-food-step-bad = ¿Hay muchas hormigas quietas, hay hormigas fuera, o tienes dudas? Déjalo cerrado y llama.

# Cómo retirar los restos.
reason-left-step-find = Mira donde se puso comida: lo que está seco, oscuro o con pelusa, pieles vacías, gotas pegajosas.
reason-left-step-take = Abre solo la caja de comida. Sácalo con pinzas; limpia una mancha pegajosa con papel húmedo.
reason-left-step-held = ¿Lo sujetan las hormigas? Déjalo una hora, y no tires nunca.
reason-left-step-bin = Échalo a un cubo cerrado, no al compost. Cierra la tapa enseguida.

# Cómo mirar el antifugas: el borde resbaladizo que mantiene dentro a las hormigas.
reason-barrier-step-look = Mira el borde de la caja de comida desde fuera, todo alrededor.
reason-barrier-step-bridge = ¿Hay un pelo, una hoja o algodón atravesado? Quítalo con pinzas.
reason-barrier-step-still = No toques el borde, y no le pongas nada nuevo.
reason-barrier-step-bad = Hay hormigas en el borde o fuera: toca «Algo va mal» y llama.

# Cómo echar un vistazo, airear la caja de la nevera y vigilar tras una comida dudosa.
reason-glance-step-calm = Algunas hormigas se mueven, la mayoría están juntas: todo va bien.
reason-glance-step-bad = Muchas están quietas, muchas corren, o hay una fuera: toca «Algo va mal» y llama.
reason-air-step-open = Abre la caja en la nevera un minuto, sin tener la puerta de la nevera abierta más tiempo.
reason-air-step-still = No saques las hormigas ni las calientes en la mano. Duermen: está bien que no se mueva nada.
reason-air-step-close = Cierra la caja y la nevera, y mira si la puerta está cerrada.
reason-risk-step-signs = Puede que hayan comido algo malo. Cuenta cuántas están quietas o andan como borrachas.
reason-nest-step-still = No hace falta abrirlo ni rellenar nada.
reason-helper-tell = Di qué colonia es, qué ves y desde cuándo. Una foto ayuda.
