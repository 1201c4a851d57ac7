"""A recall in words and figures, as the command line and the paper say it."""

from __future__ import annotations

from fractions import Fraction

from station.core.balance import Span, kilograms
from station.core.metrology.exact import plain
from station.reports.recall import Group, Recall, Scope
from station.reports.recall_lots import LotAccount
from station.reports.sent import Whereabouts

_NAMES = {
    Scope.LOT: "input lot",
    Scope.PACK: "bag",
    Scope.BLEND: "blend lot",
    Scope.DAY: "day",
    Scope.UNIT: "case or pallet",
}


def title(found: Recall) -> str:
    """What was asked for, and that it is an exercise where it is one."""
    words = f"Recall of {_NAMES[found.scope]} {found.asked}"
    return f"DRILL: {words}" if found.drill else words


def answer(found: Recall) -> str:
    """How many bags, how many are gone, and how many of those here nothing holds."""
    total = found.total
    bags = f"{total.bags} bags, {plain(total.kilograms)} kg net"
    gone, whom = found.where.gone, len(found.where.customers)
    if gone.bags:
        customers = "1 customer" if whom == 1 else f"{whom} customers"
        bags += f"; {gone.bags} bags, {plain(gone.kilograms)} kg are with {customers}"
    free = found.where.free
    return f"{bags}; {free} of them are free to leave" if free else f"{bags}; none free"


def where_rows(where: Whereabouts) -> tuple[tuple[str, str], ...]:
    """The mass of all bags by where they are; the parts make up the whole."""
    parts = (
        ("With customers", where.gone),
        ("In cases here", where.cased),
        ("Loose here", where.loose),
        ("Out of the count", where.out),
    )
    return tuple((name, f"{part.bags} bags, {plain(part.kilograms)} kg") for name, part in parts)


SENT_COLUMNS = ("shipment", "customer", "left", "paper", "cases", "bags", "kg")


def sent_rows(where: Whereabouts) -> tuple[tuple[str, ...], ...]:
    """Each shipment with some of the bags, as a row of :data:`SENT_COLUMNS`."""
    return tuple(
        (
            one.shipment.number,
            f"{one.shipment.customer.name}, {one.shipment.customer.place}",
            f"{one.shipment.at:%Y-%m-%d %H:%M}",
            one.shipment.reference,
            str(len(one.cases)),
            str(one.part.bags),
            plain(one.part.kilograms),
        )
        for one in where.sent
    )


def counted(group: Group) -> str:
    """Bags by quality."""
    return ", ".join(f"{number} {quality}" for quality, number in group.counts.items()) or "none"


def labelled(group: Group) -> str:
    """Bags by state of the label."""
    return ", ".join(f"{number} {state}" for state, number in group.labels.items()) or "none"


def account(one: LotAccount) -> tuple[tuple[str, str], ...]:
    """The mass balance of a lot: what came, what the bags took, what must be left."""
    used, rest = one.balance.used, one.rest
    why = "what came was not weighed"
    if one.purged:
        why = "bags that could hold it were purged"
    return (
        ("Received", _or_unknown(one.received)),
        ("Loaded, less what came off weighed", _or_unknown(one.balance.loaded)),
        ("In bags", spanned(used)),
        ("Thrown away", kilograms(one.wasted)),
        ("Must be left", f"not known: {why}" if rest is None else spanned(rest)),
        ("Adds up", {None: "cannot be said", True: "yes", False: "NO"}[one.adds_up]),
    )


def spanned(span: Span) -> str:
    """A span of grams as kilograms, with what is likely."""
    return f"{kilograms(span.low)} to {kilograms(span.high)}, likely {kilograms(span.likely)}"


def _or_unknown(grams: Fraction | None) -> str:
    return "not weighed" if grams is None else kilograms(grams)
