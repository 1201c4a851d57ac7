"""The first thing shown: that the station starts, whole in every language and at every size."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from station.core.languages import Language
from station.screens.start import WHY, WORD, StartScreen
from station.screens.theme import DARK, LIGHT, register_fonts
from station.screens.tongue import speak, tr

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints|OpenType support")  # offscreen only
SIZES = ((1024, 768), (1920, 1080), (1080, 1920))


@pytest.fixture
def start(qtbot):
    register_fonts()
    screen = StartScreen(LIGHT)
    yield screen
    screen.leave()


def ink(screen: StartScreen) -> tuple[int, int]:
    """Columns left and right of what is written between the sides of the frame."""
    picture = screen.grab().toImage()
    edge = round(0.08 * picture.width())
    ground = picture.pixelColor(edge, picture.height() // 2).rgb()
    rows = range(picture.height() // 8, picture.height() * 7 // 8, 3)
    columns = [
        x
        for x in range(edge, picture.width() - edge)
        if any(picture.pixelColor(x, y).rgb() != ground for y in rows)
    ]
    return columns[0] - edge, picture.width() - edge - columns[-1]


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("language", [Language.ENGLISH, Language.PUNJABI, Language.TAGALOG])
def test_it_is_whole_in_every_language(language: Language, size: tuple[int, int], start) -> None:
    speak(language)
    start.resize(*size)
    left, right = ink(start)
    assert left > 0
    assert right > 1


def test_it_is_painted_before_anything_follows(start: StartScreen) -> None:
    assert not start.is_painted
    start.show_now(full=True)
    assert start.is_painted
    assert start.windowState() & Qt.WindowState.WindowFullScreen


def test_it_is_read_out_in_the_language_of_the_station(start: StartScreen, qtbot) -> None:
    assert start.accessibleName() == WORD
    speak(Language.FRENCH)
    other = StartScreen(DARK)
    qtbot.addWidget(other)
    assert other.accessibleName() == tr(WORD) != WORD
    assert other.accessibleDescription() not in ("", WHY)


def test_closing_it_ends_nothing(start: StartScreen) -> None:
    start.show_now(full=False)
    ended = []
    application = QApplication.instance()
    application.lastWindowClosed.connect(lambda: ended.append(1))
    start.close()
    QApplication.processEvents()
    assert not ended
    start.leave()
    start.leave()  # once is enough
