### Was zu einer Kolonie neben ihren Aufgaben zu sagen ist: Stadium, Jahreszeit, Zweifel.

notice-plan-failed = Dieser Plan ließ sich nicht neu machen: Du siehst einen alten, eine Schätzung. Richte dich nach dem, was du im Nest und in den Reagenzgläsern siehst. Der Server versucht es innerhalb einer Stunde wieder; in seinem Protokoll steht, woran es lag.
notice-claustral = Eine gründende Königin lebt von ihren Reserven: kein Futter und keine Störung, höchstens ein ruhiger Blick in der Woche. Erstes Futter 2 bis 7 Tage nach den ersten Arbeiterinnen (gängige Praxis).
notice-claustral-fungus = Eine gründende Königin lebt von ihren Reserven und zieht ihren Garten aus dem Krümel Pilz, den sie mitgebracht hat: keine Blätter und keine Störung, höchstens ein ruhiger Blick in der Woche. Erste Blätter 2 bis 7 Tage nach den ersten Arbeiterinnen (gängige Praxis).
notice-stage-unknown = Niemand hat gesagt, wie weit diese Kolonie ist. Darum ist der Plan für beides vorsichtig: nur was einer gründenden Königin nicht schadet und was eine Kolonie am nötigsten braucht. Ein Stadium oder eine Zählung macht ihn richtig.
notice-settling = Gewöhnt sich ein: ein paar ruhige Tage.
notice-resting = In der Winterruhe.
notice-resting-summer = In der Sommerruhe, das Nest ist verschlossen: Sie nimmt kein Futter, nur nach dem Wasser wird gesehen (gängige Praxis).
notice-rest-window = Diese Art ruht { $low_months } bis { $high_months } Monate bei { DEGREES($low_c) } bis { DEGREES($high_c) } (gängige Praxis). Eine Spanne, keine Regel.
notice-queen-lays = Die Königin ist als fraglich markiert, aber zuletzt wurden Eier gezählt: Werden Larven daraus, stell den Zustand auf „Wohlauf“. Bis dahin gibt es keine Vorhersagen.
notice-queenless = Die Königin ist fraglich: keine Vorhersagen. Grab nie nach ihr.
notice-quarantine = Getrennt von den anderen: Füttere sie zuletzt, mit eigener Pinzette.
notice-length-clamped = Die Formeln für die Masse reichen nicht bis { $given_mm } mm Länge: Gerechnet wird mit { $used_mm } mm.
notice-mass-clamped-low = Nach ihrer Länge wiegen manche Arbeiterinnen vielleicht weniger als { $limit_mg } mg, das Kleinste, wofür die Werte bekannt sind: Damit wird gerechnet.
notice-mass-clamped-high = Nach ihrer Länge wiegen manche Arbeiterinnen vielleicht mehr als { $limit_mg } mg, das Größte, wofür die Werte bekannt sind: Damit wird gerechnet.
notice-temperature-clamped = Die Werte sind von { DEGREES(10) } bis { DEGREES(40) } bekannt: Bei { DEGREES($mean_c) } wird wie bei { DEGREES($used_c) } gerechnet.
notice-colder-than-set = Kälter als eingestellt: nach dem Sensor in den letzten drei Tagen { DEGREES($measured_c) } statt { DEGREES($set_c) }. Der Plan richtet sich nach dem Sensor.
notice-warmer-than-set = Wärmer als eingestellt: nach dem Sensor in den letzten drei Tagen { DEGREES($measured_c) } statt { DEGREES($set_c) }. Der Plan richtet sich nach dem Sensor.
notice-species-unknown = Die Art steht nicht in der Liste: Der Plan richtet sich nach der Länge der Arbeiterinnen und gängiger Praxis.
notice-quiet-for =
    Lass sie noch { $days ->
        [one] { $days } Tag
       *[other] { $days } Tage
    } im Dunkeln (gängige Praxis); dann ist ein ruhiger Blick in Ordnung.
notice-quiet-look = Heute ist ein ruhiger Blick in Ordnung, dann eine Woche lang keiner.
notice-fed-queens-choice = Deine Wahl: Claustrale Königinnen brauchen kein Futter, aber in einer veröffentlichten Studie (Lasius niger) zogen gefütterte Königinnen mehr Puppen und Arbeiterinnen auf. Wenn du fütterst, dann selten einen winzigen Tropfen, ohne Licht und Erschütterung.
notice-first-food-soon =
    Die ersten Arbeiterinnen sind da. Warte mit dem ersten Futter { $low } bis { $high ->
        [one] { $high } Tag
       *[other] { $high } Tage
    } (gängige Praxis).
