## La maison : personnes, téléphones, courriel, et ce qui s’est passé aux portes.

house-title = La maison
house-look = Aspect
house-language = Langue
house-language-as-phone = Comme le téléphone
house-good-to-know = Bon à savoir
house-build = Version { $build }
house-advice = Broodshelf donne des conseils d’élevage généraux, pas de conseils vétérinaires ni médicaux.
house-never = Ne relâche jamais de fourmis ni d’insectes nourriciers. Garder et déplacer des espèces relève de la loi de ton pays : demande aux autorités.
house-hours = Noms et heures
house-shelf-name = Nom de l’étagère
house-zone = Fuseau horaire
house-first = Première heure de soin
house-second = Deuxième heure de soin
house-quiet-from = Silence dès
house-quiet-to = Silence jusqu’à
house-backup-patience = Prévenir si la dernière sauvegarde date de plus de tant de jours
house-backup-patience-hint = 0 : jamais. Rien n’est dit là où aucune n’a été faite.
house-save = Enregistrer
house-phones = Téléphones
house-this-one = { $phone } (celui-ci)
house-last-seen = vu : { $when }
house-sign-out = Déconnecter
house-sign-out-other = Déconnecter { $name } ?
house-new-phone = Laisser entrer un téléphone
house-new-phone-hint = tape le code qu’il montre
house-look-up = Chercher
house-asks = { $phone } demande à entrer. À qui est-il ?
house-somebody-new = Une nouvelle personne
house-new-keeper = Nom de cette personne
house-let-in = Le téléphone est entré
house-on-this-phone = Sur ce téléphone
house-this-phone = ce téléphone
house-last-synced = Dernière synchronisation : { $when }.
house-not-synced = Pas encore synchronisé.
house-not-sent = Non envoyé : { $count }.
house-nothing-waits = Rien n’attend.
house-kept = Le navigateur a promis de garder les données.
house-not-kept = Le navigateur peut effacer les données des apps peu utilisées ; la copie sur le serveur te protège. Mettre l’app sur l’écran d’accueil aide.
house-sync-now = Synchroniser
house-export = Exporter les saisies non envoyées
house-leave = Déconnecter { $who } ?
house-leave-unsent = { $count ->
    [one] { $count } saisie n’est pas encore envoyée et reste sur ce téléphone. Déconnecter quand même ?
   *[other] { $count } saisies ne sont pas encore envoyées et restent sur ce téléphone. Déconnecter quand même ?
  }

house-mail-title = Rappels par courriel
house-mail-about = Pour qui n’a pas de téléphone qui reçoit les rappels. Une adresse compte une fois son code tapé ici.
house-mail-address = Adresse
house-mail-send = Envoyer un code
house-mail-asked = Un code est parti là-bas. Il est valable une heure.
house-mail-code = Le code du courriel
house-mail-confirm = Confirmer
house-mail-anew = Envoyer un autre code
house-mail-comes = Les rappels arrivent ici.
house-mail-remove = La retirer
house-mail-on = Les rappels y vont désormais
house-mail-removed = Plus aucun courriel n’y va
house-mail-not-sent = Le courriel n’est pas parti : { $why }.

house-doors-title = Ce qui s’est passé aux portes
house-doors-about = Téléphones, liens et codes. Les autres responsables apprennent aussitôt tout nouveau téléphone, lien ou pass ouvert.
house-doors-offline = Tout cela est sur le serveur, il faut donc une connexion.
house-doors-all = Tout montrer ({ $count })

house-door-new-phone = Nouveau téléphone : { $phone }, pour { $who }
house-door-new-phone-by-nobody = Nouveau téléphone : { $phone }, pour quelqu’un
house-door-phone-removed = { $phone } : déconnecté par { $who }
house-door-phone-removed-by-nobody = { $phone } : déconnecté par quelqu’un
house-door-person-removed = { $who } a retiré { $name }, avec tous ses téléphones
house-door-person-removed-by-nobody = Quelqu’un a retiré { $name }, avec tous ses téléphones
house-door-way-back = La personne qui gère le serveur a créé un lien de retour pour { $who }
house-door-way-back-by-nobody = La personne qui gère le serveur a créé un lien de retour pour une personne responsable
house-door-link-made = { $who } a créé un lien pour { $pass }
house-door-link-made-by-nobody = Quelqu’un a créé un lien pour { $pass }
house-door-pass-opened = { $pass } : le pass a été ouvert sur { $phone }
house-door-pass-ended = { $pass } : pass repris par { $who }
house-door-pass-ended-by-nobody = { $pass } : pass repris par quelqu’un

house-door-wrong-codes = { $where ->
    [claim] { $count ->
        [one] { $count } code faux pour un lien de retour, tapé par { $who }
       *[other] { $count } codes faux pour un lien de retour, tapés par { $who }
      }
    [pass] { $count ->
        [one] { $count } code faux pour un pass, tapé par { $who }
       *[other] { $count } codes faux pour un pass, tapés par { $who }
      }
    [pairing] { $count ->
        [one] { $count } code faux pour un nouveau téléphone, tapé par { $who }
       *[other] { $count } codes faux pour un nouveau téléphone, tapés par { $who }
      }
   *[mail] { $count ->
        [one] { $count } code faux pour une adresse de courriel, tapé par { $who }
       *[other] { $count } codes faux pour une adresse de courriel, tapés par { $who }
      }
  }
house-door-wrong-codes-by-nobody = { $where ->
    [claim] { $count ->
        [one] { $count } code faux pour un lien de retour
       *[other] { $count } codes faux pour un lien de retour
      }
    [pass] { $count ->
        [one] { $count } code faux pour un pass
       *[other] { $count } codes faux pour un pass
      }
    [pairing] { $count ->
        [one] { $count } code faux pour un nouveau téléphone
       *[other] { $count } codes faux pour un nouveau téléphone
      }
   *[mail] { $count ->
        [one] { $count } code faux pour une adresse de courriel
       *[other] { $count } codes faux pour une adresse de courriel
      }
  }
house-door-export = La personne qui gère le serveur a écrit un export
house-door-import = La personne qui gère le serveur a importé un export
house-door-restore = La personne qui gère le serveur a remis une sauvegarde

## L’aspect de l’app.

look-light = Lumière
look-degrees = Températures en
look-volumes = Volumes en
look-as-phone = Comme le téléphone
look-day = Claire
look-dark = Sombre
look-red = Rouge faible
look-red-why = Le rouge faible sert à regarder dans un nid sombre : les fourmis voient à peine le rouge profond (usage courant).
look-all-parts = Voir toutes les pièces de l’app
