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
house-sign-out = Déconnecter
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
house-left = De { $who } sur ce téléphone, non envoyé : { $count }. Cela part tout seul quand { $who } se reconnecte ici.
house-leave = Déconnecter { $who } ?
house-leave-unsent = { $count ->
    [one] { $count } saisie n’est pas encore envoyée et reste sur ce téléphone. Déconnecter quand même ?
   *[other] { $count } saisies ne sont pas encore envoyées et restent sur ce téléphone. Déconnecter quand même ?
  }

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
