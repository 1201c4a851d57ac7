"""What a lead may choose from, what was chosen so far, and what is still lacking."""

from __future__ import annotations

from dataclasses import dataclass, replace

from station.core.languages import Language
from station.core.lots import InputLot
from station.core.product import Product
from station.line.state import RunChoice
from station.screens.words import why_not_free

LEAD_ROLE = "lead"


@dataclass(frozen=True, slots=True)
class Person:
    """Somebody of the crew.

    Args:
        id: as records name the person.
        name: as colleagues do.
        role: ``lead`` for who may start and end a run; any other word for the rest of the crew.
        language: in which screens speak to the person; None takes that of the station.
    """

    id: str
    name: str
    role: str
    language: Language | None = None


@dataclass(frozen=True, slots=True)
class LeadOffer:
    """Products, input lots and people a lead may choose from."""

    products: tuple[Product, ...]
    lots: tuple[InputLot, ...]
    people: tuple[Person, ...]

    def lots_of(self, component: str) -> tuple[InputLot, ...]:
        """Lots of one component, those that may be used first."""
        mine = [lot for lot in self.lots if lot.component == component]
        return tuple(sorted(mine, key=lambda lot: (why_not_free(lot) != "", lot.code)))

    @property
    def leads(self) -> tuple[Person, ...]:
        """Who may start a run."""
        return tuple(person for person in self.people if person.role == LEAD_ROLE)


@dataclass(frozen=True, slots=True)
class Draft:
    """A run as far as it is chosen."""

    product: Product | None = None
    lots: tuple[str, ...] = ()
    lead: str = ""
    operator: str = ""
    order: str = ""
    """Digits of the order; empty for an open run."""


def with_product(draft: Draft, product: Product) -> Draft:
    """Choose a product; lots of another product are not carried over."""
    if draft.product == product:
        return draft
    return replace(draft, product=product, lots=())


def with_lot(draft: Draft, code: str, offer: LeadOffer) -> tuple[Draft, str]:
    """Add a lot, or take it off again; returns the draft and why it was refused, if it was."""
    if draft.product is None:
        return draft, "choose the product first, then its lots"
    if code in draft.lots:
        return replace(draft, lots=tuple(lot for lot in draft.lots if lot != code)), ""
    lot = next((lot for lot in offer.lots if lot.code == code), None)
    if lot is None:
        return draft, f"lot {code} is not known: receive it first"
    components = [component.code for component in draft.product.components]
    if lot.component not in components:
        allowed = ", ".join(components)
        return draft, (
            f"lot {code} is {lot.component}, which {draft.product.name} does not contain: "
            f"allowed are {allowed}"
        )
    refusal = why_not_free(lot)
    if refusal:
        return draft, f"lot {code} is {refusal}"
    return replace(draft, lots=(*draft.lots, code)), ""


def lacking(draft: Draft, offer: LeadOffer) -> str:
    """What must still be chosen, as one sentence; empty when the line may be asked."""
    if draft.product is None:
        return "choose a product"
    by_code = {lot.code: lot for lot in offer.lots}
    chosen = {by_code[code].component for code in draft.lots if code in by_code}
    for component in draft.product.components:
        if component.code not in chosen:
            return f"choose a lot of {component.name}"
    if not draft.lead:
        return "say who leads"
    if not draft.operator:
        return "say who is on the scale"
    return ""


def choice(draft: Draft) -> RunChoice:
    """Return what the line is asked for; only for a draft that lacks nothing."""
    assert draft.product is not None
    return RunChoice(
        product=draft.product.code,
        version=draft.product.version,
        lots=draft.lots,
        lead=draft.lead,
        operator=draft.operator,
        order_size=int(draft.order) if draft.order else None,
    )
