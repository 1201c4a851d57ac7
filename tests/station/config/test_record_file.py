"""``[record]``, ``[backup]`` and ``[disk]``: every table and key may be left out."""

from pathlib import Path

import pytest

from station.config.load import load
from station.config.record_rules import RecordSettings, key_beside, least_keep_years
from station.core.room import RoomRules
from tests.station.config.conftest import TODAY


def settings(folder):
    return load(folder, TODAY).settings


@pytest.fixture
def write(folder):
    def table(text):
        path = folder / "station.toml"
        kept, _, _ = path.read_text(encoding="utf-8").partition("[disk]")
        path.write_text(f"{kept}\n{text}\n", encoding="utf-8")

    return table


def test_without_the_tables_the_key_lies_beside_the_home_and_no_backups_are_made(folder, write):
    write("")
    found = settings(folder)
    assert found.record == RecordSettings()
    assert found.record.key_of(Path("/srv/line1")) == Path("/srv/line1.key")
    assert key_beside(Path("/srv/line1/")) == Path("/srv/line1.key")


def test_what_is_given_is_read(folder, write):
    write(
        '[record]\nkey = "keys/a1.key"\n'
        '[backup]\nfolder = "/mnt/second/a1"\nevery_hours = 2\nkeep = 50'
    )
    found = settings(folder).record
    assert found.key == (folder / "keys/a1.key").absolute()
    assert (found.backup.folder, found.backup.every_hours, found.backup.keep) == (
        Path("/mnt/second/a1"),
        2,
        50,
    )


def test_what_is_done_about_a_full_disk_is_read(folder, write):
    write("[disk]\nstop_mib = 2\nreserve_mib = 0")
    assert settings(folder).record.room == RoomRules(80, stop=2 * 2**20, reserve=0)
    write("[disk]\nwarn_percent = 70")
    assert settings(folder).record.room == RoomRules(70)


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("[backup]\nevery_hours = 2", "backup.folder"),
        ('[backup]\nfolder = "/mnt/a"\nkeep = 1', "backup.keep"),
        ('[backup]\nfolder = "/mnt/a"\nevery_hours = 0', "backup.every_hours"),
        ('[record]\nkey = ""', "record.key"),
        ('[record]\nkeys = "x"', "record.keys"),
        ("[disk]\nwarn_percent = 100", "disk.warn_percent"),
        ("[disk]\nstop_mib = 0", "disk.stop_mib"),
    ],
)
def test_what_is_wrong_is_named(write, refusal, text, words):
    write(text)
    assert words in refusal()


@pytest.mark.parametrize("text", ['[record]\nkey = "{}/a.key"', '[backup]\nfolder = "{}/backups"'])
def test_neither_key_nor_backups_lie_in_the_home(folder, write, refusal, text):
    write(text.format(settings(folder).home))
    assert "lies in the home" in refusal()


def test_runs_are_kept_for_five_years_where_nothing_else_is_said(folder, write):
    write("")
    assert settings(folder).record.keep_years == 5
    write("[record]\nkeep_years = 7")
    assert settings(folder).record.keep_years == 7


@pytest.mark.parametrize(
    ("life_days", "least"), [(1, 3), (10, 3), (365, 3), (366, 4), (730, 4), (731, 5)]
)
def test_records_outlive_the_longest_use_by_by_two_years(life_days, least):
    # 21 CFR 117.315: two years from the day they were made (from memory); here from the use-by.
    assert least_keep_years(life_days) == least


@pytest.mark.parametrize("years", [1, 2])
def test_a_time_below_the_longest_rule_is_refused_with_the_product_that_sets_it(
    write, refusal, years
):
    write(f"[record]\nkeep_years = {years}")
    words = refusal()
    assert "record.keep_years" in words
    assert f"{years} is too short: bags of" in words
    assert "3 to 100 years" in words


def test_the_least_time_is_taken(folder, write):
    write("[record]\nkeep_years = 3")
    assert settings(folder).record.keep_years == 3
