"""The page of QA on a real record: each fault is found, settled and seen settled."""

import time
from datetime import timedelta

import pytest
from PySide6.QtCore import Qt

from station.core.checks.scale import check_fact
from station.core.checks.suspect import Decision
from station.core.dispositions import Disposition
from station.core.holds import ScopeKind
from station.core.journal import EntryKind
from station.core.languages import Language
from station.core.pack import LabelState, Quality
from station.core.reference_test import AID
from station.screens.doors import Door
from station.screens.tongue import say, speak
from station.screens.window import StationWindow
from station.store.facts import facts
from station.store.queries import trace_pack
from tests.station.screens.checks_rig import failed_check
from tests.station.screens.numbers_rig import touch
from tests.station.screens.quality_rig import NINE, QualityRig
from tests.station.screens.states import make_offer
from tests.station.screens.test_work import AT_ONCE_S, count_all
from tests.station.store.old_runs import note_of_purge

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only
INBOX, REJECTS, HOLDS, CHECKS, LOOK_UP, INSPECTOR, WHO = range(7)


@pytest.fixture
def make(qtbot, tmp_path):
    made = []

    def rig(**more):
        one = QualityRig(tmp_path / "home", **more)
        qtbot.addWidget(one.page, before_close_func=lambda page: page.stop())
        one.page.show()
        one.settle()
        made.append(one)
        return one

    yield rig
    for one in made:
        one.close()


@pytest.fixture
def rig(make):
    return make()


def quality(rig, serial):
    return trace_pack(rig.home, serial).quality


def said(rig):
    return rig.page.message.text()


def words(rig):
    return [row.cells[1] for row in rig.page.inbox.table.rows]


# --- who signs ----------------------------------------------------------------------------------


def test_nothing_is_entered_before_somebody_signs(rig):
    rig.tab(REJECTS)
    panel = rig.page.rejects
    panel.table.touch(rig.rejects[0])
    panel.decide_button.click()
    panel.decide.choose(Disposition.SAMPLE)
    panel.decide.reason.setText("laboratory")
    panel.decide.enter_button.held.emit()
    assert "Who signs?" in said(rig)
    assert facts(rig.home, (EntryKind.DISPOSITION,)) == ()


def test_the_first_touched_signs_and_the_second_witnesses(qtbot, rig):
    touch(qtbot, rig.page.tabs[WHO])
    touch(qtbot, rig.page.crew.buttons["L01"])
    touch(qtbot, rig.page.crew.buttons["Q01"])
    assert (rig.page.who, rig.page.second) == ("L01", "Q01")
    touch(qtbot, rig.page.crew.buttons["L01"])
    assert (rig.page.who, rig.page.second) == ("Q01", "")
    assert "P01" not in rig.page.crew.buttons  # a packer signs nothing here


# --- the ledger ---------------------------------------------------------------------------------


def test_the_day_lists_its_rejects_and_one_in_full_with_its_neighbours(rig):
    rig.tab(REJECTS)
    panel = rig.page.rejects
    assert [row.key for row in panel.table.rows] == rig.rejects
    assert "3 of 3 rejects" in panel.head.text()
    assert "3 bags lie in the bin" in panel.bin_state.text()
    panel.table.touch(rig.rejects[1])
    rig.settle()
    text = panel.words.text()
    limits = rig.run.window.limits
    for part in (rig.rejects[1], "331 g", "seal open", f"T1 {limits.t1}", f"T2 {limits.t2}"):
        assert part in text
    for use in rig.run.lot_set.uses:
        assert use.lot in text
    near = panel.near.text().splitlines()
    place = next(n for n, line in enumerate(near) if line.startswith("▶"))
    assert rig.rejects[1] in near[place]
    assert rig.serials[15] in near[place - 1]


def test_filters_let_through_what_they_name(rig):
    rig.pack(1)
    rig.weigh("345", "label spoiled")
    rig.tab(REJECTS)
    panel = rig.page.rejects
    panel.filter_button.click()
    panel.set_filter("reason", "label spoiled")
    assert [row.cells[3] for row in panel.table.rows] == ["label spoiled"]
    panel.set_filter("reason", "all")
    panel.set_filter("shift", "04:00-12:00")
    assert len(panel.shown) == len(panel.rows) == 4
    panel.set_filter("shift", "12:00-20:00")
    panel.chosen = {"position": "P01", "product": "SLAW-340"}
    assert len(panel.shown) == 4


