## What was refused, and where two phones met.

attention-title = For your attention
attention-none = Everything on this phone has been sent.
attention-export = Export all of these
attention-met = { $name }: changed on two phones

# What stands on this phone, and what somebody wrote on another one; $when is a day with its time.
attention-values = { $field }: here “{ $here }”, { $who } “{ $there }” { $when }.
attention-other-phone = another phone
attention-theirs = The other one was later and stands.
attention-mine = Yours was later and stands.
attention-leave = Leave it so
attention-bring = Bring mine back
attention-damaged = Damaged entry
attention-drop = Drop it
attention-sure = Drop this for good? Export it first if you are not sure.
attention-mend = Send it again
attention-again = Send again
attention-again-why = If what it belongs to was taken back meanwhile, it can be sent again.

attention-code-not-allowed = This phone may not do this.
attention-code-outside-pass = This lies outside the pass: another colony, or another day.
attention-code-missing-field = Something is missing.
attention-code-unknown-field = The server does not know this field.
attention-code-unknown-kind = The server does not know this kind of log.
attention-code-failed = The server failed on this one. It is kept here and nothing waits for it: write it again, or export it.
attention-code-kind-differs = The server has something else under this id.
attention-code-too-large = This is too long.
attention-code-last-keeper = The last keeper cannot be removed; let another keeper in first.
attention-code-purged = This was deleted long ago and is not kept any more.
attention-code-parent-missing = What this belongs to is not on the server any more.
