### Verkostungen: jede Woche ein neues Futter.

reason-tasting-not-started = Es läuft keine Verkostung: Starte eine, wenn du wissen willst, was sie mögen.
reason-tasting-not-now =
    { $state ->
        [founding] Nicht während die Königin gründet: Verschmähen würde nichts bedeuten.
        [settling] Nicht während die Kolonie sich eingewöhnt: Verschmähen würde nichts bedeuten.
        [resting] Nicht während der Ruhezeit: Verschmähen würde nichts bedeuten.
        [queenless_suspected] Nicht solange die Königin fraglich ist: Verschmähen würde nichts bedeuten.
       *[other] Nicht jetzt: Die Kolonie ist nicht mehr hier.
    }
reason-tasting-no-safe-food = Keines dieser Futter darf jetzt angeboten werden, wegen seiner Herkunft.
reason-tasting-wait = Jede Woche ein neues Futter: ab { $until } das nächste.
reason-tasting-check-first = Sieh erst nach, was aus dem letzten neuen Futter wurde.
reason-tasting-need-paused = Futter dieser Art ist jetzt nicht fällig, darum wird nichts angeboten.
reason-tasting-new-food = Neu für diese Kolonie: { $days } Tage lang sonst nichts Neues.
reason-tasting-likes = Kolonien wie diese nehmen es wohl bei etwa { $share } % der Angebote.
reason-tasting-learn-more =
    Sie nimmt es wohl bei etwa { $share } % der Angebote ({ $offers ->
        [one] eines
       *[other] { $offers }
    } geprüft).
