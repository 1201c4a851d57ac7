"""The record of a bag: its printed name, its moment, and a weighing that adds up."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta, timezone
from decimal import localcontext
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from station.core.mass import Mass, MassError
from station.core.pack import Moment, PackError, PackId, Weighing, epoch_mark
from tests.station.line.scenario import grams

WEIGHING = Weighing(grams(258), grams(6), grams(252), grams(0), 900, 1, "0a31")


def test_a_serial_names_station_epoch_and_number():
    assert PackId("HA", "A1", 0, 1).serial == "A1-00-000001"
    assert PackId("HA", "A1", 2**63 - 1, 999_999).serial == "A1-ZZ-999999"
    assert PackId("HA", "A1", 33 << 53, 1_000_000).serial == "A1-11-1000000"


def test_each_of_1024_marks_differs_and_none_can_be_misread():
    # Without I, L, O and U, as in Crockford's base 32: they pass for 1, 1, 0 and V.
    marks = [epoch_mark(top << 53) for top in range(1024)]
    assert len(set(marks)) == 1024
    assert all(len(mark) == 2 for mark in marks)
    assert set("".join(marks)) == set("0123456789ABCDEFGHJKMNPQRSTVWXYZ")


@given(st.integers(0, 2**63 - 1))
def test_a_mark_stands_for_the_ten_highest_bits(epoch):
    assert epoch_mark(epoch) == epoch_mark(epoch >> 53 << 53)


@given(
    st.tuples(st.integers(0, 2**63 - 1), st.integers(1, 10**7)),
    st.tuples(st.integers(0, 2**63 - 1), st.integers(1, 10**7)),
)
def test_two_serials_of_a_station_are_equal_only_with_number_and_mark(one, other):
    first, second = PackId("HA", "A1", *one), PackId("HA", "A1", *other)
    same = (one[0] >> 53, one[1]) == (other[0] >> 53, other[1])
    assert (first.serial == second.serial) == same


@pytest.mark.parametrize(
    "utc",
    [
        datetime(2026, 11, 25, 9, 0),  # noqa: DTZ001  naive on purpose
        datetime(2026, 11, 25, 9, 0, tzinfo=timezone(timedelta(hours=1))),
        datetime(2026, 11, 25, 9, 0, tzinfo=timezone(timedelta(seconds=1))),
        datetime(2026, 7, 1, 9, 0, tzinfo=ZoneInfo("Europe/Dublin")),
    ],
    ids=["naive", "an hour ahead", "a second ahead", "summer time"],
)
def test_a_moment_is_an_aware_time_in_utc(utc):
    with pytest.raises(PackError, match="must be an aware time in UTC"):
        Moment(utc, 0, "Europe/Dublin", 0)


def test_a_moment_keeps_every_clock():
    moment = Moment(datetime(2026, 7, 1, 9, tzinfo=UTC), 60, "Europe/Dublin", 5)
    assert (moment.offset_minutes, moment.zone, moment.monotonic_ns) == (60, "Europe/Dublin", 5)


@given(
    st.decimals("0", "99999", places=4).map(str),
    st.decimals("0", "999", places=4).map(str),
    st.integers(-3, 3),
)
def test_net_is_gross_minus_tare_to_the_last_digit(gross, tare, wrong):
    gross, tare = Mass.of(gross), Mass.of(tare)
    net = gross - tare + Mass.of("0.0001") * wrong
    with localcontext() as context:
        context.prec = 3  # whoever computes around it must not blur it
        if wrong:
            with pytest.raises(PackError, match=r"gross .* - tare .* is not net"):
                replace(WEIGHING, gross=gross, tare=tare, net=net)
        else:
            assert replace(WEIGHING, gross=gross, tare=tare, net=net).net == net


def test_a_weighing_is_in_one_unit():
    with pytest.raises(MassError, match="different units"):
        replace(WEIGHING, gross=Mass.of("0.258", "kg"))
