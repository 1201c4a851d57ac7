"""The simulated indicator speaks Level 2 of SMA SCP-0499 (1st ed., 1999)."""

from decimal import Decimal

import pytest

from drivers.bench_indicator import Indicator, step_in
from drivers.errors import BenchError
from drivers.frames.base import Answer, Condition, Kind, WeightFrame
from drivers.frames.scp0499 import Scp0499Parser


def indicator(signal: float = 0.0, motion: bool = False) -> Indicator:
    one = Indicator(Decimal(6000), Decimal(1), "g")
    one.update(signal, 10.0 if motion else 0.0, 0.0)
    return one


def ask(one: Indicator, command: bytes) -> WeightFrame | Answer:
    (item,) = Scp0499Parser().feed(one.feed(command))
    return item


@pytest.mark.parametrize(
    ("signal", "digits", "condition"),
    [
        (0.0, "0", Condition.CENTRE_OF_ZERO),
        (0.24, "0", Condition.CENTRE_OF_ZERO),
        (0.3, "0", Condition.NORMAL),
        (253.7, "254", Condition.NORMAL),
        (-3.0, "-3", Condition.NORMAL),
        (-21.0, "-21", Condition.UNDER_CAPACITY),
        (6009.0, "6009", Condition.NORMAL),
        (6010.0, "6010", Condition.OVER_CAPACITY),
    ],
)
def test_weight(signal: float, digits: str, condition: Condition) -> None:
    answer = ask(indicator(signal), b"\nW\r")
    assert (answer.digits, answer.unit, answer.condition) == (digits, "g", condition)
    assert (answer.kind, answer.motion, answer.high_resolution) == (Kind.GROSS, False, False)


def test_motion_is_said() -> None:
    assert ask(indicator(250, motion=True), b"\nW\r").motion


def test_high_resolution_is_ten_times_finer() -> None:
    answer = ask(indicator(253.74), b"\nH\r")
    assert (answer.digits, answer.high_resolution) == ("253.7", True)


def test_zero_at_rest_near_zero_only() -> None:
    near = indicator(100)
    assert ask(near, b"\nZ\r").condition is Condition.CENTRE_OF_ZERO
    assert ask(near, b"\nW\r").digits == "0"
    for refused in (indicator(121), indicator(100, motion=True)):
        answer = ask(refused, b"\nZ\r")
        assert (answer.condition, answer.digits) == (Condition.ZERO_ERROR, None)
        assert ask(refused, b"\nW\r").digits != "0"


def test_tare_preset_report_and_clear() -> None:
    one = indicator(254)
    assert ask(one, b"\nT6\r").kind is Kind.NET
    assert ask(one, b"\nW\r").digits == "248"
    report = ask(one, b"\nM\r")
    assert (report.kind, report.digits) == (Kind.TARE, "6")
    cleared = ask(one, b"\nC\r")
    assert (cleared.kind, cleared.digits) == (Kind.GROSS, "254")
    taken = ask(one, b"\nT\r")
    assert (taken.kind, taken.digits) == (Kind.NET, "0")


@pytest.mark.parametrize("signal", [0.0, -5.0])
def test_tare_of_nothing_is_an_error(signal: float) -> None:
    answer = ask(indicator(signal), b"\nT\r")
    assert (answer.condition, answer.digits) == (Condition.TARE_ERROR, None)


def test_unit_chosen_and_next() -> None:
    one = indicator(453.6)
    # NIST Handbook 44 App. C: 1 lb = 453.59237 g exactly
    assert (ask(one, b"\nUlb \r").digits, ask(one, b"\nW\r").unit) == ("1.000", "lb")
    assert ask(one, b"\nUkg\r").digits == "0.454"
    assert ask(one, b"\nUxyz\r").unit == "kg"
    assert ask(one, b"\nU\r").unit == "lb"


@pytest.mark.parametrize(
    ("unit", "step"), [("g", "1"), ("kg", "0.001"), ("lb", "0.005"), ("oz", "0.05")]
)
def test_interval_in_other_units_is_no_finer(unit: str, step: str) -> None:
    assert step_in(unit, Decimal(1), "g") == Decimal(step)


def test_dialogues_of_about_and_information() -> None:
    one = indicator()
    lines = [ask(one, b"\nA\r").text]
    lines += [ask(one, b"\nB\r").text for _ in range(5)]
    assert lines[0] == "SMA:2/1.0"
    assert [line[:4] for line in lines[1:]] == ["MFG:", "MOD:", "REV:", "SN :", "END:"]
    assert one.feed(b"\nB\r") == b"\n?\r"
    assert ask(one, b"\nI\r").text == "SMA:2/1.0"
    assert ask(one, b"\nN\r").text == "TYP:S"
    assert ask(one, b"\nN\r").text == "CAP:g  :6000:1:0"
    assert ask(one, b"\nN\r").text.startswith("CMD:")
    assert ask(one, b"\nN\r").text == "END:"
    assert one.feed(b"\nN\r") == b"\n?\r"
    assert ask(one, b"\nD\r").text == "no fault"


def test_repeating_until_any_command_or_escape() -> None:
    one = indicator()
    for end in (b"\nW\r", b"\n?\r", b"\x1b", b"\nW\x1b"):
        assert one.feed(b"\nR\r") == b""
        assert one.repeating == "R"
        one.feed(end)
        assert one.repeating is None


@pytest.mark.parametrize(
    ("sent", "reply"),
    [
        (b"\nK\r", b"\n?\r"),
        (b"\n\r", b"\n?\r"),
        (b"\nWW\r", b"\n?\r"),
        (b"\nTabc\r", b"\n?\r"),
        (b"\n\xd7\r", b"\n!\r"),
        (b"W", b""),
        (b"x" * 1000, b""),
    ],
)
def test_what_is_no_command(sent: bytes, reply: bytes) -> None:
    one = indicator()
    assert one.feed(sent) == reply
    assert len(one.feed(b"\nW\r")) == 20


def test_command_in_pieces() -> None:
    one = indicator()
    assert one.feed(b"\n") + one.feed(b"W") == b""
    assert len(one.feed(b"\r")) == 20


def test_switched_on_with_a_load() -> None:
    small = indicator(500)
    small.feed(b"\nT6\r")
    small.switch_on()
    small.update(500, 0, 0)
    assert (small.frame().digits, small.frame().kind) == ("0", Kind.GROSS)
    heavy = indicator(601)
    heavy.switch_on()
    assert heavy.frame().condition is Condition.INITIAL_ZERO_ERROR
    assert heavy.frame().digits is None


def test_zero_of_an_empty_pan_is_tracked_and_a_residue_is_not() -> None:
    one = indicator()
    for n in range(100):  # 0.05 g each tenth of a second is as fast as it may follow
        one.update(0.02 * n, 0.0, 0.1)
    assert one.frame().condition is Condition.CENTRE_OF_ZERO
    left = indicator(3)
    for _ in range(100):
        left.update(3, 0.0, 0.1)
    assert left.frame().digits == "3"


@pytest.mark.parametrize(
    ("capacity", "interval", "unit"),
    [("6000", "0", "g"), ("1", "1", "g"), ("10", "3", "g"), ("6", "0.002", "stone")],
)
def test_scale_that_cannot_be(capacity: str, interval: str, unit: str) -> None:
    with pytest.raises(BenchError, match=r"must be above 0|allowed are g, kg, lb, oz"):
        Indicator(Decimal(capacity), Decimal(interval), unit)
