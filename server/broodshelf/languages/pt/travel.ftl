### Regras para levar uma colônia.

travel-no-loose-liquid = Sem líquido solto: nem gotas nem comedouro; deixe a arena secar.
travel-plugs-tight = Todas as rolhas e tampas firmes, com um pouco de ar.
travel-dark-and-calm = No escuro, deitada como sempre, embrulhada para nada rolar.
travel-travel-warmth = { DEGREES($low_c) } a { DEGREES($high_c) } todo o caminho; nunca num carro estacionado (prática comum).
travel-quiet-after = Depois, { $low } a { $high } dias calmos: comida recusada não quer dizer nada (prática comum).
travel-never-tilt = Nunca incline: repletas que caem estão perdidas.
travel-double-lid = Ferroa: uma segunda caixa fechada em volta, com etiqueta.
