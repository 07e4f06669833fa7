## Une colonie : son écran, ses stades, son état.

colony-gone = Pas ici
colony-gone-why = Cette colonie n’est pas sur ce téléphone. Elle a peut-être été supprimée, ou ce téléphone n’est pas encore synchronisé.
colony-change = Modifier
colony-new = Une nouvelle colonie
colony-log = Noter
colony-plan = Le plan
colony-diary = Journal
colony-charts = Au fil des mois
colony-paper = Imprimer sa fiche
colony-past = Son historique
colony-no-plan = Le plan arrive à la prochaine connexion au serveur. Noter marche tout de suite.

colony-stage-founding = Reine en fondation
colony-stage-nanitics = Nanitiques
colony-stage-growing = En croissance
colony-stage-mature = Mature

colony-condition-well = Va bien
colony-condition-settling = S’installe
colony-condition-resting = Au repos
colony-condition-queenless-suspected = Reine incertaine
colony-condition-quarantine = Quarantaine
colony-condition-given-away = Donnée
colony-condition-dead = Morte

## Ce qu'on dit d'une colonie.

colony-form-change = Modifier : { $name }
colony-form-name = Nom
colony-form-number = Numéro sur le contenant
colony-form-optional = (facultatif)
colony-form-species = Espèce
colony-form-species-hint = de la liste, ou avec tes mots
colony-form-length = Longueur des ouvrières en mm
colony-form-length-hint = (seulement pour une espèce qui n’est pas dans la liste)
colony-form-lives = Vit dans
colony-form-not-listed = pas dans la liste
colony-form-outworld = Elle a une aire de chasse
colony-form-stage = Stade
colony-form-condition = État
colony-form-roughly = Ouvrières, à peu près
colony-form-few = Peu (moins de 20)
colony-form-some = Quelques-unes (20 à 100)
colony-form-many = Beaucoup
colony-form-larvae = Larves
colony-form-needed = Donne un nom à la colonie.
colony-form-save = Enregistrer
colony-form-add = Ajouter la colonie
colony-form-more = Contenant, numéro et plus
colony-form-stings = Cette espèce pique. Une personne allergique doit se faire aider ici.

colony-form-fate-rests-since = Au repos depuis
colony-form-fate-wakes-on = À réveiller le
colony-form-fate-went-to = Chez qui elle est partie
colony-form-fate-died-of = De quoi elle est morte, si tu le sais
colony-form-fate-came-from = D’où elle vient
colony-form-fate-host = Espèce de l’hôte

colony-form-own-species = Ta propre espèce
colony-form-own-eats = Elle mange
colony-form-own-founds = Sa reine fonde
colony-form-own-stings = Elle pique

colony-form-own-guild-omnivore = Sucre et insectes
colony-form-own-guild-predator = Surtout des insectes
colony-form-own-guild-harvester = Graines
colony-form-own-guild-honeypot = Stocke le sucre dans des réplètes
colony-form-own-guild-fungus-grower = Feuilles pour son champignon

colony-form-own-founding-claustral = Seule, sans nourriture
colony-form-own-founding-semi-claustral = Sort chercher à manger
colony-form-own-founding-parasitic = Avec des ouvrières hôtes

colony-form-own-vessel = Ton propre contenant
colony-form-own-bore = Largeur ou diamètre intérieur en mm
colony-form-own-vessel-length = Longueur en mm
