"""A label of an invented packhouse to change field by field, and bitmaps of drawn labels."""

import dataclasses
import datetime
import subprocess
from collections.abc import Callable
from decimal import Decimal
from pathlib import Path

import numpy as np
import pytest

from labels.content import InputLot, PackLabel, Translation
from labels.design import PACK_100_BY_60
from labels.pdf import LabelDrawer

LOTS = (
    ("Romaine", "ROM-26330-07"),
    ("Iceberg", "ICE-26329-12"),
    ("Carrot", "CAR-26325-03"),
    ("Red cabbage", "RCB-26320-01"),
    ("Rocket", "RKT-26331-22"),
    ("Celery", "CEL-26328-09"),
    ("Radish", "RAD-26330-04"),
    ("Baby spinach", "BSP-26331-15"),
)

GARDEN_SALAD = PackLabel(
    product_name="Crisp Garden Salad",
    net_quantity_text="250 g",
    nominal_grams=Decimal(250),
    market="EU",
    use_by=datetime.date(2026, 11, 29),
    use_by_words="Use by",
    packed_on=datetime.date(2026, 11, 24),
    blend_lot="B261124-2",
    input_lots=tuple(InputLot(*lot) for lot in LOTS[:6]),
    ingredients=tuple(name.lower() for name, _ in LOTS[:6]),
    allergens=("celery",),
    storage_text="Keep refrigerated at 0–5 °C. Washed and ready to eat.",
    packer_text="Packed by Saltmarsh Fresh, 4 Dyke Road, Holmouth HM2 7QT",
    serial="A1-000123",
    gtin="9521234543213",  # prefix 952: reserved by GS1 for examples
    e_mark=True,
)


# What other markets ask for beside the facts of the garden salad.
AMERICAN = {
    "market": "US",
    "net_quantity_text": "Net Wt 8.8 oz (250 g)",
    "e_mark": False,
    "use_by_words": "Best if used by",
    "packer_text": "Packed by Saltmarsh Fresh, 4 Dyke Road, Holmouth, ME 04000",
}
CANADIAN = {
    "market": "CA",
    "net_quantity_text": "250 g",
    "e_mark": False,
    "use_by_words": "Best before / Meilleur avant",
    "packer_text": "Saltmarsh Fresh, 4 Dyke Road, Holmouth NB E0E 0E0",
    "second": Translation(
        "fr",
        "Salade du jardin croquante",
        ("romaine", "iceberg", "carotte", "chou rouge", "roquette", "céleri"),
        ("céleri",),
        "Garder au frais entre 0 et 5 °C. Lavée, prête à manger.",
    ),
}


@pytest.fixture(scope="session")
def american() -> dict[str, object]:
    """What makes the demo label one for the United States."""
    return AMERICAN


@pytest.fixture(scope="session")
def canadian() -> dict[str, object]:
    """What makes the demo label one for Canada."""
    return CANADIAN


@pytest.fixture(scope="session")
def make_label() -> Callable[..., PackLabel]:
    """Give a function: changed fields -> the demo label with them."""
    return lambda **changes: dataclasses.replace(GARDEN_SALAD, **changes)


@pytest.fixture(scope="session")
def eight_lots() -> tuple[InputLot, ...]:
    return tuple(InputLot(*lot) for lot in LOTS)


@pytest.fixture(scope="session")
def drawer() -> LabelDrawer:
    return LabelDrawer(PACK_100_BY_60)


@pytest.fixture(scope="session")
def dots_of(tmp_path_factory: pytest.TempPathFactory, need_tool: Callable[[str], str]):
    """Give a function: PDF, dots per mm -> its dots as booleans (rows, columns), by poppler."""
    folder: Path = tmp_path_factory.mktemp("labels")

    def dots(pdf: bytes, dots_per_mm: int) -> np.ndarray:
        page = folder / "label.pdf"
        page.write_bytes(pdf)
        tool = need_tool("pdftoppm")
        resolution = ["-r", f"{dots_per_mm * 25.4:g}"]
        command = [tool, "-mono", "-singlefile", *resolution, str(page), str(folder / "out")]
        subprocess.run(command, check=True, timeout=60)
        magic, shape, rows = (folder / "out.pbm").read_bytes().split(b"\n", 2)
        assert magic == b"P4"
        width, height = map(int, shape.split())
        packed = np.frombuffer(rows, np.uint8).reshape(height, -1)
        return np.unpackbits(packed, axis=1)[:, :width].astype(bool)

    return dots
