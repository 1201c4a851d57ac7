"""The first screen comes without what it does not show, and what it left out comes after it."""

import json
import os
import subprocess
import sys
from importlib.util import find_spec

import pytest

from station.app.later import LATER, pieces
from tests.station.config.conftest import DEMO

FOREIGN = frozenset(
    {
        *("numpy", "pyqtgraph", "PIL", "reportlab", "pypdfium2", "xlsxwriter", "barcode", "segno"),
        *("zxingcpp", "psycopg", "alembic", "rich", "pygments"),
    }
)
"""Of other makers: drawing, paper, tables, bar codes, the centre, migrations, help."""
START = """
import json, sys
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
from station.app.main import main
from station.screens.widgets.notice_card import NoticeCard
paint = NoticeCard.paintEvent
def noted(card, event):
    paint(card, event)
    if card.parentWidget().state is not None:
        print("loaded", json.dumps(sorted(sys.modules)), flush=True)
        QTimer.singleShot(0, QApplication.quit)
NoticeCard.paintEvent = noted
main()
"""


@pytest.fixture(scope="module")
def loaded(tmp_path_factory) -> frozenset[str]:
    """What a start had loaded when its first screen was painted; its record is there already."""
    home = tmp_path_factory.mktemp("home")
    words = ["run", "--config", str(DEMO), "--home", str(home)]
    for _ in range(2):
        done = subprocess.run(
            [sys.executable, "-c", START, *words],
            env=os.environ | {"QT_QPA_PLATFORM": "offscreen"},
            capture_output=True,
            text=True,
            check=True,
            timeout=240,
        )
    said = next(one for one in done.stdout.splitlines() if one.startswith("loaded "))
    return frozenset(json.loads(said.removeprefix("loaded ")))


def test_the_first_screen_comes_without_what_it_does_not_show(loaded: frozenset[str]) -> None:
    assert "station.screens.packer" in loaded
    assert FOREIGN & loaded == set()
    assert not loaded.intersection(LATER)
    assert "station.cli.verbs" not in loaded


def test_what_comes_later_is_there(loaded: frozenset[str]) -> None:
    assert len(set(LATER)) == len(LATER) == len(pieces())
    for name in LATER:
        assert find_spec(name) is not None, name
