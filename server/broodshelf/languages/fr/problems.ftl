problem-title-failed = Quelque chose a échoué sur le serveur.
problem-title-bad-request = Cette adresse ne comprend pas cette demande.
problem-title-signed-out = Ce téléphone n’est pas connecté.
problem-title-not-allowed = Tu n’as pas le droit de faire cela ici.
problem-title-not-found = Il n’y a rien à cette adresse.
problem-title-wrong-device = La session est celle d’un autre appareil ; rien n’a été enregistré.
problem-title-gone = C’est terminé.
problem-title-too-large = La demande est trop grande.
problem-title-wrong-media-type = Envoie du JSON (Content-Type: application/json).
problem-title-upgrade-required = Cette copie de l’app est trop ancienne pour le serveur ; recharge-la. Rien n’est perdu sur le téléphone.
problem-title-store-full = Il n’y a plus de place sur le serveur ; rien n’a été enregistré.
problem-title-busy = Le serveur ne peut pas le faire maintenant ; rien n’a été enregistré.
problem-title-too-many = Trop d’essais ; attends un peu.

problem-unforeseen = Rien n’a été enregistré. Réessaie ; si cela reste, préviens la personne qui gère le serveur : { $reference }.
problem-disk-full = Le disque du serveur est plein ; rien n’a été enregistré.
problem-database-locked = La base de données du serveur est tenue par un autre programme ; rien n’a été enregistré.
problem-database-away = La base de données du serveur ne répond pas ; rien n’a été enregistré.
problem-database-read-only = Le serveur ne peut pas écrire dans sa base de données ; rien n’a été enregistré.
problem-database-damaged = Une partie de la base de données du serveur est perdue ; rien n’a été enregistré.
problem-no-household = Ce foyer n’est pas sur ce serveur.
problem-no-file = Ce fichier ne fait partie d’aucune version gardée ici ; recharge l’app.
problem-foreign-origin = Cette demande ne vient pas de { $url }. Ouvre l’app à cette adresse, ou mets dans BROODSHELF_PUBLIC_URL celle que tu utilises.
problem-keepers-only = Seule une personne responsable de ce foyer peut le faire.
problem-no-record = Cet élément n’est pas dans ce foyer.
problem-no-place = Cet emplacement n’existe pas.
problem-no-place-yet = Cet emplacement n’existe pas. Laisse d’abord ce téléphone se synchroniser, puis réessaie.
problem-no-person-yet = Cette personne n’est pas dans ce foyer. Laisse d’abord ce téléphone se synchroniser, puis réessaie.

problem-code-used-now = Ce code vient de servir.
problem-claim-code-ended = Ce code est inconnu, a servi ou a expiré. Demandes-en un nouveau à qui s’occupe du serveur ('broodshelf pair', 'broodshelf household invite').
problem-signup-closed = Ce serveur n’accepte pas de nouveau foyer en ce moment. Demande à qui s’en occupe.
problem-signup-code-needed = Ce serveur demande un code pour un nouveau foyer. Demande une invitation à qui s’en occupe.
problem-signup-address = Beaucoup de foyers ont commencé d’ici aujourd’hui. Réessaie demain, ou demande une invitation à qui s’occupe du serveur.
problem-founding-incomplete = Un nouveau foyer demande ton nom, le sien et son fuseau horaire.
problem-too-many-phones-ask = Trop de téléphones demandent à entrer en ce moment ; réessaie bientôt.
problem-no-keeper = Cette personne responsable n’est pas dans ce foyer.
problem-pairing-over = Ce code a expiré. Affiches-en un nouveau.
problem-pairing-used = Ce code a déjà servi.
problem-pairing-unknown = Aucun téléphone ne montre ce code maintenant. Un code dure dix minutes.
problem-device-id-taken = Cet identifiant d’appareil est pris ; le téléphone doit en faire un nouveau.
problem-device-revoked = Ce téléphone a été déconnecté par une personne responsable. Ce qu’il n’a pas envoyé peut être exporté.
problem-session-old = Cette session est finie, faute d’usage pendant longtemps. Connecte le téléphone à nouveau.
problem-person-removed = Une personne responsable t’a retiré l’accès à ce foyer.
problem-no-phone = Ce téléphone n’est pas dans ce foyer.
problem-one-of-two = Donne soit { $one }, soit { $other }.
problem-quota-address = Beaucoup de choses sont venues de cette adresse en une heure. Ce qui est sur ce téléphone y reste et repartira tout seul.
problem-quota-pass = Ce pass a envoyé tout ce qu’un pass peut envoyer en un jour. Ce qui est sur ce téléphone y reste et partira demain, ou avec un nouveau pass.
problem-quota-household = Ce foyer a envoyé tout ce qu’il peut en un jour. Ce qui est sur ce téléphone y reste et partira demain.
problem-room-records = Ce foyer a autant d’éléments que ce serveur lui en laisse ({ $most }). Ce qui est sur ce téléphone y reste et part quand il y a de la place : efface ce dont personne n’a besoin, ou demande à qui s’occupe du serveur.
problem-room-pictures = Ce foyer a autant de photos que ce serveur lui en laisse ({ $most }). Celle-ci reste sur ce téléphone et part quand il y a de la place : effaces-en, ou demande à qui s’occupe du serveur.
problem-room-mib = Ce foyer prend sur le serveur toute la place qu’il peut ({ $most } Mio). Ce qui est sur ce téléphone y reste et part quand il y a de la place : demande à qui s’occupe du serveur.
room-nearly-full = Ce foyer a rempli { $percent } % de sa place sur le serveur : { $records } éléments sur { $most_records }, { $pictures } photos sur { $most_pictures }, { $mib } Mio sur { $most_mib }. Rien n’est perdu ; demande plus de place à qui s’occupe du serveur avant que ce soit plein.

