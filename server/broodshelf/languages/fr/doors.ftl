## Who comes in: phones, mail, and what happened at the doors.

house-phones = Téléphones
house-this-one = { $phone } (celui-ci)
house-last-seen = vu : { $when }
house-sign-out-other = Déconnecter { $name } ?
house-new-phone = Laisser entrer un téléphone
house-new-phone-hint = tape le code qu’il montre
house-look-up = Chercher
house-asks = { $phone } demande à entrer. À qui est-il ?
house-somebody-new = Une nouvelle personne
house-new-keeper = Nom de cette personne
house-let-in = Le téléphone est entré
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
