"""Any order, lost answers, wrong clocks: all phones end up alike, each log there exactly once, and nothing is refused.

The search of ``test_world.py`` does more and worse; here nobody does anything that a server may refuse.
"""

from __future__ import annotations

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from tests.support.world import World

pytestmark = pytest.mark.long

steps = st.lists(
    st.tuples(
        st.sampled_from(["log", "rename", "amend", "void", "unvoid", "sync", "lose", "page"]),
        st.integers(0, 2),
        st.integers(0, 3),
    ),
    min_size=1,
    max_size=40,
)


@settings(max_examples=20, deadline=None, suppress_health_check=list(HealthCheck))
@given(steps=steps, clocks=st.lists(st.integers(-26, 26), min_size=3, max_size=3))
def test_phones_converge_and_nothing_is_refused(sqlite_house, steps, clocks):
    world = World(sqlite_house, len(clocks))
    try:
        for who, hours in enumerate(clocks):
            world.step("skew", who, hours)
        for name, who, which in steps:
            match name:
                case "sync" | "lose":
                    world.step(name, who)
                case "page":
                    world.step(name, who, which + 1)
                case _:
                    world.step(name, who, which)
        world.check()

        written = {op_id for phone in world.phones for op_id in phone.disk()["written"]}
        assert written == world.acknowledged.keys()
        assert not world.rejected
    finally:
        world.close()
