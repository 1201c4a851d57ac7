"""The manager's page on a simulated week: figures, charts, papers, signatures, lists."""

from datetime import date
from functools import partial
from pathlib import Path
from shutil import copytree

import pytest
from PySide6.QtCore import Qt

from station.clock import SystemClock
from station.core.approvals import target_answer, version_approval
from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind
from station.core.pack import Moment
from station.screens.manager_source import GivenBy, Period
from station.screens.widgets.chart import Chart
from station.store.writer import StationStore
from tests.station.screens.manager_rig import NOW, ManagerRig, hold
from tests.station.store.old_runs import note_of_purge

SIZES = [(1024, 768), (1280, 800), (1920, 1080)]
PROPOSAL = {
    "version": 3, "unit": "g", "target": "337.000000",
    "mean": "341.500000", "mean_now": "344.700000",
    "giveaway": "1.500000", "governing": "mean of the whole batch", "fills": 4000,
}  # fmt: skip


@pytest.fixture
def rig(qtbot, week, tmp_path) -> ManagerRig:
    rig = ManagerRig(week.home, tmp_path / "charts")
    qtbot.addWidget(rig.page, before_close_func=lambda page: page.stop())
    return rig


@pytest.fixture
def shown(rig, qtbot) -> ManagerRig:
    rig.page._period = Period.ALL
    rig.show(partial(qtbot.waitUntil, timeout=60_000))
    qtbot.waitUntil(lambda: rig.page._money is not None)
    return rig


def touch(qtbot, button) -> None:
    assert button.isEnabled()
    assert button.isVisible()
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def propose(rig, **changes) -> None:
    details = {**PROPOSAL, **changes}
    fact = Fact(EntryKind.PROPOSAL, "p1", "SLAW-340", "proposed", "", details)
    rig.book.noted(FactRecord(fact, Moment(NOW, 0, "UTC", 0), "L01", 1))


def test_the_headline_says_what_was_given_away(shown, week):
    rows = {row.name: row for row in shown.page.figures.view}
    assert rows["bags"].value == str(week.whole.bags)
    assert rows["net"].value == f"{week.whole.grams / 1000:.3f} kg"
    assert rows["held"].attend
    assert "Monday" not in shown.page.reading.view
    assert "November 2026" in shown.page.reading.view


@pytest.mark.parametrize("by", list(GivenBy))
def test_bars_are_those_of_the_period(shown, qtbot, by):
    page = shown.page
    for _ in range(list(GivenBy).index(by)):
        touch(qtbot, page.turn_button)
    slices = page._money.given[by]
    assert page.pages.currentWidget() is page.bars
    assert page.bars.count == len(slices)
    assert page.turn_button.text() == f"BY {by.value.upper()}"
    assert [row[0] for row in page.bars.table().rows] == [one.name for one in slices]


def test_every_chart_reads_its_values_and_is_kept_as_files(shown, qtbot, tmp_path):
    page = shown.page
    for tab, turns in ((0, 5), (1, 2), (2, 2)):
        touch(qtbot, page.tabs[tab])
        for _ in range(turns):
            chart = page.pages.currentWidget()
            assert isinstance(chart, Chart)
            assert chart.count > 0
            chart.point_at(chart.view.mapToScene(chart.place_of(0).toPoint()))
            assert page.reading.view.split(":")[0]
            touch(qtbot, page.keep_button)
            assert page.reading.view.startswith("Kept as")
            touch(qtbot, page.turn_button)
    kept = sorted(path.suffix for path in (tmp_path / "charts").iterdir())
    assert kept == sorted([".png", ".svg", ".csv"] * 9)


def test_the_timeline_shows_what_was_planted(shown, qtbot):
    touch(qtbot, shown.page.tabs[2])
    bad = [one for one in shown.page._money.happenings if one.bad]
    assert {one.row for one in bad} == {"scale check", "empty bag", "label scan", "holds"}


def test_report_and_evidence_are_written_with_progress(shown, qtbot, week, tmp_path):
    home = copytree(week.home, tmp_path / "home")
    shown.desk._home = home
    counted = []
    shown.page.writing.counted.connect(counted.append)
    for button, folder in ((shown.page.report_button, "reports"),
                           (shown.page.evidence_button, "evidence")):  # fmt: skip
        with qtbot.waitSignal(shown.page.writing.ended, timeout=60_000):
            touch(qtbot, button)
        qtbot.waitUntil(lambda: shown.page.reading.view.startswith("Written"), timeout=60_000)
        assert list(Path(home / folder).rglob("*.pdf"))
    assert counted[-1] == 100
    assert counted == sorted(counted[: counted.index(100) + 1]) + sorted(
        counted[counted.index(100) + 1 :]
    )


def test_what_is_written_can_be_given_up(shown, qtbot):
    page = shown.page
    page.wait_card._coming.setInterval(0)
    before = set(shown.desk._home.rglob("*"))
    touch(qtbot, page.evidence_button)
    assert not page.evidence_button.isEnabled()
    qtbot.waitUntil(page.wait_card.isVisible)
    touch(qtbot, page.wait_card.button)
    assert page.reading.view == "Given up."
    assert page.evidence_button.isEnabled()
    assert page.wait_card.isHidden()
    page.writing.wait()
    assert set(shown.desk._home.rglob("*.pdf")) <= before


