"""Labels that keep the rules of their market, and each way to break one."""

import dataclasses
from decimal import Decimal

import pytest

from labels.content import PackLabel
from labels.design import (
    DESIGNS,
    PACK_60_BY_40,
    PACK_100_BY_60,
    PACK_100_BY_100,
    PACK_100_BY_100_US,
    LabelDesign,
)
from labels.errors import LabelError
from labels.ingredients import named
from labels.layout import PlacedText
from labels.pdf import LabelDrawer
from labels.plan import arrange_pack
from labels.rules import eu, us
from labels.rules.figure_height import least_figure_height
from labels.rules.judge import RULES, broken_rules, judge
from labels.rules.letter_height import LEAST_X
from labels.rules.rule import metric_grams
from labels.sheet import Plan
from tests.labels.test_designs import assert_sound
from tests.labels.test_pdf import FINE, ink_heights

SHARES = tuple(map(Decimal, ("30", "25", "20", "10", "7.5", "7.5")))


def titles(label: PackLabel, design: LabelDesign = PACK_100_BY_60) -> list[str]:
    """Return the particulars a label breaks."""
    plans = arrange_pack(label, design)
    return [rule.particular for rule, _ in broken_rules(label, design, plans)]


@pytest.fixture(params=["EU", "DE", "GB", "US", "CA"])
def by_market(request, make_label, american, canadian) -> tuple[PackLabel, LabelDesign]:
    """A good label of each market with the design it is for."""
    changes = {"US": american, "CA": canadian}.get(request.param, {"market": request.param})
    design = {"US": PACK_100_BY_100_US, "CA": PACK_100_BY_100}.get(request.param, PACK_100_BY_60)
    return make_label(**changes), design


def test_a_good_label_of_each_market_is_drawn_sound_and_breaks_no_rule(by_market) -> None:
    label, design = by_market
    drawer = LabelDrawer(design)
    for plan in drawer.plans(label):
        assert_sound(plan)
    assert broken_rules(label, design, drawer.plans(label)) == ()


def test_figures_and_letters_on_paper_are_as_high_as_the_market_asks(by_market, dots_of) -> None:
    label, design = by_market
    drawer = LabelDrawer(design)
    dots = dots_of(drawer.draw(label), FINE)
    (quantity,) = (one for one in drawer.plan(label).texts if one.role == "Net quantity")
    heights = ink_heights(dots, quantity)
    least = least_figure_height(label.market, label.nominal_grams, design.panel_cm2)
    for figure in set(quantity.text) & set("0123456789"):
        assert heights[figure] >= float(least) - 1 / FINE
    letter = next(one for one in drawer.plan(label).texts if one.role == "Storage")
    letters = ink_heights(dots, letter)
    assert letters["r"] >= float(LEAST_X[label.market]) - 1 / FINE


@pytest.mark.parametrize("market", sorted(RULES))
def test_every_rule_names_its_clause_and_how_well_it_is_known(market: str) -> None:
    for rule in RULES[market]:
        assert rule.clause
        assert rule.status in ("public text", "secondary text", "from memory")
        assert rule.particular


@pytest.mark.parametrize(
    ("changes", "particular"),
    [
        ({"product_name": "Rocket and Carrot Salad"}, "Quantity of ingredients"),
        ({"shares": SHARES[::-1]}, "Ingredients"),
        ({"allergens": ()}, "Allergens"),
        ({"ingredients": ("celeriac", "romaine"), "allergens": ()}, "Allergens"),
        ({"net_quantity_text": "240 g"}, "Net quantity"),
        ({"net_quantity_text": "8.8 oz", "e_mark": False}, "Net quantity"),
        ({"net_quantity_text": "250 g ℮", "e_mark": False}, "Sign ℮"),
        ({"net_quantity_text": "4 g", "nominal_grams": Decimal(4)}, "Sign ℮"),
        ({"use_by_words": "Eat by"}, "Use-by words"),
        # FIC Annex X 1(a): "Best before" with a day, "Best before end" without one
        ({"use_by_words": "Best before end"}, "Use-by words"),
        ({"use_by_words": "Best if used by"}, "Use-by words"),
        ({"use_by_words": "Use by / Best before"}, "Use-by words"),
        # FIC Annex II, as its words stand in a list: one or many
        ({"ingredients": ("romaine", "peanuts"), "allergens": ()}, "Allergens"),
        ({"ingredients": ("romaine", "cooked prawns"), "allergens": ()}, "Allergens"),
        ({"ingredients": ("romaine", "soybeans"), "allergens": ()}, "Allergens"),
        ({"ingredients": ("romaine", "Brazil nuts"), "allergens": ()}, "Allergens"),
        ({"ingredients": ("romaine", "oat flakes"), "allergens": ()}, "Allergens"),
        ({"ingredients": ("romaine", "squid (molluscs)"), "allergens": ()}, "Allergens"),
        ({"product_name": "Radishes and Carrots"}, "Quantity of ingredients"),
        ({"packer_text": "Packed by Saltmarsh Fresh"}, "Packer"),
    ],
)
@pytest.mark.parametrize("market", ["EU", "GB"])
def test_each_broken_rule_is_named(make_label, market: str, changes, particular: str) -> None:
    label = make_label(market=market, **changes)
    assert titles(label) == [particular]
    with pytest.raises(LabelError) as caught:
        LabelDrawer(PACK_100_BY_60).draw(label)
    assert caught.value.title == particular
    clause = {"EU": ("FIC", "76/211"), "GB": ("assimilated", "SI 2006")}[market]
    assert any(law in caught.value.detail for law in clause)


