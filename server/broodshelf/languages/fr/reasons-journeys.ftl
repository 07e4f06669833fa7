reason-lasts-too-short =
    { $need } : dure environ { $lasts ->
        [one] { $lasts } jour
       *[other] { $lasts } jours
    }, une fois tout rempli.
reason-needs-nobody =
    Elle n’a besoin de personne pendant { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    }.
reason-mostly-nobody = La plupart des petites colonies n’ont besoin de personne pendant 7 à 10 jours (usage courant) ; un regard entre-temps ne fait pas de mal.
reason-mend-before = À régler avant ton départ : { $fault }.
