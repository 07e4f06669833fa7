## Le passé d’un élément : noms des champs, qui a changé quoi, et ce qui est parti.

history-offline = L’historique est sur le serveur, il faut donc une connexion.
history-again = Réessayer
history-unsent = Pas encore envoyé. L’historique commence à la prochaine connexion.
history-somebody = Quelqu’un
history-made = noté par { $who }
history-changed = modifié par { $who }
history-out = supprimé par { $who }
history-back = rétabli par { $who }
history-was = avant : { $value }
history-not-stood = { $field } : « { $value } » n’est pas resté : un changement sur un autre téléphone était plus récent.
history-bring = Remettre « { $value } »
history-clear = Laisser vide à nouveau
history-brought = Remis

history-gone-title = Ce qui est parti
history-gone-about = Ce qui a été supprimé ou annulé en dernier. Tout peut être repris, avec son contenu.
history-gone-none = Rien n’a été supprimé.
history-gone-take-back = Le reprendre
history-gone-back = De retour : { $what }
history-gone-by = { $who }, { $when }
