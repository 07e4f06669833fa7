### What can hurt a person or a colony. What is always shown, and with a tap `.more`.

caution-stings = This species stings.
    .more = Allergic people need help from others here; trouble breathing, swelling, faintness or vomiting after a sting: call your emergency number at once.
caution-blade = Cut prey on a board, away from the fingers.
caution-dead-only = Only freshly killed prey: in a tube nothing live, ever.
caution-never-tilt = Never tilt or turn this nest: the repletes hang from the ceiling and are the store.
caution-sting-allergy = Stings of this kind are known for severe allergic reactions.
    .more = Lay the person flat, use an adrenaline injector if there is one, and call your emergency number. Do not work on this colony alone.
caution-bites = Large workers bite through skin: use tweezers or a brush, not fingers.
caution-tint = Food colour: blue without carmine, the weakest tint that shows, one colony, one day, with undyed sugar water beside it.
    .more = No published strength, fading time or safety test for ants was found, and keepers tell of deaths with a red one (common practice, no source).
caution-sprays = It sprays formic acid: keep your eyes away from the opening and air the room.
