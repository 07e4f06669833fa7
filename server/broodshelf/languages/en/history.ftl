## The past of a record: names of fields and values, who changed what, and what went.

history-offline = The history is kept on the server, so this needs a connection.
history-again = Try again
history-unsent = Not sent yet. Its history begins with the next connection.
history-somebody = Somebody

# Stands behind a name: “Anna noted it”.
history-made = { $who } noted it
history-changed = { $who } changed it
history-out = { $who } deleted it
history-back = { $who } brought it back

# The value that stood there before.
history-was = before: { $value }
history-not-stood = { $field }: “{ $value }” did not stand: a change on another phone was later.
history-bring = Bring “{ $value }” back
history-clear = Leave it empty again
history-brought = Brought back

history-gone-title = What went
history-gone-about = What was deleted or voided last. Each can be taken back, with all that was in it.
history-gone-none = Nothing was deleted.
history-gone-take-back = Take it back
history-gone-back = { $what } is back

# Who deleted it, and when.
history-gone-by = { $who }, { $when }
