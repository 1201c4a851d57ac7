from datetime import date, datetime, timedelta, timezone
from decimal import Decimal

import pytest

from station.core.pack import LabelState, Quality
from station.errors import BadInput
from station.line.state import Tally
from station.store import queries


@pytest.fixture
def packed(packed_once):
    return packed_once.home, packed_once.serials, packed_once.runs


def test_the_day_s_rejects_are_all_there_in_order_with_why(packed, world):
    home, serials, _ = packed
    rows = queries.rejects_of_day(home, world.day)
    assert [(row.serial, row.reason) for row in rows] == [
        (serials[0], "torn"),
        (serials[2], "too light"),
        (serials[7], "too light"),
    ]
    light = rows[1]
    assert (light.product, light.version, light.name) == ("HA-250", 3, "Hollow Ash mix 250 g")
    assert (str(light.net), str(light.nominal)) == ("0.2405 kg", "250 g")
    assert (light.quality, light.label) == (Quality.REJECT, LabelState.NONE)
    assert (light.verdict, light.operator) == ("below T1", "i.sedge")
    assert light.blend_lot == "L12606301"
    assert light.at.utcoffset() == timedelta(hours=1)
    assert light.at.replace(tzinfo=None) > datetime(2026, 3, 4, 8)  # noqa: DTZ001


def test_another_day_has_none(packed):
    assert queries.rejects_of_day(packed[0], date(2026, 3, 5)) == ()


def test_a_lot_of_both_runs_names_every_bag(packed):
    home, serials, runs = packed
    trace = queries.trace_lot(home, "LF-101")
    assert [pack.serial for pack in trace.packs] == serials
    assert trace.lot.supplier == "Ashbrook Growers"
    assert [run.uid for run in trace.runs] == [run.id for run in runs]
    assert trace.blend_lots == ("L12606301", "L12606302")
    assert trace.counts == {Quality.GOOD: 7, Quality.REJECT: 3}
    # 8 bags of 252.5 g and 2 of 240.5 g, by hand
    assert trace.kilograms == Decimal("2.501")
    assert trace.runs[0].ended is not None
    assert trace.runs[1].ended is None


def test_a_lot_of_one_run_names_only_its_bags(packed):
    home, serials, _ = packed
    trace = queries.trace_lot(home, "LF-102")
    assert [pack.serial for pack in trace.packs] == serials[5:]
    assert trace.packs[0].use_by == date(2026, 3, 9)
    assert trace.packs[0].label is LabelState.APPLIED


def test_a_lot_never_used_has_no_bags(world):
    with world.stocked():
        pass
    trace = queries.trace_lot(world.home, "LF-102")
    assert (trace.packs, trace.runs, trace.counts) == ((), (), {})
    assert trace.kilograms == 0


def test_a_bag_tells_everything(packed):
    home, serials, (_, second) = packed
    trace = queries.trace_pack(home, serials[7])
    assert trace.record.id.number == 8
    assert trace.record.draft.run == second.id
    assert trace.record.draft.weighing.frame == "0a20302e32363530206b672020202020200d"
    assert (trace.quality, trace.label, trace.reason) == (
        Quality.REJECT,
        LabelState.NONE,
        "too light",
    )
    assert (trace.run.product, trace.run.version, trace.run.lead) == ("HA-250", 3, "p.marsh")
    assert [(lot.code, lot.supplier) for lot in trace.lots] == [
        ("CR-201", "Tinmill Beds"),
        ("LF-101", "Ashbrook Growers"),
        ("LF-102", "Quarry Farm"),
    ]
    assert [pack.serial for pack in trace.neighbours] == serials[:7] + serials[8:]


def test_a_bag_taken_back_shows_how_it_was_judged_and_what_became_of_it(packed):
    home, serials, _ = packed
    trace = queries.trace_pack(home, serials[0])
    assert trace.record.draft.quality is Quality.GOOD
    assert (trace.quality, trace.label) == (Quality.REJECT, LabelState.VOIDED)
    assert trace.reason == "torn"


def test_neighbours_are_at_most_twenty_on_each_side(world):
    with world.stocked() as store:
        run = world.start(store)
        serials = [store.add_pack(world.draft(run)).serial for _ in range(50)]
    near = [pack.serial for pack in queries.trace_pack(world.home, serials[24]).neighbours]
    assert near == serials[4:24] + serials[25:45]


@pytest.mark.parametrize(
    ("code", "words"),
    [
        ("LF-104", "close to it are LF-10"),
        ("lf-101", "close to it are LF-101"),
        ("ZZZ", "none alike"),
        ("L12606302", "blend lot, not an input lot: it is made from CR-201, LF-101, LF-102"),
    ],
)
def test_an_unknown_lot_names_close_ones(packed, code, words):
    with pytest.raises(BadInput, match=words):
        queries.trace_lot(packed[0], code)


def test_an_unknown_serial_names_close_ones(packed):
    home, serials, _ = packed
    with pytest.raises(BadInput, match=f"close to it are.*{serials[2]}"):
        queries.trace_pack(home, serials[2] + "1")
    with pytest.raises(BadInput, match="is not in the record"):
        queries.trace_pack(home, "%")
    with pytest.raises(BadInput, match="is not in the record"):
        queries.trace_pack(home, "")


def test_an_empty_record_says_so(world):
    world.open().close()
    with pytest.raises(BadInput, match="the record has none yet"):
        queries.trace_lot(world.home, "LF-101")
    assert queries.last_run(world.home) is None
    assert queries.known_lots(world.home) == ()
    assert queries.summary(world.home).packs == 0


def test_the_tally_is_the_one_a_screen_shows(packed):
    home, _, (first, second) = packed
    assert queries.run_tally(home, first.id) == Tally(3, 2, 3 * 252_500_000, 0)
    assert queries.run_tally(home, second.id) == Tally(4, 1, 4 * 252_500_000, 0)
    with pytest.raises(BadInput, match="run nowhere is not in the record"):
        queries.run_tally(home, "nowhere")


def test_the_last_run_comes_back_whole(packed):
    home, _, (_, second) = packed
    last = queries.last_run(home)
    assert last.run == second
    assert last.open
    assert last.tally == queries.run_tally(home, second.id)


def test_the_summary_counts_everything(packed):
    found = queries.summary(packed[0])
    assert (found.packs, found.good, found.rejects, found.runs) == (10, 7, 3, 2)
    assert found.labels == {LabelState.APPLIED: 7, LabelState.NONE: 2, LabelState.VOIDED: 1}
    assert found.duplicate_serials == 0
    assert found.net_micrograms == 7 * 252_500_000


def test_times_are_shown_in_the_plant_s_own_time(packed):
    trace = queries.trace_lot(packed[0], "LF-101")
    assert trace.packs[0].at.tzinfo == timezone(timedelta(hours=1))
    assert trace.runs[0].started.tzinfo == timezone(timedelta(hours=1))
