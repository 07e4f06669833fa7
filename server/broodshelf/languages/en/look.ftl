## Every part that the screens are made of, on one page.

look-title = How it looks
look-about = Every part that the screens are made of, in the light that you choose.
look-gauge = The gauge
look-colour = Colour
look-type = Type
look-buttons = Buttons
look-chips = Chips
look-stepper = Stepper
look-states = Saved, synced, attention
look-empty = A calm state
look-skeleton = Before it is there
look-sheet = Sheet
look-toast = Toast
look-icons = Icons
look-open-sheet = Open a sheet
look-show-toast = Show a toast
