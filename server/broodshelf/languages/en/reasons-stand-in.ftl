### Steps for a stand-in who never saw a tube of ants. Short sentences, everyday words, no words of the trade.
### They name one button: 'Something is wrong' must read as on it (history-kind-fault).

reason-tube-step-still = Leave the tube where it lies: do not lift, tilt, open or shake it.
reason-tube-step-find = Find the white plug inside the tube. The ants live on one side of it, the water stands on the other.
reason-tube-step-good = Clear water touches the plug: all is well. You need not fill anything up.
reason-tube-step-bad = No water is left behind the plug, or there is water where the ants are: tap 'Something is wrong', and call.
reason-nest-step-look = Look from outside, without opening anything: is the damp end still darker than the dry one? Then all is well.
reason-nest-step-place = Find where the water goes in: an opening, a tray or a sponge outside the chambers. If you cannot find it, call.
reason-nest-step-drip-ml = Draw up { VOLUME($ml) } of plain water at room temperature, and let it run in slowly.
reason-nest-step-drip = Let a little plain water at room temperature run in slowly, until the sponge or the plaster there is dark.
reason-nest-step-stop = Stop as soon as it no longer soaks in.
reason-nest-step-bad = Water stands where the ants are, or the nest is dry and pale all over: tap 'Something is wrong', and call.
reason-helper-call = Do not open, move or shake anything, and give nothing extra. Call, and say what you see.
reason-helper-wet = Until then lay kitchen paper around it, so that nothing runs into other nests.
reason-helper-escape = Until then close the lid, and the door of the room. Brush runners softly into a closed box; never outdoors.
reason-helper-fridge = Close the door of the fridge. If it is closed, see whether the fridge runs.
reason-helper-heater = Until then switch the heating of the shelf off, and draw the curtain if the sun shines on it.
reason-helper-dead = Kill it first: nothing live goes in while the keeper is away.
reason-helper-glance = Look from outside for a moment, without opening, lifting or shaking anything. Do they move calmly?

# How to give food. The portion, for example '2 drops of sugar water', stands above the steps.
reason-drop-step-take = Take the bottle from where the keeper keeps it, and a clean dropper. Let it come to room temperature: never hot.
reason-drop-step-place = Open the feeding box only, never the nest. Set the drops on the little dish or foil in it, not on an ant.
reason-drop-step-small = Give no more than it says here, and no larger drops: small ants drown in them.
reason-feeder-step-out = Lift the feeder out with tweezers. Brush ants off it softly, back into the box.
reason-feeder-step-fill = Rinse it with plain water, and fill it with what is named above. At room temperature: never hot.
reason-feeder-step-back = Put it back where it stood, level, so that nothing drips.
reason-prey-step-take = Take it from the freezer or the box that the keeper showed you, and let it thaw for ten minutes. It must be dead.
reason-prey-step-cut = Cut it once through the middle, on paper, so that the ants get at the soft inside.
reason-prey-step-place = Open the feeding box only. Lay it near the way to the nest with tweezers, on a dry spot.
reason-seed-step-take = Take dry seeds from the keeper's bag, no others: bought birdseed may be treated.
reason-seed-step-place = Drop them into the feeding box, on a dry spot far from the water.
reason-leaf-step-take = Cut leaves from the plant that the keeper showed you, no others: sprayed leaves kill the colony.
reason-leaf-step-rinse = Rinse them with cold water, and shake them dry.
reason-leaf-step-place = Lay them into the feeding box, and take the dry ones of last time out.
reason-piece-step-take = Take it from where the keeper keeps it, and cut it as small as it says above.
reason-piece-step-place = Open the feeding box only. Lay it on the little dish or foil in it, on a dry spot.
reason-food-step-only = Nothing else: insects that were caught and food from the kitchen may carry poison.
reason-food-step-close = Close the lid at once, and look whether an ant is outside.
reason-food-step-bad = Many ants lie still, ants are outside, or you are not sure? Leave it closed, and call.

# How to take leftovers out.
reason-left-step-find = Look where food was put: what is dry, dark or furry, empty skins, sticky drops.
reason-left-step-take = Open the feeding box only. Lift it out with tweezers; wipe a sticky spot with damp paper.
reason-left-step-held = Do ants hold on to it? Leave it for an hour, and never pull.
reason-left-step-bin = Put it into a closed bin, not onto the compost. Close the lid at once.

# How to look at the barrier: the slippery rim that keeps the ants in.
reason-barrier-step-look = Look at the rim of the feeding box from outside, all the way round.
reason-barrier-step-bridge = Does a hair, a leaf or cotton lie across it? Lift that away with tweezers.
reason-barrier-step-still = Do not touch the rim, and put nothing new on it.
reason-barrier-step-bad = Ants walk on the rim or are outside: tap 'Something is wrong', and call.

# How to take a look, to air the fridge box of a resting colony, and to watch a colony after doubtful food.
reason-glance-step-calm = Some ants move, most sit together: all is well.
reason-glance-step-bad = Many lie still, many run about, or an ant is outside: tap 'Something is wrong', and call.
reason-air-step-open = Open the box in the fridge for one minute, with the door of the fridge open no longer than that.
reason-air-step-still = Do not take the ants out, and do not warm them in your hand. They sleep: it is well if nothing moves.
reason-air-step-close = Close the box and the fridge, and look whether the door is shut.
reason-risk-step-signs = They may have got bad food. Count how many lie still, or walk as if drunk.
reason-nest-step-still = You need not open it, nor fill anything up.
reason-helper-tell = Say which colony it is, what you see, and since when. A picture helps.
