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
