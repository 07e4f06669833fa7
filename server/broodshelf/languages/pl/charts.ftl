## Słowa wykresów.

chart-growth = Wzrost
chart-water = Woda
chart-feeding = Pokarm
chart-which = Wykres
chart-day = Dzień
chart-workers = Robotnice
chart-level = Poziom
chart-share = Udostępnij jako obraz
chart-no-picture = Nie udało się zrobić obrazu.
chart-few = Wykres potrzebuje co najmniej dwóch liczeń z liczbą.
chart-few-water = Nie ma jeszcze odczytu wody.
chart-few-food = Nie ma jeszcze wpisanego karmienia.
chart-week = Tydzień od
chart-sugar = Cukier
chart-protein = Białko i inny pokarm
chart-growth-words = Policzone robotnice: od { $first } do { $last }.
chart-water-words = { $days ->
    [one] W tym tempie został { $days } dzień do terminu.
    [few] W tym tempie zostały { $days } dni do terminu.
    [many] W tym tempie zostało { $days } dni do terminu.
   *[other] W tym tempie zostało { $days } dnia do terminu.
  }
chart-never = Poziom na razie nie spada.
chart-due-now = Pora zająć się wodą.
chart-food-words = { $count ->
    [one] { $count } karmienie w ostatnim półroczu.
    [few] { $count } karmienia w ostatnim półroczu.
    [many] { $count } karmień w ostatnim półroczu.
   *[other] { $count } karmienia w ostatnim półroczu.
  }
chart-estimate = Linia przerywana to szacunek, cień to jego zakres.
chart-growth-ahead = W tym tempie ok. { $best } do { $day }, pewnie { $low } do { $high }.
chart-behind = Kształt w tle: zmierzone ciepło w jej miejscu, { $low } do { $high }.
