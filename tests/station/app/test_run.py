"""The verb run refuses a port or a recording that cannot be, in words, before its window opens."""

import subprocess
import sys
from pathlib import Path
from shutil import copytree

from tests.station.config.conftest import DEMO


def run(*words: str) -> tuple[int, str]:
    done = subprocess.run(
        [sys.executable, "-m", "station.app.main", "run", *words],
        capture_output=True,
        text=True,
        check=False,
        timeout=60,
    )
    assert "Traceback" not in done.stderr
    return done.returncode, done.stderr


def test_recording_that_cannot_be_made(tmp_path: Path) -> None:
    home, file = tmp_path / "home", tmp_path / "none" / "scale.rec"
    code, said = run("--config", str(DEMO), "--home", str(home), "--record", str(file))
    assert code == 2
    assert f"recording {file}: no such file or directory" in said


def test_port_that_cannot_be(tmp_path: Path) -> None:
    folder = copytree(DEMO, tmp_path / "settings")
    file = folder / "station.toml"
    text = file.read_text(encoding="utf-8").replace("/dev/ttyUSB0", "usb://12ab")
    file.write_text(text, encoding="utf-8")
    code, said = run("--config", str(folder), "--home", str(tmp_path / "home"))
    assert code == 2
    assert "port usb://12ab is not allowed: allowed is usb://VVVV:PPPP" in said
