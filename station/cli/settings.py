"""``station settings check``: whether a folder of settings is sound."""

from __future__ import annotations

from datetime import date, timedelta
from pathlib import Path
from typing import TYPE_CHECKING

from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson, NeededConfig
from station.cli.page import facts, heading, listing, note
from station.clock import SystemClock
from station.core.dating import production_day
from station.core.sequence import Advice, advise_order
from station.errors import BadInput

if TYPE_CHECKING:
    from station.config.packhouse import Packhouse

_PRODUCT_COLUMNS = ("product", "name", "nominal", "accepted", "tare")
_RIGHT = "nominal accepted tare"


def check(config: NeededConfig, as_json: AsJson = False) -> None:
    """Read all four settings files and name every fault."""

    def work() -> Answer:
        from station.config.load import load  # slow to load

        return _answer(config, load(config, today_of(config)))

    run_verb(as_json, work)


def today_of(config: Path) -> date:
    """Return the plant's present production day; the day in UTC while its settings are faulty."""
    from station.config.load import load_settings

    try:
        settings = load_settings(config)
    except BadInput:
        return SystemClock("UTC").now().utc.date()
    now = SystemClock(settings.zone).now()
    local = (now.utc + timedelta(minutes=now.offset_minutes)).replace(tzinfo=None)
    return production_day(local, settings.cut_off)


def _answer(folder: Path, house: Packhouse) -> Answer:
    settings = house.settings
    warnings, order = _scale_warnings(house), advise_order(tuple(house.products.values()))
    document: dict[str, Json] = {
        "sound": True,
        "folder": str(folder),
        "site": settings.site,
        "station": settings.station,
        "line": settings.line,
        "home": str(settings.home),
        "products": list(house.products),
        "components": list(house.components),
        "bags": list(house.bags),
        "lots": list(house.lots),
        "people": list(house.people),
        "scale_warnings": [{"product": code, "words": words} for code, words in warnings],
        "order_of_products": [advice.product.code for advice in order],
    }
    scale = settings.scale
    rows = (
        (
            product.code,
            product.name,
            str(product.nominal),
            f"{product.floor} to {product.upper}",
            str(product.bag.tare),
        )
        for product in house.products.values()
    )
    page = (
        heading(f"The settings in {folder} are sound"),
        facts(
            (
                ("Packhouse", settings.site_name),
                ("Station", f"{settings.site} {settings.station}, line {settings.line}"),
                ("Home", str(settings.home)),
                ("Scale", f"{scale.id}, {scale.capacity} by {scale.interval}"),
                ("Scale's line", f"{scale.port.url}, {scale.protocol}, {scale.port.baud} baud"),
                ("Labels", str(settings.printer.folder)),
                ("Input lots", f"{len(house.lots)} of {len(house.components)} components"),
                ("People", str(len(house.people))),
            )
        ),
        listing(_PRODUCT_COLUMNS, rows, _RIGHT, "name"),
        facts([(f"Scale for {code}", words) for code, words in warnings]),
        facts(
            [
                (f"Pack as number {number}", _order_words(advice))
                for number, advice in enumerate(order, start=1)
            ]
        ),
        note("Order by allergen, smell and colour; the line is cleared all the same."),
    )
    return Answer(document, page)


def _scale_warnings(house: Packhouse) -> list[tuple[str, str]]:
    """Where the scale only just suits a product; where it does not, the settings are refused."""
    from station.core.metrology.clause import RuleRefused
    from station.core.metrology.rule_sets.registry import rule_set
    from station.core.metrology.scale_suitability import Level, check_scale

    scale, warnings = house.settings.scale, []
    for product in house.products.values():
        try:
            nominal = product.nominal.in_unit(scale.unit)
            rules = rule_set(product.rule_set)
            found = check_scale(scale.plate, rules, nominal, product.bag.tare, product.upper)
        except RuleRefused:
            continue
        warnings += [(product.code, str(one.words)) for one in found if one.level is Level.WARN]
    return warnings


def _order_words(advice: Advice) -> str:
    clean = f"; clean of {', '.join(advice.clean_of)}" if advice.clean_of else ""
    return f"{advice.product.code}{clean}"
