## Ce qui a été refusé, et là où deux téléphones se sont croisés.

attention-title = À voir
attention-none = Tout ce qui est sur ce téléphone a été envoyé.
attention-export = Exporter tout cela
attention-met = { $name } : modifié sur deux téléphones
attention-values = { $field } : ici « { $here } » ; { $who } : « { $there } » ({ $when }).
attention-other-phone = un autre téléphone
attention-theirs = L’autre valeur est plus récente : c’est elle qui reste.
attention-mine = La tienne est plus récente : c’est elle qui reste.
attention-leave = Laisser ainsi
attention-bring = Remettre la mienne
attention-damaged = Saisie abîmée
attention-drop = La jeter
attention-sure = Jeter cela pour de bon ? Si tu as un doute, exporte d’abord.
attention-mend = Renvoyer
attention-again = Renvoyer
attention-again-why = Si l’élément auquel elle se rattache a été rétabli entre-temps, elle peut être renvoyée.

attention-code-not-allowed = Ce téléphone n’a pas le droit de faire cela.
attention-code-outside-pass = Cela sort du pass : autre colonie, ou autre jour.
attention-code-missing-field = Il manque quelque chose.
attention-code-unknown-field = Le serveur ne connaît pas ce champ.
attention-code-unknown-kind = Le serveur ne connaît pas ce type de saisie.
attention-code-failed = Le serveur a échoué sur celle-ci. Elle est gardée ici et rien ne l’attend : écris-la à nouveau, ou exporte-la.
attention-code-kind-differs = Sous cet identifiant, le serveur a autre chose.
attention-code-too-large = C’est trop long.
attention-code-last-keeper = La dernière personne responsable ne peut pas être retirée ; fais d’abord entrer quelqu’un d’autre.
attention-code-purged = Cela a été supprimé il y a longtemps et n’est plus conservé.
attention-code-parent-missing = L’élément auquel cela se rattache n’est plus sur le serveur.
