## Le premier départ : ouvrir une étagère, en rejoindre une, un pass.

start-welcome = Chaque colonie nourrie, abreuvée et regardée.
start-what = Broodshelf tient la tournée de ton étagère de fourmis : quoi faire, combien, et pourquoi. Il marche sans réseau.
start-have-code = J’ai le code du serveur
start-join-one = Rejoindre une étagère
start-have-pass = J’ai reçu un pass
start-back = Retour
start-claim = Prendre cette étagère
start-code = Code
start-code-hint = d’une invitation ou du serveur
start-your-name = Ton nom
start-more = Nom de l’étagère et fuseau horaire
start-shelf-name = Nom de l’étagère
start-our-shelf = Notre étagère
start-zone = Fuseau horaire
start-claim-it = La prendre
start-known = Te revoilà, { $name }
start-come-in = Entrer
start-join = Rejoindre une étagère
start-join-how = Sur un téléphone déjà connecté, ouvre Maison et tape ce code, ou scanne-le là.
start-waiting = En attente d’une personne responsable…
start-pass = Ouvrir un pass
start-pass-hint = l’éleveur te l’a donné
start-open-pass = Ouvrir le pass
start-language = Langue
start-phone-name = Téléphone ou navigateur ({ $system })
start-phone-unnamed = Téléphone ou navigateur
start-handed = On te confie une étagère
start-handed-what = Ce téléphone peut s’occuper de quelques colonies pendant quelques jours. Pas besoin de compte.
start-only-a-look = { $count ->
    [one] Tu as ici des droits de responsable, tu ne fais donc que regarder : le pass est pour { $count } colonie, du { $from } au { $to }.
   *[other] Tu as ici des droits de responsable, tu ne fais donc que regarder : le pass est pour { $count } colonies, du { $from } au { $to }.
  }

## Après la première colonie : son plan, et l’écran d’accueil.

welcome-title = Sur l’étagère : { $name }
welcome-plan = Le plan
welcome-wait = Le plan arrive à la prochaine connexion.
welcome-nothing = Rien à faire. Laisse-les au calme.
welcome-install = La mettre sur ton écran d’accueil
welcome-why-install = Elle s’ouvre alors comme toute app, marche sans réseau devant l’étagère, et met tes saisies à l’abri des navigateurs qui font le ménage.
welcome-installed = Elle est déjà sur cet écran d’accueil.
welcome-go = Aller à la tournée
welcome-again = Ajouter une autre colonie
welcome-ios-1 = Touche le bouton Partager de Safari (le carré avec la flèche).
welcome-ios-2 = Choisis « Sur l’écran d’accueil », puis « Ajouter ».
welcome-ios-3 = Ouvre Broodshelf de là. Elle y a sa propre mémoire : prends ou rejoins l’étagère depuis elle, ou fais-la entrer depuis Safari avec Maison, « Laisser entrer un téléphone ».
welcome-android-1 = Ouvre le menu du navigateur (trois points).
welcome-android-2 = Choisis « Installer l’application » ou « Ajouter à l’écran d’accueil ».
welcome-android-3 = Ouvre Broodshelf de là.
welcome-desktop-1 = Chrome ou Edge : le bouton d’installation au bout de la barre d’adresse.
welcome-desktop-2 = Safari sur un Mac : Fichier, puis « Ajouter au Dock ».
welcome-desktop-3 = Firefox sur un ordinateur : un marque-page suffit.
welcome-now = L’installer
