"""The manager's headline against what its runs add up to."""

import pytest

from station.app.manager_money import money_of
from station.reports.period import period
from station.reports.period_pdf import period_pdf
from tests.station.cli.test_handover import text_of
from tests.station.line.lot_rig import LotLine


@pytest.fixture
def line(tmp_path):
    one = LotLine(tmp_path / "home")
    yield one
    one.close()


def headline(home):
    found = period(home, None, None, {})
    rows = money_of(home, found, lambda percent: None).headline
    return found, {row.name: row for row in rows}


def test_the_rate_of_some_runs_is_that_of_their_bags_and_hours_together(line):
    line.start("ROM-1", "CAR-7")
    line.bag()
    line.clock.pass_by(3_600_000)
    line.bags(2)
    line.end()
    line.start("ROM-1", "CAR-7")
    for _ in range(5):
        line.bag()
        line.clock.pass_by(60_000)
    line.end()
    found, rows = headline(line.home)
    one, other = found.runs
    hours = (one.packing + other.packing).total_seconds() / 3600
    assert 1.06 < hours < 1.08
    assert rows["rate"].value == f"{8 / hours:.0f} bags an hour" == "7 bags an hour"
    assert (one.an_hour, round(other.an_hour)) == (3, 74)  # their plain mean would be 38


def test_a_day_without_a_bag_to_sell_gives_no_percent_of_nothing(line, tmp_path):
    line.start("ROM-1", "CAR-7")
    line.bag_aside()
    line.end()
    found, rows = headline(line.home)
    assert rows["given away"].note == ""
    pdf = tmp_path / "report.pdf"
    pdf.write_bytes(period_pdf(found))
    words = text_of(pdf)
    assert "no bag is in the batch" in words
    assert "None %" not in words
