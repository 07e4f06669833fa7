## Die Wörter der Diagramme.

chart-growth = Wachstum
chart-water = Wasser
chart-feeding = Futter
chart-which = Diagramm
chart-day = Tag
chart-workers = Arbeiterinnen
chart-level = Stand
chart-share = Als Bild teilen
chart-no-picture = Das Bild ließ sich nicht erstellen.
chart-few = Ein Diagramm braucht mindestens zwei Zählungen mit einer Zahl.
chart-few-water = Noch kein Wasserstand abgelesen.
chart-few-food = Noch keine Fütterung eingetragen.
chart-week = Woche ab
chart-sugar = Zucker
chart-protein = Eiweiß und anderes Futter

chart-growth-words = Gezählte Arbeiterinnen: von { $first } auf { $last }.
chart-water-words = { $days ->
    [one] So geht es noch { $days } Tag, bis es fällig ist.
   *[other] So geht es noch { $days } Tage, bis es fällig ist.
  }
chart-never = Der Stand sinkt zurzeit nicht.
chart-due-now = Das Wasser ist jetzt fällig.
chart-food-words = { $count ->
    [one] { $count } Fütterung im letzten halben Jahr.
   *[other] { $count } Fütterungen im letzten halben Jahr.
  }
chart-estimate = Die gestrichelte Linie ist eine Schätzung, die Fläche ihre Spanne.
chart-growth-ahead = So sind es bis { $day } etwa { $best }, wohl { $low } bis { $high }.
chart-behind = Die Fläche dahinter: wie warm der Platz nach den Messungen war, { $low } bis { $high }.
