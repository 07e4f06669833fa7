### Warum Futter fällig ist, und wie viel davon.

reason-interval-band = Üblich für diese Art und Größe: alle { $low } bis { $high } Tage (gängige Praxis).
reason-interval-keeper =
    Von dir festgelegt: { $days ->
        [one] jeden Tag
       *[other] alle { $days } Tage
    }.
reason-interval-chosen = An den Tagen und zu der Uhrzeit, die du festgelegt hast.
reason-last-fed =
    Zuletzt angeboten vor { $days ->
        [one] { $days } Tag
       *[other] { $days } Tagen
    }.
reason-never-fed = Noch ist keine Fütterung eingetragen.
reason-no-larvae = Es wurden keine Larven gesehen: Eiweiß kann länger warten.
reason-slow-species = Diese Art frisst langsam: Die Abstände sind um die Hälfte länger (gängige Praxis).
reason-ignored-did-not-count = Das letzte Angebot wurde verschmäht, darum zählt es nicht.
reason-leftovers =
    Vor { $hours ->
        [one] { $hours } Stunde
       *[other] { $hours } Stunden
    } angeboten; nimm den Rest heraus, bevor er verdirbt (gängige Praxis: nach { $after } Stunden).
reason-crop-lasts =
    Ein voller Kropf reicht bei { DEGREES($temp_c) } etwa { $days ->
        [one] { $days } Tag
       *[other] { $days } Tage
    }; die Hälfte davon bleibt als Reserve.
reason-freshness-rules =
    Was angeboten wird, bleibt etwa { $days ->
        [one] { $days } Tag
       *[other] { $days } Tage
    } gut (gängige Praxis); mehr davon hält nicht länger.
reason-amount-rules = { $mg } mg Zucker wurden angeboten, und die Kolonie verbraucht etwa { $mg_per_day } mg am Tag; darum ist er zuerst zu Ende.
reason-band-rules =
    Nach der Schätzung wäre der Rhythmus ein anderer; gehalten wird er bei { $days ->
        [one] { $days } Tag
       *[other] { $days } Tagen
    }, zwischen der Hälfte und dem Doppelten der üblichen { $low } bis { $high } Tage (gängige Praxis).
reason-brood-grows =
    Etwa { $larvae ->
        [one] { $larvae } Larve braucht
       *[other] { $larvae } Larven brauchen
    } { $mg_per_day } mg Eiweiß am Tag bei { DEGREES($temp_c) }.
reason-prey-rules =
    { $mg } mg Eiweiß sind etwa { $days ->
        [one] { $days } Tag
       *[other] { $days } Tage
    } Wachstum.
reason-bank-rules =
    Brut kann Eiweiß nicht länger als etwa { $days ->
        [one] { $days } Tag
       *[other] { $days } Tage
    } auf Vorrat nehmen, wie groß das Futtertier auch ist (gängige Praxis).
reason-no-brood-expected = Neue Arbeiterinnen sind nicht zu erwarten, und in den letzten 4 Wochen hat niemand Larven gezählt: nur wenig Eiweiß (gängige Praxis).
reason-quiet-season = Nach ihrer Jahresuhr wird diese Art jetzt langsamer, und in den letzten 4 Wochen hat niemand Larven gezählt: nur wenig Eiweiß. Larven, die du zählst, werden gefüttert (gängige Praxis).
reason-maintenance-only = Keine Larven: Nur wenig Eiweiß ist nötig, damit es den Arbeiterinnen gut geht.
reason-appetite-learnt =
    Gelernt beim Nachsehen ({ $checks ->
        [one] { $checks } Mal
       *[other] { $checks } Mal
    }): Diese Kolonie frisst etwa das { $times }-Fache des Üblichen.
reason-appetite-at-least =
    Jedes Mal, wenn das Nachsehen etwas verriet ({ $checks ->
        [one] einmal
       *[other] { $checks } Mal
    }), war alles genommen: Diese Kolonie frisst mindestens etwa das { $times }-Fache des Üblichen. Wie viel mehr, zeigt sich erst, wenn etwas übrig bleibt.
reason-appetite-at-most =
    Jedes Mal, wenn das Nachsehen etwas verriet ({ $checks ->
        [one] einmal
       *[other] { $checks } Mal
    }), war etwas übrig: Diese Kolonie frisst höchstens etwa das { $times }-Fache des Üblichen. Wie viel weniger, lässt sich nicht lernen, solange sogar von der kleinsten Portion etwas bleibt.
reason-appetite-hidden = Wie viel diese Kolonie frisst, lässt sich so nicht lernen: Es konnte kaum anders ausgehen, etwa bei einem ganzen Tropfen vor einer Handvoll Ameisen. Der Plan bleibt beim Üblichen für ihre Größe.
reason-refusal-food = Das letzte Angebot blieb liegen: Vielleicht liegt es am Futter, versuch zuerst ein anderes.
reason-refusal-state = Das letzte Angebot blieb liegen, aber die Kolonie gewöhnt sich ein, wird vor ihrer Ruhezeit langsamer, oder ihre Brut besteht nur aus Puppen: Das sagt nichts über ihren Appetit.
reason-protein-outweighs-sugar = Mehr Eiweiß ({ $protein_mg } mg) als Zucker ({ $sugar_mg } mg) in { $weeks } Wochen: Solche Kost verkürzte das Leben von Arbeiterinnen (Dussutour und Simpson 2012). Biete mehr Zucker an; Larven mildern den Schaden.
reason-census-guessed = Noch hat niemand gezählt: Nach dem Stadium werden etwa { $workers } Arbeiterinnen angenommen (gängige Praxis).
reason-census-unknown = Noch hat niemand gezählt, und kein Stadium ist gewählt: Trag eine Zählung ein, bis dahin sind die Mengen geraten.
reason-census-old =
    Die letzte Zählung ist { $days ->
        [one] { $days } Tag
       *[other] { $days } Tage
    } alt; ein neuer Blick würde es sicherer machen.
reason-workers-fell-to-zero = Beim letzten Nachsehen waren keine Arbeiterinnen da, wo vorher welche waren. War das ein Versehen, trag eine neue Zählung ein.
