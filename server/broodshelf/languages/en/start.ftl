## The words of the first start: claiming, joining, a pass.

start-welcome = Every colony fed, watered and looked in on.
start-what = Broodshelf keeps the round of your ant shelf: what is due, how much, and why. It works without a signal.
start-have-code = I have the server’s code
start-join-one = Join a shelf that exists
start-have-pass = I was handed a pass
start-back = Back
start-claim = Claim this shelf
start-code = Code
start-code-hint = from an invitation or the server
start-your-name = Your name
start-more = Name of the shelf and time zone
start-shelf-name = Name of the shelf
start-our-shelf = Our shelf
start-zone = Time zone
start-claim-it = Claim it
start-known = Welcome back, { $name }
start-come-in = Come in
start-join = Join a shelf
start-join-how = On a phone that is signed in, open House and type this code, or scan it there.
start-waiting = Waiting for a keeper…
start-pass = Open a pass
start-pass-hint = the keeper gave it to you
start-open-pass = Open the pass
start-language = Language

# What a phone calls itself; $system is iPhone, Android or the like.
start-phone-name = { $system } phone or browser
start-phone-unnamed = Phone or browser
start-handed = You were handed a shelf
start-handed-what = This phone can look after some colonies for some days. No account is needed.
start-only-a-look = { $count ->
    [one] You are signed in as a keeper, so this is only a look: the pass is for { $count } colony, { $from } to { $to }.
   *[other] You are signed in as a keeper, so this is only a look: the pass is for { $count } colonies, { $from } to { $to }.
  }

## After the first colony: its plan, and the home screen.

welcome-title = { $name } is on the shelf
welcome-plan = The plan
welcome-wait = The plan comes with the next connection.
welcome-nothing = Nothing is due. Leave them their quiet.
welcome-install = Put it on your home screen
welcome-why-install = It then opens like any app, works at the shelf without a signal, and keeps your logs safe from tidying browsers.
welcome-installed = It is on this home screen already.
welcome-go = Go to the round
welcome-again = Add another colony
welcome-ios-1 = Tap the share button of Safari (the square with the arrow).
welcome-ios-2 = Choose “Add to Home Screen”, then “Add”.
welcome-ios-3 = Open Broodshelf from there. It keeps a memory of its own: claim or join in it, or let it in from Safari with House, “Let a new phone in”.
welcome-android-1 = Open the menu of the browser (three dots).
welcome-android-2 = Choose “Install app” or “Add to Home screen”.
welcome-android-3 = Open Broodshelf from there.
welcome-desktop-1 = Chrome or Edge: the install button at the end of the address bar.
welcome-desktop-2 = Safari on a Mac: File, then “Add to Dock”.
welcome-desktop-3 = Firefox on a desk: a bookmark does it.
welcome-now = Install it now