def test_a_witness_signs_where_policy_says_and_the_list_shows_the_end(qtbot, rig):
    rig.tab(REJECTS)
    panel = rig.page.rejects
    for serial in rig.rejects[:2]:
        panel.table.touch(serial)
    panel.decide_button.click()
    panel.decide.choose(Disposition.DUMP)
    panel.decide.reason.setText("seal open")
    rig.sign("L01")
    panel.decide.enter_button.held.emit()
    assert "wants a witness" in said(rig)
    rig.sign("Q01")
    panel.decide.enter_button.held.emit()
    rig.settle()
    assert said(rig) == "2 bags are dumped."
    assert panel.pages.currentIndex() == 0
    assert [row.cells[4] for row in panel.table.rows] == ["dumped", "dumped", "open"]
    panel.open_button.click()
    assert [row.key for row in panel.table.rows] == rig.rejects[2:]
    [first, _] = facts(rig.home, (EntryKind.DISPOSITION,))
    assert (first.who, first.fact.details["witness"]) == ("L01", "Q01")


def test_a_correction_names_the_decision_before_it(rig):
    rig.sign("Q01", "L01")
    serial = rig.rejects[0]
    for end in (Disposition.DUMP, Disposition.SAMPLE):
        rig.tab(REJECTS)
        rig.page.rejects.table.touch(serial)
        rig.page.rejects.decide_button.click()
        rig.page.rejects.decide.choose(end)
        rig.page.rejects.decide.reason.setText("looked again")
        rig.page.rejects.decide.enter_button.held.emit()
        rig.settle()
    first, second = facts(rig.home, (EntryKind.DISPOSITION,))
    assert second.fact.details["corrects"] == first.fact.uid
    assert quality(rig, serial) is Quality.SAMPLED


def test_a_ticket_opens_its_row_and_a_weighed_bag_names_the_new_one(rig):
    new = rig.weigh("344").serial
    rig.tab(REJECTS)
    panel = rig.page.rejects
    panel.scan.take("]d2", f"90REJECT/{rig.rejects[2]}")
    rig.settle()
    assert panel.table.chosen == (rig.rejects[2],)
    assert panel.words.text().startswith(rig.rejects[2])
    rig.sign("L01")
    panel.decide_button.click()
    panel.decide.choose(Disposition.REWEIGH)
    panel.decide.reason.setText("seal closed again")
    panel.decide.into.setText(new)
    panel.decide.enter_button.held.emit()
    rig.settle()
    assert quality(rig, rig.rejects[2]) is Quality.REPACKED
    assert f"new bag {new}" in rig_words(rig, rig.rejects[2])


def rig_words(rig, serial):
    rig.page.rejects.show_one(serial)
    return rig.page.rejects.words.text()


def test_the_bin_is_counted_and_a_difference_explained(qtbot, rig):
    rig.sign("Q01")
    rig.tab(REJECTS)
    panel = rig.page.rejects
    panel.bin_button.click()
    touch(qtbot, panel.bin.pad.keys["2"])
    panel.bin.enter_button.held.emit()
    assert "say why they differ" in said(rig)
    panel.bin.why.setText("one went to the laboratory")
    panel.bin.enter_button.held.emit()
    rig.settle()
    assert "counted 2, -1: one went to the laboratory" in panel.bin_state.text()


# --- holds and release --------------------------------------------------------------------------


def hold(rig, kind, first, last="", why="leaf on the jaw"):
    rig.tab(HOLDS)
    panel = rig.page.holds
    panel.hold_button.click()
    panel.choose_scope(kind)
    panel.first.setText(first)
    panel.last.setText(last)
    panel.why_hold.setText(why)
    panel.enter_button.held.emit()
    rig.settle()


