### Ce que 'broodshelf household' affiche.

command-of-households = les foyers de ce serveur : qui ils sont, invitations, emporter, effacer, remettre
command-household-list = qui est là, quand un téléphone s’est manifesté, la place que chacun prend
command-household-invite = faire des liens à usage unique, chacun pour un foyer à soi
command-invite-count = combien
command-invite-days = pendant combien de jours ils valent
command-invite-sheet = écrire une feuille à imprimer, avec un code QR pour chacune
command-invite-take-back = n’en faire aucune ; annuler celles dont personne ne s’est servi
command-household-export = écrire tous les éléments et photos d’un foyer dans un .zip ou un dossier
command-household-delete = effacer un foyer avec tout ce qu’il a
command-household-restore = remettre un seul foyer depuis une sauvegarde du serveur entier
command-household-id = son identifiant, tel que 'household list' le montre
command-list-name = nom
command-list-id = identifiant
command-list-people = personnes
command-list-seen = vu (UTC)
command-list-records = éléments
command-list-pictures = photos
command-list-mib = Mio
command-list-share = part
command-list-invitations = Invitations : { $open } ouvertes, { $used } utilisées, { $expired } expirées.
command-invite-closed = BROODSHELF_SIGNUP est sur closed, aucune invitation n’ouvrirait donc rien : mets-le sur invited, pour le serveur et pour cette commande.
command-invite-range = { $name } : donne un nombre entier de 1 à { $most }.
command-invite-done =
    { $n ->
        [one] Ce lien ouvre
       *[other] Chacun de ces liens ouvre
    } un foyer, une fois, sous { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    }. Il n’est pas montré une autre fois.
command-invite-sheet-done =
    { $n ->
        [one] { $n } invitation est
       *[other] { $n } invitations sont
    } dans { $path }. Ouvre la feuille dans un navigateur et imprime-la ; chacune laisse entrer quelqu’un, garde-la donc pour toi.
command-invite-taken-back =
    { $n ->
        [one] { $n } invitation ouverte a été annulée.
       *[other] { $n } invitations ouvertes ont été annulées.
    }
sheet-title = Broodshelf : invitations
sheet-number = Invitation { $number }
sheet-how = Scanne ceci avec l’appareil photo du téléphone : ta propre étagère commence, une seule fois.
sheet-until = Valable jusqu’au { $on } inclus.
sheet-or-code = Ou ouvre { $server } et tape ce code :
signup-begin = Commencer ta propre étagère
household-export-no-json = Des photos ne tiennent pas dans un document JSON : nomme un fichier en .zip ou un nouveau dossier.
household-export-done = Écrit dans { $path } : { $n } éléments, { $pictures } photos. Les clés et les téléphones connectés n’y sont pas.
household-unknown = Il n’y a pas de foyer { $id } ici ; 'broodshelf household list' montre ceux qui y sont.
household-delete-would = Cela effacerait { $name } : { $n } éléments, { $pictures } photos, ses téléphones, liens et historique. Emporte d’abord tout ('household export') ; avec --yes, c’est fait.
household-delete-done = Effacé : { $n } lignes, ses photos et ce qui était noté à côté de la base. Les sauvegardes d’avant le contiennent encore ; en remettre une ne le ramène pas.
household-not-in-backup = { $path } ne contient pas le foyer { $id } ; il contient { $households }.
household-restore-done = Remis : { $n } lignes. Ses téléphones envoient ce qui manque à la sauvegarde à leur prochaine connexion ; les autres foyers n’ont pas bougé.
command-move = copier tout dans une autre base de données, de SQLite à PostgreSQL ou retour, serveur arrêté
command-move-to = l’autre base : sqlite:///CHEMIN ou postgresql://UTILISATEUR@MACHINE/NOM
move-same = C’est la base de données que le serveur utilise déjà.
move-foreign = L’autre base contient des foyers que celle-ci ne connaît pas ({ $n }, le premier : { $first }) ; nomme une base vide, ou une qu’un déménagement d’avant a commencé à remplir.
move-connected = Quelqu’un d’autre est connecté à la base { $name } : arrête les serveurs et les envoyeurs de rappels, puis déménage.
move-differs = Les deux diffèrent dans la table { $table } : { $here } lignes ici, { $there } là-bas. Rien n’a changé ici ; recommence le déménagement.
move-step = { $number } sur { $of } : { $id }, { $n } lignes
move-there = { $number } sur { $of } : { $id } y est déjà, ligne par ligne
move-done = Déménagé : { $n } lignes ; chaque table a été comparée et est la même. Mets { $setting } sur l’autre base et démarre le serveur. Celle d’ici reste telle quelle.
