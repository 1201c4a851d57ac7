"""``station backup`` and ``station restore``."""

from shutil import copytree

import pytest

from tests.station.cli.conftest import DEMO


@pytest.fixture
def second(tmp_path):
    folder = tmp_path / "second"
    folder.mkdir()
    return folder


@pytest.fixture
def settings(tmp_path, second):
    """The demo's settings with a backup folder."""
    folder = copytree(DEMO, tmp_path / "settings")
    path = folder / "station.toml"
    text = path.read_text(encoding="utf-8")
    path.write_text(f'{text}\n[backup]\nfolder = "{second}"\n', encoding="utf-8")
    return folder


def test_a_backup_is_made_told_and_restored(station, home, second, settings):
    made = station("backup", "--to", second, "--home", home, "--json")
    assert made.code == 0, made.err
    document = made.document
    whole = station("journal", "verify", "--home", home, "--json").document
    assert (document["entries"], document["head"]) == (whole["entries"], whole["head"])
    assert document["same_disk"] is True
    back = station(
        *("restore", "--from", document["file"], "--home", home, "--config", settings),
        *("--who", "L01", "--why", "new disk", "--json"),
    )
    assert back.code == 0, back.err
    assert (back.document["entries"], back.document["lost"]) == (document["entries"], 0)
    after = station("journal", "verify", "--home", home, "--json")
    assert (after.code, after.document["whole"]) == (0, True)
    assert after.document["entries"] > document["entries"]


def test_the_settings_name_the_folder(station, home, second, settings):
    made = station("backup", "--home", home, "--config", settings)
    assert made.code == 0
    assert "The backup is whole" in made.out
    assert "would be lost with it" in made.out.replace("\n", " ")
    assert len(list(second.iterdir())) == 1


def test_without_a_folder_one_is_asked_for(station, home):
    done = station("backup", "--home", home, "--json")
    assert done.code == 2
    assert "[backup] in station.toml" in str(done.error)


def test_nobody_unknown_restores(station, home, second, settings):
    file = station("backup", "--to", second, "--home", home, "--json").document["file"]
    done = station(
        *("restore", "--from", file, "--home", home, "--config", settings),
        *("--who", "X99", "--why", "x", "--json"),
    )
    assert (done.code, "nobody of people.toml" in str(done.error)) == (2, True)


def test_another_station_s_backup_is_refused(station, home, second, settings):
    file = station("backup", "--to", second, "--home", home, "--json").document["file"]
    path = settings / "station.toml"
    path.write_text(path.read_text().replace('code = "A1"', 'code = "B7"'))
    done = station(
        *("restore", "--from", file, "--home", home, "--config", settings),
        *("--who", "L01", "--why", "x", "--json"),
    )
    assert (done.code, "the settings say station B7" in str(done.error)) == (2, True)
