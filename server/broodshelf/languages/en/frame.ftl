## The frame around every screen: its name, the ways to the screens, banners.

# The name of the app stays as it is in every language.
frame-name = Broodshelf

# Stands on the page while it opens, and where it cannot open.
frame-opening = The shelf is opening. If this text stays, this browser has JavaScript or modules switched off, or is too old: Broodshelf needs Chrome 91, Safari 16.4 or Firefox 147, or newer. What you logged on this phone stays on it.
frame-description = Care for a shelf of ant colonies, offline at the shelf.
frame-close = Close
frame-loading = One moment…
frame-missing = This part of the app could not be loaded. Reload it; nothing that you logged is lost.
frame-screens = Screens

frame-nav-round = Round
frame-nav-shelf = Shelf
frame-nav-larder = Larder
frame-nav-handover = Hand over
frame-nav-settings = House

frame-banner-unsent = Unsent logs
frame-banner-sign-in = Sign in again
frame-banner-update = A new version is ready.
frame-banner-update-waits = The new version comes when you have saved or left what you are writing here.
frame-banner-use-it = Use it now
frame-banner-emptied = The browser had emptied its storage on this phone, so the shelf was fetched from the server again. What was logged here and not sent before is lost: please look through the diary, and log again what is missing.
frame-banner-understood = I have read it
frame-banner-signed-out = This phone is signed out. What it has not sent stays here.

# $unit is a code: minutes, hours or days.
frame-clock-ahead = { $unit ->
    [minutes] { $count ->
        [one] This phone's clock is { $count } minute ahead. What is due, and when you log something, goes by the server's.
       *[other] This phone's clock is { $count } minutes ahead. What is due, and when you log something, goes by the server's.
      }
    [hours] { $count ->
        [one] This phone's clock is { $count } hour ahead. What is due, and when you log something, goes by the server's.
       *[other] This phone's clock is { $count } hours ahead. What is due, and when you log something, goes by the server's.
      }
   *[days] { $count ->
        [one] This phone's clock is { $count } day ahead. What is due, and when you log something, goes by the server's.
       *[other] This phone's clock is { $count } days ahead. What is due, and when you log something, goes by the server's.
      }
  }
frame-clock-behind = { $unit ->
    [minutes] { $count ->
        [one] This phone's clock is { $count } minute behind. What is due, and when you log something, goes by the server's.
       *[other] This phone's clock is { $count } minutes behind. What is due, and when you log something, goes by the server's.
      }
    [hours] { $count ->
        [one] This phone's clock is { $count } hour behind. What is due, and when you log something, goes by the server's.
       *[other] This phone's clock is { $count } hours behind. What is due, and when you log something, goes by the server's.
      }
   *[days] { $count ->
        [one] This phone's clock is { $count } day behind. What is due, and when you log something, goes by the server's.
       *[other] This phone's clock is { $count } days behind. What is due, and when you log something, goes by the server's.
      }
  }

frame-banner-ended-pass-revoked = The keeper has taken this pass back. What this phone has not sent stays here for export.
frame-banner-ended-pass-ended = This pass has ended. Thank you. What this phone has not sent stays here for export.
frame-banner-ended-device-revoked = A keeper has signed this phone out. What it has not sent stays here for export.
frame-banner-ended-session-old = This phone's session has run out. What it has not sent stays here.

## The parts that many screens are made of.

part-table = The figures in a table
part-needs-server = This needs the server, and there is no connection just now.
part-again = Try again

# A word and what it stands for: “Undo: 2 drops sugar water”.
part-labelled = { $label }: { $value }
part-labelled-twice = { $label }: { $first }, { $second }

part-percent = { $percent } %

# The buttons beside a number; $label says which number.
part-less = { $label }: less
part-more = { $label }: more

## Where a log stands: on this phone, on the server, in need of a person; and why the server cannot take it.

saving-saved = Saved on this phone
saving-not-saved = Not saved: this phone could not store it. Free some space or close other tabs, then try again.
saving-no-connection = No connection to the server. What you log stays on this phone.
saving-asks-sign-in = Something between this phone and the server asks for a sign-in.
saving-failed = The server could not do this.
saving-not-signed-in = This phone is not signed in.

# The name of a file.
saving-unsent-title = Unsent logs of Broodshelf
saving-taken-back = Taken back

saving-state-synced = Synced
saving-state-saved = Saved on this phone
saving-state-attention = Needs attention

saving-waiting = { $count } saved on this phone
saving-attention = { $count ->
    [one] { $count } needs attention
   *[other] { $count } need attention
  }
saving-synced = All synced
saving-joining = Fetching your shelf
saving-offline = No connection
saving-syncing = Syncing…

saving-told-database-damaged = The server's daily look found its database damaged. Tell whoever runs the server: a backup must be put back.
saving-told-backup-old = The server's last backup is of { $day }. Tell whoever runs the server, or say in House how old it may be.

saving-problem-disk-full = The server's disk is full. What you log stays on this phone; tell whoever runs the server.
saving-problem-database-locked = The server is held up. What you log stays on this phone and is sent later.
saving-problem-database-away = The server cannot reach its data. What you log stays on this phone and is sent later.
saving-problem-database-read-only = The server cannot write. What you log stays on this phone; tell whoever runs the server.
saving-problem-database-damaged = The server has lost a part of its data. What you log stays on this phone; tell whoever runs the server.

## On a nudge itself: the worker reads these three, so they stay on one line and are told nothing.

phone-nudges-done = Done as suggested
phone-nudges-in-an-hour = In an hour
phone-nudges-something = Something on the shelf is due.
