"""What a product and its station choose for the label, held against what a label can carry."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from labels.design import DESIGNS
from labels.errors import LabelError
from labels.gs1_digits import till_digits
from labels.rules.ca import LANGUAGES as CANADIAN
from labels.rules.eu import E_MARK_GRAMS
from labels.words import Durability, usual_date_words
from station.config.packhouse import LabelSettings
from station.config.settings import ComponentRow, ProductRow
from station.core.metrology.duties import FigureBasis
from station.core.metrology.rule_sets.registry import RULE_SETS
from station.core.product_label import ProductLabel, Wording

_CANADA = "CA"


def product_label(
    row: ProductRow, components: Mapping[str, ComponentRow], label: LabelSettings
) -> ProductLabel:
    """Return the choices of a product that has no problem."""
    second = label.second_language
    return ProductLabel(
        packer=label.packer,
        design=row.design or label.design,
        language=label.language,
        second=Wording(
            second,
            row.name_in[second],
            row.storage_in[second],
            tuple(
                (share.component, components[share.component].name_in[second])
                for share in row.recipe
            ),
        )
        if second
        else None,
        e_mark=row.e_mark,
        origin=row.origin,
        link_stem=label.link_stem if DESIGNS[row.design or label.design].column else "",
    )


def date_words(row: ProductRow, label: LabelSettings) -> str:
    """Return the words before the date: the product's own, or the usual ones of the languages."""
    usual = usual_date_words(Durability.USE_BY, label.language, label.second_language)
    return row.use_by_words or usual


def label_problems(
    row: ProductRow, components: Mapping[str, ComponentRow], label: LabelSettings
) -> Iterator[tuple[str, str, str]]:
    """Yield the key, the fault and what is allowed, of each choice that cannot hold."""
    yield from _two_languages(row, components, label)
    yield from _e_mark(row)
    design = DESIGNS[row.design or label.design]
    if design.till_bars:
        try:
            till_digits(row.gtin)
        except LabelError as fault:
            yield "design", f"{design.name!r} carries a bar code for the till; {fault}", ""


def _two_languages(
    row: ProductRow, components: Mapping[str, ComponentRow], label: LabelSettings
) -> Iterator[tuple[str, str, str]]:
    market = row.market or label.market
    given = (label.language, label.second_language)
    if market == _CANADA and set(given) != set(CANADIAN):
        why = f"labels for {market} are in English and French, this station's in {_both(given)}"
        yield "market", why, 'language = "en" and second_language = "fr" in [label], or turned'
    second = label.second_language
    if not second:
        return
    for key, words in (("name_in", row.name_in), ("storage_in", row.storage_in)):
        if second not in words:
            why = f"has no {second}, the station's second language"
            yield f"{key}.{second}", why, f'{key} = {{ {second} = "..." }}'
    for share in row.recipe:
        component = components.get(share.component)
        if component is not None and second not in component.name_in:
            why = f"component {component.code} has no name in {second}"
            yield "recipe", why, f'name_in = {{ {second} = "..." }} at that component'


def _both(languages: tuple[str, str]) -> str:
    return " and ".join(one for one in languages if one)


def _e_mark(row: ProductRow) -> Iterator[tuple[str, str, str]]:
    if not row.e_mark:
        return
    low, high = E_MARK_GRAMS
    if not low <= row.nominal.grams <= high:
        yield "e_mark", f"the nominal quantity is {row.nominal}", f"false, or {low} g to {high} g"
    rules = RULE_SETS.get(row.rule_set)
    if rules is not None and all(
        height.basis is not FigureBasis.E_MARK for height in rules.figure_heights
    ):
        having = ", ".join(
            one.id
            for one in RULE_SETS.values()
            if any(height.basis is FigureBasis.E_MARK for height in one.figure_heights)
        )
        yield "e_mark", f"{row.rule_set} knows no sign ℮", f"false, or one of {having}"
