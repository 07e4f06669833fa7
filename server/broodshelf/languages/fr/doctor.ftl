doctor-good = bon
doctor-look = à voir
doctor-bad = MAUVAIS

doctor-about-data-folder = dossier des données
doctor-about-disk = disque
doctor-about-revoked = téléphones et pass retirés
doctor-about-marks = repères
doctor-about-set-aside = mis de côté
doctor-about-database = base de données
doctor-about-database-role = rôle de la base de données
doctor-about-households = foyers
doctor-about-history = historique
doctor-about-push-key = clé des rappels
doctor-about-nudger = envoi des rappels
doctor-about-mail = courriel
doctor-about-proxy = proxy
doctor-about-public-address = adresse publique
doctor-about-certificate = certificat
doctor-about-server = serveur
doctor-about-clock = horloge

doctor-folder-missing = { $path } n’est pas encore là ; le premier démarrage le crée
doctor-folder-good = on peut écrire dans { $path }
doctor-folder-locked = cet utilisateur ne peut pas écrire dans { $path } ; change son propriétaire
doctor-disk = { $mib } MiB libres ; un disque plein refuse les saisies
doctor-revoked-unreadable =
    { $n ->
        [one] { $n } ligne illisible
       *[other] { $n } lignes illisibles
    } dans { $path } ; le prochain démarrage garde une copie et tout ce qui se lit. Avant de remettre une sauvegarde plus ancienne, remets ce fichier depuis la plus récente
doctor-mark-unreadable = { $path } ne peut pas être lu ; au prochain démarrage ses téléphones reçoivent tout à nouveau
doctor-was-set-aside = { $path } était abîmé et a été mis de côté ; regarde-le, garde-le ou retire-le
doctor-database-gone = elle manque, alors qu’une étagère était ici ; 'broodshelf restore FILE' remet une sauvegarde
doctor-database-none = il n’y en a pas encore ; le premier démarrage la crée
doctor-database-silent = elle ne répond pas : { $error } ; tourne-t-elle ?
doctor-database-damaged = elle est abîmée ({ $path }) : garde le fichier, puis remets une sauvegarde
doctor-database-unsound = elle est abîmée : { $found } ; remets une sauvegarde
doctor-database-schema = son schéma est { $at }, cette version veut { $head } ; 'broodshelf migrate' y remédie
doctor-database-empty = son schéma est vide, cette version veut { $head } ; 'broodshelf migrate' y remédie
doctor-database-good = elle répond, tables : { $n }, schéma { $at }
doctor-role-free = ce rôle peut passer outre la sécurité par ligne ; donne au serveur un rôle à lui (docs/self-hosting.md)
doctor-role-good = la sécurité par ligne le tient à un foyer à la fois
doctor-households = { $n } sur ce serveur
doctor-history =
    { $households ->
        [one] en un an, { $n } changements sont venus de { $households } foyer ; avec l’historique et les réponses, environ { $kib } KiB de texte, index en plus (éclairci après 400 jours : self-hosting.md)
       *[other] en un an, { $n } changements sont venus de { $households } foyers ; avec l’historique et les réponses, environ { $kib } KiB de texte chacun, index en plus (éclairci après 400 jours : self-hosting.md)
    }
doctor-history-some = en un an, environ { $n } changements sont venus d’environ { $households } foyers, estimation faite sur { $looked } d’entre eux ; avec l’historique et les réponses, environ { $kib } KiB de texte chacun, index en plus (éclairci après 400 jours : self-hosting.md)
doctor-key-none = il n’y en a pas encore ; le premier démarrage la crée
doctor-key-wrong = { $file } ne contient pas de clé P-256 en PEM ; remets l’ancienne depuis la sauvegarde, ou le prochain démarrage en crée une nouvelle, qu’aucun téléphone n’entend encore
doctor-key-changed =
    elle a été changée : { $n ->
        [one] { $n } téléphone n’entend rien tant que l’app n’y est pas ouverte
       *[other] { $n } téléphones n’entendent rien tant que l’app n’y est pas ouverte
    } ; mieux vaut remettre l’ancien { $file } depuis la sauvegarde
doctor-key-good = { $key }…, lisible par son propriétaire seulement
doctor-key-sealed = { $key }…, scellée dans la base de données
doctor-nudger-never = il n’a jamais tourné ici ; 'broodshelf serve' en lance un
doctor-nudger-ahead = il a tourné { $s } s dans le futur : l’horloge de cette machine a été reculée
doctor-nudger-good = il a tourné il y a { $s } s et rien n’attend
doctor-nudger-late = il a tourné il y a { $s } s, ou des rappels attendent ; 'broodshelf serve' tourne-t-il ?
doctor-mail-refused = { $server } ne nous accepte pas : { $error } ; voir BROODSHELF_SMTP_*
doctor-mail-good = { $server } accepte notre courriel
doctor-proxy-good = l’adresse du visiteur est crue, proxys devant : { $n }
doctor-proxy-none = BROODSHELF_TRUSTED_PROXY_HOPS vaut 0, donc tous les visiteurs de l’adresse https partagent une limite ; mets 1
doctor-address-good = { $url } est en https, comme il faut aux téléphones
doctor-address-local = { $url } ne marche que sur cette machine ; les téléphones ont besoin de https (docs/self-hosting.md)
doctor-server-silent = vu d’ici, { $url } ne répond pas comme ce serveur le ferait ({ $error })
doctor-server-other = autre chose répond à { $url } (version { $version }, ici { $here })
doctor-server-good = la version { $version } répond à { $url }
doctor-server-unwell = il dit lui-même qu’il ne va pas bien : { $told }
doctor-clock = l’horloge du serveur et celle-ci diffèrent de { $s } s
doctor-certificate-good =
    { $n ->
        [one] cette machine lui fait confiance, encore { $n } jour
       *[other] cette machine lui fait confiance, encore { $n } jours
    }
doctor-certificate-short = cette machine lui fait confiance ; il dure des jours ou des heures et le proxy le renouvelle, comme avec une autorité à soi
doctor-certificate-late =
    { $n ->
        [one] plus que { $n } jour, et personne ne l’a renouvelé
       *[other] plus que { $n } jours, et personne ne l’a renouvelé
    } ; regarde le journal du proxy : les ports 80 et 443 du nom doivent l’atteindre (docs/https.md)
doctor-certificate-name = personne ici ne connaît le nom { $host } ; inscris-le là où tu l’as eu, ou dans ton routeur (docs/https.md)
doctor-certificate-port = { $host } ne répond pas d’ici sur le port { $port } ; le proxy tourne-t-il, et le routeur y mène-t-il le port ?
doctor-certificate-plain = { $host } parle http sans chiffrement sur le port { $port } : mets devant un proxy avec un certificat (docs/https.md)
doctor-certificate-expired = le certificat de { $host } a expiré, ou l’horloge de cette machine est fausse ; le proxy doit le renouveler
doctor-certificate-other-name = le certificat est pour un autre nom que { $host } ; donne ce nom au proxy, ou mets le sien dans BROODSHELF_PUBLIC_URL
doctor-certificate-authority = cette machine ne connaît pas qui a signé le certificat de { $host } ; les téléphones ne le connaissent que là où tu as installé ta propre autorité (docs/https.md, la cinquième voie)
doctor-certificate-hello = { $host } a coupé sur le port { $port } avant de montrer un certificat ; regarde le journal du proxy