@pytest.mark.parametrize(
    ("changes", "particular"),
    [
        ({"net_quantity_text": "8.8 oz (250 g)"}, "Net quantity"),
        ({"net_quantity_text": "Net Wt 250 g"}, "Net quantity"),
        ({"net_quantity_text": "Net Wt 8.8 oz (249 g)"}, "Net quantity"),
        ({"net_quantity_text": "Net Wt 8.9 oz (250 g)"}, "Net quantity"),
        ({"packer_text": "Packed by Saltmarsh Fresh, Holmouth"}, "Packer"),
        ({"ingredients": ("romaine", "walnuts"), "allergens": ()}, "Allergens"),
    ],
)
def test_each_broken_rule_of_the_united_states(
    make_label, american, changes, particular: str
) -> None:
    label = make_label(**{**american, **changes})
    assert titles(label, PACK_100_BY_100_US) == [particular]


def test_the_net_quantity_is_in_the_lower_30_percent_of_an_american_panel(
    make_label, american
) -> None:
    label = make_label(**american)
    above = dataclasses.replace(PACK_100_BY_100, panel_is_label=True, panel_cm2=Decimal(100))
    above = dataclasses.replace(above, net_figure=3.2, name_steps=PACK_60_BY_40.name_steps)
    assert titles(label, above) == ["Net quantity"]
    plan = LabelDrawer(PACK_100_BY_100_US).plan(label)
    (quantity,) = (text for text in plan.texts if text.role == "Net quantity")
    assert quantity.box.y >= 70.0


@pytest.mark.parametrize(
    ("text", "grams"),
    [
        ("Net Wt 1 lb 4 oz (567 g)", 567),
        ("Net Wt 8.8 oz (250 g)", 250),
        ("Net Wt 2 lb (907 g)", 907),
    ],
)
def test_pounds_and_ounces_by_exact_constants(text: str, grams: int) -> None:
    """NIST Handbook 44 Appendix C: 1 lb = 453.59237 g, 1 oz = 28.349523125 g."""
    found = us.customary_grams(text)
    assert found is not None
    quantity, half = found
    assert abs(quantity - grams) <= half


@pytest.mark.parametrize(
    ("changes", "particular"),
    [
        ({"second": None}, "Languages"),
        ({"use_by_words": "Best before"}, "Use-by words"),
        ({"net_quantity_text": "8.8 oz"}, "Net quantity"),
        # SFCR s. 229 to 235: grams below a kilogram, kilograms from there on
        ({"net_quantity_text": "0.25 kg"}, "Net quantity"),
        ({"net_quantity_text": "1000 g", "nominal_grams": Decimal(1000)}, "Net quantity"),
        ({"packer_text": "Saltmarsh Fresh"}, "Packer"),
    ],
)
def test_each_broken_rule_of_canada(make_label, canadian, changes, particular: str) -> None:
    label = make_label(**{**canadian, **changes})
    assert titles(label, PACK_100_BY_100) == [particular]


def test_a_canadian_label_speaks_both_languages_and_shares_one_date(make_label, canadian) -> None:
    drawer = LabelDrawer(PACK_100_BY_100)
    label = make_label(**canadian)
    words = " ".join(text.text for plan in drawer.plans(label) for text in plan.texts)
    for wanted in (
        *("Crisp Garden Salad", "Salade du jardin croquante", "2026 NO 29"),
        *("Ingredients:", "Ingrédients:", "Packed / Emballé le 2026 NO 24.", "céleri"),
    ):
        assert wanted in words
    assert drawer.symbols(label)[0].hri.endswith("(15)261129") or any(
        "(15)261129" in symbol.hri for symbol in drawer.symbols(label)
    )


