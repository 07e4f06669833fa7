reason-larder-amount-unknown = Zapisz, ile zostało, wtedy będzie wiadomo, na jak długo wystarczy.
reason-larder-lasts = Wystarczy na dłużej niż { $days } dni.
reason-larder-out = Na dziś zostało za mało: kup teraz.
reason-larder-runs-out = Skończy się około { $on }, najwcześniej { $early }. Zdobycie nowego trwa ok. { $lead } dni (praktyka hodowców): zamów do { $buy_by }.
reason-larder-spoils = Gdy się zepsuje ({ $on }), zostanie ok. { $amount }: zużyj najpierw to albo kup mniej.
