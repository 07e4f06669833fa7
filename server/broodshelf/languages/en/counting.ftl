# Counting ants on a picture: dots that the phone proposes and a person puts right; a strip of pictures over months.
counting-open = Count on a picture
counting-again = Look at the count again
counting-looking = Looking for ants…
counting-range = Likely { $low } to { $high }, at least { $least }
counting-crowded = They sit too close for all to be seen: at least { $least }, likely { $low } to { $high }
counting-brood = Brood: { $count }
counting-plain = How plain an ant must be
counting-tap = A tap sets
counting-sets-worker = Ants
counting-sets-brood = Brood
counting-sets-frame = Frame
counting-sets-size = Size
counting-hint-worker = Tap an ant that has no dot; tap a dot to take it away.
counting-hint-brood = Tap brood that has no dot; tap a dot to take it away.
counting-hint-frame = Drag both corners around what counts.
counting-hint-size = Put both ends on something whose length is known.
counting-spans = Between the ends lies
counting-spans-worker = One worker
counting-spans-bore = The inside of the tube
counting-spans-length = A length in mm
counting-length = Length in mm
counting-corner = { $which ->
    [first] Upper left corner
   *[other] Lower right corner
  }
counting-end = { $which ->
    [first] One end
   *[other] Other end
  }
counting-picture = Picture with { $count } dots. Page up and page down step through them, arrow keys move the chosen one, Delete takes it away, Enter sets one.
counting-dot = Dot { $at } of { $count }: { $what ->
    [brood] brood
   *[worker] worker
  }{ $sure ->
    [no] , not sure
   *[yes] {""}
  }
counting-previous = Dot before
counting-next = Next dot
counting-take-away = Take this dot away
counting-nearer = Larger
counting-farther = Smaller
counting-whole = The whole picture
counting-part = Only a part of the nest is to be seen
counting-pale = The ants are paler than their ground
counting-keep = Keep this count
counting-kept = The count is kept.
counting-failed = This picture could not be looked at. Dots can be set by hand.
counting-heic = This browser does not read HEIC pictures, and nothing was kept. Set the camera to JPEG, or save the picture as JPEG, then choose it again.
counting-growth = Growth in pictures
counting-film = Share as a film
counting-strip = Share side by side
counting-making = One moment…
counting-still = This phone makes no films; share the pictures side by side.
counting-shown = Show the dots
counting-few = Count on two pictures or more, and they stand here side by side.
