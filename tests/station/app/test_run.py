"""The verb run refuses a recording that cannot be made, in words, before its window opens."""

import subprocess
import sys
from pathlib import Path
from shutil import copytree

import pytest

from station.app.main import main
from tests.station.config.conftest import DEMO


def test_recording_that_cannot_be_made(tmp_path: Path) -> None:
    file = tmp_path / "none" / "scale.rec"
    words = ["--config", str(DEMO), "--home", str(tmp_path / "home"), "--record", str(file)]
    done = subprocess.run(
        [sys.executable, "-m", "station.app.main", "run", *words],
        capture_output=True,
        text=True,
        check=False,
        timeout=240,
    )
    assert done.returncode == 2
    assert f"recording {file}: no such file or directory" in done.stderr
    assert "Traceback" not in done.stderr


@pytest.fixture
def refused(monkeypatch, capsys):
    """Run the verb in this process; returns the words it is refused with."""

    def words(*options: str, config: Path = DEMO) -> str:
        monkeypatch.setattr(sys, "argv", ["station", "run", "--config", str(config), *options])
        with pytest.raises(SystemExit) as ended:
            main()
        assert ended.value.code == 2
        return capsys.readouterr().err

    return words


def test_options_that_do_not_go_together(tmp_path: Path, refused) -> None:
    record = ("--record", str(tmp_path / "scale.rec"))
    assert "goes with a real scale" in refused("--training", *record)
    assert "goes with --training" in refused("--tiles")
    assert "no room for the simulated scale" in refused("--training", "--kiosk")


def test_a_kiosk_needs_pins(tmp_path: Path, refused) -> None:
    folder = copytree(DEMO, tmp_path / "settings")
    file = folder / "station.toml"
    file.write_text(file.read_text().replace('pins = "required"', 'pins = "off"'))
    words = refused("--kiosk", config=folder)
    assert "anybody could leave it" in words