@pytest.mark.parametrize(
    ("kind", "held"),
    [
        (ScopeKind.SERIALS, 5),
        (ScopeKind.TIME, 30),
        (ScopeKind.RUN, 30),
        (ScopeKind.BLEND, 30),
        (ScopeKind.ROLL, 30),
    ],
)
def test_bags_are_held_by_any_scope(rig, kind, held):
    rig.sign("Q01")
    first, last = {
        ScopeKind.SERIALS: (rig.serials[0], rig.serials[4]),
        ScopeKind.TIME: ("08:59", "10:30"),
        ScopeKind.RUN: (rig.run.id, ""),
        ScopeKind.BLEND: (rig.run.blend_lot, ""),
        ScopeKind.ROLL: ("LR-0411", ""),
    }[kind]
    hold(rig, kind, first, last)
    qualities = [quality(rig, serial) for serial in rig.serials]
    assert qualities.count(Quality.HELD) == held
    assert all(quality(rig, serial) is Quality.REJECT for serial in rig.rejects)


def test_a_release_is_blocked_in_words_until_everything_is_settled(rig):
    rig.sign("Q01", "M01")
    hold(rig, ScopeKind.SERIALS, rig.serials[0], rig.serials[4])
    panel = rig.page.holds
    key = next(one.key for one in panel.list.values() if one.hold)
    panel.table.touch(key)
    text = panel.words.text()
    for blocked in ("3 rejects are undecided", "no good check of seal after the last bag"):
        assert blocked in text
    assert not panel.release_button.isEnabled()
    settle_everything(rig)
    rig.tab(HOLDS)
    panel.table.touch(key)
    assert "Nothing keeps it." in panel.words.text()
    panel.why_release.setText("looked at again")
    panel.release_button.held.emit()
    rig.settle()
    assert quality(rig, rig.serials[0]) is Quality.RELEASED
    [record] = [
        one for one in facts(rig.home, (EntryKind.RELEASE,)) if one.fact.details.get("hold")
    ]
    assert (record.who, record.fact.details["second"]) == ("Q01", "M01")


def test_one_person_alone_does_not_release(rig):
    rig.sign("Q01", "M01")
    hold(rig, ScopeKind.SERIALS, rig.serials[0], rig.serials[4])
    settle_everything(rig)
    rig.sign("M01")
    rig.tab(HOLDS)
    panel = rig.page.holds
    panel.table.touch(next(one.key for one in panel.list.values() if one.hold))
    panel.why_release.setText("looked at again")
    panel.release_button.held.emit()
    assert "Two people release" in said(rig)


def test_a_lead_holds_and_does_not_release(rig):
    rig.sign("L01", "Q01")
    hold(rig, ScopeKind.SERIALS, rig.serials[0], rig.serials[4])
    settle_everything(rig)
    rig.tab(HOLDS)
    panel = rig.page.holds
    panel.table.touch(next(one.key for one in panel.list.values() if one.hold))
    panel.why_release.setText("looked at again")
    panel.release_button.held.emit()
    assert "may not release bags" in said(rig)


def test_a_label_in_doubt_keeps_a_run(rig):
    record = rig.weigh("344")
    rig.store.mark_label(record.serial, LabelState.VOIDED, rig.clock.now(), "L01", "torn up")
    bag = rig.serials[3]
    rig.store.mark_label(bag, LabelState.IN_DOUBT, rig.clock.now(), "station", "power cut")
    rig.tab(HOLDS)
    [one] = rig.page.holds.list.values()
    assert "1 labels are in doubt" in one.blocked
    rig.tab(INBOX)
    assert any(bag in line for line in words(rig))


def settle_everything(rig):
    """Decide the rejects, and make every check after the last bag."""
    desk, day = rig.desks.rejects, rig.desks.rejects.today
    rig.enter(desk.decide(desk.rows(day), Disposition.SAMPLE, "Q01", "laboratory"), "Q01")
    for limit in rig.desks.checks.limits(rig.run):
        value = limit.most
        made = rig.desks.checks.check(limit, rig.run, value, found=limit.pieces, note="W-1")
        rig.enter((made,), "Q01")
    rig.enter((check_fact(failed_check(0), "scale-check-1", rig.run.id),), "L01")
    rig.settle()


