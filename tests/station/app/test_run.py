"""The verb run refuses a recording that cannot be made, in words, before its window opens."""

import subprocess
import sys
from pathlib import Path

from tests.station.config.conftest import DEMO


def test_recording_that_cannot_be_made(tmp_path: Path) -> None:
    file = tmp_path / "none" / "scale.rec"
    words = ["--config", str(DEMO), "--home", str(tmp_path / "home"), "--record", str(file)]
    done = subprocess.run(
        [sys.executable, "-m", "station.app.main", "run", *words],
        capture_output=True,
        text=True,
        check=False,
        timeout=60,
    )
    assert done.returncode == 2
    assert f"recording {file}: no such file or directory" in done.stderr
    assert "Traceback" not in done.stderr
