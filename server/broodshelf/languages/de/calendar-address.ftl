## Die Runden in einem Kalender.

calendar-address-title = Runden im Kalender zeigen
calendar-address-about = Kalender sehen alle 1 bis 24 Stunden nach, und viele lassen unsere Alarme weg: Stell dort einen eigenen Alarm ein. Wer die Adresse hat, kann die Runden lesen. Sie endet nach einem Jahr; eine neue beendet die alte.
calendar-address-once = Füge diese Adresse als Kalender-Abo hinzu. Sie wird nur einmal gezeigt.
calendar-address-copy = Adresse kopieren
calendar-address-copied = Kopiert.
calendar-address-make = Adresse erstellen
calendar-address-anew = Neue Adresse erstellen
calendar-address-end = Adresse beenden
calendar-address-ended = Die Kalenderadresse ist beendet.
