### O que se diz antes de o criador viajar.

reason-lasts-too-short =
    { $need }: depois de completar dura cerca de { $lasts ->
        [one] { $lasts } dia
       *[other] { $lasts } dias
    }.
reason-needs-nobody =
    Não precisa de ninguém por { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }.
reason-mostly-nobody = A maioria das colônias pequenas não precisa de ninguém por 7 a 10 dias (prática comum); uma olhada no meio não faz mal.
reason-mend-before = Resolva isto antes de partir: { $fault }.
