### Quanto dura um alimento na despensa.

reason-larder-amount-unknown = Escreva quanto resta, e então dá para dizer quanto dura.
reason-larder-lasts = Dura mais de { $days } dias.
reason-larder-out = Resta muito pouco para hoje: compre já.
reason-larder-runs-out = Acaba por volta de { $on } (o mais cedo: { $early }). Encomende até { $buy_by }, pois conseguir mais leva cerca de { $lead } dias (prática comum).
reason-larder-spoils = Vão sobrar cerca de { $amount } quando estragar ({ $on }): use primeiro ou compre menos.
