### 'broodshelf doctor': what was looked at, and how it stands. It reads as "about: what was found".
### Names of settings (BROODSHELF_…), commands in quotes and paths are not translated.

## How it stands: a mark before each line.

doctor-good = good
doctor-look = look
doctor-bad = BAD

## What was looked at.

doctor-about-data-folder = data folder
doctor-about-disk = disk
doctor-about-revoked = revoked phones and passes
doctor-about-marks = marks
doctor-about-set-aside = set aside
doctor-about-database = database
doctor-about-database-role = database role
doctor-about-households = households
doctor-about-history = history
doctor-about-push-key = push key
doctor-about-nudger = nudger
doctor-about-mail = mail
doctor-about-proxy = proxy
doctor-about-public-address = public address
doctor-about-certificate = certificate
doctor-about-server = server
doctor-about-clock = clock

## What was found.

doctor-folder-missing = { $path } is not there yet; the first start makes it
doctor-folder-good = { $path } can be written
doctor-folder-locked = { $path } cannot be written by this user; change its owner
# $mib (number): mebibytes.
doctor-disk = { $mib } MiB are free; a full disk refuses logs
# $n (number): lines.
doctor-revoked-unreadable =
    { $n ->
        [one] { $n } line
       *[other] { $n } lines
    } of { $path } cannot be read; the next start keeps a copy and all that can be read. Before you restore an older backup, put the file back from the newest one
doctor-mark-unreadable = { $path } cannot be read; at the next start its phones get everything anew
doctor-was-set-aside = { $path } was damaged and set aside; look at it, keep it or take it away
doctor-database-gone = it is missing, though a shelf was here; 'broodshelf restore FILE' puts a backup back
doctor-database-none = there is none yet; the first start makes it
doctor-database-silent = it does not answer: { $error }; is it running?
doctor-database-damaged = it is damaged ({ $path }): keep the file, then restore a backup
doctor-database-unsound = it is damaged: { $found }; restore a backup
doctor-database-schema = its schema is { $at }, this version wants { $head }; 'broodshelf migrate' mends that
doctor-database-empty = its schema is empty, this version wants { $head }; 'broodshelf migrate' mends that
# $n (number): tables.
doctor-database-good = it answers, { $n } tables at schema { $at }
doctor-role-free = this role may pass row-level security; give the server one of its own (docs/self-hosting.md)
doctor-role-good = row-level security holds it to one household at a time
# $n (number): households.
doctor-households = { $n } on this server
# $n (number): changes; $households (number); $kib (number): kibibytes of each.
doctor-history =
    { $households ->
        [one] within a year { $n } changes came from { $households } household; with history and answers about { $kib } KiB of texts, indexes on top (thinned after 400 days: self-hosting.md)
       *[other] within a year { $n } changes came from { $households } households; with history and answers about { $kib } KiB of texts each, indexes on top (thinned after 400 days: self-hosting.md)
    }
# $n, $households, $kib (numbers) as above; $looked (number): households that were looked at.
doctor-history-some = within a year about { $n } changes came from about { $households } households, reckoned from { $looked } of them; with history and answers about { $kib } KiB of texts each, indexes on top (thinned after 400 days: self-hosting.md)
doctor-key-none = there is none yet; the first start makes it
doctor-key-wrong = { $file } does not hold a P-256 key in PEM; put the old one back from the backup, or the next start makes a new one, which no phone hears yet
# $n (number): phones.
doctor-key-changed =
    it was changed: { $n ->
        [one] { $n } phone hears nothing until the app is opened on it
       *[other] { $n } phones hear nothing until the app is opened on them
    }; better put the old { $file } back from the backup
doctor-key-good = { $key }…, readable by its owner only
doctor-key-sealed = { $key }…, sealed in the database
doctor-nudger-never = it has never run here; 'broodshelf serve' runs one
# $s (number): seconds.
doctor-nudger-ahead = it last ran { $s } s in the future: this machine's clock was set back
doctor-nudger-good = it ran { $s } s ago and nothing waits
doctor-nudger-late = it last ran { $s } s ago, or nudges wait; is 'broodshelf serve' running?
doctor-mail-refused = { $server } does not take us: { $error }; see BROODSHELF_SMTP_*
doctor-mail-good = { $server } takes our mail
# $n (number): how many proxies stand in front.
doctor-proxy-good = the visitor's address is believed from { $n } in front
doctor-proxy-none = BROODSHELF_TRUSTED_PROXY_HOPS is 0, so all visitors of the https address share one limit; set it to 1
doctor-address-good = { $url } is https, as phones need
doctor-address-local = { $url } works on this machine only; phones need https (docs/self-hosting.md)
doctor-server-silent = { $url } does not answer as this server would from here ({ $error })
doctor-server-other = { $url } is answered by something else (version { $version }, here { $here })
doctor-server-good = version { $version } answers at { $url }
doctor-server-unwell = it says itself that it is not well: { $told }
# $s (number): seconds.
doctor-clock = the server's clock and this one differ by { $s } s
# $n (number): days.
doctor-certificate-good =
    { $n ->
        [one] trusted by this machine, { $n } day left
       *[other] trusted by this machine, { $n } days left
    }
doctor-certificate-short = trusted by this machine; it lasts days or hours and is renewed by the proxy, as from an authority of your own
# $n (number): days.
doctor-certificate-late =
    { $n ->
        [one] only { $n } day left, and nobody renewed it
       *[other] only { $n } days left, and nobody renewed it
    }; look into the proxy's log: ports 80 and 443 of the name must reach it (docs/https.md)
doctor-certificate-name = nobody here knows the name { $host }; set it with who gave you the name, or in your router (docs/https.md)
doctor-certificate-port = { $host } does not answer on port { $port } from here; is the proxy running, and does the router lead the port to it?
doctor-certificate-plain = { $host } speaks plain http on port { $port }: put a proxy with a certificate in front (docs/https.md)
doctor-certificate-expired = the certificate of { $host } has expired, or this machine's clock is wrong; the proxy must renew it
doctor-certificate-other-name = the certificate is for another name than { $host }; give the proxy this name, or set BROODSHELF_PUBLIC_URL to its
doctor-certificate-authority = this machine does not know who signed the certificate of { $host }; phones know it only where you installed your own authority (docs/https.md, the fifth way)
doctor-certificate-hello = { $host } broke off on port { $port } before it showed a certificate; look into the proxy's log
