"""Heights of figures, letters and the sign ℮ on every design, measured on rendered dots."""

import pytest

from labels.content import InputLot, Translation
from labels.design import DESIGNS
from labels.errors import LabelError
from labels.pdf import LabelDrawer
from labels.rules.rule import metric_grams
from tests.labels.test_pdf import FINE, ink_heights

# Least height of figures, mm, by nominal quantity up to and including (76/211/EEC Annex I 3.1), and
# by the principal display surface of the design (SFCR Schedule 6; 21 CFR 101.7(i), from memory).
BY_QUANTITY = (("50 g", 2.0), ("200 g", 3.0), ("1000 g", 4.0), ("2 kg", 6.0))
CANADA = {100: 3.2, 600: 6.4}
AMERICA = {100: 3.175, 600: 4.7625}  # up to 25 square inches 1/8 inch, up to 100 3/16 inch
LEAST_X = {
    "EU": 1.2,
    "GB": 1.2,
    "CA": 1.6,
    "US": 1.5875,
}  # FIC 13(2); FDR A.01.016; 21 CFR 101.2(c)
FLAT = "xvzw"  # letters whose top and bottom lie on the lines
ROLES = ("Storage", "Ingredients", "Input lots", "Packer")
DOT = 1 / FINE

FLAT_TEXTS = {
    "storage_text": "wax zzz 0–5 °C",
    "ingredients": ("vex", "celery"),
    "packer_text": "Vox, xvz, wz, ME 04000",
    "input_lots": (InputLot("vex", "L-1"),),
}
TOO_SMALL = {
    "EU": set(),
    "GB": set(),
    "US": DESIGNS.keys() - {"pack 100 x 100 US"},
    "CA": {"pack 60 x 40", "pack 100 x 60"},
}
MARKETS = {
    "EU": {},
    "GB": {},
    "US": {"net_quantity_text": "Net Wt 8.8 oz (250 g)", "use_by_words": "Best if used by"},
    "CA": {
        "use_by_words": "Best before / Meilleur avant",
        "second": Translation("fr", "Salade", ("vex", "céleri"), ("céleri",), "zzz wax"),
    },
}


def measured(make_label, dots_of, name: str, **changes: object):
    """Return the placed texts of the first page with the heights of their ink, mm."""
    drawer = LabelDrawer(DESIGNS[name])
    label = make_label(**FLAT_TEXTS | changes)
    dots = dots_of(drawer.draw(label), FINE)
    return [(text, ink_heights(dots, text)) for text in drawer.plan(label).texts if not text.angle]


@pytest.mark.parametrize("name", sorted(DESIGNS))
@pytest.mark.parametrize(("quantity", "least"), BY_QUANTITY)
def test_figures_by_quantity_and_the_sign(
    make_label, dots_of, name: str, quantity: str, least: float
) -> None:
    grams = metric_grams(quantity)
    found = measured(make_label, dots_of, name, nominal_grams=grams, net_quantity_text=quantity)
    ((_, heights),) = [one for one in found if one[0].role == "Net quantity"]
    assert min(heights[sign] for sign in quantity if sign.isdigit()) >= least - DOT
    assert heights["℮"] >= 3.0 - DOT  # 76/211/EEC Annex I 3.3


def changes_for(market: str) -> dict[str, object]:
    return {"market": market, "e_mark": False} | MARKETS[market]


@pytest.mark.parametrize(
    ("market", "name"),
    [(market, name) for market in MARKETS for name in sorted(DESIGNS.keys() - TOO_SMALL[market])],
)
def test_letters_and_figures_by_market(make_label, dots_of, name: str, market: str) -> None:
    found = measured(make_label, dots_of, name, **changes_for(market))
    for role in ROLES:
        letters = [
            height
            for text, heights in found
            if text.role.startswith(role) and text.face.value.startswith("PackLineSansCondensed")
            for letter, height in heights.items()
            if letter in FLAT
        ]
        assert letters, role
        assert min(letters) >= LEAST_X[market] - DOT, role
    surface = int(DESIGNS[name].panel_cm2)
    least = {"CA": CANADA.get(surface), "US": AMERICA.get(surface)}.get(market, 4.0)
    figures = [
        height
        for text, heights in found
        if text.role == "Net quantity"
        for sign, height in heights.items()
        if sign in "0123456789"
    ]
    assert least is not None
    assert min(figures) >= least - DOT


@pytest.mark.parametrize(
    ("market", "name"),
    [(market, name) for market in MARKETS for name in sorted(TOO_SMALL[market])],
)
def test_a_label_too_small_for_a_market_is_refused_and_nothing_shrunk(
    make_label, name: str, market: str
) -> None:
    with pytest.raises(LabelError, match=r"larger label|shorten|shorter") as refused:
        LabelDrawer(DESIGNS[name]).plan(make_label(**FLAT_TEXTS | changes_for(market)))
    assert refused.value.title in (
        "Net quantity",
        "Use-by words",
        "Lot and serial",
        "Text of the label",
    )
