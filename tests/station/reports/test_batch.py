"""A batch record of a real line whose lots were changed while it packed."""

import csv
import io
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta

import pypdfium2
import pytest

from station.reports.batch import batch_record
from station.reports.batch_csv import batch_csv
from station.reports.batch_pdf import batch_pdf
from station.store.batches import batches_of
from station.store.weighed import packs_of_blend, packs_of_run
from tests.station.line.lot_rig import LOTS, LotLine, PlantClock


@pytest.fixture
def line(tmp_path):
    line = LotLine(tmp_path / "home")
    line.start("ROM-1", "CAR-7")
    line.bags(3)
    line.load("ROM-2")
    line.bags(4)
    line.empty("ROM-1")
    line.bags(2)
    yield line
    line.close()


def words_of(pdf):
    document = pypdfium2.PdfDocument(pdf)
    words = "\n".join(page.get_textpage().get_text_bounded() for page in document)
    document.close()
    return words


def test_every_bag_stands_under_the_blend_on_its_label(line):
    record = batch_record(line.home, packs_of_run(line.home, "last"))
    codes = [blend.code for blend in record.blends]
    assert len(set(codes)) == 3
    assert [lot for _, lot in record.blends[1].lots] == ["CAR-7", "ROM-1", "ROM-2"]
    assert [lot for _, lot in record.blends[2].lots] == ["CAR-7", "ROM-2"]
    rows = list(csv.DictReader(io.StringIO(batch_csv([record]).decode())))
    assert [row["blend_lot"] for row in rows] == [codes[0]] * 3 + [codes[1]] * 4 + [codes[2]] * 2
    assert all(row["use_by"] for row in rows)
    words = words_of(batch_pdf([record]))
    for said in (*codes, "ROM-2", *(blend.use_by.isoformat() for blend in record.blends)):
        assert said in words


def test_the_record_of_a_blend_holds_its_bags_only(line):
    whole = packs_of_run(line.home, "last")
    code = whole.blends[1].code
    (packs,) = packs_of_blend(line.home, code)
    record = batch_record(line.home, packs)
    assert [blend.code for blend in record.blends] == [code]
    assert len(record.bags) == 4
    words = words_of(batch_pdf([record]))
    assert whole.blends[0].code not in words.split("Checks and other entries")[0]


def hours_of(line, run):
    record = batch_record(line.home, packs_of_run(line.home, run.id))
    inspected = {one.hour.isoformat(): len(one.packs) for one in batches_of(line.home, run.id)}
    assert len(inspected) == len(batches_of(line.home, run.id))
    assert list(inspected.values()) == [one.judged.n for one in record.hours]
    return {one.name: one.judged.n for one in record.hours}


def test_an_hour_that_a_clock_set_back_brings_again_is_one_batch(tmp_path):
    line = LotLine(tmp_path / "home")
    run = line.start("ROM-1", "CAR-7")
    line.clock.pass_by(3_590_000)
    line.bags(3)
    line.clock.pass_by(10_000)
    line.bags(4)
    line.clock.utc -= timedelta(seconds=12)
    line.bags(2)
    line.clock.pass_by(10_000)
    line.bags(1)
    hours = hours_of(line, run)
    line.close()
    assert hours == {"2026-11-25 09:00": 5, "2026-11-25 10:00": 5}


def test_the_hour_in_which_summer_time_ends_is_two_batches_with_two_names(tmp_path):
    clock = PlantClock(datetime(2026, 10, 25, 0, 30, tzinfo=UTC), "Europe/Madrid")
    lots = tuple(replace(one, received=date(2026, 10, 24)) for one in LOTS)
    line = LotLine(tmp_path / "home", lots=lots, clock=clock)
    run = line.start("ROM-1", "CAR-7")
    line.bags(3)
    clock.pass_by(3_600_000)
    line.bags(2)
    hours = hours_of(line, run)
    line.close()
    assert hours == {"2026-10-25 02:00 UTC+0200": 3, "2026-10-25 02:00 UTC+0100": 2}