def test_another_period_needs_no_end_of_the_one_before(shown, qtbot):
    page = shown.page
    page._money = None
    touch(qtbot, page.period_button)
    touch(qtbot, page.period_button)
    assert page.looking.busy
    qtbot.waitUntil(lambda: page._money is not None, timeout=60_000)
    assert page.period_button.text() == "LAST 7 DAYS"
    assert not page.looking.busy


def test_another_period_is_asked_for(shown, qtbot, week):
    page = shown.page
    assert page.period_button.text() == "ALL DAYS"
    page._money = None
    touch(qtbot, page.period_button)
    qtbot.waitUntil(lambda: page._money is not None and not page.looking.busy, timeout=60_000)
    assert page.period_button.text() == "LAST DAY"
    assert page._money.title.startswith(f"{week.days[-1]:%A}")


def test_a_target_is_approved_step_by_step(shown, qtbot):
    """The most a target moves with one approval is 2 g in the demo: 343 g goes to 341 g first."""
    propose(shown)
    touch(qtbot, shown.page.tabs[3])
    sign = shown.page.sign
    assert sign.shown.title == "target of SLAW-340"
    assert {row.name: row.value for row in sign.rows.view}["you approve"] == "341 g"
    hold(sign.approve_button)
    (facts, who) = shown.line.entered[0]
    answer = target_answer(FactRecord(facts[0], Moment(NOW, 0, "UTC", 0), who, 1))
    assert who == "M01"
    assert (answer.approved, str(answer.target), answer.proposal) == (True, "341 g", "p1")
    assert str(shown.book["SLAW-340"].target) == "341 g"
    assert "next run" in sign.message.view
    assert not any(one.key == "p1" for one in shown.desk.pending())


def test_a_target_is_refused_with_a_reason(shown, qtbot):
    propose(shown)
    touch(qtbot, shown.page.tabs[3])
    sign = shown.page.sign
    touch(qtbot, sign.why_button)
    hold(sign.refuse_button)
    fact = shown.line.entered[0][0][0]
    assert (fact.result, fact.details["reason"]) == ("refused", "figures do not convince")
    assert str(shown.book["SLAW-340"].target) == "343 g"


def test_a_proposal_for_another_version_cannot_be_approved(shown, qtbot):
    propose(shown, version=2)
    touch(qtbot, shown.page.tabs[3])
    hold(shown.page.sign.approve_button)
    assert shown.line.entered == []
    assert "is for version 2" in shown.page.sign.message.view


def test_versions_are_approved_one_after_the_other(shown, qtbot):
    touch(qtbot, shown.page.tabs[3])
    sign, count = shown.page.sign, len(shown.house.products)
    assert not sign.refuse_button.isEnabled()
    for left in range(count, 0, -1):
        assert sign.title.view.startswith(f"1 of {left}")
        hold(sign.approve_button)
    assert sign.title.view == "Nothing waits for a signature."
    approved = [
        version_approval(FactRecord(facts[0], Moment(NOW, 0, "UTC", 0), who, 1)).product
        for facts, who in shown.line.entered
    ]
    assert approved == list(shown.house.products)


def test_people_whose_training_is_over_come_first(shown, qtbot):
    touch(qtbot, shown.page.tabs[4])
    first = shown.page.people.view[0]
    assert first.attend
    assert (first.name, first.value) == ("Amaru Welkin", "2026-10-31")
    texts = []
    for _ in range(3):
        touch(qtbot, shown.page.turn_button)
        texts += [row.note for row in shown.page.people.view]
    assert any("SLAW-340 9 d" in words for words in texts)


def test_an_empty_record_says_so(qtbot, tmp_path):
    home = tmp_path / "empty"
    StationStore.open(home, "QH", "A1", SystemClock("Europe/Dublin")).close()
    rig = ManagerRig(home, tmp_path / "charts")
    qtbot.addWidget(rig.page, before_close_func=lambda page: page.stop())
    rig.show(partial(qtbot.waitUntil, timeout=60_000))
    qtbot.waitUntil(lambda: "No bag" in rig.page.reading.view)
    assert not rig.page.report_button.isEnabled()


@pytest.mark.parametrize("size", SIZES)
def test_nothing_is_cut_off(shown, qtbot, size):
    page = shown.page
    page.resize(*size)
    for tab in page.tabs:
        touch(qtbot, tab)
        for button in (*page.tabs, page.back_button, *page._foot, *page.sign._buttons):
            if button.isVisible():
                corner = button.mapTo(page, button.rect().bottomRight())
                assert page.rect().contains(corner)


@pytest.mark.parametrize(("asked", "named"), [(Period.ALL, True), (Period.DAY, False)])
def test_a_period_names_what_was_purged_of_it(qtbot, week, tmp_path, asked, named):
    home = copytree(week.home, tmp_path / "home")
    with StationStore.open(home, "QH", "A1", SystemClock("Europe/Dublin")) as store:
        at = Moment(NOW, 0, "Europe/Dublin", 0)
        store.record((note_of_purge(date(2020, 3, 4)),), at, "M01")
    rig = ManagerRig(home, tmp_path / "charts")
    qtbot.addWidget(rig.page, before_close_func=lambda page: page.stop())
    rig.page._period = asked
    rig.show(partial(qtbot.waitUntil, timeout=60_000))
    line = f"; 1 run was purged on {NOW:%Y-%m-%d}, export old-runs"
    assert rig.page.reading.view.endswith(line) is named, rig.page.reading.view
