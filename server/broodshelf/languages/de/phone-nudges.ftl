## Erinnerungen auf diesem Handy.

phone-nudges-title = Erinnerungen auf diesem Handy
phone-nudges-last = Die letzte kam: { $when }
phone-nudges-none = Noch kam keine.
phone-nudges-silent = { $name } hat eine Weile nicht geantwortet: Öffne dort die App.
phone-nudges-somebody = Jemand

phone-nudges-elsewhere-unheard = Erinnerungen erreichen { $who } nicht ({ $phone }): Bitte darum, dort die App zu öffnen.
phone-nudges-elsewhere-unseen = { $who } hat die App seit einem Monat nicht geöffnet ({ $phone }); vielleicht kommen dort keine Erinnerungen mehr an.

phone-nudges-ask = Sag mir, wenn etwas fällig ist
phone-nudges-test = Test senden
phone-nudges-stop = Hier ausschalten

phone-nudges-state-unsupported = Dieser Browser kann keine Erinnerungen empfangen. Die Runde hier ist immer aktuell, wenn du die App öffnest.
phone-nudges-state-install-first = Leg die App auf einem iPhone oder iPad erst auf den Home-Bildschirm: Teilen, dann „Zum Home-Bildschirm“. Öffne sie dort und komm auf diese Seite zurück.
phone-nudges-state-denied = Erinnerungen sind in den Einstellungen des Browsers für diese App gesperrt. Erlaube dort Mitteilungen, dann komm zurück.
phone-nudges-state-off = Erinnerungen sind aus. Ist zu deinen Pflegezeiten etwas fällig, kann dieses Handy es dir sagen.
phone-nudges-state-on = Erinnerungen kommen auf dieses Handy.

phone-nudges-tested-waiting = Gesendet; wartet darauf, dass dieses Handy die Ankunft meldet …
phone-nudges-tested-heard = Angekommen. Erinnerungen klappen auf diesem Handy.
phone-nudges-tested-silent = Nicht angekommen.

phone-nudges-not-taken = Der Push-Dienst hat es nicht angenommen: { $outcome }.
phone-nudges-not-heard = Es wurde gesendet, aber dieses Handy hat keine Ankunft gemeldet.
