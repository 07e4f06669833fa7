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
    """Eggs, larvae, pupae and workers of a founding by the day after the flight, as the census says them."""
    said = census.of(Facts(group, DAY, (Warmth(DAY, temp_c, temp_c),), "claustral", DAY, "founding"), DAY)
    inside = [said.on(DAY + day) for day in range(1, days + 1)]
    return [(each.eggs.best, each.larvae.best, each.pupae.best, each.workers.best) for each in inside]


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


@pytest.mark.parametrize(("temp_c", "day"), [(22, 54), (23, 48), (24, 43.5)])
def test_cooler_founders_take_as_long_as_degree_days_say(temp_c, day):
    # the same 37 days as degree-days above 13 to 15 °C: first workers on day 52 to 56 at 22 °C, 47 to 49 at 23,
    # 43 to 44 at 24 (computed from that watch); 10 % each
    assert first(founding_queen(temp_c, 90), 3) == pytest.approx(day, rel=0.1)


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


def test_argentine_queens_lay_most_at_28_degrees_and_nothing_in_the_cold():
    # of 12 temperatures from 10 to 34 °C (Abril et al. 2008 J. Insect Physiol. 54:265-272, abstract)
    group = LIFE_GROUPS["linepithema"]
    laid = {temp_c: pace(group, temp_c, temp_c, 1).laying for temp_c in range(10, 35, 2)}

    assert laid[28] == max(laid.values()) > laid[18]
    assert laid[28] > laid[34]
    assert laid[10] == 0


def test_well_fed_fire_ants_grow_best_near_32_degrees():
    # Porter & Tschinkel 1993, abstract
    group = LIFE_GROUPS["solenopsis"]
    rates = {temp_c: growth_at(group, temp_c) for temp_c in (22, 25, 28, 32, 36)}

    assert rates[32] == max(rates.values())
    assert rates[25] < rates[28]


def growth_at(group: LifeGroup, temp_c: float) -> float:
    colony = Colonies(group, [100.0])
    colony.set_rates([1.0], [0.5], [group.eggs_per_worker], [85], [1e9])
    here = pace(group, temp_c, temp_c, group.step_days)
    for _ in range(100):
        colony.step(here, group.step_days)
    return math.log(colony.workers[0] / 100)


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


def straight(way_days: float, steps: int, step_days: float = 1) -> LifeGroup:
    """A group whose whole way takes so long at 25 °C, in so many equal steps."""
    stages = [StageTime(5, 20 * way_days * share) for share in (0.25, 0.5, 0.25)]
    group = LifeGroup(
        "straight", *stages, spread=1.2, low_c=20, high_c=30, first_brood=(5, 20), life_days=(100, 400),
        eggs_per_worker=0.2, most_eggs=1e12, step_days=step_days, source="made up",
    )  # fmt: skip
    group.__dict__["chain"] = (steps // 4,) * 4  # in the place of those that go with its usual warmth
    return group


@pytest.mark.parametrize(("day", "workers"), [(100, 579), (200, 1315), (365, 2164)])
def test_constant_laying_fills_a_colony_as_its_closed_form_says(day, workers):
    # N(t) = R s L (1 - exp(-(t - D) / L)), R 20/d, s 0.5, D 37 d, L 365 d (computed)
    group = straight(37, steps=36)
    colony = Colonies(group, [0.0])
    colony.set_rates([1.0], [0.5], [0.0], [365], [1.0])
    colony.reserve, colony.reserve_rate = [1e9], [20.0]
    here = pace(group, 25, 25, 1)
    for _ in range(day):
        colony.step(here, 1)

    assert colony.workers[0] == pytest.approx(workers, rel=0.01)


def growth_rate(group: LifeGroup, born: float, life: float) -> float:
    """The rate at which a colony grows in the end, whose workers lay without limit."""
    colony = Colonies(group, [1000.0])
    colony.set_rates([1.0], [0.5], [born / 0.5], [life], [1e30])
    here = pace(group, 25, 25, group.step_days)
    sizes = []
    for _ in range(round(800 / group.step_days)):
        colony.step(here, group.step_days)
        sizes.append(colony.workers[0])
    back = round(200 / group.step_days)
    return math.log(sizes[-1] / sizes[-1 - back]) / 200


@pytest.mark.parametrize(
    ("born", "way", "life", "rate"),
    [(0.188, 30, 60, 0.0400), (0.10, 37, 365, 0.0301), (0.10, 37, 60, 0.0242), (0.05, 60, 365, 0.0162)],
)
def test_early_growth_is_the_root_of_its_equation(born, way, life, rate):
    # r + m = b exp(-r D) for a way of a fixed length (computed; the first row agrees with Markin et al. 1973)
    assert growth_rate(straight(way, steps=4 * (way // 4)), born, life) == pytest.approx(rate, rel=0.01)


@pytest.mark.parametrize(
    ("born", "way", "life", "rate"),
    [(0.188, 30, 60, 0.0406), (0.10, 37, 365, 0.0305), (0.10, 37, 60, 0.0245), (0.05, 60, 365, 0.0164)],
)
def test_a_chain_of_25_steps_grows_as_its_closed_form_says(born, way, life, rate):
    # the same with b (1 + r D / k)^-k, k about 25: earlier ants make up for later ones and more (computed)
    assert growth_rate(straight(way, steps=24, step_days=0.5), born, life) == pytest.approx(rate, rel=0.01)


@pytest.mark.parametrize(("steps", "spread"), [(100, 0.10), (44, 0.15), (24, 0.204), (16, 0.25)])
def test_a_chain_of_k_equal_steps_spreads_a_way_by_one_over_the_root_of_k(steps, spread):
    # CV = 1 / sqrt(k) in the limit of short steps (formula); a step of a tenth of a day takes (1 - p) of it away
    group = straight(40, steps=steps, step_days=0.1)
    colony = Colonies(group, [0.0])
    colony.set_rates([1.0], [0.5], [0.0], [1e12], [1.0])
    colony.rows = [1.0, *[0.0] * (colony.width - 1)]
    here = pace(group, 25, 25, 0.1)
    hatched = []
    for _ in range(1200):
        colony.step(here, 0.1)
        hatched.append(colony.hatched[0])
    whole = sum(hatched)
    mean = sum(number * day for day, number in enumerate(hatched, 1)) / whole
    square = sum(number * (day - mean) ** 2 for day, number in enumerate(hatched, 1)) / whole

    assert mean / 10 == pytest.approx(40, rel=0.01)
    assert math.sqrt(square) / mean == pytest.approx(spread * math.sqrt(1 - here.moves[0]), rel=0.01)


@pytest.mark.parametrize("group", LIFE_GROUPS.values(), ids=lambda group: group.code)
def test_the_chain_spreads_a_brood_as_single_ants_do(group):
    # CV of the way within a colony 0.15 (Fowler et al. 1993: 25 to 54 days as extremes); a chain of k steps of which a
    # share p moves on has a variance of k (1 - p) / p^2
    here = pace(group, group.usual_c, group.usual_c, group.step_days)
    pairs = list(zip(group.chain, here.moves, strict=True))
    mean = sum(steps / share for steps, share in pairs)
    variance = sum(steps * max(0.0, 1 - share) / share**2 for steps, share in pairs)

    assert 0.1 <= math.sqrt(variance) / mean <= 0.18
