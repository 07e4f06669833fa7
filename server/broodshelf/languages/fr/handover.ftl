## Confier l’étagère : les pass.

handover-title = Confier l’étagère
handover-about = Un pass permet à quelqu’un de ta famille ou de tes amis de s’occuper de quelques colonies pendant quelques jours, sans compte.

handover-state-back = repris
handover-state-ended = terminé
handover-state-now = en cours
handover-state-from = à partir du { $day }
handover-days = { $from } – { $to }
handover-done-by = Fait par { $who }
handover-nothing = Rien n’a été noté.
handover-link-once = Envoie ce lien, ou fais-le scanner. Il n’est montré qu’une fois.
handover-by-code = Ou avec un code :
handover-share = Partager
handover-share-title = Pass pour { $who }
handover-make-link = Créer le lien
handover-new-link = Créer un nouveau lien
handover-take-back = Le reprendre
handover-sure = Reprendre ce pass ({ $who }) ? Son téléphone s’arrête aussitôt.
handover-print = Imprimer la feuille
handover-preview = Voir comme sur son téléphone
handover-preview-title = Ce que voit { $who }
handover-new = Un nouveau pass
handover-who = Qui
handover-colonies = Colonies
handover-all = Toutes
handover-stings = { $colony } (pique)
handover-first = Premier jour
handover-last = Dernier jour
handover-know = Ce qu’il faut savoir
handover-call = Qui appeler
handover-none = Choisis au moins une colonie.
handover-backwards = Le dernier jour est avant le premier.
handover-go = Créer le pass
handover-calendar = Calendrier de toute l’étagère
handover-stings-words = Tu as choisi une colonie qui pique. Demande d’abord si quelqu’un là-bas est allergique ; ne la confie que si la réponse est sûre.

## Ce qui s’imprime.

paper-sheet = S’occuper de l’étagère : { $who }
paper-record = Fiche : { $name }
paper-print = Imprimer
paper-colony = Colonie
paper-what = À faire
paper-done = Fait
paper-nothing = Rien à faire.
paper-over = Le dernier jour de ce pass est passé.
paper-ahead = Les jours ont été calculés aujourd’hui. Ce que tu fais ou notes d’ici au début du pass les déplace : imprime à nouveau la feuille la veille au soir.
paper-colonies = Les colonies
paper-call = Appeler :
paper-made = Imprimé le { $day }
paper-gone = Il n’y a rien à imprimer ici.
paper-species = Espèce
paper-lives = Vit dans
paper-count = Dernier comptage
paper-when = Quand
paper-event = Quoi
paper-by = Par

## Ce que voit la personne qui remplace.

stand-in-from = À partir du { $day }
stand-in-today = { $count ->
    [one] Aujourd’hui : { $count } chose, environ { $minutes } minutes
   *[other] Aujourd’hui : { $count } choses, environ { $minutes } minutes
  }
stand-in-nothing = Rien aujourd’hui
stand-in-calm = Un jour oublié n’est pas grave. N’ouvre pas le nid, ne le secoue pas, ne donne rien de plus.
stand-in-from-keeper = Le mot de l’éleveur
stand-in-call = Appeler { $who }
stand-in-yours = Tes colonies

stand-in-gave = Je l’ai donné
stand-in-looked = J’ai regardé
stand-in-took = Je les ai retirés
stand-in-watered = J’ai donné l’eau
stand-in-could-not = Je n’ai pas pu
stand-in-why = Qu’est-ce qui a gêné ?
stand-in-why-none = Il ne restait rien à donner
stand-in-why-closed = Je n’ai pas pu l’ouvrir
stand-in-why-unsure = Je ne savais pas bien comment
stand-in-why-away = Je n’étais pas là
stand-in-why-other = Autre chose
stand-in-note = Pas fait : { $task }. { $why }
stand-in-told = C’est noté pour l’éleveur. La tâche reste sur la liste.
stand-in-read-aloud = Lis-le-moi
stand-in-quiet = Arrêter la lecture
stand-in-how = Comment faire
stand-in-practice = Durées et quantités des étapes : usage courant.

stand-in-hint = Pour la personne qui remplace
stand-in-hint-example = par exemple : les mouches sont dans la porte du congélateur
stand-in-hint-picture = Une photo pour elle
stand-in-hint-about = Se lit au-dessus des étapes de chaque tâche de cette colonie.

paper-true-size = Taille réelle
paper-drop-of = Une goutte d’environ { $ul } µL
paper-prey-of = Un morceau d’environ { NUMBER($mm) } mm
paper-ruler = Règle en millimètres : compare-la avec la tienne
