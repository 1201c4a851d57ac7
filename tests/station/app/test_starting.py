"""The start's own screen takes colours and language from settings that nobody has checked yet."""

from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

from station.app.starting import look_of, starting
from station.core.languages import Language
from station.screens.start import StartScreen
from station.screens.theme import DARK, LIGHT
from station.screens.tongue import speak, spoken
from tests.station.config.conftest import DEMO

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only


@pytest.fixture
def settings(tmp_path: Path):
    def written(words: str) -> Path:
        (tmp_path / "station.toml").write_text(words, encoding="utf-8")
        return tmp_path

    return written


def test_the_demo_is_light_and_english() -> None:
    assert look_of(DEMO) == (LIGHT, Language.ENGLISH)


def test_what_the_settings_say(settings) -> None:
    assert look_of(settings('[screen]\ntheme = "dark"\nlanguage = "pa"\n')) == (
        DARK,
        Language.PUNJABI,
    )
    assert look_of(settings("[screen]\n")) == (LIGHT, Language.ENGLISH)


@pytest.mark.parametrize(
    "words",
    ["", "screen = 3", "[screen", '[screen]\ntheme = "blue"', '[screen]\nlanguage = ["es"]', "\0"],
)
def test_faults_are_left_to_who_checks_the_settings(settings, words: str) -> None:
    assert look_of(settings(words)) == (LIGHT, Language.ENGLISH)


def test_settings_that_are_not_there(tmp_path: Path) -> None:
    assert look_of(tmp_path / "none") == (LIGHT, Language.ENGLISH)


def test_it_is_seen_while_the_station_starts_and_gone_afterwards(qapp, settings) -> None:
    folder = settings('[screen]\nlanguage = "es"\n')
    with starting(folder, full=False) as screen:
        assert screen is not None
        assert screen.is_painted
        assert screen.isVisible()
        assert spoken() is Language.SPANISH
    seen = [one for one in QApplication.topLevelWidgets() if isinstance(one, StartScreen)]
    assert not any(one.isVisible() for one in seen)
    speak(Language.ENGLISH)


def test_without_a_screen_the_settings_are_still_looked_at(monkeypatch) -> None:
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)
    with starting(DEMO, full=False) as screen:
        assert screen is None
