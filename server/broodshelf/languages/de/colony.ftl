## Eine Kolonie: ihre Ansicht, ihre Stadien und Zustände.

colony-gone = Nicht hier
colony-gone-why = Diese Kolonie ist nicht auf diesem Handy. Vielleicht wurde sie gelöscht, oder das Handy hat noch nicht abgeglichen.
colony-change = Ändern
colony-new = Eine neue Kolonie
colony-log = Eintragen
colony-plan = Der Plan
colony-diary = Tagebuch
colony-charts = Über die Monate
colony-paper = Ihr Blatt drucken
colony-past = Ihr Verlauf
colony-no-plan = Der Plan kommt mit der nächsten Verbindung zum Server. Eintragen geht sofort.

colony-stage-founding = Gründende Königin
colony-stage-nanitics = Pygmäen
colony-stage-growing = Im Wachstum
colony-stage-mature = Ausgewachsen

colony-condition-well = Wohlauf
colony-condition-settling = Gewöhnt sich ein
colony-condition-resting = In Ruhezeit
colony-condition-queenless-suspected = Königin fraglich
colony-condition-quarantine = Quarantäne
colony-condition-given-away = Abgegeben
colony-condition-dead = Tot

## Was ein Halter über eine Kolonie sagt.

colony-form-change = { $name } ändern
colony-form-name = Name
colony-form-number = Nummer am Gefäß

colony-form-optional = (freiwillig)
colony-form-species = Art
colony-form-species-hint = aus der Liste oder in eigenen Worten
colony-form-length = Länge einer Arbeiterin in mm
colony-form-length-hint = (nur nötig, wenn die Art nicht in der Liste steht)
colony-form-lives = Lebt in
colony-form-not-listed = nicht in der Liste
colony-form-outworld = Hat eine Arena
colony-form-stage = Stadium
colony-form-condition = Zustand
colony-form-roughly = Arbeiterinnen, grob
colony-form-few = Wenige (unter 20)
colony-form-some = Einige (20 bis 100)
colony-form-many = Viele
colony-form-larvae = Larven
colony-form-needed = Gib der Kolonie einen Namen.
colony-form-save = Speichern
colony-form-add = Kolonie hinzufügen
colony-form-more = Gefäß, Nummer und mehr
colony-form-stings = Diese Art sticht. Allergiker brauchen hier die Hilfe anderer.

colony-form-fate-rests-since = In Ruhezeit seit
colony-form-fate-wakes-on = Aufwecken am
colony-form-fate-went-to = An wen sie ging
colony-form-fate-died-of = Woran sie starb, falls bekannt
colony-form-fate-came-from = Woher sie kam
colony-form-fate-host = Art des Wirts

colony-form-own-species = Deine eigene Art
colony-form-own-eats = Sie frisst
colony-form-own-founds = Ihre Königin gründet
colony-form-own-stings = Sie sticht

colony-form-own-guild-omnivore = Zucker und Insekten
colony-form-own-guild-predator = Vor allem Insekten
colony-form-own-guild-harvester = Samen
colony-form-own-guild-honeypot = Speichert Zucker in Speicherameisen
colony-form-own-guild-fungus-grower = Blätter für ihren Pilz

colony-form-own-founding-claustral = Allein, ohne Futter
colony-form-own-founding-semi-claustral = Geht auf Futtersuche
colony-form-own-founding-parasitic = Mit Arbeiterinnen eines Wirts

colony-form-own-vessel = Dein eigenes Gefäß
colony-form-own-bore = Innere Breite oder Innendurchmesser in mm
colony-form-own-vessel-length = Länge in mm
