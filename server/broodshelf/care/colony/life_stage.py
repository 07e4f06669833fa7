"""At which stage of its life a colony is, and what its queen may be fed. What was counted goes before what was said.

The one owner of the question. Common practice, no source.
"""

from __future__ import annotations

from typing import Final, Literal

from ...model.facts import ColonyState
from ..catalogue import Species

LifeStage = Literal["unknown", "claustral", "semi_claustral", "parasitic", "alone", "empty", "workers"]
"""``unknown``: neither a stage nor workers are known. ``claustral``, ``semi_claustral``, ``parasitic``: a queen that
founds, without workers. ``alone``: a queen without workers who is past founding, her reserves spent. ``empty``: neither
queen nor workers. ``workers``: a colony that feeds itself."""
NOT_FED: Final = frozenset({"claustral", "empty"})
QUEEN_FED: Final = frozenset({"semi_claustral", "parasitic", "alone"})
"""A queen by herself that eats."""
FOUNDING: Final = frozenset({"claustral", "semi_claustral", "parasitic"})
PAST_FOUNDING: Final = frozenset({"nanitics", "growing", "mature"})
NANITICS_UP_TO: Final = 25
"""As many workers as a founding queen raises by herself, at most."""
NANITIC_STAGE_UP_TO: Final = 100
"""With more workers most of them are no nanitics, whatever the stage still says."""


def life_stage(
    state: ColonyState, species: Species, workers: float | None, *, queens: int | None, lost_workers: bool
) -> LifeStage:
    """Return the stage of a colony. ``workers`` None: neither counted nor told by the stage.

    ``lost_workers``: some were counted before. A count of none while the stage says that there are some is believed:
    then her reserves are spent.
    """
    if workers is None:
        return "unknown"
    if workers > 0:
        return "workers"
    if queens == 0 and not species.gamergates:
        return "empty"
    mode = founding_mode(state, species)
    if mode == "parasitic":
        return "parasitic"
    if lost_workers or state.stage in PAST_FOUNDING:
        return "alone"
    return "semi_claustral" if mode == "semi_claustral" else "claustral"


def founding_mode(state: ColonyState, species: Species) -> str:
    """Return how the colony's queen founds: the keeper's word, else the species'."""
    return state.founding_mode or species.founding


def has_nanitics(state: ColonyState, workers: float | None) -> bool:
    """Say whether the workers are nanitics: by the stage, or by their number while the colony is founding."""
    if state.stage == "nanitics":
        return workers is None or workers <= NANITIC_STAGE_UP_TO
    return state.stage == "founding" and workers is not None and 0 < workers <= NANITICS_UP_TO
