### Erste Schritte, wenn etwas nicht stimmt, und nach Futter, das Gift tragen kann.

reason-leak = Als undicht gemeldet. Erste Schritte: Stell das Reagenzglas mit der Watte nach oben auf eine Untertasse, sieh nach, ob Brut nass ist, leg ein frisches Reagenzglas daneben. Nicht schütteln.
reason-flood = Erste Schritte: Neige es so, dass das Wasser von der Brut wegläuft, saug es mit Watte auf, biete ein trockenes Reagenzglas an.
reason-mould = Flecken weiter weg: Mach ein Foto und sieh in 7 Tagen wieder nach (gängige Praxis). Nahe der Brut oder ein Drittel der Watte: Biete heute ein frisches Reagenzglas an. Gelbe Watte allein ist nichts.
reason-mould-far = Ein Fleck weiter weg ist kein Alarm: Mach jetzt ein Foto und sieh in 7 Tagen nach, ob er gewachsen ist (gängige Praxis). Gelbe Watte allein ist nichts.
reason-mould-look =
    Vor { $days ->
        [one] { $days } Tag
       *[other] { $days } Tagen
    } wurde ein Schimmelfleck gemeldet: Vergleich ihn mit dem Foto. Nicht größer: Lass ihn. Näher an der Brut oder ein Drittel der Watte: Melde ihn noch einmal als nahe (gängige Praxis).
reason-mould-near = Erste Schritte: Biete heute ein frisches Reagenzglas an, Öffnung an Öffnung mit diesem, und lass das alte im Licht. Nicht kratzen, sprühen oder schütteln (gängige Praxis).
reason-fault-over =
    Vor { $days ->
        [one] { $days } Tag
       *[other] { $days } Tagen
    } gemeldet, und seither hat niemand gesagt, dass es vorbei ist. Wenn ja, markiere es als behoben; wenn nein, melde es noch einmal.
reason-escape = Erste Schritte: Schließ den Deckel, erneuere den Ausbruchschutz, sammle die Ausreißer mit einem weichen Pinsel ein. Lass sie nie draußen frei.
reason-mites = Erste Schritte: Füttere diese Kolonie zuletzt, mit eigener Pinzette, halte sie getrennt, notiere, aus welcher Packung ihr Futter kam.
reason-many-dead = Erste Schritte: Gib das zuletzt angebotene Futter nicht mehr und nimm es heraus, prüf Wasser und Temperatur, und schreib auf, was du siehst.
reason-heater = Erste Schritte: Schalt die Heizung aus, bring die Kolonie an einen Platz mit { DEGREES(20) } bis { DEGREES(25) } (gängige Praxis), kühle sie nicht mit einem Kühlschrank.
reason-risk-out =
    Es wurde gegeben, obwohl es abgelehnt war, oder eine andere Kolonie bekam so etwas aus derselben Packung: Es kann Gift tragen. Nimm sofort alles heraus, was noch da ist, { $hours ->
        [one] { $hours } Stunde
       *[other] { $hours } Stunden
    } nach dem Anbieten.
reason-risk-look =
    Vor { $days ->
        [one] { $days } Tag
       *[other] { $days } Tagen
    } wurde hier Futter gegeben, das Gift tragen kann: Sieh { $of } Tage lang einmal am Tag nach; heute ist Tag { $day }.
reason-risk-times = Veröffentlichte Zeiten, bis die Hälfte der Arbeiterinnen tot war: 1 bis 4 Tage bei starken Dosen von drei Ködergiften (Rust et al. 2004), 8 Tage bei einer schwachen Dosis Borsäure (Klotz et al. 1997).
reason-risk-signs = Viele Tote, langsame oder zuckende Arbeiterinnen: Melde „Viele Tote“ und gib sauberes Wasser und frisches Zuckerwasser (gängige Praxis).
