## Co zostało odrzucone i gdzie spotkały się dwa telefony.

attention-title = Do sprawdzenia
attention-none = Wszystko z tego telefonu jest wysłane.
attention-export = Eksportuj to wszystko
attention-met = { $name }: zmienione na dwóch telefonach
attention-values = { $field }: tutaj „{ $here }”; { $who }: „{ $there }” ({ $when }).
attention-other-phone = inny telefon
attention-theirs = Tamta wartość jest nowsza i zostaje.
attention-mine = Twoja wartość jest nowsza i zostaje.
attention-leave = Zostaw tak
attention-bring = Przywróć moją
attention-damaged = Uszkodzony wpis
attention-drop = Wyrzuć
attention-sure = Wyrzucić to na zawsze? W razie wątpliwości najpierw eksportuj.
attention-mend = Wyślij ponownie
attention-again = Wyślij ponownie
attention-again-why = Jeśli to, do czego należy ten wpis, zostało w międzyczasie przywrócone, można go wysłać ponownie.

attention-code-not-allowed = Ten telefon nie może tego zrobić.
attention-code-outside-pass = To wykracza poza przepustkę: inna kolonia albo inny dzień.
attention-code-missing-field = Czegoś brakuje.
attention-code-unknown-field = Serwer nie zna tego pola.
attention-code-unknown-kind = Serwer nie zna tego rodzaju wpisu.
attention-code-failed = Serwer nie poradził sobie z tym wpisem. Jest przechowany tutaj i nic na niego nie czeka: wpisz go jeszcze raz albo eksportuj.
attention-code-kind-differs = Pod tym identyfikatorem serwer ma coś innego.
attention-code-too-large = To jest za długie.
attention-code-last-keeper = Ostatniego hodowcy nie można usunąć; najpierw wpuść innego.
attention-code-purged = To zostało dawno usunięte i nie jest już przechowywane.
attention-code-parent-missing = Tego, do czego to należy, nie ma już na serwerze.
