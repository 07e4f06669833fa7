travel-no-loose-liquid = Żadnego luźnego płynu: bez kropli, bez poidełka; wysusz arenę.
travel-plugs-tight = Wszystkie korki i pokrywy szczelne, z odrobiną powietrza.
travel-dark-and-calm = W ciemności, w pozycji jak zawsze, owinięte tak, żeby nic się nie toczyło.
travel-travel-warmth = Przez całą drogę { DEGREES($low_c) } do { DEGREES($high_c) }; nigdy w zaparkowanym samochodzie (praktyka hodowców).
travel-quiet-after = Potem { $low } do { $high } spokojnych dni: odrzucony pokarm nic nie znaczy (praktyka hodowców).
travel-never-tilt = Nigdy nie przechylaj: replety, które spadną, są stracone.
travel-double-lid = Żądli: drugie zamknięte pudełko dookoła, z etykietą.
