## Przypomnienia na tym telefonie.

phone-nudges-title = Przypomnienia na tym telefonie
phone-nudges-last = Ostatnie przyszło: { $when }.
phone-nudges-none = Żadne jeszcze nie przyszło.
phone-nudges-silent = { $name } od pewnego czasu nie odpowiada: otwórz tam aplikację.
phone-nudges-somebody = Ktoś

phone-nudges-elsewhere-unheard = Przypomnienia nie docierają ({ $who }, { $phone }): poproś o otwarcie tam aplikacji.
phone-nudges-elsewhere-unseen = Od miesiąca nikt nie otwierał aplikacji ({ $who }, { $phone }), więc przypomnienia mogły tam ustać.

phone-nudges-ask = Powiedz mi, gdy jest coś do zrobienia
phone-nudges-test = Wyślij próbę
phone-nudges-stop = Wyłącz tutaj

phone-nudges-state-unsupported = Ta przeglądarka nie może odbierać przypomnień. Obchód jest tu zawsze aktualny, gdy otworzysz aplikację.
phone-nudges-state-install-first = Na iPhonie lub iPadzie najpierw dodaj aplikację do ekranu początkowego: Udostępnij, potem „Do ekranu początkowego”. Otwórz ją stamtąd i wróć na tę stronę.
phone-nudges-state-denied = Przypomnienia tej aplikacji są zablokowane w ustawieniach przeglądarki. Zezwól tam na powiadomienia i wróć.
phone-nudges-state-off = Przypomnienia są wyłączone. Gdy w twoich godzinach opieki jest coś do zrobienia, ten telefon może ci to powiedzieć.
phone-nudges-state-on = Przypomnienia przychodzą na ten telefon.

phone-nudges-tested-waiting = Wysłane; czekam, aż ten telefon powie, że przyszło…
phone-nudges-tested-heard = Przyszło. Przypomnienia działają na tym telefonie.
phone-nudges-tested-silent = Nie przyszło.
phone-nudges-not-taken = Usługa wysyłania go nie przyjęła: { $outcome }.
phone-nudges-not-heard = Wysłane, ale ten telefon nie powiedział, że przyszło.
