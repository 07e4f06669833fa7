## Die Vergangenheit eines Eintrags.

history-offline = Der Verlauf liegt auf dem Server, darum braucht er eine Verbindung.
history-again = Noch einmal versuchen
history-unsent = Noch nicht gesendet. Der Verlauf beginnt mit der nächsten Verbindung.
history-somebody = Jemand

history-made = { $who } hat es eingetragen
history-changed = { $who } hat es geändert
history-out = { $who } hat es gelöscht
history-back = { $who } hat es zurückgeholt

history-was = vorher: { $value }
history-not-stood = { $field }: „{ $value }“ galt nicht: Eine Änderung auf einem anderen Handy war später.
history-bring = „{ $value }“ zurückholen
history-clear = Wieder leeren
history-brought = Zurückgeholt

history-gone-title = Was weg ist
history-gone-about = Was zuletzt gelöscht oder ungültig gemacht wurde. Alles davon lässt sich zurückholen, mit allem, was darin war.
history-gone-none = Nichts wurde gelöscht.
history-gone-take-back = Zurückholen
history-gone-back = Wieder da: { $what }

history-gone-by = { $who }, { $when }
