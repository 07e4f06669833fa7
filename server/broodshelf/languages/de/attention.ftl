## Was abgelehnt wurde, und wo zwei Handys sich trafen.

attention-title = Bitte ansehen
attention-none = Alles auf diesem Handy ist gesendet.
attention-export = Alle diese exportieren
attention-met = { $name }: auf zwei Handys geändert

attention-values = { $field }: hier „{ $here }“, { $who }: „{ $there }“ ({ $when }).
attention-other-phone = ein anderes Handy
attention-theirs = Die andere Änderung war später und gilt.
attention-mine = Deine Änderung war später und gilt.
attention-leave = So lassen
attention-bring = Meins zurückholen
attention-damaged = Beschädigter Eintrag
attention-drop = Verwerfen
attention-sure = Endgültig verwerfen? Exportiere es vorher, wenn du nicht sicher bist.
attention-mend = Erneut senden
attention-again = Noch einmal senden
attention-again-why = Wurde inzwischen zurückgeholt, wozu es gehört, kann es erneut gesendet werden.

attention-code-not-allowed = Dieses Handy darf das nicht.
attention-code-outside-pass = Das liegt außerhalb des Passes: andere Kolonie oder anderer Tag.
attention-code-missing-field = Es fehlt etwas.
attention-code-unknown-field = Der Server kennt dieses Feld nicht.
attention-code-unknown-kind = Der Server kennt diese Art von Eintrag nicht.
attention-code-failed = Hier ist der Server gescheitert. Der Eintrag bleibt hier, und nichts wartet auf ihn: Schreib ihn neu, oder exportiere ihn.
attention-code-kind-differs = Der Server hat unter dieser Kennung etwas anderes.
attention-code-too-large = Das ist zu lang.
attention-code-last-keeper = Der letzte Halter kann nicht entfernt werden. Lass zuerst einen anderen Halter herein.
attention-code-purged = Das wurde vor langer Zeit gelöscht und ist nicht mehr da.
attention-code-parent-missing = Wozu das gehört, ist nicht mehr auf dem Server.
