### Steps for a stand-in who never saw a tube of ants. Short sentences, everyday words, no words of the trade.
### They name the buttons: Done and Something is wrong must read as on the buttons.

reason-tube-step-still = Leave the tube where it lies: do not lift, tilt, open or shake it.
reason-tube-step-find = Find the white plug inside the tube. The ants live on one side of it, the water stands on the other.
reason-tube-step-good = Clear water touches the plug: all is well, tap Done. You need not fill anything up.
reason-tube-step-bad = No water is left behind the plug, or there is water where the ants are: tap 'Something is wrong', and call.
reason-nest-step-look = Look from outside, without opening anything: is the damp end still darker than the dry one? Then tap Done.
reason-nest-step-place = Find where the water goes in: an opening, a tray or a sponge outside the chambers. If you cannot find it, call.
reason-nest-step-drip-ml = Draw up { VOLUME($ml) } of plain water at room temperature, and let it run in slowly.
reason-nest-step-drip = Let a little plain water at room temperature run in slowly, until the sponge or the plaster there is dark.
reason-nest-step-stop = Stop as soon as it no longer soaks in. Then tap Done.
reason-nest-step-bad = Water stands where the ants are, or the nest is dry and pale all over: tap 'Something is wrong', and call.
reason-helper-call = Do not open, move or shake anything, and give nothing extra. Call, and say what you see.
reason-helper-wet = Until then lay kitchen paper around it, so that nothing runs into other nests.
reason-helper-escape = Until then close the lid, and the door of the room. Brush runners softly into a closed box; never outdoors.
reason-helper-fridge = Close the door of the fridge. If it is closed, see whether the fridge runs.
reason-helper-heater = Until then switch the heating of the shelf off, and draw the curtain if the sun shines on it.
reason-helper-dead = Kill it first: nothing live goes in while the keeper is away.
reason-helper-glance = Look from outside for a moment, without opening, lifting or shaking anything. Do they move calmly? Then tap Done.
