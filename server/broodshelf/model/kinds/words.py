"""The words that fields choose from."""

from __future__ import annotations

from typing import Final, Literal, get_args

Stage = Literal["founding", "nanitics", "growing", "mature"]
Condition = Literal[
    "well", "settling", "resting", "queenless_suspected", "quarantine", "given_away", "dead"
]  # fmt: skip
NO_LONGER_KEPT: Final[tuple[Condition, ...]] = ("given_away", "dead")
"""Nothing is asked or offered for a colony of these."""
FoundingMode = Literal["claustral", "semi_claustral", "parasitic"]
Guild = Literal["omnivore", "predator", "harvester", "honeypot", "fungus_grower"]
PlaceType = Literal["cabinet", "room", "cellar", "fridge"]

Origin = Literal[
    "bought_or_bred",
    "home_cockroach",
    "wild_web_spider",
    "wild_hunter",
    "wild_insect",
    "garden_fruit",
    "shop_fruit",
    "hot_syrup",
    "home_mixed",
    "unknown",
]
ServedAs = Literal["whole_dead", "cut", "stunned", "live", "drop", "feeder", "crushed", "whole", "piece"]
Unit = Literal["drop", "ml", "piece", "leg", "slice", "mg", "seed", "leaf"]
SizeClass = Literal["tiny", "extra_small", "small", "medium", "large"]
Tint = Literal["blue", "green", "yellow", "red"]

WaterReading = Literal["full", "three_quarters", "half", "quarter", "empty"]
WaterAction = Literal["read", "refill", "new_tube", "hydrate"]
Outcome = Literal["all", "some", "ignored"]
ColourSeen = Literal["gasters", "brood"]
Coarse = Literal["none", "few", "some", "many"]
BroodSeen = Literal["none", "seen", "few", "some", "many"]
"""``seen``: some is there, and nobody said how much."""
Brood = Literal["eggs", "larvae", "pupae"]
MoveWay = Literal["offered", "on_its_own", "forced", "finished"]
PersonRole = Literal["keeper", "stand_in"]
Degrees = Literal["c", "f"]
Volumes = Literal["ml", "floz"]

STAGES: Final[tuple[str, ...]] = get_args(Stage)
FOUNDING_MODES: Final[tuple[str, ...]] = get_args(FoundingMode)
GUILDS: Final[tuple[str, ...]] = get_args(Guild)
ORIGINS: Final[tuple[str, ...]] = get_args(Origin)
FORMS: Final[tuple[str, ...]] = get_args(ServedAs)
UNITS: Final[tuple[str, ...]] = get_args(Unit)
SIZE_CLASSES: Final[tuple[str, ...]] = get_args(SizeClass)
WATER_READINGS: Final[tuple[str, ...]] = get_args(WaterReading)
OUTCOMES: Final[tuple[str, ...]] = get_args(Outcome)
COLOUR_SEEN: Final[tuple[str, ...]] = get_args(ColourSeen)
