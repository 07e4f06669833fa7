## Spiżarnia i zakupy.

larder-title = Spiżarnia
larder-empty = Żaden pokarm nie jest zapisany. Zapisz, co jest w domu, a pojawi się pierwsze przy wpisie karmienia.
larder-used = Zużyte
larder-left-now = Ile zostało
larder-by-logs = zostało ok. { $left } z { $whole }, według wpisanych karmień
larder-no-amount = Wpisz liczbę.
larder-used-up = Oznaczone jako zużyte
larder-use-by = zużyć do { $day }
larder-got = od { $day }
larder-never = Nigdy tego nie podawaj.
larder-held = { $days ->
    [one] Odłożone do { $day }, jeszcze { $days } dzień.
    [few] Odłożone do { $day }, jeszcze { $days } dni.
    [many] Odłożone do { $day }, jeszcze { $days } dni.
   *[other] Odłożone do { $day }, jeszcze { $days } dnia.
  }
larder-over = Po terminie: wyrzuć.
larder-left = { $days ->
    [0] Zużyj dzisiaj.
    [one] Dobre jeszcze { $days } dzień.
    [few] Dobre jeszcze { $days } dni.
    [many] Dobre jeszcze { $days } dni.
   *[other] Dobre jeszcze { $days } dnia.
  }
larder-add = Dodaj pokarm
larder-mix = Przygotuj wodę z cukrem
larder-size = Rozmiar
larder-size-open = Mieszany lub nieznany
larder-tint = Barwnik spożywczy
larder-no-tint = Brak
larder-tint-why = Żeby zobaczyć, kto pił: niebieski barwnik spożywczy bez karminu, najsłabszy odcień, który widać, jedna kolonia, jeden dzień, a obok niebarwiona woda z cukrem. Praktyka hodowców: nie znaleziono opublikowanego stężenia, czasu blaknięcia ani badania bezpieczeństwa dla mrówek; hodowcy mówią o śmierci po czerwonym.
larder-food = Pokarm
larder-origin = Skąd pochodzi
larder-name = Nazwa
larder-use-by-field = Zużyć do
larder-refused = To nie trafi do spiżarni.
larder-go = Dodaj
larder-percent = Cukier
larder-of-weight = % cukru wagowo
larder-water = Woda
larder-of-water = { $unit } wody
larder-recipe = Wymieszaj { $sugar_g } g cukru z ciepłą wodą ({ VOLUME($water_ml) }): razem ok. { VOLUME($total_ml) }.
larder-cool = Ostudź, aż na nadgarstku będzie zimne. Ciepła woda może poparzyć: trzymaj ją z dala od dzieci.
larder-keeps = W lodówce ok. 7 dni (praktyka hodowców); wyrzuć, gdy zmętnieje.
larder-batch = Zachowaj tę porcję w spiżarni
larder-batch-name = woda z cukrem { $percent }%
larder-lots = W domu

larder-get-title = Co kupić
larder-get-today = Kup dzisiaj.
larder-get-by = Kup do { $day }.
larder-get-spoils = Najpierw się zepsuje

calculator-title = Kalkulatory
