### Why the server could not do what was asked. Each says what was wrong and what to do.
### What is on a phone and was not sent stays there: never let a sentence sound as if something were lost.

## Titles, by kind of problem.

problem-title-failed = Something went wrong on the server.
problem-title-bad-request = The request is not one that this address understands.
problem-title-signed-out = This phone is not signed in.
problem-title-not-allowed = You may not do this here.
problem-title-not-found = There is nothing at this address.
problem-title-wrong-device = The session belongs to another device; nothing was stored.
problem-title-gone = This has ended.
problem-title-too-large = The request is too large.
problem-title-wrong-media-type = Send JSON (Content-Type: application/json).
problem-title-upgrade-required = This copy of the app is too old for the server; reload it. Nothing on the phone is lost.
problem-title-store-full = There is no room left on the server; nothing was stored.
problem-title-busy = The server cannot do this just now; nothing was stored.
problem-title-too-many = Too many tries; wait a little.

## The server

# $reference: letters and digits that whoever runs the server finds in its log.
problem-unforeseen = Nothing was stored. Try again; if it stays, tell whoever runs the server: { $reference }.
problem-disk-full = The server's disk is full; nothing was stored.
problem-database-locked = The server's database is held by another program; nothing was stored.
problem-database-away = The server's database does not answer; nothing was stored.
problem-database-read-only = The server may not write to its database; nothing was stored.
problem-database-damaged = A part of the server's database is lost; nothing was stored.
problem-no-household = There is no such household on this server.
problem-no-file = This file is not part of a build that is kept here; reload the app.
# $url: the address of the shelf.
problem-foreign-origin = This request does not come from { $url }. Open the app at that address, or set BROODSHELF_PUBLIC_URL to the one you use.
problem-keepers-only = Only a keeper of this household can do this.
problem-no-record = There is no such record in this household.
problem-no-place = There is no such place.
problem-no-place-yet = There is no such place. Let this phone sync first, then try again.
problem-no-person-yet = There is no such person in this household. Let this phone sync first, then try again.

## Phones, codes and sessions

problem-code-used-now = This code was used a moment ago.
problem-claim-code-ended = This code is not known, was used, or has ended. Ask whoever runs the server for a new one ('broodshelf pair', 'broodshelf household invite').
problem-signup-closed = This server takes no new households now. Ask whoever runs it.
problem-signup-code-needed = This server needs a code for a new household. Ask whoever runs it for an invitation.
problem-signup-address = Many households were begun from here today. Try again tomorrow, or ask whoever runs the server for an invitation.
problem-founding-incomplete = A new household needs your name, its own name and its time zone.
problem-too-many-phones-ask = Too many phones ask to be let in at this moment; try again soon.
problem-no-keeper = There is no such keeper in this household.
problem-pairing-over = This code has run out. Show a new one.
problem-pairing-used = This code was used already.
problem-pairing-unknown = No phone shows this code now. Codes last ten minutes.
problem-device-id-taken = This device id is taken; the phone should make a new one.
problem-device-revoked = A keeper has signed this phone out. What it has not sent can be exported.
problem-session-old = This session has ended because it was not used for long. Pair the phone again.
problem-person-removed = A keeper has removed you from this household.
problem-no-phone = There is no such phone in this household.
problem-one-of-two = Give either { $one } or { $other }.
problem-quota-address = Very much has come from this address within the hour. What is on this phone stays there and goes on by itself.
problem-quota-pass = This pass has sent as much as a pass may in a day. What is on this phone stays there and goes tomorrow, or with a new pass.
problem-quota-household = This household has sent as much as one may in a day. What is on this phone stays there and goes tomorrow.
# $most (number): how many there may be.
problem-room-records = This household keeps as many records as this server lets it ({ $most }). What is on this phone stays there and goes when there is room: delete what nobody needs, or ask whoever runs the server.
problem-room-pictures = This household keeps as many pictures as this server lets it ({ $most }). This one stays on this phone and goes when there is room: delete some, or ask whoever runs the server.
problem-room-mib = This household takes as much of the server’s disk as it may ({ $most } MiB). What is on this phone stays there and goes when there is room: ask whoever runs the server.
# On every keeper's phone from 80 % on. All are numbers.
room-nearly-full = This household has filled { $percent } % of its room on the server: { $records } of { $most_records } records, { $pictures } of { $most_pictures } pictures, { $mib } of { $most_mib } MiB. Nothing is lost; ask whoever runs the server for more before it is full.

## Passes and calendars

problem-no-pass = There is no such pass.
problem-no-pass-yet = There is no such pass. Let this phone sync first, then try again.
problem-pass-taken-back = This pass was taken back; make a new one.
problem-pass-taken-back-here = The keeper has taken this pass back. What this phone has not sent can be exported.
problem-pass-unknown = This pass is not known or was taken back. Ask the keeper for a new link.
# $on: a day in words.
problem-pass-ended = This pass ended on { $on }.
problem-pass-ended-still-taken = This pass ended on { $on }. What was logged until then is still taken.
problem-pass-over = This pass has ended or was taken back.
# $n (number): how many phones.
problem-pass-full = { $n } phones have opened this pass already. The keeper can remove one of them.
problem-no-feed = This calendar address is not known or has ended. Make a new one in the app.

## Mail and nudges

