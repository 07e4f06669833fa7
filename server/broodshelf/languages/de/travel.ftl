### Regeln, wenn eine Kolonie getragen wird.

travel-no-loose-liquid = Keine lose Flüssigkeit: keine Tropfen, kein Futterspender; lass die Arena trocknen.
travel-plugs-tight = Alle Stopfen und Deckel fest, mit etwas Luft.
travel-dark-and-calm = Dunkel, so liegend, wie es immer liegt, eingewickelt, damit nichts rollt.
travel-travel-warmth = { DEGREES($low_c) } bis { DEGREES($high_c) } auf dem ganzen Weg; nie im geparkten Auto (gängige Praxis).
travel-quiet-after = Dann { $low } bis { $high } ruhige Tage: Verschmähtes Futter bedeutet nichts (gängige Praxis).
travel-never-tilt = Nie kippen: Speicherameisen, die fallen, sind verloren.
travel-double-lid = Sie sticht: eine zweite geschlossene Dose darum, mit Etikett.
