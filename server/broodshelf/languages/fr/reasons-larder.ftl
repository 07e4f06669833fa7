reason-larder-amount-unknown = Écris combien il en reste, et tu sauras combien de temps cela dure.
reason-larder-lasts = Dure plus de { $days } jours.
reason-larder-out = Il en reste trop peu pour aujourd’hui : achètes-en maintenant.
reason-larder-runs-out = Épuisé vers le { $on }, au plus tôt le { $early }. Il faut environ { $lead } jours pour en avoir d’autre (usage courant) : commande avant le { $buy_by }.
reason-larder-spoils = Reste probable quand le lot se gâte, le { $on } : environ { $amount }. Utilise-le d’abord ou achètes-en moins.
