"""The window's language follows who is at it: badge, run, and a lead's choice."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from station.core.languages import Language
from station.line.state import LineState
from station.screens.bridge import Bridge
from station.screens.offer import LeadOffer, Person
from station.screens.signing import SignedIntents
from station.screens.tongue import spoken
from station.screens.window import StationWindow
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.signing_rig import PinSource
from tests.station.screens.states import every_state, make_offer, make_run

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only
CREW = (
    Person("P01", "Ilse Varnholm", "packer", Language.PUNJABI),
    Person("L01", "Brigid Onslane", "lead", Language.FRENCH),
    Person("L02", "Rashid Fennimoor", "lead"),
)


class Worked:
    """A window whose sheet knows the badge of L02 and the PIN of L01."""

    def __init__(self, qtbot) -> None:
        self.qtbot, self.bridge = qtbot, Bridge()
        self.signed = SignedIntents(FakeIntents(), PinSource(), self.bridge, CREW)
        offer = make_offer()
        self.window = StationWindow(
            *(self.bridge, self.signed, LeadOffer(offer.products, offer.lots, CREW)),
            signing=self.signed,
            language=Language.VIETNAMESE,
        )
        qtbot.addWidget(self.window)
        self.window.resize(1280, 800)
        self.window.show()

    def run(self, number: int, operator: str) -> LineState:
        state = every_state(replace(make_run(), id=f"run-{number}", operator=operator))["short_t1"]
        self.bridge.followed.emit(state)
        QApplication.processEvents()
        return state

    def sign_on(self, pin: str = "", badge: str = "") -> None:
        sheet = self.window.guard.sheet
        self.window.show_lead()
        if pin:
            sheet.choose("L01")
            for key in (*pin, "SIGN"):
                sheet.pad.press(key)
        else:
            sheet.badge.take("", badge)
        self.qtbot.waitUntil(lambda: not sheet.work.busy)
        QApplication.processEvents()


@pytest.fixture
def hands(qtbot) -> Worked:
    return Worked(qtbot)


def test_run_badge_and_choice_decide_what_is_spoken(hands: Worked) -> None:
    window = hands.window
    assert spoken() is Language.VIETNAMESE  # nobody is known yet
    hands.run(1, "P01")
    assert spoken() is Language.PUNJABI
    assert window.packer.figure.accessibleName() == "ਪਾਓ 14 g"
    hands.sign_on(pin="482913")
    assert spoken() is Language.FRENCH
    assert window.lead.end_button.accessibleName().startswith("CLORE SÉRIE")
    window.show_packer()
    assert spoken() is Language.PUNJABI
    window.show_lead()
    window.lead.more_button.click()
    window.lead.door_grid.language_button.click()
    hands.qtbot.mouseClick(window.lead.languages.tiles.buttons["zh"], Qt.MouseButton.LeftButton)
    assert spoken() is Language.FRENCH  # the lead's own page
    window.show_packer()
    QApplication.processEvents()
    assert spoken() is Language.CHINESE
    assert window.packer.figure.accessibleName() == "加 14 g"
    hands.run(2, "P01")
    assert spoken() is Language.PUNJABI  # a choice holds for its run


def test_a_badge_switches_as_a_pin_does(hands: Worked) -> None:
    hands.run(1, "P01")
    hands.sign_on(badge="BADGE-L02")
    assert spoken() is Language.VIETNAMESE  # L02 has none: that of the station


def test_every_language_can_be_chosen_by_its_own_name(hands: Worked) -> None:
    hands.sign_on(pin="482913")
    hands.window.lead.more_button.click()
    hands.window.lead.door_grid.language_button.click()
    tiles = hands.window.lead.languages.tiles.buttons
    assert {one.text() for key, one in tiles.items() if key != "own"} == {
        "English",
        "Español",
        "Français",
        "ਪੰਜਾਬੀ",
        "Tiếng Việt",
        "简体中文",
        "Tagalog",
        "Português",
    }
    assert tiles["es"].small == "not yet reviewed"
    assert tiles["en"].small == ""
