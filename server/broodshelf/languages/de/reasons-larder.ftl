### Wie lange ein Futter im Vorrat reicht.

reason-larder-amount-unknown = Schreib auf, wie viel noch da ist, dann lässt sich sagen, wie lange es reicht.
reason-larder-lasts = Reicht länger als { $days } Tage.
reason-larder-out = Für heute ist zu wenig da: Kauf es jetzt.
reason-larder-runs-out = Geht etwa am { $on } aus (frühestens { $early }). Bestell es bis { $buy_by }, denn Nachschub braucht etwa { $lead } Tage (gängige Praxis).
reason-larder-spoils = Verdirbt am { $on }, dann sind etwa { $amount } übrig: Nimm es zuerst oder kauf weniger.
