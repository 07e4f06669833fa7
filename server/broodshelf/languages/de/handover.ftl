## Übergabe: Pässe.

handover-title = Übergabe
handover-about = Mit einem Pass kümmern sich Familie oder Freunde ein paar Tage um einige Kolonien, ohne Konto.

handover-state-back = zurückgenommen
handover-state-ended = zu Ende
handover-state-now = gerade im Dienst
handover-state-from = ab { $day }

handover-days = { $from } bis { $to }
handover-done-by = Von { $who } erledigt
handover-nothing = Nichts wurde eingetragen.
handover-link-once = Schick diesen Link oder lass ihn scannen. Er wird nur einmal gezeigt.
handover-by-code = Oder mit Code:
handover-share = Teilen
handover-share-title = Pass für { $who }
handover-make-link = Link erstellen
handover-new-link = Neuen Link erstellen
handover-take-back = Zurücknehmen
handover-sure = Den Pass von { $who } zurücknehmen? Das Handy dort hört sofort auf.
handover-print = Blatt drucken
handover-preview = So sehen sie es
handover-preview-title = So sieht es { $who }
handover-new = Neuer Pass
handover-who = Wer
handover-colonies = Kolonien
handover-all = Alle

handover-stings = { $colony } (sticht)
handover-first = Erster Tag
handover-last = Letzter Tag
handover-know = Was sie wissen sollten
handover-call = Wen sie anrufen
handover-none = Wähle mindestens eine Kolonie.
handover-backwards = Der letzte Tag liegt vor dem ersten.
handover-go = Pass erstellen
handover-calendar = Kalender des ganzen Regals
handover-stings-words = Du hast eine Kolonie gewählt, die sticht. Frag zuerst, ob dort jemand allergisch ist; übergib sie nur, wenn sie sicher sind.

## Was gedruckt wird.

paper-sheet = Pflege des Regals: { $who }
paper-record = Blatt von { $name }
paper-print = Drucken
paper-colony = Kolonie
paper-what = Was zu tun ist
paper-done = Erledigt
paper-nothing = Nichts zu tun.
paper-over = Der letzte Tag dieses Passes ist vorbei.
paper-ahead = Die Tage wurden heute berechnet. Was du bis zum Beginn des Passes tust oder einträgst, verschiebt sie: Druck das Blatt am Abend vorher noch einmal.
paper-colonies = Die Kolonien

paper-call = Anrufen:
paper-made = Gedruckt: { $day }
paper-gone = Hier gibt es nichts zu drucken.
paper-species = Art
paper-lives = Lebt in
paper-count = Letzte Zählung
paper-when = Wann
paper-event = Was
paper-by = Wer

## Was eine Vertretung sieht.

stand-in-from = Ab { $day }

stand-in-today = { $count ->
    [one] Heute: { $count } Sache, etwa { $minutes } Min.
   *[other] Heute: { $count } Sachen, etwa { $minutes } Min.
  }
stand-in-nothing = Heute nichts
stand-in-calm = Ein ausgelassener Tag ist nicht schlimm. Öffne das Nest nicht, schüttle nicht und gib nichts extra.
stand-in-from-keeper = Vom Halter
stand-in-call = { $who } anrufen
stand-in-yours = Deine Kolonien

# Die Knöpfe einer Aufgabe: was getan wurde, in der ersten Person.
stand-in-gave = Hab ich gegeben
stand-in-looked = Hab nachgesehen
stand-in-took = Hab es entfernt
stand-in-watered = Hab Wasser gegeben
stand-in-could-not = Ging nicht
stand-in-why = Woran lag es?
stand-in-why-none = Es war nichts mehr zum Geben da
stand-in-why-closed = Ich bekam es nicht auf
stand-in-why-unsure = Ich war nicht sicher, wie
stand-in-why-away = Ich war nicht da
stand-in-why-other = Etwas anderes
stand-in-note = Ging nicht: { $task }. { $why }
stand-in-told = Für den Halter notiert. Es bleibt auf der Liste.
stand-in-read-aloud = Vorlesen
stand-in-quiet = Aufhören
stand-in-how = So geht es
stand-in-practice = Zeiten und Mengen in den Schritten: gängige Praxis.

# Was der Halter jeder Kolonie für eine Vertretung mitgibt: ein Satz und ein Bild.
stand-in-hint = Für die Vertretung
stand-in-hint-example = zum Beispiel: die Fliegen sind im Türfach vom Gefrierschrank
stand-in-hint-picture = Ein Bild dazu
stand-in-hint-about = Steht bei jeder Aufgabe dieser Kolonie über den Schritten.

# Auf dem gedruckten Blatt: wie groß eine Portion ist.
paper-true-size = Echte Größe
paper-drop-of = Ein Tropfen von etwa { $ul } µL
paper-prey-of = Ein Stück von etwa { NUMBER($mm) } mm
paper-ruler = Lineal in Millimetern: Vergleich es mit deinem eigenen
