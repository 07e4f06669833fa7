"""Vapour, diffusion and the water days of a tube, against libraries, textbooks and hand calculation."""

from __future__ import annotations

import math

import iapws
import psychrolib
import pytest

from broodshelf.care.water.evaporation import (
    drying,
    evaporation_mg_mm2_day,
    path_through_mm,
    stefan_flux_mol_m2_s,
    tube_loss_mm_day,
    tube_water_days,
)
from broodshelf.care.water.vapour import deficit_pa, diffusivity_m2_s, saturation_pressure_pa
from broodshelf.model.quantities import OutOfRange

psychrolib.SetUnitSystem(psychrolib.SI)
MMHG_PA = 101_325 / 760


@pytest.mark.parametrize("temp_c", [1, 5, 10, 15, 20, 25, 30, 40, 50])
def test_saturation_pressure_agrees_with_two_libraries(temp_c):
    ours = saturation_pressure_pa(temp_c)

    assert ours == pytest.approx(psychrolib.GetSatVapPres(temp_c), rel=1e-3)
    assert ours == pytest.approx(iapws.iapws97._PSat_T(temp_c + 273.15) * 1e6, rel=1e-3)


@pytest.mark.parametrize(
    ("temp_c", "pascal"), [(5, 872.58), (15, 1705.79), (20, 2339.32), (25, 3169.93), (30, 4246.97)]
)
def test_saturation_pressure_agrees_with_iapws_95(temp_c, pascal):
    # IAPWS-95 by CoolProp 8.0.0
    assert saturation_pressure_pa(temp_c) == pytest.approx(pascal, rel=1e-4)


@pytest.mark.parametrize("temp_c", [0, 20, 25, 30])
def test_diffusivity_lies_among_the_published_formulas(temp_c):
    kelvin = temp_c + 273.15
    monteith_unsworth = 2.12e-5 * (kelvin / 273.15) ** 1.75  # from memory
    marrero_mason = 1.87e-10 * kelvin**2.072  # from memory

    assert diffusivity_m2_s(temp_c) == pytest.approx(monteith_unsworth, rel=0.045)
    assert diffusivity_m2_s(temp_c) == pytest.approx(marrero_mason, rel=0.045)


def test_diffusivity_meets_textbook_points():
    # 0.250e-4 m²/s at 293 K, 0.26e-4 at 298 K (textbook tables, second-hand)
    assert diffusivity_m2_s(19.85) == pytest.approx(0.250e-4, rel=0.02)
    assert diffusivity_m2_s(24.85) == pytest.approx(0.26e-4, rel=0.03)


def test_thinner_air_lets_vapour_through_faster():
    assert diffusivity_m2_s(20, 80_000) == pytest.approx(diffusivity_m2_s(20) * 101_325 / 80_000)


def test_the_textbook_tube_of_chloropicrin_loses_what_was_weighed():
    # Bird, Stewart and Lightfoot: 770 mmHg, 25 °C, 23.81 mmHg, 11.14 cm, 2.29 cm², D 0.088 cm²/s: 0.0139 g/h
    flux = stefan_flux_mol_m2_s(0.0, 23.81 / 770, 0.0878e-4, 0.1114, 25, 770 * MMHG_PA)

    assert flux * 164.38 * 3600 * 2.29e-4 == pytest.approx(0.0139, rel=0.01)


def test_the_air_that_moves_along_adds_what_stefan_found_to_plain_diffusion():
    # ln(1/(1 - x))/x = 1.0160 for x = 0.03128, water at 25 °C into dry air (hand calculation)
    share = saturation_pressure_pa(25) / 101_325
    fick = 101_325 / (8.314462618 * 298.15) * 2.5e-5 / 0.05 * share

    assert share == pytest.approx(0.03128, abs=1e-5)
    assert stefan_flux_mol_m2_s(0, share, 2.5e-5, 0.05, 25) / fick == pytest.approx(1.0160, abs=1e-4)


@pytest.mark.parametrize(
    ("temp_c", "humidity_pct", "path_mm", "g_m2_day"),
    [(20, 50, 30, 627), (25, 50, 30, 867), (25, 50, 50, 520), (25, 30, 50, 726), (25, 50, 100, 260)],
)
def test_still_air_carries_what_stefan_and_massman_give_by_hand(temp_c, humidity_pct, path_mm, g_m2_day):
    # computed apart from this code with IAPWS-95 pressure and Massman's diffusivity, rounded to 1 g
    got = evaporation_mg_mm2_day(temp_c, humidity_pct, path_mm) * 1000

    assert got == pytest.approx(g_m2_day, abs=1)


def test_a_usual_tube_lasts_what_keepers_know():
    # common practice, no source: 16 x 150 mm with 8 mL, 60 to 120 days
    reservoir_mm = 8000 / (math.pi / 4 * 14**2)
    days = tube_water_days(14, reservoir_mm, 24, 50, path_through_mm(63, 20))

    assert 80 <= days.best <= 100
    assert days.low <= 60
    assert days.high >= 120


def test_path_counts_more_than_humidity_and_warmth_dries():
    usual = tube_water_days(14, 52, 24, 50, 80).best

    assert tube_water_days(14, 52, 24, 50, 40).best == pytest.approx(usual / 2)
    assert usual / 2 < tube_water_days(14, 52, 24, 30, 80).best < usual
    assert tube_water_days(14, 52, 30, 50, 80).best < usual
    assert drying(24, 50) == 1
    assert drying(6, 60) == pytest.approx(deficit_pa(6, 60) / 1493, rel=1e-3)  # 2986 Pa / 2, by table


def test_the_bore_matters_only_to_what_is_drunk():
    assert tube_loss_mm_day(8, 24, 50, 80) == tube_loss_mm_day(20, 24, 50, 80)
    # 100 mg of ants drink 10 mg a day; 14 mm bore is 153.9 mm² (hand calculation)
    thirsty = tube_loss_mm_day(14, 24, 50, 80, colony_mg=100).best - tube_loss_mm_day(14, 24, 50, 80).best
    assert thirsty == pytest.approx(10 / 153.94 / 0.998, rel=1e-3)


BAD = [math.nan, math.inf, -math.inf, -1.0]


@pytest.mark.parametrize("position", range(5))
@pytest.mark.parametrize("bad", BAD)
def test_nonsense_is_refused_by_name(position, bad):
    values = [14.0, 52.0, 24.0, 50.0, 80.0]
    values[position] = bad
    with pytest.raises(OutOfRange) as caught:
        tube_water_days(*values)
    assert caught.value.name in ("bore_mm", "reservoir_mm", "temp_c", "humidity_pct", "path_mm")


@pytest.mark.parametrize("change", [{"temp_c": 60}, {"humidity_pct": 120}, {"path_mm": 0}, {"bore_mm": 0}])
def test_what_no_tube_can_be_is_refused(change):
    usual = {"bore_mm": 14, "reservoir_mm": 52, "temp_c": 24, "humidity_pct": 50, "path_mm": 80}
    with pytest.raises(OutOfRange, match=next(iter(change))):
        tube_water_days(**{**usual, **change})
