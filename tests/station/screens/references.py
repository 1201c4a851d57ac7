"""Small pictures of the packer's screen to compare with.

`python -m tests.station.screens.references` writes them anew into tests/data/screens; look at each
before it is kept. They are drawn without a display and with the station's own fonts, and made small
by averaging, so that what differs is what a person would see from a distance and not how an edge
is smoothed.
"""

import os
import sys
from collections.abc import Iterator
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ["QT_SCALE_FACTOR"] = "1"

import numpy as np
from numpy.typing import NDArray
from PIL import Image
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication

from station.screens.bridge import Bridge
from station.screens.packer import PackerScreen
from station.screens.theme import PALETTES
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.states import every_state

FOLDER = Path(__file__).parents[2] / "data" / "screens"
SIZE, SMALLER = (1280, 800), 4
COLOURS = 48
CELL = 10
"""Pixels of a small picture whose mean is compared."""
Picture = NDArray[np.float64]


def small_pictures() -> Iterator[tuple[str, Picture]]:
    """Every state in both themes, small: name, and red, green and blue from 0 to 1."""
    for theme, palette in PALETTES.items():
        page = PackerScreen(Bridge(), FakeIntents(), palette)
        page.resize(*SIZE)
        page.show()
        for name, state in every_state().items():
            page.show_state(state)
            QApplication.processEvents()
            yield f"{theme}_{name}", _small(page.grab().toImage())
        page.close()


def _small(image: QImage) -> Picture:
    image = image.convertToFormat(QImage.Format.Format_RGB888)
    wide, tall = image.width(), image.height()
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(tall, image.bytesPerLine())
    pixels = rows[:, : wide * 3].reshape(tall // SMALLER, SMALLER, wide // SMALLER, SMALLER, 3)
    return pixels.mean((1, 3)) / 255


def kept(name: str) -> Picture:
    """The picture to compare with."""
    with Image.open(FOLDER / f"{name}.png") as file:
        return np.asarray(file.convert("RGB"), float) / 255


def apart(one: Picture, other: Picture) -> float:
    """How far two pictures differ where they differ most: means of cells, from 0 to 1."""
    cells = np.abs(_cells(one) - _cells(other))
    return float(cells.max())


def _cells(picture: Picture) -> Picture:
    tall, wide, _ = picture.shape
    return picture.reshape(tall // CELL, CELL, wide // CELL, CELL, 3).mean((1, 3))


def main(folder: Path) -> None:
    folder.mkdir(parents=True, exist_ok=True)
    application = QApplication.instance() or QApplication([])
    for name, picture in small_pictures():
        whole = Image.fromarray(np.rint(picture * 255).astype(np.uint8))
        whole.quantize(COLOURS, Image.Quantize.MAXCOVERAGE, dither=Image.Dither.NONE).save(
            folder / f"{name}.png", optimize=True
        )
    application.processEvents()


if __name__ == "__main__":
    main(Path(sys.argv[1]) if len(sys.argv) > 1 else FOLDER)
