### Was gesagt wird, bevor der Halter verreist.

reason-lasts-too-short =
    { $need }: reicht nach dem Auffüllen etwa { $lasts ->
        [one] { $lasts } Tag
       *[other] { $lasts } Tage
    }.
reason-needs-nobody =
    Sie braucht { $days ->
        [one] { $days } Tag
       *[other] { $days } Tage
    } lang niemanden.
reason-mostly-nobody = Die meisten kleinen Kolonien brauchen 7 bis 10 Tage niemanden (gängige Praxis); ein Blick dazwischen schadet nicht.
reason-mend-before = Bring das in Ordnung, bevor du abreist: { $fault }.
