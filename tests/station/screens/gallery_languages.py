"""Draws what the packer and the lead see, in chosen languages; a part of the gallery."""

from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtWidgets import QApplication, QWidget

from station.core.languages import Language
from station.line.state import RunChoice
from station.screens.bridge import Bridge
from station.screens.lead import LeadPanel
from station.screens.packer import PackerScreen
from station.screens.signing import SignedIntents
from station.screens.signing_sheet import SigningSheet
from station.screens.start import StartScreen
from station.screens.theme import LIGHT
from station.screens.tongue import speak
from tests.station.screens import gallery_manager, gallery_office, gallery_pages
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.signing_rig import CREW, PinSource
from tests.station.screens.states import every_state, make_offer

SIZES = ((1024, 768), (1920, 1080), (1080, 1920))
PAGES = (
    *(gallery_pages.numbers, gallery_pages.checks, gallery_pages.change, gallery_pages.lots),
    *(gallery_pages.labels, gallery_pages.signing, gallery_office.shipping, gallery_office.trace),
    *(gallery_office.service, gallery_office.quality, gallery_office.alarms),
    *(gallery_office.training, gallery_manager.manager, gallery_manager.clock),
    gallery_manager.leaving,
)
"""The pages behind the lead's doors."""
MAIN = ("short_t1", "over_far", "seal", "wipe_pan", "stopped")
"""The states of which every language is looked at."""


def packing(
    folder: Path, shoot: Callable[[QWidget, Path], None], sizes: tuple[tuple[int, int], ...] = SIZES
) -> None:
    """Every state of the packer's screen, what it says of itself, and what comes before it."""
    for wide, tall in sizes:
        start = StartScreen(LIGHT)
        start.resize(wide, tall)
        start.show()
        shoot(start, folder / f"starting_{wide}.png")
        start.leave()
        _packer(folder, str(wide), (wide, tall), shoot)


def draw_languages(
    folder: Path, languages: Sequence[Language], shoot: Callable[[QWidget, Path], None]
) -> None:
    """Draw every state of the packer's screen and the first pages behind it, in each language."""
    for language in languages:
        speak(language)
        QApplication.processEvents()
        for wide, tall in SIZES:
            _packer(folder, f"{language}_{wide}", (wide, tall), shoot)
        _signing(folder, f"{language}_1024", (1024, 768), shoot)
        _lead(folder, f"{language}_1920", (1920, 1080), shoot)
        pages = folder / str(language)
        pages.mkdir(exist_ok=True)
        for page in PAGES:
            page(pages, shoot)
    speak(Language.ENGLISH)


def _packer(
    folder: Path, name: str, size: tuple[int, int], shoot: Callable[[QWidget, Path], None]
) -> None:
    screen = PackerScreen(Bridge(), FakeIntents())
    screen.resize(*size)
    screen.show()
    for state_name, state in every_state().items():
        screen.show_state(state)
        shoot(screen, folder / f"packer_{name}_{state_name}.png")
    screen.show_state(every_state()["short_t1"])
    screen.aside_button.click()
    shoot(screen, folder / f"packer_{name}_reasons.png")
    screen.aside_button.click()
    screen.toggle_about()
    shoot(screen, folder / f"packer_{name}_about.png")
    screen.close()


def _signing(
    folder: Path, name: str, size: tuple[int, int], shoot: Callable[[QWidget, Path], None]
) -> None:
    page = QWidget()
    page.resize(*size)
    signed = SignedIntents(FakeIntents(), PinSource(), Bridge(), CREW)
    sheet = SigningSheet(signed, parent=page)
    sheet.resize(*size)
    page.show()
    signed.start_run(RunChoice("HARBOUR-250", 1, ("ROM-1",), "L01", "P01"))
    sheet.message.say("This PIN is not right: wait 8 s", refused=True)
    shoot(page, folder / f"signing_{name}.png")
    page.close()


def _lead(
    folder: Path, name: str, size: tuple[int, int], shoot: Callable[[QWidget, Path], None]
) -> None:
    panel = LeadPanel(Bridge(), FakeIntents(), make_offer())
    panel.resize(*size)
    panel.show()
    panel.show_state(every_state()["start_run"])
    shoot(panel, folder / f"lead_{name}_1_product.png")
    panel.show_state(every_state()["stopped"])
    shoot(panel, folder / f"lead_{name}_2_run.png")
    panel.pages.setCurrentWidget(panel.languages)
    shoot(panel, folder / f"lead_{name}_3_languages.png")
    panel.close()
