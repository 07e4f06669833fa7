### Cuánto dura un alimento en la despensa.

reason-larder-amount-unknown = Apunta cuánto queda, y entonces se podrá decir cuánto dura.
reason-larder-lasts = Dura más de { $days } días.
reason-larder-out = Queda muy poco para hoy: cómpralo ya.
reason-larder-runs-out = Se acaba hacia { $on }, lo antes { $early }. Conseguir más lleva unos { $lead } días (práctica común): pídelo antes de { $buy_by }.
reason-larder-spoils = Sobrarán unos { $amount } cuando se estropee ({ $on }): úsalo primero o compra menos.
