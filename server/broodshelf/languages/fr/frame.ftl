frame-name = Broodshelf
frame-opening = L’étagère s’ouvre. Si ce texte reste, JavaScript ou ses modules sont désactivés dans ce navigateur, ou il est trop ancien : Broodshelf demande Chrome 91, Safari 16.4 ou Firefox 147, ou plus récent. Ce que tu as noté sur ce téléphone y reste.
frame-description = Les soins d’une étagère de colonies de fourmis, hors ligne devant l’étagère.
frame-close = Fermer
frame-loading = Un instant…
frame-missing = Cette partie de l’app n’a pas pu être chargée. Recharge-la ; rien de ce que tu as noté n’est perdu.
frame-screens = Écrans

frame-nav-round = Tournée
frame-nav-shelf = Étagère
frame-nav-larder = Vivres
frame-nav-handover = Confier
frame-nav-settings = Maison

frame-banner-unsent = Saisies non envoyées
frame-banner-sign-in = Se reconnecter
frame-banner-update = Une nouvelle version est prête.
frame-banner-update-waits = La nouvelle version viendra quand tu auras enregistré ou quitté ce que tu écris ici.
frame-banner-use-it = L’utiliser
frame-banner-emptied = Le navigateur avait vidé sa mémoire sur ce téléphone, l’étagère a donc été reprise sur le serveur. Ce qui avait été noté ici sans être envoyé est perdu : relis le journal, et note à nouveau ce qui manque.
frame-banner-understood = C’est lu
frame-banner-signed-out = Ce téléphone est déconnecté. Ce qu’il n’a pas envoyé reste ici.

frame-clock-ahead = { $unit ->
    [minutes] { $count ->
        [one] L’horloge de ce téléphone avance de { $count } minute. Pour les échéances et pour tes saisies, c’est l’heure du serveur qui compte.
       *[other] L’horloge de ce téléphone avance de { $count } minutes. Pour les échéances et pour tes saisies, c’est l’heure du serveur qui compte.
      }
    [hours] { $count ->
        [one] L’horloge de ce téléphone avance de { $count } heure. Pour les échéances et pour tes saisies, c’est l’heure du serveur qui compte.
       *[other] L’horloge de ce téléphone avance de { $count } heures. Pour les échéances et pour tes saisies, c’est l’heure du serveur qui compte.
      }
   *[days] { $count ->
        [one] L’horloge de ce téléphone avance de { $count } jour. Pour les échéances et pour tes saisies, c’est l’heure du serveur qui compte.
       *[other] L’horloge de ce téléphone avance de { $count } jours. Pour les échéances et pour tes saisies, c’est l’heure du serveur qui compte.
      }
  }
frame-clock-behind = { $unit ->
    [minutes] { $count ->
        [one] L’horloge de ce téléphone retarde de { $count } minute. Pour les échéances et pour tes saisies, c’est l’heure du serveur qui compte.
       *[other] L’horloge de ce téléphone retarde de { $count } minutes. Pour les échéances et pour tes saisies, c’est l’heure du serveur qui compte.
      }
    [hours] { $count ->
        [one] L’horloge de ce téléphone retarde de { $count } heure. Pour les échéances et pour tes saisies, c’est l’heure du serveur qui compte.
       *[other] L’horloge de ce téléphone retarde de { $count } heures. Pour les échéances et pour tes saisies, c’est l’heure du serveur qui compte.
      }
   *[days] { $count ->
        [one] L’horloge de ce téléphone retarde de { $count } jour. Pour les échéances et pour tes saisies, c’est l’heure du serveur qui compte.
       *[other] L’horloge de ce téléphone retarde de { $count } jours. Pour les échéances et pour tes saisies, c’est l’heure du serveur qui compte.
      }
  }

frame-banner-ended-pass-revoked = Ce pass a été repris. Ce que ce téléphone n’a pas envoyé reste ici, prêt à exporter.
frame-banner-ended-pass-ended = Ce pass est terminé. Merci ! Ce que ce téléphone n’a pas envoyé reste ici, prêt à exporter.
frame-banner-ended-device-revoked = Ce téléphone a été déconnecté par une personne responsable. Ce qu’il n’a pas envoyé reste ici, prêt à exporter.
frame-banner-ended-session-old = La session de ce téléphone a expiré. Ce qu’il n’a pas envoyé reste ici.

## Les éléments communs à plusieurs écrans.

part-table = Les chiffres en tableau
part-needs-server = Il faut le serveur, et il n’y a pas de connexion en ce moment.
part-again = Réessayer
part-labelled = { $label } : { $value }
part-labelled-twice = { $label } : { $first }, { $second }
part-percent = { $percent } %
part-less = { $label } : moins
part-more = { $label } : plus

## Où se trouve une saisie.

saving-saved = Enregistré sur ce téléphone
saving-not-saved = Pas enregistré : ce téléphone n’a pas pu le garder. Libère de la place ou ferme d’autres onglets, puis réessaie.
saving-no-connection = Pas de connexion au serveur. Ce que tu notes reste sur ce téléphone.
saving-asks-sign-in = Quelque chose entre ce téléphone et le serveur demande une identification.
saving-failed = Le serveur n’a pas pu le faire.
saving-not-signed-in = Ce téléphone n’est pas connecté.
saving-unsent-title = Saisies non envoyées de Broodshelf
saving-taken-back = Annulé

saving-state-synced = Synchronisé
saving-state-saved = Enregistré sur ce téléphone
saving-state-attention = À voir

saving-waiting = { $count ->
    [one] { $count } gardée sur ce téléphone
   *[other] { $count } gardées sur ce téléphone
  }
saving-attention = { $count ->
    [one] { $count } à voir
   *[other] { $count } à voir
  }
saving-synced = Tout est synchronisé
saving-joining = Ton étagère arrive
saving-offline = Pas de connexion
saving-syncing = Synchronisation…

saving-told-database-damaged = Le contrôle quotidien du serveur a trouvé sa base de données abîmée. Préviens la personne qui gère le serveur : il faut remettre une sauvegarde.
saving-told-backup-old = La dernière sauvegarde du serveur date du { $day }. Préviens la personne qui gère le serveur, ou indique sous Maison l’âge permis.

saving-problem-disk-full = Le disque du serveur est plein. Ce que tu notes reste sur ce téléphone ; préviens la personne qui gère le serveur.
saving-problem-database-locked = Le serveur est retenu. Ce que tu notes reste sur ce téléphone et sera envoyé plus tard.
saving-problem-database-away = Le serveur n’atteint pas ses données. Ce que tu notes reste sur ce téléphone et sera envoyé plus tard.
saving-problem-database-read-only = Le serveur ne peut pas écrire. Ce que tu notes reste sur ce téléphone ; préviens la personne qui gère le serveur.
saving-problem-database-damaged = Le serveur a perdu une partie de ses données. Ce que tu notes reste sur ce téléphone ; préviens la personne qui gère le serveur.

## On a nudge itself: the worker reads these three, so they stay on one line and are told nothing.

phone-nudges-done = Fait comme proposé
phone-nudges-in-an-hour = Dans une heure
phone-nudges-something = Il y a à faire sur l’étagère.
