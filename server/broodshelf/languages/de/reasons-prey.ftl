### Futtertiere: welche, wie groß, wie angeboten.

reason-prey-size = Diese Arbeiterinnen räumen Futtertiere bis etwa { $longest_mm } mm im Ganzen weg; längere werden zerteilt oder weggelassen (gängige Praxis).
reason-prey-first-third = Eine erste Portion ist ein Drittel dessen, was die Größe der Kolonie sagt; sie wächst um die Hälfte, wenn alles genommen wird, langsam, wenn niemand nachsieht (gängige Praxis).
reason-portion-rises = Eine Portion steigt Schritt für Schritt auf das, was die Größe der Kolonie sagt: höchstens um die Hälfte nach „Alles genommen“, langsam, wo niemand nachsah, nicht, nachdem etwas übrig war (gängige Praxis).
reason-portion-at-once =
    Nie mehr als der Bedarf für { $days ->
        [one] { $days } Tag
       *[other] { $days } Tage
    } auf einmal, wie lange es bis zum nächsten Mal auch dauert: Was übrig ist, verdirbt (gängige Praxis).
reason-portion-tiny = Das erste Futter ihres Lebens ist die kleinste Portion, die es gibt (gängige Praxis).
reason-prey-smallest =
    Das ist die kleinste Portion, die da ist; sie reicht ihnen etwa { $days ->
        [one] { $days } Tag
       *[other] { $days } Tage
    }.
reason-prey-most = { $pieces } Stück sind so viele, wie eine Portion haben sollte (gängige Praxis).
reason-prey-banked = Eine kleine Kolonie zehrt höchstens { $days } Tage von einem Futtertier, wie groß es auch ist (gängige Praxis).
reason-prey-dead = Töte es vorher: Lebende Futtertiere können Arbeiterinnen und Brut verletzen oder sich verstecken (gängige Praxis).
reason-prey-dead-small = Kleine Arbeiterinnen: nur frisch getötet (gängige Praxis).
reason-prey-dead-in-tube = In ein Reagenzglas nur frisch getötete Futtertiere: nie etwas Lebendes.
reason-prey-too-big-alive = Sie jagen mit den Augen, aber dieses Futtertier ist länger als eine Arbeiterin oder muss zerteilt werden: Töte es vorher.
reason-prey-stunned = Sie jagen mit den Augen: Was noch zuckt, wird eher gefunden. Betäube es so, dass es nicht beißen oder treten kann (gängige Praxis).
reason-prey-live = Lebend, weil du es so wolltest: kürzer als eine Arbeiterin, in einer Arena, nie in einem Reagenzglas. Nimm es heraus, wenn es eine Stunde lang nicht beachtet wird (gängige Praxis).
reason-prey-piece = Ein Krümel: Nimm ihn heraus, bevor er verdirbt.
reason-prey-uncounted = Niemand nennt den Eiweißgehalt dieses Futters, darum zählt er nicht mit.
