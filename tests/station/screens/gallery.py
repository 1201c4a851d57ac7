"""Draws every state of every screen as a picture: python -m tests.station.screens.gallery OUTDIR.

Works without a display. The pictures are for people to look at; no test compares them.
"""

import os
import sys
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ["QT_SCALE_FACTOR"] = "1"

from PySide6.QtWidgets import QApplication, QWidget  # noqa: E402

from station.screens.bridge import Bridge  # noqa: E402
from station.screens.packer import PackerScreen  # noqa: E402
from tests.station.screens.fakes import FakeIntents  # noqa: E402
from tests.station.screens.states import LONG_NAME, every_state, make_product, make_run  # noqa: E402

SIZES = ((1920, 1080), (1280, 800))


def shoot(widget: QWidget, path: Path) -> None:
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


def main(folder: Path) -> None:
    folder.mkdir(parents=True, exist_ok=True)
    application = QApplication.instance() or QApplication([])
    packer(folder)
    application.processEvents()


if __name__ == "__main__":
    main(Path(sys.argv[1]))
