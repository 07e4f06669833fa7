## Una colonia: su página, sus fases y estados.

colony-gone = No está aquí
colony-gone-why = Esta colonia no está en este teléfono. Quizá se borró, o el teléfono aún no ha sincronizado.
colony-change = Cambiar
colony-new = Una colonia nueva
colony-log = Anotar
colony-plan = El plan
colony-diary = Diario
colony-charts = A lo largo de los meses
colony-paper = Imprimir su ficha
colony-past = Su historial
colony-no-plan = El plan llega con la próxima conexión al servidor. Anotar funciona ya.

colony-stage-founding = Reina fundadora
colony-stage-nanitics = Nanitics
colony-stage-growing = En crecimiento
colony-stage-mature = Madura

colony-condition-well = Bien
colony-condition-settling = Adaptándose
colony-condition-resting = En reposo
colony-condition-queenless-suspected = Reina en duda
colony-condition-quarantine = Cuarentena
colony-condition-given-away = Cedida
colony-condition-dead = Muerta

## Lo que un criador dice de una colonia.

colony-form-change = Cambiar { $name }
colony-form-name = Nombre
colony-form-number = Número en el recipiente

colony-form-optional = (opcional)
colony-form-species = Especie
colony-form-species-hint = de la lista, o con tus palabras
colony-form-length = Longitud de una obrera en mm
colony-form-length-hint = (solo hace falta si la especie no está en la lista)
colony-form-lives = Vive en
colony-form-not-listed = no está en la lista
colony-form-outworld = Tiene zona de forrajeo
colony-form-stage = Fase
colony-form-condition = Estado
colony-form-roughly = Obreras, más o menos
colony-form-few = Pocas (menos de 20)
colony-form-some = Algunas (20 a 100)
colony-form-many = Muchas
colony-form-larvae = Larvas
colony-form-needed = Ponle un nombre a la colonia.
colony-form-save = Guardar
colony-form-add = Añadir la colonia
colony-form-more = Recipiente, número y más
colony-form-stings = Esta especie pica. Las personas alérgicas necesitan aquí la ayuda de otras.

colony-form-fate-rests-since = En reposo desde
colony-form-fate-wakes-on = Despertarla el
colony-form-fate-went-to = A quién fue
colony-form-fate-died-of = De qué murió, si se sabe
colony-form-fate-came-from = De dónde vino
colony-form-fate-host = Especie de la hospedadora

colony-form-own-species = Tu propia especie
colony-form-own-eats = Come
colony-form-own-founds = Su reina funda
colony-form-own-stings = Pica

colony-form-own-guild-omnivore = Azúcar e insectos
colony-form-own-guild-predator = Sobre todo insectos
colony-form-own-guild-harvester = Semillas
colony-form-own-guild-honeypot = Guarda azúcar en repletas
colony-form-own-guild-fungus-grower = Hojas para su hongo

colony-form-own-founding-claustral = Sola, sin comida
colony-form-own-founding-semi-claustral = Sale a buscar comida
colony-form-own-founding-parasitic = Con obreras hospedadoras

colony-form-own-vessel = Tu propio recipiente
colony-form-own-bore = Ancho o diámetro interior en mm
colony-form-own-vessel-length = Longitud en mm
