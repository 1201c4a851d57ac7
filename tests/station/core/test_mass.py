"""Mass: exact digits, exact constants, and nothing that a binary float could touch."""

from decimal import Decimal, localcontext
from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from station.core.mass import Mass, MassError, Unit

METRIC = (Unit.MILLIGRAM, Unit.GRAM, Unit.KILOGRAM)
# Grams in one unit as fractions of whole numbers, written a second time on purpose: NIST Handbook
# 44 Appendix C, "1 avoirdupois pound = 453.592 37 grams exactly", and 16 ounces to the pound; the
# pound is that of the international yard and pound agreement of 1959.
GRAMS = {
    Unit.MILLIGRAM: Fraction(1, 1000),
    Unit.GRAM: Fraction(1),
    Unit.KILOGRAM: Fraction(1000),
    Unit.POUND: Fraction(45_359_237, 100_000),
    Unit.OUNCE: Fraction(45_359_237, 1_600_000),
}

units = st.sampled_from(list(Unit))
shown = st.builds(
    lambda steps, places: format(Decimal(steps).scaleb(-places), "f"),
    st.integers(1 - 10**12, 10**12 - 1),
    st.integers(0, 6),
)
masses = st.builds(Mass.of, shown, units)


def test_the_units_are_the_exact_ones_of_1959():
    # NIST Handbook 44 Appendix C: 1 lb = 453.592 37 g, 1 oz = 28.349 523 125 g, both exact.
    assert Mass.of(1, "lb").grams == Decimal("453.59237")
    assert Mass.of(1, "oz").grams == Decimal("28.349523125")
    assert Mass.of(16, "oz") == Mass.of(1, "lb")
    assert {unit: Fraction(unit.grams) for unit in Unit} == GRAMS


@given(shown, units)
def test_text_goes_in_and_comes_out_with_the_same_digits(digits, unit):
    for blank in ("", " ", "\u00a0", "\u202f"):
        mass = Mass.parse(f"{digits}{blank}{unit}")
        assert str(mass) == f"{digits} {unit}"
        assert mass.digits == digits
    assert Mass.parse(str(mass)) == mass


@pytest.mark.parametrize(
    ("text", "kept"),
    [
        ("0.250 kg", "0.250 kg"),
        ("+250 g", "250 g"),
        ("\u22125.0 g", "-5.0 g"),
        ("  8.80 oz\n", "8.80 oz"),
        ("0250 g", "250 g"),
    ],
)
def test_signs_and_padding(text, kept):
    assert str(Mass.parse(text)) == kept


@pytest.mark.parametrize(
    "text",
    [
        "", "g", "250", "250 t", "250  g", "250 G", "1e3 g", "1_000 g", "1,5 g", ".5 g", "5. g",
        "--5 g", "NaN g", "inf kg", "250 g x", "250 g 250 g", "\u0662\u0665\u0660 g", "0x10 g",
        "1234567890123 g", "1.0123456789 g", "250\tg", "2 50 g",
    ],
)  # fmt: skip
def test_what_is_no_mass_is_refused_with_an_example(text):
    with pytest.raises(MassError, match=r"is not a mass: write a number.*for example 250 g"):
        Mass.parse(text)


@pytest.mark.parametrize("amount", [0.1, 250.0, float("nan"), float("inf")])
def test_no_float_gets_in_by_any_door(amount):
    for door in (
        lambda: Mass.of(amount),
        lambda: Mass(amount, Unit.GRAM),
        lambda: Mass.from_micrograms(amount),
        lambda: Mass.of(1) * amount,
    ):
        with pytest.raises(MassError):
            door()


@pytest.mark.parametrize(
    "amount", [True, "", "1e3", "1_0", "NaN", "Infinity", "\u0661", " 1", "1 ", ".5", "9" * 25]
)
def test_only_plain_digits_make_a_mass(amount):
    with pytest.raises(MassError, match=r"is not a mass|truth value"):
        Mass.of(amount)


@pytest.mark.parametrize("amount", ["NaN", "sNaN", "Infinity", "-Infinity"])
def test_a_mass_is_finite(amount):
    with pytest.raises(MassError, match="finite exact decimal"):
        Mass(Decimal(amount), Unit.GRAM)


def test_an_unknown_unit_is_named():
    with pytest.raises(MassError, match="stone"):
        Mass.of(1, "stone")


@given(masses, masses)
def test_masses_compare_as_fractions_do_whatever_their_units(one, other):
    left = Fraction(one.amount) * GRAMS[one.unit]
    right = Fraction(other.amount) * GRAMS[other.unit]
    assert (one < other, one <= other, one == other, one >= other, one > other) == (
        left < right, left <= right, left == right, left >= right, left > right
    )  # fmt: skip
    assert (one != other) == (left != right)