problem-mail-off = This server sends no mail; its owner can set that up (docs/self-hosting.md).
problem-no-mail-address = This is not an e-mail address that can be used, e.g. name@example.org.
problem-no-mail-code = No code is open for this person; ask for a new one.
problem-mail-code-over = This code has ended; ask for a new one.
problem-mail-code-wrong = This is not the code that was sent.
problem-not-subscribed = This phone does not listen yet; turn its nudges on first.
problem-push-too-long = This push address cannot be used: it is longer than { $most } characters.
problem-push-not-https = This push address cannot be used: it is not a plain https address on port 443.
problem-push-unknown = This push address cannot be used: it is not the address of a known push service. The server's owner can allow more push services.
problem-push-private = This push address cannot be used: its name leads into a private network.
problem-push-other-key = The phone listens with an older key of this server; subscribe again.
problem-push-taken = Another phone listens at this address; subscribe again for an address of your own.
# $n (number): how many phones.
problem-push-too-many = { $n } phones listen for you already; sign one of them out first.

## Pictures

problem-picture-slow = This picture takes too long to read.
problem-picture-not-now = The server could not look at this picture now.
problem-picture-busy = The server is busy with pictures.
problem-picture-scans = This picture is stored in too many scans.
problem-picture-unreadable = This is not a JPEG picture that can be read.
problem-picture-pixels = This picture has too many pixels.
problem-picture-damaged = The picture arrived damaged; send it again.
problem-pictures-full = This household's pictures fill their store; delete some, or ask who runs the server.
problem-picture-not-sent = This picture has not been sent by its phone yet.
problem-no-picture = There is no such picture in this household.
problem-picture-itself = Send the picture itself (Content-Type: image/jpeg).
# $most (number): bytes.
problem-picture-large = A picture may have at most { $most } bytes.

## Sensors and their tables

problem-broker-and-topic = Give both a broker and a topic, or neither.
problem-no-broker = The server listens to no broker of this name.
# $wanted: a filter of topics, such as shelf/#.
problem-topic-not-yours = Give one whole topic that matches { $wanted }.
# $most (number)
problem-too-many-sensors = A household has at most { $most } sensors. End one first.
problem-topic-taken = A sensor listens to this topic already.
problem-bad-token = Send a sensor's token that still holds ('Authorization: Bearer …'). House, Places makes new ones.
problem-no-sensor = There is no such sensor in this household.
# $line (number); $why: what the reader of tables says, in English.
problem-no-csv = Line { $line } is no CSV: { $why }. Save the file as CSV again.
# $n (number): how many columns; $name: what was asked for.
problem-no-such-column =
    { $n ->
        [0] No column is called '{ $name }'; name one of those in the first line.
        [one] { $n } column is called '{ $name }'; name one of those in the first line.
       *[other] { $n } columns are called '{ $name }'; name one of those in the first line.
    }
problem-name-a-column = Name the column of the temperature or of the humidity.

## Calculators and journeys

problem-holiday-days = Choose a day of return after the day of leaving, within a year.
problem-no-calculator = There is no such calculator.
# $why: in English, of a value that no formula takes.
problem-input-wrong = This cannot be reckoned with: { $why }.
# $calculator: its title. $name: what was sent.
problem-no-input = { $calculator } has no input { $name }.
problem-input-number = { $name } must be a number.
problem-input-choice = { $name } must be one of the choices.
problem-input-yes-no = { $name } must be yes or no.
# $what: what was asked for, e.g. "strength"; $unit: its unit.
problem-out-of-range = { $what } is { $value } { $unit }; it must lie between { $low } { $unit } and { $high } { $unit }.
# $choices: a list of codes.
problem-not-a-choice = { $name } is { $value }; it must be one of { $choices }.
# $mass, $volume (numbers): percent.
problem-parts-by = Say whether the parts are by mass ({ $mass } %) or by volume ({ $volume } %).

## Between the app and the server: for whoever writes programs against it. $where, $names: names of fields.

problem-no-json = The body is not the JSON that this address takes: { $why }.
problem-not-an-object = { $where } must be an object.
problem-body-not-an-object = The body must be a JSON object.
problem-not-a-list = '{ $where }' must be a list.
problem-not-a-uuid = '{ $where }' must be a UUID in lower case.
problem-address-not-a-uuid = The id in the address is not a UUID.
problem-not-a-whole-number = '{ $where }' must be a whole number from { $low } to { $high }.
problem-not-a-short-text = { $where } must be a short text.
problem-not-a-flag = { $where } must be true or false.
problem-not-a-pair = { $where } must hold [ms, device] each.
problem-empty-set = { $where } must be an object with at least one field.
problem-too-many-fields = { $where } has more than { $most } fields.
problem-wrong-cursor = 'cursor' must be what the last answer gave, or null.
problem-wrong-fields = These fields are wrong or missing: { $names }.
problem-wrong-auth-key = { $where } must be 16 bytes in base64url.
problem-wrong-point-key = { $where } must be an uncompressed P-256 point (65 bytes) in base64url.
problem-app-newer = This phone's app is newer than the server; update the server.
# $most (number)
problem-too-many-operations = At most { $most } operations a request; send the rest in the next one.
# $most (number)
problem-too-many-bytes = At most { $most } bytes are taken here.

## What an import or another server sent and what cannot be; phones say it by its code.

refused-one-household = A household has one record of itself, and it is there already.
refused-household-stays = The household itself cannot be deleted.
refused-let-in = People are added by letting a phone in or by a pass.
refused-no-role = A person is a keeper or a stand-in; this one is neither.
refused-last-keeper = The last keeper cannot be removed; let another keeper in first.

## Why a line of a sensor’s file cannot be read; said behind the number of the line.

problem-row-no-number = “{ $cell }” is no number.
problem-row-no-time = “{ $cell }” is no time as chosen.
problem-row-too-early = The time lies before the year 2000.
problem-row-not-a-number = It holds no number.
problem-row-nothing-measured = It holds neither a temperature nor a humidity.
problem-row-broken-temperature = The temperature is none that a place can have.
problem-row-broken-humidity = The humidity lies outside 0 to 100 %.
problem-row-too-old = It is too old.
problem-row-in-the-future = It lies in the future.