@pytest.mark.parametrize(("text", "grams"), [("0.5 kg", 500), ("500 g", 500), ("1 kg", 1000)])
def test_half_a_kilogram_may_be_declared_either_way_in_canada(
    make_label, canadian, text: str, grams: int
) -> None:
    changes = {"net_quantity_text": text, "nominal_grams": Decimal(grams)}
    assert titles(make_label(**{**canadian, **changes}), PACK_100_BY_100) == []


@pytest.mark.parametrize("marked", ["peanut", "peanuts"])
def test_an_allergen_is_declared_by_one_or_by_many_of_it(make_label, marked: str) -> None:
    label = make_label(ingredients=("romaine", "salted peanuts"), allergens=(marked,))
    assert titles(label) == []


@pytest.mark.parametrize(
    ("name", "ingredient", "stands"),
    [
        ("Carrots and celery", "carrot", True),
        ("Carrot salad", "carrots", True),
        ("Shredded white cabbages", "white cabbage", True),
        ("Tomatoes", "tomato", True),
        ("Red cabbage slaw", "white cabbage", False),
        ("Rocketeer mix", "rocket", False),
        ("Crisp salad", "***", False),
    ],
)
def test_an_ingredient_stands_in_the_name_as_one_or_as_many(
    name: str, ingredient: str, stands: bool
) -> None:
    """Regulation (EU) No 1169/2011 Art. 22(1)(a)."""
    assert named(name, ingredient) is stands


def test_shares_of_named_ingredients_are_computed(make_label) -> None:
    label = make_label(product_name="Rocket and Carrot Salad", shares=SHARES)
    plan = LabelDrawer(PACK_100_BY_60).plan(label)
    words = " ".join(text.text for text in plan.texts if text.role == "Ingredients")
    assert "carrot (20 %)" in words
    assert "rocket (7.5 %)" in words
    assert "romaine (" not in words


def test_best_before_changes_the_identifier_of_the_date(make_label, drawer) -> None:
    symbols = drawer.symbols(make_label(use_by_words="Best before"))
    assert symbols[0].hri == "(01)09521234543213(15)261129"


def test_origin_is_printed_where_it_is_given(make_label, drawer) -> None:
    plan = drawer.plan(make_label(origin="Netherlands and Spain"))
    words = " ".join(text.text for text in plan.texts)
    assert "Origin: Netherlands and Spain." in words


def test_every_rule_on_what_stands_on_paper_notices_when_it_does_not(make_label) -> None:
    """Each text taken away, or made too small, breaks a rule of the EU."""
    label = make_label()
    (plan,) = arrange_pack(label, PACK_100_BY_60)

    def without(role: str) -> Plan:
        kept = tuple(text for text in plan.texts if text.role != role)
        return dataclasses.replace(plan, texts=kept)

    def smaller(text: PlacedText) -> PlacedText:
        return dataclasses.replace(text, size=text.size / 3)

    for role in ("Name", "Net quantity", "Ingredients", "Use-by date", "Storage", "Packer", "Lot"):
        assert broken_rules(label, PACK_100_BY_60, [without(role)]), role
    tiny = dataclasses.replace(plan, texts=tuple(map(smaller, plan.texts)))
    found = {rule.clause for rule, _ in broken_rules(label, PACK_100_BY_60, [tiny])}
    assert {"FIC Art. 13(2)", "76/211/EEC Annex I 3.1", "76/211/EEC Annex I 3.3"} <= found
    plain = dataclasses.replace(
        plan,
        texts=tuple(
            dataclasses.replace(text, face=plan.texts[0].face)
            if text.role == "Ingredients"
            else text
            for text in plan.texts
        ),
    )
    with pytest.raises(LabelError, match="not emphasised"):
        judge(label, PACK_100_BY_60, [plain])


@pytest.mark.parametrize(
    ("text", "grams"),
    [("250 g", "250"), ("1.5 kg", "1500"), ("1,5 kg", "1500"), ("1 800 g", "1800"), ("8 oz", None)],
)
def test_quantities_in_words(text: str, grams: str | None) -> None:
    assert metric_grams(text) == (None if grams is None else Decimal(grams))


def test_a_substance_is_a_whole_word(make_label) -> None:
    assert "soy" in eu.ANNEX_II
    assert titles(make_label(ingredients=("eggplant", "butternut", "celery"))) == []


def test_designs_by_name() -> None:
    assert set(DESIGNS) == {
        *("pack 100 x 60", "pack 100 x 60 retail", "pack 60 x 40"),
        *("pack 100 x 100", "pack 100 x 100 US"),
    }
