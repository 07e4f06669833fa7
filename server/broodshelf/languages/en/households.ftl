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

## Taking out, erasing, putting back.

household-export-no-json = Pictures do not fit into one JSON document: name a file that ends in .zip, or a new folder.
# $n (number): records; $pictures (number).
household-export-done = Wrote { $n } records and { $pictures } pictures to { $path }. Keys and signed-in phones are not in it.
# $id: what was asked for.
household-unknown = There is no household { $id } here; 'broodshelf household list' shows those that are.
# $name: of the household; $n (number): records; $pictures (number).
household-delete-would = This would erase { $name }: { $n } records, { $pictures } pictures, its phones, links and history. Take it out first ('household export'); do it with --yes.
# $n (number): rows of the database.
household-delete-done = Erased: { $n } rows, its pictures and what was noted beside the database. Backups that were made before still hold it; a restore of one leaves it out.
# $households: ids with names.
household-not-in-backup = { $path } does not hold the household { $id }; it holds { $households }.
# $n (number): rows of the database.
household-restore-done = Put back: { $n } rows. Its phones send what the backup lacks when they next connect; the other households were not touched.

## Into another database.

command-move = copy everything into another database, from SQLite to PostgreSQL or back, with the server stopped
command-move-to = the other database: sqlite:///PATH or postgresql://USER@HOST/NAME
move-same = That is the database that the server uses already.
# $n (number): households; $first: the id of one.
move-foreign = The other database has { $n } households that this one does not know (the first: { $first }); name an empty one, or one that an earlier move began to fill.
# $name: of a database.
move-connected = Somebody else is connected to the database { $name }: stop the servers and nudgers, then move.
# $table; $here, $there (numbers): rows.
move-differs = The two differ in the table { $table }: { $here } rows here, { $there } there. Nothing here was changed; start the move again.
# $number of $of (numbers) households; $id; $n (number): rows.
move-step = { $number } of { $of }: { $id }, { $n } rows
move-there = { $number } of { $of }: { $id } is there already, row by row
# $n (number): rows; $setting: its name.
move-done = Moved { $n } rows; every table was compared and is the same. Set { $setting } to the other database and start the server. The one here stays as it was.