problem-no-pass = Ce pass n’existe pas.
problem-no-pass-yet = Ce pass n’existe pas. Laisse d’abord ce téléphone se synchroniser, puis réessaie.
problem-pass-taken-back = Ce pass a été repris ; crées-en un nouveau.
problem-pass-taken-back-here = Ce pass a été repris. Ce que ce téléphone n’a pas envoyé peut être exporté.
problem-pass-unknown = Ce pass est inconnu ou a été repris. Demande un nouveau lien à la personne qui te l’a donné.
problem-pass-ended = Ce pass s’est terminé le { $on }.
problem-pass-ended-still-taken = Ce pass s’est terminé le { $on }. Ce qui a été noté jusque-là est encore accepté.
problem-pass-over = Ce pass est terminé ou a été repris.
problem-pass-full = Téléphones qui ont déjà ouvert ce pass : { $n }. Une personne responsable peut en retirer un.
problem-no-feed = Cette adresse de calendrier est inconnue ou terminée. Crées-en une nouvelle dans l’app.

problem-mail-off = Ce serveur n’envoie pas de courriel ; son propriétaire peut le régler (docs/self-hosting.md).
problem-no-mail-address = Ce n’est pas une adresse de courriel utilisable, p. ex. name@example.org.
problem-no-mail-code = Aucun code n’est ouvert pour cette personne ; demandes-en un nouveau.
problem-mail-code-over = Ce code est terminé ; demandes-en un nouveau.
problem-mail-code-wrong = Ce n’est pas le code qui a été envoyé.
problem-not-subscribed = Ce téléphone n’écoute pas encore ; active d’abord ses rappels.
problem-push-too-long = Cette adresse de rappels ne peut pas servir : elle dépasse { $most } caractères.
problem-push-not-https = Cette adresse de rappels ne peut pas servir : ce n’est pas une simple adresse https sur le port 443.
problem-push-unknown = Cette adresse de rappels ne peut pas servir : ce n’est pas celle d’un service connu. Le propriétaire du serveur peut en autoriser d’autres.
problem-push-private = Cette adresse de rappels ne peut pas servir : son nom mène dans un réseau privé.
problem-push-other-key = Le téléphone écoute avec une ancienne clé de ce serveur ; abonne-le à nouveau.
problem-push-taken = Un autre téléphone écoute à cette adresse ; abonne-toi à nouveau pour en avoir une à toi.
problem-push-too-many = Téléphones qui écoutent déjà pour toi : { $n } ; déconnectes-en d’abord un.

problem-picture-slow = Cette photo est trop longue à lire.
problem-picture-not-now = Le serveur n’a pas pu regarder cette photo maintenant.
problem-picture-busy = Le serveur est occupé par des photos.
problem-picture-scans = Cette photo est stockée en trop de passes.
problem-picture-unreadable = Ce n’est pas une photo JPEG lisible.
problem-picture-pixels = Cette photo a trop de pixels.
problem-picture-damaged = La photo est arrivée abîmée ; envoie-la à nouveau.
problem-pictures-full = Les photos de ce foyer remplissent leur place ; supprimes-en, ou demande à la personne qui gère le serveur.
problem-picture-not-sent = Cette photo n’a pas encore été envoyée par son téléphone.
problem-no-picture = Cette photo n’est pas dans ce foyer.
problem-picture-itself = Envoie la photo elle-même (Content-Type: image/jpeg).
problem-picture-large = Une photo peut avoir au plus { $most } octets.

