from datetime import UTC, date, datetime, timedelta, timezone
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sqlalchemy import Column, Integer, MetaData, Table, insert, select
from sqlalchemy.exc import StatementError

from station.core.mass import Mass, Unit
from station.core.pack import Quality
from station.store.columns import (
    Day,
    Micrograms,
    UtcDateTime,
    Word,
    mass_columns,
    mass_of,
    mass_values,
)
from station.store.engine import scratch_engine

TABLE = Table(
    "things",
    MetaData(),
    Column("id", Integer, primary_key=True),
    Column("at", UtcDateTime),
    Column("day", Day),
    Column("ug", Micrograms),
    Column("word", Word(Quality)),
    *(column for column in mass_columns("net")),
    sqlite_strict=True,
)
NOTHING = mass_values("net", Mass.of("0", Unit.GRAM))


def kept(**values):
    """Write a row and read it back through a real file."""
    engine = scratch_engine()
    try:
        with engine.connect() as connection, connection.begin():
            TABLE.metadata.create_all(connection)
            connection.execute(insert(TABLE).values(**(NOTHING | values)))
            return connection.execute(select(TABLE)).mappings().one()
    finally:
        engine.dispose()


@given(st.datetimes(timezones=st.timezones()))
def test_an_aware_time_comes_back_as_the_same_instant_in_utc(at):
    try:
        expected = at.astimezone(UTC)
    except OverflowError:
        return
    found = kept(at=at)["at"]
    assert found == expected
    assert found.utcoffset() == timedelta(0)


@given(st.datetimes(), st.datetimes())
def test_text_order_is_time_order(one, other):
    early, late = sorted((one, other))
    texts = [UtcDateTime().process_bind_param(at.replace(tzinfo=UTC), None) for at in (early, late)]
    assert texts == sorted(texts)


@pytest.mark.parametrize(
    "values",
    [
        {"at": datetime(2026, 3, 4, 7)},  # noqa: DTZ001  naive on purpose
        {"day": datetime(2026, 3, 4, tzinfo=UTC)},
        {"ug": 252.5},
        {"ug": True},
        {"ug": Decimal(252)},
        {"word": "splendid"},
    ],
)
def test_what_would_be_kept_wrongly_is_refused(values):
    with pytest.raises(StatementError):
        kept(**values)


def test_a_time_with_an_offset_keeps_its_instant():
    at = datetime(2026, 3, 29, 12, tzinfo=timezone(timedelta(hours=2)))
    assert kept(at=at)["at"] == datetime(2026, 3, 29, 10, tzinfo=UTC)


def test_days_and_words_come_back():
    row = kept(day=date(2026, 3, 4), word=Quality.HELD)
    assert (row["day"], row["word"]) == (date(2026, 3, 4), Quality.HELD)


@given(
    st.decimals(min_value=-20000, max_value=20000, places=4),
    st.sampled_from(list(Unit)),
)
def test_a_mass_keeps_its_digits_its_unit_and_its_micrograms(amount, unit):
    mass = Mass(amount, unit)
    row = kept(**mass_values("net", mass))
    found = mass_of(row, "net")
    assert (found.digits, found.unit) == (mass.digits, mass.unit)
    assert row["net_ug"] == mass.micrograms
