from datetime import UTC, datetime, timedelta
from decimal import Decimal

import pytest

from station.core.checks.qa import (
    FAILED,
    GOOD,
    QaCheck,
    QaError,
    QaKind,
    QaLimit,
    figure,
    qa_check_of,
    qa_fact,
)
from station.core.facts import FactRecord
from station.core.pack import Moment

AT = Moment(datetime(2026, 11, 25, 9, tzinfo=UTC), 0, "UTC", 1)
HALF_HOUR = timedelta(minutes=30)
O2 = QaLimit(QaKind.O2, "%", Decimal("0.5"), Decimal("3.0"), HALF_HOUR)
ROOM = QaLimit(QaKind.ROOM_TEMPERATURE, "°C", None, Decimal("3.3"), HALF_HOUR)
SEAL = QaLimit(QaKind.SEAL, every=HALF_HOUR)
METAL = QaLimit(
    QaKind.METAL, at_start=True, pieces=("2.0 mm Fe", "2.5 mm non-Fe", "3.5 mm stainless")
)


@pytest.mark.parametrize(
    ("limit", "value", "good"),
    [
        (O2, "0.5", True),
        (O2, "0.49", False),
        (O2, "3.0", True),
        (O2, "3.01", False),
        # common practice: a cut room at 38 °F, which is 3.33 °C, is checked at 3.3 °C
        (ROOM, "3.3", True),
        (ROOM, "3.4", False),
        (ROOM, "-1", True),
    ],
)
def test_a_figure_is_held_against_both_bounds_which_are_allowed_values(limit, value, good):
    action = "" if good else "gas mixer set, bags held"
    check = QaCheck(limit, "SLAW-340", Decimal(value), action=action)
    assert check.good is good
    assert qa_fact(check, "u1").result == (GOOD if good else FAILED)


def test_a_check_is_read_back_with_the_limits_of_its_day():
    for check in (
        QaCheck(O2, "SLAW-340", Decimal("2.4"), instrument="gas 1", note="A1-7K-000031"),
        QaCheck(SEAL, "SLAW-340", passed=False, action="jaw cleaned"),
        QaCheck(METAL, "SLAW-340", found=METAL.pieces),
    ):
        assert qa_check_of(FactRecord(qa_fact(check, "u1", "r1"), AT, "Q01", 4)) == check


def test_a_metal_detector_must_find_every_piece():
    missed = QaCheck(METAL, "X", found=METAL.pieces[:2], action="stopped")
    assert not missed.good
    assert missed.words == "missed 3.5 mm stainless"
    assert QaCheck(METAL, "X", found=METAL.pieces).words == "all found"


def test_a_failure_without_an_action_is_not_taken():
    with pytest.raises(QaError, match="write what is done"):
        QaCheck(SEAL, "X", passed=False)


def test_the_wash_step_keeps_its_own_record():
    wash = QaLimit(QaKind.WASH, at_start=True)
    with pytest.raises(QaError, match="name the wash record"):
        QaCheck(wash, "X")
    assert QaCheck(wash, "X", note="tank 2, W-26327").good


@pytest.mark.parametrize(
    ("make", "said"),
    [
        (lambda: QaLimit(QaKind.O2, "°C", most=Decimal(3), at_start=True), "allowed is"),
        (lambda: QaLimit(QaKind.O2, "%", at_start=True), "needs a least or a most"),
        (lambda: QaLimit(QaKind.SEAL, most=Decimal(3), at_start=True), "has no figure"),
        (lambda: QaLimit(QaKind.O2, "%", Decimal(3), Decimal(2), HALF_HOUR), "is above most"),
        (lambda: QaLimit(QaKind.O2, "%", None, Decimal(300), HALF_HOUR), "cannot be"),
        (lambda: QaLimit(QaKind.METAL, at_start=True), "name them"),
        (lambda: QaLimit(QaKind.SEAL), "never due"),
        (lambda: QaCheck(O2, "X"), "needs a figure"),
        (lambda: QaCheck(SEAL, "X", Decimal(1)), "needs no figure"),
        (lambda: QaCheck(O2, "X", Decimal(210)), "cannot be"),
    ],
)
def test_what_cannot_be_is_refused_in_words(make, said):
    with pytest.raises(QaError, match=said):
        make()


def test_figures_come_as_people_key_them_in():
    assert figure(" 3,4 ") == Decimal("3.4")
    assert figure("\u22121.5") == Decimal("-1.5")
    for text in ("", "3.4.1", "NaN", "1e9999", "about 3"):
        with pytest.raises(QaError, match="is no figure"):
            figure(text)