problem-broker-and-topic = Donne un courtier et un sujet, ou aucun des deux.
problem-no-broker = Le serveur n’écoute aucun courtier de ce nom.
problem-topic-not-yours = Donne un sujet entier qui correspond à { $wanted }.
problem-too-many-sensors = Un foyer a au plus { $most } capteurs. Retires-en d’abord un.
problem-topic-taken = Un capteur écoute déjà ce sujet.
problem-bad-token = Envoie le jeton encore valable d’un capteur ('Authorization: Bearer …'). Maison, Emplacements en crée de nouveaux.
problem-no-sensor = Ce capteur n’est pas dans ce foyer.
problem-no-csv = La ligne { $line } n’est pas du CSV : { $why }. Enregistre le fichier à nouveau en CSV.
problem-no-such-column =
    { $n ->
        [0] Aucune colonne ne s’appelle '{ $name }' ; nomme l’une de celles de la première ligne.
        [one] { $n } colonne s’appelle '{ $name }' ; nomme l’une de celles de la première ligne.
       *[other] { $n } colonnes s’appellent '{ $name }' ; nomme l’une de celles de la première ligne.
    }
problem-name-a-column = Nomme la colonne de la température ou celle de l’humidité.

problem-holiday-days = Choisis un jour de retour après le jour de départ, en moins d’un an.
problem-no-calculator = Ce calcul n’existe pas.
problem-no-input = { $calculator } : pas de champ { $name }.
problem-input-number = { $name } doit être un nombre.
problem-input-choice = { $name } doit être l’un des choix.
problem-input-yes-no = { $name } doit être oui ou non.
problem-out-of-range = { $what } : { $value } { $unit } ; il faut une valeur entre { $low } { $unit } et { $high } { $unit }.
problem-not-a-choice = { $name } vaut { $value } ; il faut l’un de { $choices }.
problem-parts-by = Dis si les parts sont en masse ({ $mass } %) ou en volume ({ $volume } %).

problem-no-json = Le corps n’est pas le JSON que prend cette adresse : { $why }.
problem-not-an-object = { $where } doit être un objet.
problem-body-not-an-object = Le corps doit être un objet JSON.
problem-not-a-list = '{ $where }' doit être une liste.
problem-not-a-uuid = '{ $where }' doit être un UUID en minuscules.
problem-address-not-a-uuid = L’id dans l’adresse n’est pas un UUID.
problem-not-a-whole-number = '{ $where }' doit être un nombre entier de { $low } à { $high }.
problem-not-a-short-text = { $where } doit être un texte court.
problem-not-a-flag = { $where } doit être true ou false.
problem-not-a-pair = { $where } doit contenir chaque fois [ms, device].
problem-empty-set = { $where } doit être un objet avec au moins un champ.
problem-too-many-fields = { $where } a plus de { $most } champs.
problem-wrong-cursor = 'cursor' doit être ce qu’a donné la dernière réponse, ou null.
problem-wrong-fields = Ces champs sont faux ou manquent : { $names }.
problem-wrong-auth-key = { $where } doit être 16 octets en base64url.
problem-wrong-point-key = { $where } doit être un point P-256 non compressé (65 octets) en base64url.
problem-app-newer = L’app de ce téléphone est plus récente que le serveur ; mets le serveur à jour.
problem-too-many-operations = Au plus { $most } opérations par demande ; envoie le reste dans la suivante.
problem-too-many-bytes = Au plus { $most } octets sont pris ici.
problem-input-wrong = On ne peut pas calculer avec cela : { $why }.

refused-one-household = Un foyer n’a qu’une fiche de lui-même, et elle existe déjà.
refused-household-stays = Le foyer lui-même ne peut pas être supprimé.
refused-let-in = On ajoute une personne en laissant entrer un téléphone ou par un pass.
refused-no-role = Une personne est responsable ou remplaçante ; celle-ci n’est ni l’une ni l’autre.
refused-last-keeper = La dernière personne responsable ne peut pas être retirée ; fais d’abord entrer quelqu’un d’autre.

problem-row-no-number = « { $cell } » n’est pas un nombre.
problem-row-no-time = « { $cell } » n’est pas une heure de la forme choisie.
problem-row-too-early = L’heure est antérieure à l’an 2000.
problem-row-not-a-number = La ligne ne contient aucun nombre.
problem-row-nothing-measured = La ligne ne contient ni température ni humidité.
problem-row-broken-temperature = Aucun endroit ne peut avoir cette température.
problem-row-broken-humidity = L’humidité n’est pas entre 0 et 100 %.
problem-row-too-old = C’est trop ancien.
problem-row-in-the-future = C’est dans le futur.
