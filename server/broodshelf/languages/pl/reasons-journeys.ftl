reason-lasts-too-short =
    { $need }: po uzupełnieniu wystarczy na ok. { $lasts ->
        [one] { $lasts } dzień
        [few] { $lasts } dni
        [many] { $lasts } dni
       *[other] { $lasts } dnia
    }.
reason-needs-nobody =
    Nie potrzebuje nikogo przez { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    }.
reason-mostly-nobody = Większość małych kolonii nie potrzebuje nikogo przez 7 do 10 dni (praktyka hodowców); rzut oka w międzyczasie nie szkodzi.
reason-mend-before = Napraw to przed wyjazdem: { $fault }.
