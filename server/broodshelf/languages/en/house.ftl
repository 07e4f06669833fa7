## The house, and how the app looks.

house-title = The house
house-look = Look
house-language = Language
house-language-as-phone = As the phone
house-good-to-know = Good to know

# The number of this version.
house-build = Build { $build }
house-advice = Broodshelf gives general husbandry advice, not veterinary or medical advice.
house-never = Never release ants or feeder insects. Keeping and moving species is a matter of local law: ask the authority.
house-hours = Names and hours
house-shelf-name = Name of the shelf
house-zone = Time zone
house-first = First care hour
house-second = Second care hour
house-quiet-from = Quiet from
house-quiet-to = Quiet to
house-backup-patience = Say when the last backup is older than so many days
house-backup-patience-hint = 0: never. Nothing is said where none was ever made.
house-save = Save
house-sign-out = Sign out

house-on-this-phone = On this phone
house-this-phone = this phone
house-last-synced = Last synced { $when }.
house-not-synced = Not synced yet.
house-not-sent = { $count } not sent.
house-nothing-waits = Nothing waits.
house-kept = The browser has promised to keep the data.
house-not-kept = The browser may clear data of apps that are not used; the server copy is the safety. Installing the app on the home screen helps.
house-sync-now = Sync now
house-export = Export unsent logs
house-left = Of { $who } on this phone: { $count } not sent. It goes by itself when { $who } signs in here again.
house-leave = Sign { $who } out?
house-leave-unsent = { $count ->
    [one] { $count } log is not sent yet and stays on this phone. Sign out all the same?
   *[other] { $count } logs are not sent yet and stay on this phone. Sign out all the same?
  }

## How the app looks.

look-light = Light
look-degrees = Temperatures in
look-volumes = Volumes in
look-as-phone = As the phone
look-day = Light
look-dark = Dark
look-red = Dim red
look-red-why = Dim red is for looking into a dark nest: ants hardly see deep red (common practice).
look-all-parts = See every part of the app
