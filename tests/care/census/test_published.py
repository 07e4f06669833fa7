"""The census's ways of life against what was published, each beside its source, and against closed forms."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from broodshelf.care.colony import census
from broodshelf.care.colony.census.colonies import Colonies
from broodshelf.care.colony.census.facts import Facts, Seen, Warmth
from broodshelf.care.colony.census.groups import LIFE_GROUPS, LifeGroup, StageTime, life_group
from broodshelf.care.colony.census.pace import pace

DAY = 20_600
LASIUS = LIFE_GROUPS["lasius"]


def founding_queen(
    temp_c: float, days: int, group: LifeGroup = LASIUS
) -> list[tuple[float, float, float, float]]:
    """Eggs, larvae, pupae and workers of one usual queen by the day, reckoned in steps of a day."""
    daily = replace(group, step_days=1)
    colony = Colonies(daily, [0.0])
    colony.set_rates([1.0], [0.5], [daily.eggs_per_worker], [500], [daily.most_eggs])
    colony.reserve, colony.starts_in = [20.0], [3.0]
    colony.reserve_rate = [20.0 / 13.5]
    here = pace(daily, temp_c, temp_c, 1)
    found = []
    for _ in range(days):
        colony.step(here, 1)
        eggs, small, large, pupae = (colony.total(stage)[0] for stage in range(4))
        found.append((eggs, small + large, pupae, colony.workers[0]))
    return found


def first(rows, stage: int) -> int:
    """The day on which the first is there with even odds: ln 2 of them expected."""
    return next(day for day, row in enumerate(rows, 1) if row[stage] >= math.log(2))


def test_a_black_garden_ants_founding_goes_by_the_calendar_that_was_watched():
    # Lasius niger, unfed, 25 °C: eggs day 3, larvae 15-18, cocoons 21-24, workers almost 40
    # (Matte & Billen 2021, second-hand); 10 % each
    rows = founding_queen(25, 70)

    assert first(rows, 0) == pytest.approx(3.5, abs=1)
    assert 15 * 0.9 <= first(rows, 1) <= 18 * 1.1
    assert 21 * 0.9 <= first(rows, 2) <= 24 * 1.1
    assert first(rows, 3) == pytest.approx(39.5, rel=0.1)


def test_a_founders_eggs_grow_in_number_until_larvae_hatch_and_then_fall_faster_than_larvae_rise():
    # the same watch: after day 21 eggs fall faster than larvae rise
    rows = founding_queen(25, 60)
    eggs, larvae = [row[0] for row in rows], [row[1] for row in rows]
    most = eggs.index(max(eggs)) + 1

    assert 13 <= most <= 20
    assert eggs[20] - eggs[27] > larvae[27] - larvae[20]


def test_black_garden_ants_do_not_pupate_at_17_degrees_though_eggs_develop():
    # Kipyatkov et al. 2004, abstract
    rows = founding_queen(17, 180)

    assert max(row[2] for row in rows) == 0
    assert max(row[1] for row in rows) > 1


@pytest.mark.parametrize(("temp_c", "low", "high"), [(22, 52, 58), (23, 46, 50), (24, 42, 46)])
def test_cooler_founders_take_as_long_as_degree_days_say(temp_c, low, high):
    # the same 37 days as degree-days above 13 to 15 °C: first workers on day 52 to 56 at 22 °C, 47 to 49 at 23,
    # 43 to 44 at 24 (computed from that watch)
    assert low <= first(founding_queen(temp_c, 90), 3) <= high


def test_in_the_cold_eggs_and_pupae_fade_within_weeks_and_larvae_live():
    # Lasius niger put at about 5 °C in summer: eggs, prepupae, pupae dead in 1 to 3 weeks, larvae live (Lopatina 2018)
    colony = Colonies(LASIUS, [40.0])
    colony.rows = [*[2.0] * (colony.width - 1), 0.0]
    larvae = colony.total(1)[0] + colony.total(2)[0]
    cold = pace(LASIUS, 5, 5, LASIUS.step_days)
    for _ in range(21 // LASIUS.step_days):
        colony.step(cold, LASIUS.step_days)

    assert colony.total(0)[0] + colony.total(3)[0] < 0.1 * 20
    assert colony.total(1)[0] + colony.total(2)[0] == pytest.approx(larvae)


def test_old_larvae_wait_through_the_slow_season_and_pupate_after_a_rest():
    # Myrmica rubra: development restarts after at least three weeks of cold (Pearson & Raybould 1997, abstract)
    group = life_group("myrmica")
    counted = (
        Seen(DAY, "workers", number=40.0),
        Seen(DAY, "larvae", word="many"),
        Seen(DAY, "pupae", word="none"),
    )
    told = {"group": group, "known_day": DAY, "seen": counted, "slow": ((DAY - 10, DAY + 400),)}
    warm = Facts(warmth=(Warmth(DAY, 22, 22),), **told)
    rested = Facts(
        warmth=(Warmth(DAY, 22, 22), Warmth(DAY + 20, 5, 5), Warmth(DAY + 60, 22, 22)),
        rests=((DAY + 20, DAY + 60),), **{**told, "slow": ((DAY - 10, DAY + 60),)},
    )  # fmt: skip

    kept_warm, after_rest = (census.of(facts, DAY).on(DAY + 80).pupae.best for facts in (warm, rested))
    assert after_rest > 4 * kept_warm


@pytest.mark.parametrize("temp_c", [21, 24, 28, 30])
def test_the_argentine_ants_way_is_the_measured_one(temp_c):
    # Abril, Oliveras & Gómez 2010, stage by stage, second-hand: fixtures/published/brood_argentine_ant.json
    measured = {21: 31.8 + 103.8 + 25.6, 24: 20.3 + 64.9 + 16.2, 28: 16.0 + 43.0 + 9.0, 30: 15.7 + 37.5 + 8.0}
    group = LIFE_GROUPS["linepithema"]
    here = pace(group, temp_c, temp_c, 1)

    way = sum(steps / share for steps, share in zip(group.chain, here.moves, strict=True))
    assert way == pytest.approx(measured[temp_c], rel=0.04)


def test_myrmica_develops_3_1_times_faster_ten_degrees_warmer():
    # Elmes & Wardlaw 1983, 15 to 25 °C, abstract
    group = LIFE_GROUPS["myrmica"]

    assert pace(group, 25, 25, 1).moves[3] / pace(group, 15, 15, 1).moves[3] == pytest.approx(3.1, abs=0.05)


def test_fire_ants_grow_by_0_04_a_day_in_their_first_summer():
    # 15-20 to about 7,000 workers from early May to autumn (Markin, Dillier & Collins 1973, abstract; 150 days and
    # 27 °C assumed)
    group = LIFE_GROUPS["solenopsis"]
    here = pace(group, 27, 27, group.step_days)
    colony = Colonies(group, [17.3])
    low, high = group.life_days
    colony.set_rates([1.0], [0.5], [group.eggs_per_worker], [math.sqrt(low * high)], [group.most_eggs])
    sizes = []
    for _ in range(110 // group.step_days):
        colony.step(here, group.step_days)
        sizes.append(colony.workers[0])

    days = (len(sizes) - 30) * group.step_days
    assert math.log(sizes[-1] / sizes[29]) / (days - group.step_days) == pytest.approx(0.040, rel=0.12)


def test_a_whole_life_levels_off():
    # lives are nearer to logistic than to exponential (Tschinkel 1988, abstract); the level is laying x survival x life
    # (Cassill & Asano 2011, told as laying x life)
    group = replace(LIFE_GROUPS["solenopsis"], most_eggs=100)
    here = pace(group, 25, 25, 2)
    colony = Colonies(group, [20.0])
    colony.set_rates([1.0], [0.5], [group.eggs_per_worker], [85], [100])
    sizes = []
    for _ in range(600):
        colony.step(here, 2)
        sizes.append(colony.workers[0])

    assert sizes[-1] == pytest.approx(100 * 0.5 * 85, rel=0.01)
    assert sizes[100] - sizes[50] > sizes[50] - sizes[0] > 0
    assert sizes[-1] - sizes[-100] < 0.01 * sizes[-1]


def straight(way_days: float) -> LifeGroup:
    """A group whose whole way takes so long at 25 °C, in steps of a day."""
    stages = [StageTime(5, 20 * way_days * share) for share in (0.3, 0.3, 0.4)]
    return LifeGroup(
        "straight", *stages, spread=1.2, low_c=20, high_c=30, first_brood=(5, 20), life_days=(100, 400),
        eggs_per_worker=0.2, most_eggs=1e12, step_days=1, source="made up",
    )  # fmt: skip


@pytest.mark.parametrize(("day", "workers"), [(100, 579), (200, 1315), (365, 2164)])
def test_constant_laying_fills_a_colony_as_its_closed_form_says(day, workers):
    # N(t) = R s L (1 - exp(-(t - D) / L)), R 20/d, s 0.5, D 37 d, L 365 d (computed)
    group = straight(37)
    colony = Colonies(group, [0.0])
    colony.set_rates([1.0], [0.5], [0.0], [365], [1.0])
    colony.reserve, colony.reserve_rate = [1e9], [20.0]
    here = pace(group, 25, 25, 1)
    for _ in range(day):
        colony.step(here, 1)

    assert colony.workers[0] == pytest.approx(workers, rel=0.01)


@pytest.mark.parametrize(
    ("born", "way", "life", "rate"),
    [(0.188, 30, 60, 0.0400), (0.10, 37, 365, 0.0301), (0.10, 37, 60, 0.0242), (0.05, 60, 365, 0.0162)],
)
def test_early_growth_is_the_root_of_its_equation(born, way, life, rate):
    # r + m = b exp(-r D) (computed; the first row agrees with Markin et al. 1973)
    group = straight(way)
    colony = Colonies(group, [1000.0])
    colony.set_rates([1.0], [0.5], [born / 0.5], [life], [1e30])
    here = pace(group, 25, 25, 1)
    sizes = []
    for _ in range(800):
        colony.step(here, 1)
        sizes.append(colony.workers[0])

    assert math.log(sizes[-1] / sizes[-201]) / 200 == pytest.approx(rate, rel=0.01)


@pytest.mark.parametrize("group", LIFE_GROUPS.values(), ids=lambda group: group.code)
def test_the_chain_spreads_a_brood_as_single_ants_do(group):
    # CV of the way within a colony 0.15 (Fowler et al. 1993: 25 to 54 days as extremes); a chain of k steps of which a
    # share p moves on has a variance of k (1 - p) / p^2
    here = pace(group, group.usual_c, group.usual_c, group.step_days)
    pairs = list(zip(group.chain, here.moves, strict=True))
    mean = sum(steps / share for steps, share in pairs)
    variance = sum(steps * max(0.0, 1 - share) / share**2 for steps, share in pairs)

    assert 0.07 <= math.sqrt(variance) / mean <= 0.21
