## Die Wörter der Etiketten und der Ansicht, die sie liest.

label-title = Etiketten
label-about = Druck das Blatt, schneide es und kleb je ein Etikett an ein Reagenzglas. In der App gescannt oder eingetippt, öffnet es den Eintrag dieser Kolonie, auch ohne Verbindung.
label-print = Blatt drucken
label-choose = Etiketten für
label-scan = Etikett scannen
label-scan-title = Etikett scannen
label-typed = Oder tipp den Code darunter ein
label-open = Öffnen
label-unknown = Keine Kolonie auf diesem Handy hat diesen Code.
label-camera = Halte das Etikett vor die Kamera.
label-no-camera = Die Kamera geht hier nicht. Tipp stattdessen den Code ein.
label-start = Kamera starten
label-foreign = Dieser Code ist kein Etikett dieses Regals.
label-several = Mehrere Kolonien passen:
