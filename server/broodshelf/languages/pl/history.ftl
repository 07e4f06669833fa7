## Przeszłość zapisu: nazwy pól, kto co zmienił i co zniknęło.

history-offline = Historia jest na serwerze, więc potrzebne jest połączenie.
history-again = Spróbuj ponownie
history-unsent = Jeszcze niewysłane. Historia zacznie się przy następnym połączeniu.
history-somebody = Ktoś
history-made = { $who }: wpis
history-changed = { $who }: zmiana
history-out = { $who }: usunięcie
history-back = { $who }: przywrócenie
history-was = wcześniej: { $value }
history-not-stood = { $field }: „{ $value }” nie zostało, bo zmiana na innym telefonie była późniejsza.
history-bring = Przywróć „{ $value }”
history-clear = Znów zostaw puste
history-brought = Przywrócone

history-gone-title = Co zniknęło
history-gone-about = Co ostatnio usunięto lub unieważniono. Wszystko można przywrócić, z całą zawartością.
history-gone-none = Nic nie usunięto.
history-gone-take-back = Przywróć
history-gone-back = Wróciło: { $what }
history-gone-by = { $who }, { $when }
