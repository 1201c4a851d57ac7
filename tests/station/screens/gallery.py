"""Draws every state of every screen as a picture: python -m tests.station.screens.gallery OUTDIR.

With codes of languages behind the folder (``es pa zh``, or ``all``) the packer's screen and what
the lead sees first are drawn in these instead.
Works without a display. The pictures are for people to look at; no test compares them.
"""

import os
import sys
from collections.abc import Sequence
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ["QT_SCALE_FACTOR"] = "1"

from PySide6.QtWidgets import QApplication, QWidget

from station.core.languages import Language
from station.screens.bench import BenchWindow
from station.screens.bridge import Bridge
from station.screens.lead import LeadPanel
from station.screens.packer import PackerScreen
from station.screens.start import StartScreen
from station.screens.theme import LIGHT
from station.screens.window import StationWindow
from tests.station.screens.fakes import FakeHand, FakeIntents
from tests.station.screens.gallery_languages import PAGES, draw_languages
from tests.station.screens.states import (
    LONG_NAME,
    every_state,
    make_offer,
    make_product,
    make_run,
)

SIZES = ((1920, 1080), (1280, 800))


def shoot(widget: QWidget, path: Path) -> None:
    for _ in range(3):  # a page settles its layout in steps
        QApplication.processEvents()
    widget.grab().save(str(path))


def packer(folder: Path) -> None:
    for wide, tall in SIZES:
        screen = PackerScreen(Bridge(), FakeIntents())
        screen.resize(wide, tall)
        screen.show()
        for name, state in every_state().items():
            screen.show_state(state)
            shoot(screen, folder / f"packer_{wide}_{name}.png")
        screen.show_state(every_state(make_run(make_product(name=LONG_NAME)))["short_t1"])
        shoot(screen, folder / f"packer_{wide}_long_name.png")
        screen.aside_button.click()
        shoot(screen, folder / f"packer_{wide}_reasons.png")
        screen.aside_button.click()
        screen.toggle_about()
        shoot(screen, folder / f"packer_{wide}_about.png")
        screen.close()


def lead(folder: Path) -> None:
    offer = make_offer()
    for wide, tall in SIZES:
        panel = LeadPanel(Bridge(), FakeIntents(), offer, in_doubt=("P1-7K-000131",))
        panel.resize(wide, tall)
        panel.show()
        states = every_state()
        panel.show_state(states["start_run"])
        shoot(panel, folder / f"lead_{wide}_1_product.png")
        panel.products.touched.emit("HARBOUR-250")
        panel.lots.touched.emit("ROM-2611")
        panel.lots.touched.emit("ROM-2609")
        shoot(panel, folder / f"lead_{wide}_2_lots.png")
        panel.lots.touched.emit("RAD-0418")
        panel.lots.touched.emit("CAR-7710")
        panel.steps[2].click()
        panel.crew.changed.emit("P01", "P02", "400")
        shoot(panel, folder / f"lead_{wide}_3_crew.png")
        panel.show_state(states["bag_on"])
        shoot(panel, folder / f"lead_{wide}_4_run.png")
        panel.show_state(states["stopped"])
        shoot(panel, folder / f"lead_{wide}_5_stopped.png")
        panel.close()


def window(folder: Path) -> None:
    bridge = Bridge()
    start = StartScreen(LIGHT)
    start.resize(*SIZES[1])
    start.show()
    shoot(start, folder / "starting.png")
    start.leave()
    whole = StationWindow(bridge, FakeIntents(), make_offer())
    whole.resize(*SIZES[1])
    whole.show()
    whole.packer.show_state(every_state()["short_t1"])
    whole.packer.call_button.click()
    whole.band.say("The disk is nearly full: 180 MB are left. Call maintenance.")
    shoot(whole, folder / "window_bands.png")
    whole.show_lead()
    shoot(whole, folder / "window_band_on_a_page.png")
    whole.close()
    bench = BenchWindow(FakeHand())
    bench.show()
    bench.bag_button.click()
    bench.drawing.grams = 170
    shoot(bench, folder / "bench.png")
    bench.close()


def main(folder: Path, codes: Sequence[str] = ()) -> None:
    folder.mkdir(parents=True, exist_ok=True)
    application = QApplication.instance() or QApplication([])
    if codes:
        chosen = list(Language) if "all" in codes else [Language(code) for code in codes]
        draw_languages(folder, chosen, shoot)
        return
    for part in (packer, lead, window):
        part(folder)
    for page in PAGES:
        page(folder, shoot)
    application.processEvents()


if __name__ == "__main__":
    main(Path(sys.argv[1]), sys.argv[2:])
