"""``station handover``: what is open comes first, and the exit code says whether anything is."""

from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pypdfium2

from labels.readback import scan
from station.config.load import load_settings
from station.core.checks.rolls import put_in_fact
from station.core.clearance import Reconciliation, reconciled_fact
from station.core.facts import Fact
from station.core.journal import EntryKind
from station.core.line_lots import LotMove, Move, move_fact
from station.core.pauses import Look, Pause, Reason, resume_fact, stop_fact
from station.store.writer import StationStore
from tests.station.cli.conftest import DEMO, SteppingClock

DAY = "2026-11-25"


def late_clock():
    clock = SteppingClock()
    clock.count = 3000
    return clock


def text_of(path):
    document = pypdfium2.PdfDocument(path.read_bytes())
    words = "\n".join(page.get_textpage().get_text_bounded() for page in document)
    document.close()
    return words


def test_a_day_with_open_points_is_handed_over_in_order(station, home, packed, tmp_path):
    clock = late_clock()
    with StationStore.open(home, "QH", "A1", clock) as store:
        begun = stop_fact("p1", "L1", packed.run.id, Reason.FILM)
        store.record((begun,), clock.now(), "L01")
        pause = Pause("p1", Reason.FILM, clock.now().utc)
        ended = resume_fact("p2", "L1", packed.run.id, pause, frozenset(Look))
        store.record((ended,), clock.now(), "L01")
        store.record((stop_fact("p3", "L1", packed.run.id, Reason.BREAK),), clock.now(), "L01")
        ranges = [[str(store.epoch), 1, 1]]
        held = Fact(EntryKind.HOLD, "h1", "SM-WC26323", "held", "", {"ranges": ranges})
        store.record((held,), clock.now(), "Q01")
        counted = reconciled_fact("g1", Reconciliation(packed.run.id, 3, 3))
        store.record((counted,), clock.now(), "L01")
        loaded = move_fact(LotMove(Move.LOADED, "SM-WC26323", "WHITE-CABBAGE"), "m1", "L1")
        store.record((loaded, put_in_fact("LR-7", 500, "r1")), clock.now(), "L01")
    pdf = tmp_path / "sheet.pdf"
    call = ("handover", "--home", home, "--day", DAY, "--pdf", pdf, "--json")
    done = station(*call)
    assert done.code == 1
    document = done.document
    assert document["open"][:2] == ["run open: Crunchy slaw mix", "the line stands: break"]
    assert "hold open: SM-WC26323, 1 bags" in document["open"]
    assert "rejects that wait for a decision: 3" in document["open"]
    assert document["on_line"] == [
        {"line": "L1", "lot": "SM-WC26323", "component": "WHITE-CABBAGE"}
    ]
    assert document["roll"] == {"roll": "LR-7", "issued": 500, "used": 0}
    assert [stop["reason"] for stop in document["stops"]] == ["film or labels", "break"]
    assert document["stops"][0]["to"] is not None
    assert [run["on_pallet"] for run in document["runs"]] == [3]
    words = text_of(pdf)
    for said in (
        *("the line stands: break", "run reconciled", "stands", packed.run.blend_lot),
        *("SM-WC26323", "roll LR-7, 0 labels used of 500"),
    ):
        assert said in words
    again = tmp_path / "again.pdf"
    station("handover", "--home", home, "--day", DAY, "--pdf", again)
    assert again.read_bytes() == pdf.read_bytes()


def test_a_day_without_a_run_has_nothing_to_hand_over(station, home):
    done = station("handover", "--home", home, "--day", "2026-01-05", "--json")
    assert (done.document["runs"], done.document["stops"]) == ([], [])


def test_the_sheet_carries_the_head_in_words_and_in_a_code_that_verify_takes(
    station, home, tmp_path
):
    key = home.with_name("home.key")
    with StationStore.open(home, "QH", "A1", late_clock(), key):
        pass
    pdf = tmp_path / "sheet.pdf"
    done = station("handover", "--home", home, "--day", DAY, "--pdf", pdf, "--json")
    head = done.document["head"]
    assert head["signed"] is True
    assert all(word in text_of(pdf) for word in (str(head["size"]), *head["words"].split()))
    (found,) = scan(pdf.read_bytes())
    for given in (found.data.decode(), f"{head['size']} {head['words']}"):
        whole = station("journal", "verify", "--home", home, "--head", given, "--json")
        assert (whole.code, whole.document["whole"]) == (0, True)


def test_a_sheet_without_a_signature_says_why(station, home, tmp_path):
    pdf = tmp_path / "sheet.pdf"
    done = station("handover", "--home", home, "--day", DAY, "--pdf", pdf, "--json")
    assert done.document["head"]["signed"] is False
    assert "NOT SIGNED: no entry of the record names a key" in text_of(pdf).replace("\n", " ")


def test_a_night_belongs_to_the_day_it_began_on(station, home, packed):
    """With settings the day changes at their cut-off, so a stop at two at night is of the day."""
    cut_off = load_settings(DEMO).cut_off
    assert cut_off > time(2)
    clock = late_clock()
    zone = ZoneInfo(clock.now().zone)
    night = datetime.combine(date.fromisoformat(DAY) + timedelta(days=1), time(2), zone)
    at = replace(clock.now(), utc=night.astimezone(UTC))
    with StationStore.open(home, "QH", "A1", clock) as store:
        store.record((stop_fact("p9", "L1", packed.run.id, Reason.FILM),), at, "L01")
    next_day = night.date().isoformat()

    def stops(day, *more):
        found = station("handover", "--home", home, "--day", day, "--json", *more).document
        return [stop["reason"] for stop in found["stops"]]

    assert stops(DAY, "--config", DEMO) == ["film or labels"]
    assert stops(next_day, "--config", DEMO) == []
    assert (stops(DAY), stops(next_day)) == ([], ["film or labels"])
    for day in (DAY, next_day):  # it stands still, whatever day it began on
        assert (
            "the line stands: film or labels"
            in station(
                "handover", "--home", home, "--day", day, "--json", "--config", DEMO
            ).document["open"]
        )


def test_a_stop_over_the_change_of_day_counts_once_and_whole(station, home, packed):
    clock = late_clock()
    midnight = datetime.combine(date.fromisoformat(DAY) + timedelta(days=1), time(0), UTC)
    pause = Pause("p7", Reason.CLEANING, midnight - timedelta(minutes=10))
    later = midnight + timedelta(minutes=20)
    with StationStore.open(home, "QH", "A1", clock) as store:
        stop = stop_fact(pause.uid, "L1", packed.run.id, pause.reason)
        store.record((stop,), replace(clock.now(), utc=pause.began), "L01")
        went_on = resume_fact("p8", "L1", packed.run.id, pause, frozenset(Look))
        store.record((went_on,), replace(clock.now(), utc=later), "L01")
        second = stop_fact("p10", "L1", packed.run.id, Reason.BREAK)
        store.record((second,), replace(clock.now(), utc=later), "L01")
    report = station("report", "--home", home, "--day", DAY, "--json").document
    assert report["stops"] == [{"reason": "cleaning", "count": 1, "seconds": 1800}]
    sheet = station("handover", "--home", home, "--day", DAY, "--json").document
    assert [stop["to"] is None for stop in sheet["stops"]] == [False]
    assert "the line stands: break" in sheet["open"]
    assert "the line stands: cleaning" not in sheet["open"]