@given(shown, st.sampled_from(METRIC), st.integers(0, 3), st.sampled_from(METRIC))
def test_equal_masses_have_equal_hashes(digits, unit, zeros, target):
    one = Mass.of(digits, unit)
    padded = digits + ("" if "." in digits else ".") + "0" * (zeros + 1)
    for other in (Mass.of(padded, unit), one.in_unit(target)):
        assert one == other
        assert hash(one) == hash(other)
        assert len({one, other}) == 1


def test_a_mass_equals_no_bare_number():
    assert Mass.of(250) != 250
    assert Mass.of(250) != Decimal(250)
    assert Mass.of(250) != "250 g"


@given(st.integers(-(10**15), 10**15), st.sampled_from(METRIC))
def test_whole_micrograms_round_trip_in_metric_units(micrograms, unit):
    mass = Mass.from_micrograms(micrograms, unit)
    assert mass.micrograms == micrograms
    assert mass.unit is unit
    assert "E" not in mass.digits


@pytest.mark.parametrize("unit", [Unit.POUND, Unit.OUNCE])
def test_micrograms_are_not_taken_for_pounds(unit):
    with pytest.raises(MassError, match="do not give exact"):
        Mass.from_micrograms(1, unit)


@given(masses)
def test_micrograms_are_the_nearest_whole_ones_half_to_even(mass):
    # round() of a Fraction is half to even by the language's definition.
    assert mass.micrograms == round(Fraction(mass.amount) * GRAMS[mass.unit] * 10**6)


@pytest.mark.parametrize(
    ("milligrams", "micrograms"),
    [("0.0005", 0), ("0.0015", 2), ("0.0025", 2), ("-0.0005", 0), ("-0.0015", -2), ("0.00151", 2)],
)
def test_half_a_microgram_goes_to_the_even_one(milligrams, micrograms):
    assert Mass.of(milligrams, "mg").micrograms == micrograms


@given(st.lists(shown, min_size=1, max_size=20), units)
def test_sums_and_differences_are_exact(amounts, unit):
    total = Mass.of(0, unit)
    for digits in amounts:
        total = total + Mass.of(digits, unit)
    assert Fraction(total.amount) == sum(Fraction(digits) for digits in amounts)
    for digits in amounts:
        total = total - Mass.of(digits, unit)
    assert not total.amount


def test_a_careless_decimal_context_changes_nothing():
    with localcontext() as context:
        context.prec = 2
        assert (Mass.of("250.05") - Mass.of("6.1")).digits == "243.95"
        assert Mass.of("0.2525", "kg").in_unit(Unit.GRAM).digits == "252.5"
        assert Mass.of("123.4567", "g").micrograms == 123_456_700
        assert abs(-Mass.of("250.05")) == Mass.of("250.05")


@given(masses, masses)
def test_units_are_never_mixed_in_silence(one, other):
    assume(one.unit is not other.unit)
    for add in (lambda: one + other, lambda: one - other):
        with pytest.raises(MassError, match="different units: convert one on purpose"):
            add()


@given(shown, st.sampled_from(METRIC), st.sampled_from(METRIC))
def test_a_metric_change_of_unit_is_exact_and_comes_back_with_its_digits(digits, unit, target):
    mass = Mass.of(digits, unit)
    moved = mass.in_unit(target)
    assert (moved.unit, moved) == (target, mass)
    assert moved.in_unit(unit).digits == digits


@pytest.mark.parametrize(
    ("given_", "unit", "kept"),
    [
        ("0.250 kg", Unit.GRAM, "250 g"),
        ("0.2525 kg", Unit.GRAM, "252.5 g"),
        ("252 g", Unit.KILOGRAM, "0.252 kg"),
        ("5 mg", Unit.GRAM, "0.005 g"),
        ("0 kg", Unit.GRAM, "0 g"),
        ("8.8 oz", Unit.POUND, "0.55 lb"),
        ("1 lb", Unit.OUNCE, "16 oz"),
        ("1 oz", Unit.GRAM, "28.349523125 g"),
        ("2 lb", Unit.KILOGRAM, "0.90718474 kg"),
    ],
)
def test_a_change_of_unit_shows_no_finer_digits_than_there_were(given_, unit, kept):
    assert str(Mass.parse(given_).in_unit(unit)) == kept


@pytest.mark.parametrize(
    ("given_", "unit"), [("250 g", Unit.OUNCE), ("1 kg", Unit.POUND), ("1 mg", Unit.OUNCE)]
)
def test_a_change_that_would_round_is_refused(given_, unit):
    with pytest.raises(MassError, match=f"has no exact value in {unit}"):
        Mass.parse(given_).in_unit(unit)


@given(masses, st.integers(-1000, 1000))
def test_multiples_are_exact(mass, factor):
    assert Fraction((mass * factor).amount) == Fraction(mass.amount) * factor
    assert (mass * factor).unit is mass.unit
