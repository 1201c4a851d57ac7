"""What the label of a packaged food carries in the United States.

21 CFR Part 101. Not judged here, since a label does not know: whether nutrition labeling is due
(raw produce is voluntary, 21 CFR 101.9(j)(10), from memory). No date is asked for by federal law
for this food (public text); where one stands, its words are free, and 'Best if used by' is advised.
"""

import re
from decimal import Decimal

from labels.rules import eu
from labels.rules.rule import MEMORY, METRIC, SECONDARY, Need, Rule, Shown, metric_grams, substances

POUND, OUNCE = Decimal("453.59237"), Decimal("28.349523125")  # g, exact
NET_WEIGHT = re.compile(r"net (wt|weight)\b", re.IGNORECASE)
CUSTOMARY = re.compile(r"(?:([0-9]+(?:\.[0-9]+)?) ?lb)? ?(?:([0-9]+(?:\.[0-9]+)?) ?oz)?")
ZIP_CODE = re.compile(r"\b[0-9]{5}(-[0-9]{4})?\b")
LOWER_SHARE = 0.30  # of the principal display panel

# 21 U.S.C. 321(qq): the nine major food allergens, as words of lists (from memory).
MAJOR_ALLERGENS = (
    *("milk", "cheese", "egg", "fish", "shrimp", "crab", "lobster", "almond", "walnut", "pecan"),
    *("cashew", "hazelnut", "pistachio", "macadamia", "brazil nut", "peanut", "wheat", "soy"),
    *("soybean", "sesame"),
)
MAJOR_ALLERGEN_WORD = substances(MAJOR_ALLERGENS)


def net_weight_words(shown: Shown) -> str:
    """'Net Wt' or 'Net Weight' before the quantity."""
    text = shown.label.net_quantity_text
    return "" if NET_WEIGHT.match(text) else f"{text!r} does not begin with 'Net Wt'"


def customary_grams(text: str) -> tuple[Decimal, Decimal] | None:
    """Return the first quantity in lb and oz, and one of its last place, both in grams."""
    for match in CUSTOMARY.finditer(text):
        pounds, ounces = match[1], match[2]
        if pounds or ounces:
            last, unit = (ounces, OUNCE) if ounces else (pounds, POUND)
            step = Decimal(1).scaleb(-len(last.partition(".")[2])) * unit
            return Decimal(pounds or 0) * POUND + Decimal(ounces or 0) * OUNCE, step
    return None


def metric_step(text: str) -> Decimal:
    """Return one of the last place of the metric quantity, in grams."""
    match = METRIC.search(text)
    assert match is not None
    return Decimal(1).scaleb(-len(match[1].partition(".")[2])) * (1000 if match[2] == "kg" else 1)


def dual_units(shown: Shown) -> str:
    """Ounces or pounds and grams, each the nominal quantity: rounded down, or to its last place."""
    label = shown.label
    text = label.net_quantity_text
    metric, customary = metric_grams(text), customary_grams(text)
    if metric is None or customary is None:
        return f"{text!r}; write both units, like 'Net Wt 8.8 oz (250 g)'"
    for grams, step, unit in ((metric, metric_step(text), "g or kg"), (*customary, "lb and oz")):
        if not -step / 2 <= label.nominal_grams - grams < step:
            return f"{grams:.1f} g in {unit} are not the nominal quantity {label.nominal_grams} g"
    return ""


def lower_30_percent(shown: Shown) -> str:
    """The net quantity in the lower 30 % of the panel, where the label is the panel."""
    if not shown.design.panel_is_label:
        return ""
    page = shown.plans[0].page
    line = page.height * (1 - LOWER_SHARE)
    if all(text.box.y >= line for text in shown.texts("Net quantity")):
        return ""
    return "it stands above the lower 30 % of the principal display panel; use a US design"


def allergens_declared(shown: Shown) -> str:
    """Every major food allergen in the list is declared."""
    label = shown.label
    marked = " ".join(label.allergens).casefold()
    for ingredient in label.ingredients:
        for substance in MAJOR_ALLERGEN_WORD.findall(ingredient.casefold()):
            if substance not in marked:
                return f"{ingredient!r} holds {substance}, a major food allergen not declared"
    return ""


def place_of_business(shown: Shown) -> str:
    """Name and place of business with its ZIP code."""
    text = shown.label.packer_text
    if shown.texts("Packer") and ZIP_CODE.search(text):
        return ""
    return f"{text!r} has no ZIP code; write name, city, State and ZIP code"


REQUIRED, OPTIONAL, COMPUTED = Need.REQUIRED, Need.OPTIONAL, Need.COMPUTED
RULES = (
    Rule("Product name", REQUIRED, "21 CFR 101.3(a), 101.7(a)", MEMORY, eu.same_field),
    Rule("Ingredients", REQUIRED, "21 CFR 101.4(a)", MEMORY, eu.list_heading),
    Rule("Ingredients", COMPUTED, "21 CFR 101.4(a)", MEMORY, eu.descending),
    Rule("Allergens", REQUIRED, "21 U.S.C. 343(w)", MEMORY, allergens_declared),
    Rule("Net quantity", REQUIRED, "21 CFR 101.7", SECONDARY, net_weight_words),
    Rule("Net quantity", REQUIRED, "21 CFR 101.7; 15 U.S.C. 1453", SECONDARY, dual_units),
    Rule("Net quantity", REQUIRED, "21 CFR 101.7(i)", MEMORY, eu.figures),
    Rule("Net quantity", REQUIRED, "21 CFR 101.7(f)", SECONDARY, lower_30_percent),
    Rule("Letters", REQUIRED, "21 CFR 101.2(c)", MEMORY, eu.letters),
    Rule("Packer", REQUIRED, "21 CFR 101.5", MEMORY, place_of_business),
    Rule("Use-by date", OPTIONAL, "no federal duty", SECONDARY, eu.date_shown),
)
