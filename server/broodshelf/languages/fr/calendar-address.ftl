## Les tournées dans un calendrier.

calendar-address-title = Voir les tournées dans un calendrier
calendar-address-about = Les calendriers se mettent à jour toutes les 1 à 24 heures, et beaucoup ignorent nos alarmes : règles-en une là-bas. Qui a l’adresse peut lire les tournées. Elle expire après un an ; une nouvelle met fin à l’ancienne.
calendar-address-once = Ajoute cette adresse comme abonnement de calendrier. Elle n’est montrée qu’une fois.
calendar-address-copy = Copier l’adresse
calendar-address-copied = Copié.
calendar-address-make = Créer l’adresse
calendar-address-anew = Créer une nouvelle adresse
calendar-address-end = Fermer l’adresse
calendar-address-ended = L’adresse du calendrier est fermée.
