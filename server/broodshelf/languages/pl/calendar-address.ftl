## Obchody w kalendarzu.

calendar-address-title = Pokaż obchody w kalendarzu
calendar-address-about = Kalendarze zaglądają co 1 do 24 godzin, a wiele z nich pomija nasze alarmy: ustaw tam własny. Kto ma adres, może czytać obchody. Wygasa po roku; nowy adres kończy stary.
calendar-address-once = Dodaj ten adres jako subskrypcję kalendarza. Jest pokazany tylko raz.
calendar-address-copy = Kopiuj adres
calendar-address-copied = Skopiowano.
calendar-address-make = Utwórz adres
calendar-address-anew = Utwórz nowy adres
calendar-address-end = Zakończ adres
calendar-address-ended = Adres kalendarza jest zakończony.