notice-first-food-now =
    Die ersten Arbeiterinnen sind da: Zeit für das erste Futter, innerhalb von { $days ->
        [one] { $days } Tag
       *[other] { $days } Tagen
    } (gängige Praxis); nicht mehr, als die Aufgaben sagen.
notice-semi-claustral = Diese Königin jagt, während sie gründet: alle { $low } bis { $high } Tage Zucker und kleine Futtertiere (gängige Praxis).
notice-semi-claustral-harvester = Diese Königin sammelt, während sie gründet: zerstoßene Samen immer in Reichweite, alle { $low } bis { $high } Tage kleine Futtertiere (gängige Praxis).
notice-semi-claustral-fungus-grower = Diese Königin holt Blätter, während sie gründet: alle { $low } bis { $high } Tage frische Stücke für ihren Garten, keine Futtertiere und kein Zucker (gängige Praxis).
notice-alone = Eine Königin ohne Arbeiterinnen nach der Gründung: Ihre Reserven sind verbraucht. Alle { $low } bis { $high } Tage Zucker und kleine Futtertiere (gängige Praxis), wenig Licht, keine Erschütterung.
notice-alone-harvester = Eine Königin ohne Arbeiterinnen nach der Gründung: Ihre Reserven sind verbraucht. Zerstoßene Samen in Reichweite und alle { $low } bis { $high } Tage kleine Futtertiere (gängige Praxis), wenig Licht, keine Erschütterung.
notice-alone-fungus-grower = Eine Königin ohne Arbeiterinnen nach der Gründung: Sie muss ihren Garten allein pflegen. Alle { $low } bis { $high } Tage frische Blattstücke (gängige Praxis), wenig Licht, keine Erschütterung.
notice-colony-empty = Es wurden weder eine Königin noch Arbeiterinnen gezählt: Es wird nichts gefüttert. Sind noch Puppen da, schlüpfen sie vielleicht noch: Trag dann eine Zählung ein. Sonst stell die Kolonie auf „Tot“, mit der Ursache.
notice-parasitic = Diese Königin kann ohne Arbeiterinnen eines Wirts keine Brut aufziehen: Gib ihr so bald wie möglich welche, oder Puppen des Wirts. Bis dahin ein Tropfen Zucker, keine Futtertiere (gängige Praxis).
notice-parasitic-pupae = Bei dieser Königin sind Puppen: Was aus Puppen eines Wirts schlüpft, wird sie füttern. Bis dahin ein Tropfen Zucker, keine Futtertiere (gängige Praxis).
notice-parasitic-hosts = Arbeiterinnen des Wirts füttern diese Königin, und sie legt.
notice-note-host = Notiere die Art des Wirts, wie viele du ihr gegeben hast und aus welcher Kolonie.
notice-settles = Sie ist gerade umgezogen: Lass sie noch { $low } bis { $high } Tage in Ruhe. Verschmähtes Futter bedeutet jetzt nichts (gängige Praxis).
notice-too-cold-for-protein = Bei { DEGREES($day_c) } gibt es kein Eiweiß: Unter { DEGREES($limit_c) } verdirbt es ungefressen (gängige Praxis).
notice-too-cold-perhaps-rest = Bei { DEGREES($day_c) } gibt es kein Eiweiß: Unter { DEGREES($limit_c) } verdirbt es ungefressen (gängige Praxis). Ist das ihre Winterruhe, stell den Zustand auf „In Ruhezeit“.
notice-too-cold-for-species = Bei { DEGREES($day_c) } gibt es kein Eiweiß: Unter { DEGREES($limit_c) } verdirbt es ungefressen (gängige Praxis). Diese Art hat keine Ruhezeit im Jahr: Bring sie an einen wärmeren Platz mit mindestens { DEGREES(20) } (gängige Praxis).
notice-yearly-clock = Spät in ihrem Jahr wird diese Art langsamer, auch wenn es warm ist: Wenige Eier sind kein Grund zur Sorge. In den letzten 4 Wochen hat niemand Larven gezählt: nur wenig Eiweiß, bis es jemand tut.
notice-yearly-clock-larvae = Spät in ihrem Jahr wird diese Art langsamer, auch wenn es warm ist; aber es wurden Larven gezählt, darum werden sie gefüttert. Was liegen bleibt, ist jetzt kein Grund zur Sorge.
notice-yearly-clock-none = Spät in ihrem Jahr wird diese Art langsamer, auch wenn es warm ist: Keine Larven und wenige Eier sind kein Grund zur Sorge.
notice-yearly-clock-summer = Diese Art wird im Sommer langsamer: Wenige Eier sind kein Grund zur Sorge. In den letzten 4 Wochen hat niemand Larven gezählt: nur wenig Eiweiß, bis es jemand tut.
notice-yearly-clock-larvae-summer = Diese Art wird im Sommer langsamer; aber es wurden Larven gezählt, darum werden sie gefüttert. Was liegen bleibt, ist jetzt kein Grund zur Sorge.
notice-yearly-clock-none-summer = Diese Art wird im Sommer langsamer: Keine Larven und wenige Eier sind kein Grund zur Sorge.
notice-queen-doubt = In deinen Zählungen seit { $weeks } aktiven Wochen keine Eier (gängige Praxis: 6 bis 8): Vielleicht ist die Königin nicht mehr da. Füttere weiter, sieh in zwei Wochen wieder nach; grab nie nach ihr.
notice-no-queen = Es wurde keine Königin gezählt: Die Arbeiterinnen leben noch Monate, aber neue kommen nicht. Vorhandene Larven werden gefüttert, danach nur wenig Eiweiß; keine Vorhersagen. Grab nie nach ihr.
notice-gamergates = Es wurde keine Königin gezählt; bei dieser Art legen begattete Arbeiterinnen, es kann also in Ordnung sein: Eier und Larven zeigen es.
notice-eggs-without-larvae = In deinen Zählungen seit { $weeks } aktiven Wochen Eier und nie eine Larve (gängige Praxis: Zweifel ab 6): Vielleicht sind sie unbefruchtet oder werden gefressen. Lass sie in Ruhe und warm genug, und sieh in zwei Wochen wieder nach.
notice-eggs-too-cold = In deinen Zählungen seit { $weeks } Wochen Eier und nie eine Larve: Ihr Platz ist zu kalt, als dass sie schlüpfen könnten. Wärme ihn langsam auf und sieh in einem Monat wieder nach.
notice-males-only = Es schlüpfen nur Männchen: Vielleicht fehlt die Königin oder ist unbegattet. Keine Vorhersagen; grab nie nach ihr.
notice-quarantine-left = Halte sie noch { $low } bis { $high } Tage getrennt (gängige Praxis: 2 bis 4 Wochen).
notice-quarantine-over =
    Seit { $days ->
        [one] { $days } Tag
       *[other] { $days } Tagen
    } getrennt: 2 bis 4 Wochen sind üblich. Ist nichts aufgefallen, beende es.
