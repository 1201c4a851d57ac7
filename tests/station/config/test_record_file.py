"""``[record]``, ``[backup]`` and ``[disk]``: every table and key may be left out."""

from pathlib import Path

import pytest

from station.config.load import load
from station.config.record_rules import RecordSettings, key_beside
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