def test_a_release_names_the_bags_that_no_other_hold_keeps(rig):
    rig.sign("Q01", "M01")
    for first, last in ((0, 9), (4, 6), (6, 12)):
        hold(rig, ScopeKind.SERIALS, rig.serials[first], rig.serials[last])
    settle_everything(rig)
    rig.tab(HOLDS)
    panel = rig.page.holds
    told = {one.subject: (one.bags, one.frees) for one in panel.list.values() if one.hold}
    spans = {f"{rig.serials[a]} to {rig.serials[b]}": (a, b) for a, b in ((0, 9), (4, 6), (6, 12))}
    assert {spans[name]: both for name, both in told.items()} == {
        (0, 9): (10, 4), (4, 6): (3, 0), (6, 12): (7, 3),
    }  # fmt: skip
    panel.table.touch(next(one.key for one in panel.list.values() if one.bags == 10))
    panel.why_release.setText("looked at again")
    panel.release_button.held.emit()
    rig.settle()
    assert "4 bags are released." in said(rig)
    [released] = facts(rig.home, (EntryKind.RELEASE,))
    assert released.fact.details["bags"] == 4
    assert sum(quality(rig, serial) is Quality.RELEASED for serial in rig.serials) == 4


def test_a_run_is_released_when_it_is_over_and_nothing_is_open(rig):
    rig.sign("Q01", "M01")
    settle_everything(rig)
    rig.tab(HOLDS)
    [one] = rig.page.holds.list.values()
    assert one.blocked == ("the run is open",)
    rig.store.end_run(rig.run.id, rig.clock.now(), "L01")
    rig.tab(HOLDS)
    panel = rig.page.holds
    panel.table.touch(rig.run.id)
    panel.why_release.setText("complete")
    panel.release_button.held.emit()
    rig.settle()
    assert panel.list == {}
    [released] = facts(rig.home, (EntryKind.RELEASE,))
    assert (released.fact.run, released.fact.details["bags"]) == (rig.run.id, len(rig.serials))


# --- checks -------------------------------------------------------------------------------------


def test_a_failed_check_holds_the_bags_since_the_last_good_one_and_qa_decides(qtbot, rig):
    rig.sign("Q01", "M01")
    rig.show()
    rig.tab(CHECKS)
    panel = rig.page.checks
    panel.choose("seal")
    touch(qtbot, panel.outcome.buttons["passed"])
    panel.enter_button.held.emit()
    rig.settle()
    good = len(rig.serials)
    rig.pack(6)
    panel.choose("seal")
    touch(qtbot, panel.outcome.buttons["failed"])
    panel.enter_button.held.emit()
    assert "write what is done about it" in said(rig)
    panel.action.setText("jaw cleaned, bags held")
    panel.enter_button.held.emit()
    rig.settle()
    held = [serial for serial in rig.serials if quality(rig, serial) is Quality.HELD]
    assert held == rig.serials[good:]
    rig.tab(INBOX)
    assert words(rig)[0].startswith(("Suspect window of seal: 6", "Seal failed"))
    assert {line.split(":")[0] for line in words(rig)[:2]} == {
        "Suspect window of seal",
        "Seal failed its last check",
    }
    rig.tab(HOLDS)
    holds = rig.page.holds
    [window] = holds.windows
    holds.table.touch(window)
    holds.why_release.setText("water test of ten bags, all tight")
    holds.release_button.held.emit()
    rig.settle()
    assert holds.windows == {}
    assert quality(rig, held[0]) is Quality.RELEASED
    decided = facts(rig.home, (EntryKind.SUSPECT,))[-1]
    assert decided.fact.result == str(Decision.RELEASED)


