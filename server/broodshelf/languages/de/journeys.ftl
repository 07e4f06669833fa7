## Before the keeper goes away.

holiday-title = Bevor du verreist
holiday-about = Zwei Tage sagen, welche Kolonien niemanden brauchen und was du am letzten Tag auffüllst.
holiday-leave = Du reist ab
holiday-back = Du bist zurück
holiday-go = Vorausschauen
holiday-none = Noch hat keine Kolonie einen Plan.
holiday-verdict-nobody = Braucht niemanden.
holiday-verdict-nobody-after-top-up = Braucht nach dem Auffüllen niemanden.
holiday-visit = { $days ->
    [one] Braucht jeden Tag einen Besuch.
   *[other] Braucht alle { $days } Tage einen Besuch.
  }
holiday-top-up = An deinem letzten Tag:
holiday-full = auffüllen
holiday-travel = Wenn eine Kolonie mitreist
holiday-pass = Pass für die Besuche
