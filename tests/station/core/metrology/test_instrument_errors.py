"""Errors of scales and weights, row by row on both sides of each step."""

import pytest

from station.core.mass import Mass
from station.core.metrology.clause import RuleRefused, Status
from station.core.metrology.instrument_errors import (
    ErrorSystem,
    ScaleClass,
    WeightClass,
    class_limits,
    permissible_error,
    weight_error,
)

E = Mass.parse("1 g")

# OIML R 76-1:2006 Table 6; NIST HB 44 2.20 Table 6: load in e, initial error in e
R_76_III = [(0, "0.5"), (500, "0.5"), (501, "1"), (2000, "1"), (2001, "1.5"), (10000, "1.5")]
R_76_II = [(5000, "0.5"), (5001, "1"), (20000, "1"), (20001, "1.5")]
R_76_IIII = [(50, "0.5"), (51, "1"), (200, "1"), (201, "1.5")]
HB_44_III = [(500, "0.5"), (501, "1"), (2000, "1"), (2001, "1.5"), (4000, "1.5"), (4001, "2.5")]


@pytest.mark.parametrize(
    ("system", "scale_class", "rows"),
    [
        ("R 76", "III", R_76_III),
        ("R 76", "II", R_76_II),
        ("R 76", "IIII", R_76_IIII),
        ("HB 44", "III", HB_44_III),
    ],
)
def test_errors_on_both_sides_of_each_step(system, scale_class, rows):
    for load, initial in rows:
        for in_service, factor in ((False, 1), (True, 2)):
            found = permissible_error(
                Mass.of(load),
                E,
                ScaleClass(scale_class),
                in_service=in_service,
                system=ErrorSystem(system),
            )
            assert found == Mass.of(initial) * factor, load


def test_a_class_without_transcribed_errors_is_refused():
    with pytest.raises(RuleRefused, match="no errors of class I of R 76 are transcribed"):
        permissible_error(E, E, ScaleClass.I, in_service=True)


@pytest.mark.parametrize(
    ("scale_class", "interval", "least", "most", "load"),
    [
        ("I", "0.001", 50000, None, 100),
        ("II", "0.05", 100, 100000, 20),
        ("II", "0.1", 5000, 100000, 50),
        ("III", "0.1", 100, 10000, 20),
        ("III", "2", 100, 10000, 20),
        ("III", "5", 500, 10000, 20),
        ("IIII", "5", 100, 1000, 10),
    ],
)
def test_classes(scale_class, interval, least, most, load):
    """OIML R 76-1 Table 3."""
    limits = class_limits(ScaleClass(scale_class), Mass.of(interval))
    assert (limits.least_intervals, limits.most_intervals, limits.least_load) == (least, most, load)


def test_an_interval_outside_a_class_is_refused():
    with pytest.raises(RuleRefused, match=r"class III knows no scale interval of 0\.05 g"):
        class_limits(ScaleClass.III, Mass.of("0.05"))


# OIML R 111-1:2004 Table 1: nominal, F1, F2, M1, M2 in mg
R_111 = [
    ("1 g", "0.10", "0.3", "1.0", "3.0"),
    ("2 g", "0.12", "0.4", "1.2", "4.0"),
    ("5 g", "0.16", "0.5", "1.6", "5.0"),
    ("10 g", "0.20", "0.6", "2.0", "6.0"),
    ("20 g", "0.25", "0.8", "2.5", "8.0"),
    ("50 g", "0.3", "1.0", "3.0", "10"),
    ("100 g", "0.5", "1.6", "5.0", "16"),
    ("200 g", "1.0", "3.0", "10", "30"),
    ("500 g", "2.5", "8.0", "25", "80"),
    ("1 kg", "5.0", "16", "50", "160"),
    ("2 kg", "10", "30", "100", "300"),
    ("5 kg", "25", "80", "250", "800"),
    ("10 kg", "50", "160", "500", "1600"),
    ("20 kg", "100", "300", "1000", "3000"),
]


@pytest.mark.parametrize("row", R_111)
def test_weights(row):
    nominal, *errors = row
    for weight_class, error in zip(WeightClass, errors, strict=True):
        found, clause = weight_error(Mass.parse(nominal), weight_class)
        assert found == Mass.of(error, "mg")
        remembered = nominal in ("10 kg", "20 kg")
        assert (clause.status is Status.MEMORY) is remembered


def test_an_unusual_weight_is_refused():
    with pytest.raises(RuleRefused, match="no single test weight of 3 g"):
        weight_error(Mass.parse("3 g"), WeightClass.M1)
