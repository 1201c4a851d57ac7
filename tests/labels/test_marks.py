"""The station's own pages against the same marks drawn by reportlab: dot for dot the same."""

import dataclasses

import numpy as np
import pytest

from labels.design import DESIGNS
from labels.errors import LabelError
from labels.frame_designs import CASE_100_BY_100, PALLET_100_BY_150, REJECT_60_BY_40
from labels.layout import Box
from labels.logistics import CaseLabel, PalletLabel
from labels.marks import rectangles_of
from labels.pdf import LabelDrawer
from labels.raster import rasterise_pages
from labels.sheet import Plan
from station.app.speed.bare_label import draw_bare, register_fonts
from tests.labels.test_frames import CASE, PALLET, REJECT

HEADS = (8, 12, 24)  # 203, 300 and 600 dpi
GREY_STEPS = 3  # of 255: what the last digits of a position may change in the rim of a letter


@pytest.fixture(scope="module", autouse=True)
def fonts() -> None:
    register_fonts()


def assert_same_dots(drawer: LabelDrawer, label) -> None:
    ours = rasterise_pages(drawer.draw(label), drawer.dots_per_mm)
    bare = rasterise_pages(draw_bare(drawer.plans(label)), drawer.dots_per_mm)
    assert len(ours) == len(bare)
    for page, other in zip(ours, bare, strict=True):
        assert page.shape == other.shape
        assert ((page < 128) == (other < 128)).all()
        assert np.abs(page.astype(int) - other).max() <= GREY_STEPS


@pytest.mark.parametrize("name", sorted(DESIGNS))
@pytest.mark.parametrize("dots_per_mm", HEADS)
@pytest.mark.parametrize("copy_mark", ["", "R1", "SPECIMEN"])
def test_pack_labels_are_dot_for_dot_what_reportlab_draws(
    make_label, name: str, dots_per_mm: int, copy_mark: str
) -> None:
    label = make_label(
        copy_mark=copy_mark,
        product_name="Łódź Σαλάτα Rau sống ặ Салат",
        input_lots=make_label().input_lots[:3],
    )
    assert_same_dots(LabelDrawer(DESIGNS[name], dots_per_mm), label)


def test_a_label_of_two_pages_too(make_label, eight_lots) -> None:
    drawer = LabelDrawer(DESIGNS["pack 60 x 40"])
    label = make_label(input_lots=eight_lots)
    assert len(drawer.plans(label)) == 2
    assert_same_dots(drawer, label)


@pytest.mark.parametrize(
    ("design", "label"),
    [
        (REJECT_60_BY_40, REJECT),
        (CASE_100_BY_100, CASE),
        (PALLET_100_BY_150, PALLET),
    ],
    ids=["reject", "case", "pallet"],
)
def test_tickets_cases_and_pallets_too(design, label: CaseLabel | PalletLabel) -> None:
    assert_same_dots(LabelDrawer(design), label.framed())


def test_a_plate_off_the_dots_is_refused(make_label) -> None:
    plan: Plan = LabelDrawer(DESIGNS["pack 100 x 60"]).plan(make_label())
    askew = dataclasses.replace(plan, plates=(Box(1.03, 1, 2, 2),))
    with pytest.raises(LabelError, match="whole number of dots"):
        rectangles_of(askew)
