## Who comes in: phones, mail, and what happened at the doors.

house-phones = Phones
house-this-one = { $phone } (this one)
house-last-seen = last seen { $when }
house-sign-out-other = Sign out { $name }?
house-new-phone = Let a new phone in
house-new-phone-hint = type the code that it shows
house-look-up = Find it
# $phone is what a new phone calls itself.
house-asks = { $phone } asks to join. Whose is it?
house-somebody-new = Somebody new
house-new-keeper = Name of the new keeper
house-let-in = The phone is let in
house-mail-title = Nudges by mail
house-mail-about = For whoever has no phone that takes nudges. An address counts once its code was typed in here.
house-mail-address = Address
house-mail-send = Send a code
house-mail-asked = A code went there. It holds for an hour.
house-mail-code = The code from the mail
house-mail-confirm = Confirm
house-mail-anew = Send another code
house-mail-comes = Nudges come here.
house-mail-remove = Take it away
house-mail-on = Nudges go there from now on
house-mail-removed = No more mail goes there
# $why is a short word of the mail server, or of this one, as it came.
house-mail-not-sent = The mail could not be sent: { $why }.
house-doors-title = What happened at the doors
house-doors-about = Phones, links and codes. The other keepers are told at once of a new phone, a link and an opened pass.
house-doors-offline = This is kept on the server, so it needs a connection.
house-doors-all = Show all { $count }
# What happened at the doors. The messages that end in -by-nobody are for somebody whose name is not known.
house-door-new-phone = New phone: { $phone }, for { $who }
house-door-new-phone-by-nobody = New phone: { $phone }, for somebody
house-door-phone-removed = { $who } signed out { $phone }
house-door-phone-removed-by-nobody = Somebody signed out { $phone }
house-door-person-removed = { $who } removed { $name }, with all phones
house-door-person-removed-by-nobody = Somebody removed { $name }, with all phones
house-door-way-back = Whoever runs the server made a link back in for { $who }
house-door-way-back-by-nobody = Whoever runs the server made a link back in for a keeper
house-door-link-made = { $who } made a link for { $pass }
house-door-link-made-by-nobody = Somebody made a link for { $pass }
house-door-pass-opened = { $pass }: the pass was opened on { $phone }
house-door-pass-ended = { $who } took back the pass of { $pass }
house-door-pass-ended-by-nobody = Somebody took back the pass of { $pass }
# $where is a code: claim, pass, pairing or mail.
house-door-wrong-codes = { $where ->
    [claim] { $count ->
        [one] { $count } wrong code for a way back in, typed by { $who }
       *[other] { $count } wrong codes for a way back in, typed by { $who }
      }
    [pass] { $count ->
        [one] { $count } wrong code for a pass, typed by { $who }
       *[other] { $count } wrong codes for a pass, typed by { $who }
      }
    [pairing] { $count ->
        [one] { $count } wrong code for a new phone, typed by { $who }
       *[other] { $count } wrong codes for a new phone, typed by { $who }
      }
   *[mail] { $count ->
        [one] { $count } wrong code for a mail address, typed by { $who }
       *[other] { $count } wrong codes for a mail address, typed by { $who }
      }
  }
house-door-wrong-codes-by-nobody = { $where ->
    [claim] { $count ->
        [one] { $count } wrong code for a way back in
       *[other] { $count } wrong codes for a way back in
      }
    [pass] { $count ->
        [one] { $count } wrong code for a pass
       *[other] { $count } wrong codes for a pass
      }
    [pairing] { $count ->
        [one] { $count } wrong code for a new phone
       *[other] { $count } wrong codes for a new phone
      }
   *[mail] { $count ->
        [one] { $count } wrong code for a mail address
       *[other] { $count } wrong codes for a mail address
      }
  }
house-door-export = Whoever runs the server wrote an export
house-door-import = Whoever runs the server brought in an export
house-door-restore = Whoever runs the server put a backup back