def test_a_figure_is_keyed_in_with_its_point_and_held_against_its_limits(qtbot, rig):
    rig.sign("Q01")
    rig.show()
    rig.tab(CHECKS)
    panel = rig.page.checks
    panel.choose("room temperature")
    for key in "3.4":
        touch(qtbot, panel.pad.keys[key])
    assert panel.value.text() == "3.4 °C"
    assert "at most 3.3 °C" in panel.head.text()
    panel.enter_button.held.emit()
    assert "write what is done" in said(rig)  # 3.4 is above 3.3 °C (38 °F, common practice)
    panel.pad.keys["CLEAR"].click()
    for key in "3.3":
        touch(qtbot, panel.pad.keys[key])
    panel.enter_button.held.emit()
    rig.settle()
    [record] = facts(rig.home, (EntryKind.QA_CHECK,))
    assert (record.fact.result, record.fact.details["value"]) == ("good", "3.3")
    assert panel.table.rows[0].cells[1:4] == ("room temperature", "3.3 °C", "at most 3.3 °C")


def test_a_metal_detector_is_challenged_piece_by_piece(qtbot, rig):
    rig.sign("Q01")
    rig.show()
    rig.tab(CHECKS)
    panel = rig.page.checks
    panel.choose("metal detector")
    pieces = list(panel.piece_tiles.buttons)
    assert pieces == ["2.0 mm Fe", "2.5 mm non-Fe", "3.5 mm stainless"]
    for piece in pieces:
        touch(qtbot, panel.piece_tiles.buttons[piece])
    panel.enter_button.held.emit()
    rig.settle()
    [record] = facts(rig.home, (EntryKind.QA_CHECK,))
    assert record.fact.result == "good"
    assert set(record.fact.details["found"]) == set(pieces)


# --- the inbox ----------------------------------------------------------------------------------


def test_an_open_thing_leads_to_where_it_is_settled(rig):
    rig.tab(INBOX)
    row = next(row for row in rig.page.inbox.table.rows if "rejects" in row.cells[1])
    rig.page.inbox.table.touch(row.key)
    rig.settle()
    assert rig.page.pages.currentWidget() is rig.page.rejects
    assert [one.key for one in rig.page.rejects.table.rows] == rig.rejects


def test_a_day_with_open_things_is_signed_with_a_remark_by_qa_alone(rig):
    rig.clock.utc = NINE + timedelta(days=1)
    rig.page.inbox.day = NINE.date()
    rig.tab(INBOX)
    assert any("is not reviewed and signed" in line for line in words(rig))
    assert "33 bags, 3 set aside" in rig.page.inbox.state.text()
    rig.sign("L01")
    rig.page.inbox.sign_button.held.emit()
    assert "may not sign for a day" in said(rig)
    rig.sign("L01", "Q01")
    rig.page.inbox.sign_button.held.emit()
    assert "things are open" in said(rig)
    rig.page.inbox.remark.setText("rejects are decided on Thursday")
    rig.page.inbox.sign_button.held.emit()
    rig.settle()
    assert not any("is not reviewed and signed" in line for line in words(rig))
    assert "by Q01" in rig.page.inbox.state.text()


# --- complaints ---------------------------------------------------------------------------------


def test_a_complaint_is_found_by_label_or_by_lot_and_time(rig):
    rig.sign("Q01")
    rig.show()
    seal = next(one for one in rig.desks.checks.limits(rig.run) if str(one.kind) == "seal")
    rig.enter((rig.desks.checks.check(seal, rig.run, instrument="bath 1"),), "Q01")
    rig.tab(LOOK_UP)
    panel = rig.page.look_up
    run = rig.run
    asked = rig.serials[14]
    scan = f"]C101{run.product.gtin:0>14}10{run.blend_lot}\x1d21{asked}"
    panel.scan.setText(scan)
    panel.go_button.click()
    rig.settle()
    assert panel.found.bag.serial == asked
    assert panel.table.chosen == (asked,)
    at = list(panel.found.in_order).index(panel.found.bag)
    after = [row.key for row in panel.table.rows][at + 1 :]
    assert len(after) == min(20, 33 - 1 - at)
    assert "qa check, seal: passed" in panel.around.text()
    for _, code, supplier in panel.found.lots:
        assert code in panel.bag.text()
        assert supplier in panel.bag.text()

    seen = panel.found.bag.at
    panel.scan.setText(run.blend_lot)
    panel.time.setText(f"{seen:%Y-%m-%d %H:%M}")
    panel.go_button.click()
    rig.settle()
    assert abs((panel.found.bag.at - seen).total_seconds()) <= 60


