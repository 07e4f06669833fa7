### What 'broodshelf household' prints: the operator's page of several shelves on one server.

## Help of the commands.

command-of-households = households of this server: who they are, invitations, taking out, erasing, putting back
command-household-list = who is here, when their phones last spoke, how much each takes
command-household-invite = make one-time links, each for a household of its own
command-invite-count = how many
command-invite-days = for how many days they are good
command-invite-sheet = write a page to print, with a QR code for each
command-invite-take-back = make none; end those that nobody has used
command-household-export = write all records and pictures of one household into a .zip or a folder
command-household-delete = erase a household with all that it has
command-household-restore = put one household back from a backup of the whole server
command-household-id = its id, as 'household list' shows it

## The list.

command-list-name = name
command-list-id = id
command-list-people = people
command-list-seen = last phone (UTC)
command-list-records = records
command-list-pictures = pictures
command-list-mib = MiB
command-list-share = share
# $open, $used, $expired (numbers): invitations.
command-list-invitations = Invitations: { $open } open, { $used } used, { $expired } expired.

## Invitations.

command-invite-closed = BROODSHELF_SIGNUP is closed, so no invitation would open anything: set it to invited for the server and for this command.
# $name: an option; $most (number).
command-invite-range = { $name }: give a whole number from 1 to { $most }.
# $n (number): invitations; $days (number).
command-invite-done =
    { $n ->
        [one] This link opens
       *[other] Each of these links opens
    } one household, once, within { $days ->
        [one] { $days } day
       *[other] { $days } days
    }. It is not shown again.
# $n (number): invitations; $path: the page.
command-invite-sheet-done =
    { $n ->
        [one] { $n } invitation is
       *[other] { $n } invitations are
    } in { $path }. Open it in a browser and print it; each lets somebody in, so keep it to yourself.
# $n (number): invitations.
command-invite-taken-back =
    { $n ->
        [one] { $n } open invitation was
       *[other] { $n } open invitations were
    } taken back.

## The printed sheet, for whoever is invited.

sheet-title = Broodshelf: invitations
# $number: of the invitation.
sheet-number = Invitation { $number }
sheet-how = Scan this with your phone’s camera: it begins a shelf of your own, once.
# $on: a day.
sheet-until = Good through { $on }.
# $server: an address.
sheet-or-code = Or open { $server } and type this code:

## On the first screen of a phone, where everybody may begin a household.

signup-begin = Begin a shelf of your own