notice-keep-apart = Neu im Haus: Halte sie noch { $low } bis { $high } Tage von den anderen getrennt (gängige Praxis).
notice-granary = Keimende Samen heißen, dass die Kornkammer zu feucht ist: Gib ihr eine trockenere Ecke (gängige Praxis).
notice-cocoon-substrate = Die Larven spinnen Kokons: Sind sie groß, biete eine Prise feines, trockenes Substrat an (gängige Praxis).
notice-wakes-in =
    Aufwecken in { $days ->
        [one] { $days } Tag
       *[other] { $days } Tagen
    }.
notice-first-workers-in = Erste Arbeiterinnen in etwa { $low } bis { $high } Tagen bei { DEGREES($mean_c) }.
notice-next-workers-in = Neue Arbeiterinnen in etwa { $low } bis { $high } Tagen bei { DEGREES($mean_c) }.
notice-coming-wide-flight = Diese Tage liegen weit auseinander, weil niemand den Tag des Schwarmflugs notiert hat und Brut jedes Alter haben kann: Ein Blick auf Larven und Puppen macht die Spanne enger.
notice-coming-wide-look = Diese Tage liegen weit auseinander, weil in den letzten zwei Wochen niemand nach Larven und Puppen gesehen hat: Ein Blick macht die Spanne enger.
notice-coming-wide-kind = Diese Tage liegen weit auseinander, weil niemand gemessen hat, wie lange die Brut dieser Art braucht (stattdessen gilt gängige Praxis).
notice-founding-stalled =
    Die ersten Arbeiterinnen sind { $days ->
        [one] { $days } Tag
       *[other] { $days } Tage
    } zu spät: Diese Gründung stockt wahrscheinlich. Lass sie zwei Wochen dunkel und in Ruhe, dann sieh einmal nach (gängige Praxis).
## Warum sich die Tage der nächsten Arbeiterinnen verschoben haben.

notice-census-more =
    Mehr { $seen ->
        [eggs] Eier
        [larvae] Larven
        [pupae] Puppen
       *[workers] Arbeiterinnen
    } gesehen als erwartet ({ $on }).
notice-census-fewer =
    Weniger { $seen ->
        [eggs] Eier
        [larvae] Larven
        [pupae] Puppen
       *[workers] Arbeiterinnen
    } gesehen als erwartet ({ $on }).
notice-census-sooner =
    Was von den { $seen ->
        [eggs] Eiern
        [larvae] Larven
        [pupae] Puppen
       *[workers] Arbeiterinnen
    } zu sehen war ({ $on }), sagt: Diese Brut ist schnell.
