### Woher ein Futter kommt, und ob es angeboten werden darf. Ein unachtsames Wort kann hier eine Kolonie töten.

origin-bought-or-bred = gekauft oder als Futter gezüchtet
origin-home-mixed = zu Hause gemischt
origin-shop-fruit = Obst aus dem Laden
origin-garden-fruit = Obst aus einem Garten
origin-hot-syrup = noch heißer Sirup
origin-wild-web-spider = Spinne aus ihrem Netz
origin-wild-insect = draußen gefangenes Insekt
origin-wild-hunter = draußen gefangener Jäger
origin-home-cockroach = Schabe aus einer Wohnung
origin-unknown = Herkunft unbekannt

## Warum es angeboten werden darf oder nicht.

origin-why-bought-or-bred = Als Futter gezüchtet: in Ordnung.
origin-why-home-mixed = In Ordnung, sobald es abgekühlt ist.
origin-why-shop-fruit = Wasch und schäl es: Die Schale kann Spritzmittel tragen.
origin-why-garden-fruit = Nur wenn in der Nähe nichts gespritzt wurde. Wasch und schäl es.
origin-why-hot-syrup = Heißer Sirup tötet. Lass ihn abkühlen, bis er sich am Handgelenk kalt anfühlt, dann biete ihn an.
origin-why-wild-web-spider = Halte sie mindestens 2 Tage getrennt und beobachte sie: Bewegt sie sich schlecht oder stirbt sie, biete sie nicht an (gängige Praxis). Einfrieren tötet Milben, es beseitigt kein Gift. Die Wartezeit senkt das Risiko, sie beweist nichts.
origin-why-wild-insect = Es kann mit Köder oder Spritzmittel in Berührung gekommen sein. Halte es 7 Tage getrennt (gängige Praxis); Einfrieren tötet Milben, kein Gift. Gekaufte Futtertiere sind sicherer.
origin-why-wild-hunter = Er streift umher und frisst, was Köder getötet haben. Halte ihn mindestens 7 Tage getrennt (gängige Praxis). Einfrieren tötet Milben, es beseitigt kein Gift. Gekaufte Futtertiere sind sicherer.
origin-why-home-cockroach = Nie: Schaben aus Wohnungen können Köder in sich tragen, und schon wenig davon tötet eine Kolonie in Wochen.
origin-why-unknown = Biete nichts an, was du nicht einordnen kannst: Köder und Spritzmittel sieht man nicht.
