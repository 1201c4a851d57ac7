"""Signatures through the whole chain: what is not signed never reaches the record, bags go on."""

import pytest

from station.access.credentials import Credentials
from station.app.places import demo_settings
from station.app.practice import lead_of, run_choice, second_of
from station.app.practice_people import PracticeIntents, demo_pins, give_pins
from station.core.ids import new_uid
from station.core.journal import EntryKind
from station.core.pauses import LOOKS, Reason
from station.core.receiving import hold_lot_fact, release_lot_fact
from station.line.opening import calendar_day
from station.line.state import Phase
from station.store.facts import facts
from station.store.verify import verify
from tests.end_to_end.line import PATIENCE_S, bench_line

EVERYBODY_WAITS = "a PIN or badge is needed"


@pytest.fixture
def line(tmp_path):
    with bench_line(tmp_path, pins=True) as made:
        made.home = tmp_path
        yield made


def start(line, by):
    product = line.house.products["ROCKET-SPINACH-200"]
    day = calendar_day(line.station.clock.now())
    by.start_run(run_choice(line.house, product, day, None))
    return line.watch.next_answer(PATIENCE_S), product


def test_a_run_is_opened_by_a_pin_and_its_bags_need_none(line):
    lead, refused = lead_of(line.house), start(line, line.station.line)[0]
    assert (refused.started, refused.words) == (
        False,
        f"{lead} did not sign: to start a run, {EVERYBODY_WAITS}",
    )
    for who, pin in demo_pins(line.house).items():
        line.station.access.credentials.set_pin(who, pin)
    signed = PracticeIntents(line.station.line, line.station.signing, line.house)
    answer, product = start(line, signed)
    assert answer.started, answer.words
    with line.packer(product):
        line.until(lambda state: state.tally.good >= 2)
    line.station.line.end_run(lead)
    assert EVERYBODY_WAITS in line.watch.next_answer(PATIENCE_S).words
    line.bench.lift()
    line.until(lambda state: state.phase is Phase.READY)
    signed.end_run(lead)
    line.until(lambda state: state.run is None)


def test_a_hold_is_taken_by_name_and_taken_off_by_qa_with_a_pin(line):
    qa = second_of(line.house)
    line.station.access.credentials.set_pin(qa, demo_pins(line.house)[qa])
    lot, at = next(iter(line.house.lots)), line.station.clock.now()
    hold = hold_lot_fact(new_uid(at), lot, "the grower called", ())
    free = release_lot_fact(new_uid(at), lot, hold.uid, "results came")
    entered = line.watch.next_entry
    line.station.line.enter((hold,), "P01")
    assert entered(PATIENCE_S).recorded
    line.station.line.enter((free,), "L01")
    assert "L01 (lead) may not release" in entered(PATIENCE_S).words
    line.station.line.enter((free,), qa)
    assert EVERYBODY_WAITS in entered(PATIENCE_S).words
    assert facts(line.home, (EntryKind.RELEASE,)) == ()
    PracticeIntents(line.station.line, line.station.signing, line.house).enter((free,), qa)
    assert entered(PATIENCE_S).recorded


def test_wrong_pins_stand_in_the_record_without_a_digit_of_them(line):
    lead = lead_of(line.house)
    line.station.access.credentials.set_pin(lead, demo_pins(line.house)[lead])
    assert line.station.signing.sign(lead, "998877").words == "this PIN is not right"
    assert line.watch.next_entry(PATIENCE_S).recorded
    (kept,) = facts(line.home, (EntryKind.PERSON,))
    assert (kept.fact.subject, kept.fact.result) == (lead, "signature refused")
    assert kept.fact.details["after"] == "wrong PIN, number 1"
    stored = (line.home / "station.sqlite-wal").read_bytes()
    assert b"998877" not in stored


def test_a_stop_needs_no_pin_and_going_on_does(line):
    change = line.station.change
    line.station.line.enter((change.stop(Reason.BREAK),), "P01")
    assert line.watch.next_entry(PATIENCE_S).recorded
    line.station.line.enter((change.go_on(frozenset(LOOKS[Reason.BREAK])),), "L01")
    assert EVERYBODY_WAITS in line.watch.next_entry(PATIENCE_S).words
    assert change.standing is not None


def test_the_demos_pins_are_those_its_settings_print(line):
    printed = {}
    for text in (demo_settings() / "people.toml").read_text("utf-8").split("[[person]]")[1:]:
        printed[text.split('id = "')[1].split('"')[0]] = text.split("demo PIN ")[1].split()[0]
    assert printed == demo_pins(line.house)


def test_giving_the_demos_pins_is_on_record_and_leaves_pins_that_are_set(tmp_path):
    kept = Credentials(tmp_path)
    kept.set_pin("L01", "739164")
    with bench_line(tmp_path, pins=True, before=give_pins) as line:
        again = line.station.access.credentials
        assert again.pin_fits("L01", "739164")
        assert again.pin_fits("Q01", demo_pins(line.house)["Q01"])
    given = facts(tmp_path, (EntryKind.PERSON,))
    assert {one.fact.subject for one in given} == set(line.house.people) - {"L01"}
    assert {one.fact.details["after"] for one in given} == {"a PIN"}
    assert verify(tmp_path).whole