notice-census-later =
    Was von den { $seen ->
        [eggs] Eiern
        [larvae] Larven
        [pupae] Puppen
       *[workers] Arbeiterinnen
    } zu sehen war ({ $on }), sagt: Diese Brut ist langsam.

## Jahreszeiten und Ruhe

notice-brood-no-forecast = Keine Vorhersage für die Brut bei { DEGREES($value) }: Die Zahlen gelten von { DEGREES($low_c) } bis { DEGREES($high_c) }.
notice-rest-over =
    Die Ruhezeit sollte vor { $days ->
        [one] { $days } Tag
       *[other] { $days } Tagen
    } enden: Wärme sie auf, biete zuerst Zucker an und stell den Zustand auf „Wohlauf“. Bis dahin gilt sie als ruhend.
notice-rest-by-sensor = Seit { $days } Tagen misst der Sensor im Mittel { DEGREES($mean_c) }, in der Zeit ihrer Ruhe: Sie gilt als ruhend, und es wird nichts gefüttert. Stell den Zustand auf „In Ruhezeit“, um zu sagen, wann sie aufwachen soll.
notice-rest-over-by-sensor = Nach { $cold } kalten Tagen misst der Sensor seit { $days } Tagen { DEGREES($mean_c) }: Danach ist die Ruhezeit vorbei, und sie wird wieder gefüttert, Zucker zuerst. Stell den Zustand auf „Wohlauf“.
notice-wakes-later =
    Nach dem Sensor waren { $warm } Tage der Ruhezeit zu warm, um zu zählen. Darum wacht sie { $later ->
        [one] { $later } Tag
       *[other] { $later } Tage
    } später auf als eingestellt.
notice-rest-unmarked = Sie steht bei { DEGREES($mean_c) } in der Zeit ihrer Ruhe (üblich: { DEGREES($low_c) } bis { DEGREES($high_c) }, gängige Praxis): Wenn sie ruht, stell den Zustand auf „In Ruhezeit“, dann wird nichts gefüttert.
notice-rest-missed = Diese Art ruht im Winter { $low_months } bis { $high_months } Monate bei { DEGREES($low_c) } bis { DEGREES($high_c) } und sollte begonnen haben; keine Ruhe ist eingetragen. Eine späte ist besser als keine: Kühle sie in etwa { $ramp_days } Tagen ab (gängige Praxis).
notice-rest-after-first = Diese Art ruht im Winter, und keine Ruhe ist eingetragen; aber ihre ersten Arbeiterinnen sollten zwischen { $low_on } und { $high_on } schlüpfen: Lass sie warm, bis sie da sind und gefressen haben, dann kühle in etwa { $ramp_days } Tagen auf { DEGREES($low_c, unit: "none") } bis { DEGREES($high_c) } ab (gängige Praxis).
notice-rest-larvae-wait = Etwa { $low } bis { $high } Larven warten wohl im Nest, bis die Kolonie erwacht; Eier und Puppen vergehen in der Kälte. Nachsehen ist nicht nötig.
notice-rest-no-brood = Wohl keine Brut ist mehr im Nest: Eier und Puppen vergehen in der Kälte, und gelegt wird wieder, wenn sie wach und warm ist. Nachsehen ist nicht nötig.
notice-rest-begins-summer = Die Sommerruhe kann in { $low } bis { $high } Tagen beginnen: Sie verschließt ihr Nest und nimmt kein Futter. Wird nichts mehr genommen, stell den Zustand auf „In Ruhezeit“ (gängige Praxis).
notice-rest-begins = Die Winterruhe kann in { $low } bis { $high } Tagen beginnen, wenn der Tag nur noch etwa { $hours } Stunden hat: Kühle sie in etwa { $ramp_days } Tagen auf { DEGREES($low_c) } bis { DEGREES($high_c) } ab. Eine Spanne, keine Regel (gängige Praxis).
notice-rest-may-end =
    Die Ruhezeit kann jetzt enden, spätestens in { $days ->
        [one] { $days } Tag
       *[other] { $days } Tagen
    } (gängige Praxis).
notice-tint-offered = Gefärbtes Zuckerwasser wurde angeboten: Sieh nach 1, 8, 24 und 72 Stunden nach, durch helle, gedehnte Hinterleiber und in die Brut, und trag beim Nachsehen ein, wo die Farbe zu sehen ist (gängige Praxis; dunkle Ameisen verbergen sie).
notice-tint-in-gasters = Farbe im Hinterleib: Arbeiterinnen haben getrunken und es vielleicht einander weitergegeben.
notice-tint-in-brood = Farbe in der Brut: Was Arbeiterinnen tranken, kam bei Larven an.
notice-tint-nowhere = Keine Farbe war zu sehen. Das sagt wenig: Dunkle oder leere Hinterleiber verbergen sie.
