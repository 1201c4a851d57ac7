import sqlite3
from contextlib import closing
from datetime import timedelta

import pytest

from station.core.pack import Quality
from station.errors import BadInput
from station.store.weighed import (
    packs_between,
    packs_of_blend,
    packs_of_run,
    plant_zone,
    run_before,
)


def serials(found):
    return [pack.serial for pack in found.packs]


def test_a_run_has_all_its_bags_in_order_with_the_run_that_judges_them(packed_once):
    first, second = packed_once.runs
    found = packs_of_run(packed_once.home, first.id)
    assert found.run == first
    assert not found.open
    assert serials(found) == packed_once.serials[:5]
    assert [str(pack.net) for pack in found.packs] == [
        "0.2525 kg", "0.2525 kg", "0.2405 kg", "0.2525 kg", "0.2525 kg",
    ]  # fmt: skip
    assert str(found.packs[2].gross) == "0.2530 kg"
    qualities = [pack.quality for pack in found.packs]
    assert qualities == [
        Quality.REJECT, Quality.GOOD, Quality.REJECT, Quality.GOOD, Quality.GOOD,
    ]  # fmt: skip
    assert (found.packs[0].reason, found.packs[1].reason) == ("torn", "")
    assert found.packs[0].at.utcoffset() == timedelta(hours=1)
    assert packs_of_run(packed_once.home, second.id).open


def test_last_is_the_run_started_last(packed_once):
    assert packs_of_run(packed_once.home, "last").run == packed_once.runs[1]


def test_the_run_before_packed_the_same_version_of_the_same_product(packed_once):
    first, second = packed_once.runs
    assert (first.product.code, first.product.version) == (
        second.product.code,
        second.product.version,
    )
    before = run_before(packed_once.home, second.id)
    assert before is not None
    assert before.run == first
    assert serials(before) == packed_once.serials[:5]
    assert run_before(packed_once.home, first.id) is None


def test_a_run_without_bags_is_there_and_empty(world):
    with world.stocked() as store:
        run = world.start(store)
    found = packs_of_run(world.home, run.id)
    assert (found.run, found.packs, found.open) == (run, (), True)


def test_a_blend_lot_has_the_bags_that_carry_its_code(packed_once):
    (found,) = packs_of_blend(packed_once.home, packed_once.runs[1].blend_lot)
    assert found.run == packed_once.runs[1]
    assert serials(found) == packed_once.serials[5:]


def test_a_span_of_time_is_open_at_its_start_and_closed_at_its_end(packed_once):
    one, two = (packs_of_run(packed_once.home, run.id).packs for run in packed_once.runs)
    found = packs_between(packed_once.home, one[3].at, two[1].at)
    assert [group.run for group in found] == list(packed_once.runs)
    assert [serials(group) for group in found] == [[one[4].serial], [two[0].serial, two[1].serial]]
    assert packs_between(packed_once.home, two[4].at, two[4].at + timedelta(days=1)) == ()


def test_a_span_of_time_is_read_by_rows_of_bags(packed_once, monkeypatch):
    asked = []
    real = sqlite3.connect

    def connect(*given, **named):
        connection = real(*given, **named)
        connection.set_trace_callback(asked.append)
        return connection

    one = packs_of_run(packed_once.home, packed_once.runs[0].id).packs
    monkeypatch.setattr(sqlite3, "connect", connect)
    assert packs_between(packed_once.home, one[1].at, one[3].at)
    monkeypatch.undo()
    (question,) = (text for text in asked if "judged_at" in text and "JOIN" in text)
    with closing(sqlite3.connect(packed_once.home / "station.sqlite")) as connection:
        plan = [row[3] for row in connection.execute(f"EXPLAIN QUERY PLAN {question}")]
    assert plan[0].startswith("SEARCH pack USING INTEGER PRIMARY KEY (rowid>"), plan
    assert not any(step.startswith("SCAN") for step in plan), plan


def test_the_plant_s_zone_is_the_last_entry_s(packed_once):
    assert plant_zone(packed_once.home).key == "Europe/Madrid"


def test_unknown_names_are_refused_with_close_ones(packed_once, world):
    first = packed_once.runs[0]
    with pytest.raises(BadInput, match=f"close to it are .*{first.id}"):
        packs_of_run(packed_once.home, first.id[:-1])
    with pytest.raises(BadInput, match=f"close to it are .*{first.blend_lot}"):
        packs_of_blend(packed_once.home, first.blend_lot.lower() + "0")
    with world.open():
        pass
    with pytest.raises(BadInput, match="the record has none yet"):
        packs_of_run(world.home, "last")
