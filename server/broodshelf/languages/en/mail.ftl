### What only a mail says. "House" is the screen of the app with people and phones.

# $code: six digits or so, typed into the app.
mail-code-title = { $code } is your code
mail-code-body = Type it into the app, and nudges come to this address, too. It holds for an hour. · If nobody in your household asked for it, do nothing: no more mail will come.
mail-foot = Mail is sent because this address was confirmed in Settings; a keeper can take it away there.