def test_what_nobody_packed_is_refused_in_words(rig):
    rig.tab(LOOK_UP)
    rig.page.look_up.scan.setText("A1-ZZ-999999")
    rig.page.look_up.go_button.click()
    rig.settle()
    assert "is not in the record" in said(rig)


def test_a_scan_takes_the_place_of_one_that_was_refused(qtbot, rig):
    """A scanner that types would else put the second code behind the first."""
    rig.show()
    rig.tab(LOOK_UP)
    field = rig.page.look_up.scan
    for code in ("A1-ZZ-999999", rig.serials[2]):
        qtbot.keyClicks(field, code)
        qtbot.keyClick(field, Qt.Key.Key_Return)
        rig.settle()
    assert rig.page.look_up.found.bag.serial == rig.serials[2]


# --- the inspector ------------------------------------------------------------------------------


def test_an_inspector_picks_bags_weighs_them_and_sees_the_criterion(make):
    rig = make(bags=115)
    rig.sign("Q01")
    rig.tab(INSPECTOR)
    panel = rig.page.inspector
    assert "no official result" in panel.head.text()
    batch = next(one for one in panel.batches if len(one.packs) >= 50)
    panel.list.touch(batch.key)
    assert [what for name, what in rig.intents.asked if name == "bar"][-1][1]
    panel.scan.setText(batch.packs[3].serial)
    panel.scan.returnPressed.emit()
    panel.scan.setText(rig.rejects[0])
    panel.scan.returnPressed.emit()
    assert "is not in this batch" in said(rig)
    rig.rest("0")
    assert panel.verb.text() == f"PUT {batch.packs[3].serial} ON"
    rig.rest("350")
    assert panel.test.nets[0].digits == "342"
    assert "mean 342.00 g" in panel.standing.text()
    panel.keep_button.held.emit()
    assert "Refused" in said(rig)  # the sample is not whole
    panel.end_button.held.emit()
    assert not panel.under_way
    assert facts(rig.home, (EntryKind.REFERENCE,)) == ()


def test_a_whole_sample_is_kept_as_an_aid_and_a_rehearsal_tells_the_odds(make):
    rig = make(bags=115)
    rig.sign("Q01")
    rig.tab(INSPECTOR)
    panel = rig.page.inspector
    batch = max(panel.batches, key=lambda one: len(one.packs))
    panel.list.touch(batch.key)
    panel.rehearse_button.click()
    rig.settle()
    assert "of 2000 rehearsed samples" in panel.rehearsed.text() or "cannot be drawn" in said(rig)
    panel.draw_button.click()
    picked = [one.serial for one in panel.test.picked]
    assert len(picked) == panel.test.plan.n
    for _ in picked:
        rig.rest("0")
        rig.rest("351")
    assert "WOULD BE ACCEPTED" in panel.standing.text()
    panel.inspector.setText("S. Weir, inspector")
    panel.keep_button.held.emit()
    rig.settle()
    [record] = facts(rig.home, (EntryKind.REFERENCE,))
    assert record.fact.details["aid"] == AID
    assert record.fact.details["seed"] is not None
    assert [one["serial"] for one in record.fact.details["picked"]] == picked


@pytest.mark.parametrize("size", [(1024, 768), (1920, 1080)])
def test_every_tab_fits_its_window(make, size):
    rig = make(size=size)
    for index in range(7):
        rig.tab(index)
        assert (rig.page.width(), rig.page.height()) == size
        assert rig.page.minimumSizeHint().height() <= size[1]


def test_a_lead_reaches_it_behind_more_and_by_its_key(qtbot, make):
    rig = make()
    door = Door("QUALITY", Qt.Key.Key_F10, lambda: rig.page)
    window = StationWindow(rig.bridge, rig.intents, make_offer(), doors=(door,))
    qtbot.addWidget(window)
    window.show()
    window.show_lead()
    touch(qtbot, window.lead.more_button)
    touch(qtbot, window.lead.doors["QUALITY"])
    assert window.screens.currentWidget() is rig.page
    rig.settle()
    rig.tab(LOOK_UP)
    window.take_scan("", rig.serials[2])
    rig.settle()
    assert rig.page.look_up.found.bag.serial == rig.serials[2]
    touch(qtbot, rig.page.back_button)
    assert window.screens.currentWidget() is window.lead
    window.screens.removeWidget(rig.page)
    rig.page.setParent(None)


