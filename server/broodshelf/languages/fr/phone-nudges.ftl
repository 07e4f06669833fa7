## Les rappels sur ce téléphone.

phone-nudges-title = Rappels sur ce téléphone
phone-nudges-last = Dernier rappel : { $when }.
phone-nudges-none = Aucun n’est encore venu.
phone-nudges-silent = { $name } n’a pas répondu depuis un moment : ouvre l’app dessus.
phone-nudges-somebody = Quelqu’un

phone-nudges-elsewhere-unheard = Les rappels n’arrivent pas chez { $who } ({ $phone }) : demande-lui d’ouvrir l’app sur ce téléphone.
phone-nudges-elsewhere-unseen = { $who } n’a pas ouvert l’app depuis un mois ({ $phone }) : les rappels y sont peut-être coupés.

phone-nudges-ask = Me prévenir quand il y a à faire
phone-nudges-test = Envoyer un essai
phone-nudges-stop = Couper ici

phone-nudges-state-unsupported = Ce navigateur ne peut pas recevoir de rappels. Ici, la tournée est toujours à jour quand tu ouvres l’app.
phone-nudges-state-install-first = Sur un iPhone ou un iPad, mets d’abord l’app sur l’écran d’accueil : Partager, puis « Sur l’écran d’accueil ». Ouvre-la de là et reviens à cette page.
phone-nudges-state-denied = Les rappels de cette app sont bloqués dans les réglages du navigateur. Autorise-y les notifications, puis reviens.
phone-nudges-state-off = Les rappels sont coupés. Quand il y a à faire à tes heures de soin, ce téléphone peut te prévenir.
phone-nudges-state-on = Les rappels arrivent sur ce téléphone.

phone-nudges-tested-waiting = Envoyé ; ce téléphone doit dire qu’il l’a reçu…
phone-nudges-tested-heard = Il est arrivé. Les rappels marchent sur ce téléphone.
phone-nudges-tested-silent = Il n’est pas arrivé.
phone-nudges-not-taken = Le service d’envoi ne l’a pas pris : { $outcome }.
phone-nudges-not-heard = Il est parti, mais ce téléphone n’a pas dit qu’il l’a reçu.
