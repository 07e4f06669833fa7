## Before the keeper goes away.

holiday-title = Before you go away
holiday-about = Two dates tell which colonies need nobody, and what to top up on the last day.
holiday-leave = You leave
holiday-back = You are back
holiday-go = Look ahead
holiday-none = No colony has a plan yet.
holiday-verdict-nobody = Needs nobody.
holiday-verdict-nobody-after-top-up = Needs nobody after a top-up.
holiday-visit = { $days ->
    [one] Needs a visit every day.
   *[other] Needs a visit every { $days } days.
  }
holiday-top-up = On your last day:
holiday-full = fill it up
holiday-travel = If a colony travels with you
holiday-pass = Make a pass for the visits