def test_held_bags_are_dumped_with_a_witness_and_the_empty_hold_is_let_go(rig):
    rig.sign("Q01", "M01")
    hold(rig, ScopeKind.SERIALS, rig.serials[0], rig.serials[4])
    panel = rig.page.holds
    panel.table.touch(next(one.key for one in panel.list.values() if one.hold))
    panel.why_release.setText("too light")
    rig.sign("M01")
    panel.dump_button.held.emit()
    assert "wants a witness" in said(rig)
    rig.sign("M01")
    panel.dump_button.held.emit()
    rig.settle()
    assert said(rig).startswith("5 bags are dumped")
    assert {quality(rig, serial) for serial in rig.serials[:5]} == {Quality.DUMPED}
    [empty] = [one for one in panel.list.values() if one.hold]
    assert (empty.bags, empty.blocked) == (0, ())
    assert not panel.dump_button.isEnabled()
    panel.table.touch(empty.key)
    panel.why_release.setText("all dumped")
    panel.release_button.held.emit()
    rig.settle()
    assert not [one for one in panel.list.values() if one.hold]
    assert quality(rig, rig.serials[0]) is Quality.DUMPED
    rig.tab(REJECTS)
    assert len(rig.page.rejects.table.rows) == len(rig.rejects) + 5


# --- long questions -------------------------------------------------------------------------------


def test_a_long_question_is_given_up_and_the_page_goes_on(rig, qtbot):
    page, answered = rig.page, []
    page.ask(lambda: count_all(rig.home), answered.append)
    page.ask(lambda: "after it", answered.append)
    qtbot.waitUntil(page.wait_card.isVisible)
    assert not any(
        page.wait_card.geometry().intersects(tab.geometry())
        for tab in (*page.tabs, page.back_button)
    )
    began = time.process_time()
    touch(qtbot, page.wait_card.button)
    assert not page.busy
    assert page.wait_card.isHidden()
    assert time.process_time() - began < AT_ONCE_S
    assert said(rig) == "Given up."
    touch(qtbot, page.tabs[REJECTS])
    rig.settle()
    assert len(page.rejects.rows) == len(rig.rejects)
    assert answered == []


def test_whoever_leaves_the_page_is_asked_nothing_more(rig):
    rig.page.ask(lambda: count_all(rig.home), lambda _: None)
    [thread] = [one for one in rig.page._asked.work._threads if one.is_alive()]
    rig.page.hide()
    assert not rig.page.busy
    thread.join(60)
    assert not thread.is_alive()


def test_a_day_names_what_was_purged_of_it(make):
    """Never an emptier day without a word; in every language."""
    rig = make()
    day = NINE.date() - timedelta(days=1)
    once, again = (note_of_purge(day, uid, uid) for uid in ("old-1", "old-2"))
    rig.store.record((once,), rig.clock.now(), "M01")
    inbox, rejects = (rig.page.panels[index] for index in (INBOX, REJECTS))
    for panel in (inbox, rejects):
        panel.go_to(day)
        rig.settle()
    shown = [inbox.state, rejects.bin_state]
    line = "1 run was purged on 2026-11-25, export old-1"
    assert [text.text().split("\n")[0] for text in shown] == [line] * 2
    for language in Language:
        speak(language)
        words = say(inbox.state.text()).split("\n")[0]
        assert "2026-11-25" in words
        assert "old-1" in words
        assert (words == line) is (language is Language.ENGLISH), words
    speak(Language.ENGLISH)
    rig.store.record((again,), rig.clock.now(), "M01")
    rejects.go_to(day)
    rig.settle()
    assert rejects.bin_state.text().startswith("2 runs were purged, the last on 2026-11-25, export")
    rejects.go_to(NINE.date())
    rig.settle()
    assert "purged" not in rejects.bin_state.text()
