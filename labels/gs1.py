"""GS1 element strings: the data a GS1 bar code carries, checked before anything is drawn.

Sources: GS1 General Specifications (section numbers beside each rule) and the GS1 Barcode Syntax
Dictionary (`labels.gs1_table`). The bar code writers in use check nothing of this, so every value
passes here first.

An element string in a symbol, FNC1 written as ␝:

    01 09521234543213 17 261129 10 B261126-2 ␝ 21 A1-000123
"""

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from labels.errors import LabelError
from labels.gs1_components import check_value
from labels.gs1_table import IDENTIFIERS, NOT_PRINTED, Identifier

SEPARATOR = "\x1d"  # how a reader transmits FNC1 between elements (GenSpecs 7.8.6)
MOST_CHARACTERS = 48  # data characters of one GS1-128 symbol, separators counted (GenSpecs 5.4)
MOST_IN_MATRIX = 2335  # of one GS1 DataMatrix symbol (ISO/IEC 16022: 144 x 144, less FNC1)

# A GTIN of a variable measure trade item begins with 9 and stands with its measure (GenSpecs 4.13,
# from memory).
VARIABLE_MEASURE_INDICATOR = "9"
MEASURES = ("30", "31nn", "32nn", "35nn", "36nn")


@dataclass(frozen=True, slots=True)
class Element:
    """One application identifier with its value, checked against its format.

    Raises:
        LabelError: Unknown identifier, wrong length, character, check digit or date.
    """

    ai: str
    value: str

    def __post_init__(self) -> None:
        rule = IDENTIFIERS.get(self.ai)
        if rule is None:
            raise LabelError(f"Application identifier ({self.ai})", _why_not(self.ai))
        check_value(f"({self.ai}) {rule.title}", self.value, rule.parts)

    @property
    def rule(self) -> Identifier:
        """The format this element was checked against."""
        return IDENTIFIERS[self.ai]


def _why_not(ai: str) -> str:
    title = NOT_PRINTED.get(ai)
    if title is None:
        return "GS1 has no such identifier; check the digits in brackets"
    return f"{title} is none a food packer's labels carry; see labels.gs1_table for those that are"


def element_string(elements: Iterable[Element], most: int = MOST_CHARACTERS) -> str:
    """Join elements into the data of one symbol, with a separator only where one is due.

    GenSpecs 7.8: a separator follows an element without predefined length unless it is the last.

    Args:
        elements: What the symbol carries.
        most: Most data characters of the symbol.

    Raises:
        LabelError: No element, an identifier twice, or more than `most` data characters.
    """
    row = tuple(elements)
    if not row:
        raise LabelError("Bar code", "no element to encode; give at least one")
    names = [element.ai for element in row]
    if len(set(names)) < len(names):
        raise LabelError("Bar code", f"an application identifier stands twice in {names}")
    parts = []
    for place, element in enumerate(row):
        due = not element.rule.predefined and place < len(row) - 1
        parts.append(element.ai + element.value + (SEPARATOR if due else ""))
    text = "".join(parts)
    if len(text) > most:
        raise LabelError(
            "Bar code", f"{readable(row)} needs {len(text)} data characters; allowed: {most}"
        )
    return text


def readable(elements: Iterable[Element]) -> str:
    """Return the human readable interpretation, identifiers in brackets (GenSpecs 4.14)."""
    return "".join(f"({element.ai}){element.value}" for element in elements)


def read_elements(data: str) -> tuple[Element, ...]:
    """Take transmitted data apart again, without its symbology identifier.

    Raises:
        LabelError: An unknown identifier, or a value its format does not allow. A variable element
            that lost its separator usually shows here as a value too long.
    """
    elements = []
    rest = data
    while rest:
        ai = next((rest[:size] for size in (2, 3, 4) if rest[:size] in IDENTIFIERS), None)
        if ai is None:
            raise LabelError("Scanned data", f"no known application identifier at {rest[:12]!r}")
        rest = rest[len(ai) :]
        rule = IDENTIFIERS[ai]
        if rule.predefined:
            length = sum(part.longest for part in rule.parts)
            value, rest = rest[:length], rest[length:]
            rest = rest.removeprefix(SEPARATOR)  # GenSpecs 7.8.5: tolerated after a fixed length
        else:
            value, _, rest = rest.partition(SEPARATOR)
        elements.append(Element(ai, value))
    return tuple(elements)


def check_pairs(elements: Iterable[Element]) -> None:
    """Check that elements on one item may stand together (GenSpecs 4.13).

    Args:
        elements: All elements of all symbols on the item; the same one may stand in several.

    Raises:
        LabelError: A required partner is missing, a forbidden one present, or one identifier has
            two values.
    """
    present: dict[str, str] = {}
    for element in elements:
        if present.setdefault(element.ai, element.value) != element.value:
            raise LabelError(
                f"({element.ai}) {element.rule.title}",
                f"stands for {present[element.ai]!r} and for {element.value!r} on one item",
            )
    for ai in present:
        _check_partners(ai, present)
    for ai in ("01", "02"):
        variable = present.get(ai, "").startswith(VARIABLE_MEASURE_INDICATOR)
        if variable and not any(_present(measure, present) for measure in MEASURES):
            raise LabelError(
                f"({ai}) {IDENTIFIERS[ai].title}",
                f"{present[ai]!r} begins with 9, a variable measure, and must stand with its "
                "measure: (310n) or (320n) weight, or (30) count",
            )


def _check_partners(ai: str, present: Mapping[str, str]) -> None:
    rule = IDENTIFIERS[ai]
    where = f"({ai}) {rule.title}"
    if rule.needs and not any(
        all(_present(pattern, present) for pattern in group.split("+")) for group in rule.needs
    ):
        groups = " or ".join(f"({group.replace('+', ') and (')})" for group in rule.needs)
        raise LabelError(where, f"must stand with {groups} on the same item")
    for pattern in rule.excludes:
        for other in present:
            if other != ai and _matches(pattern, other):
                raise LabelError(where, f"must not stand with ({other}) on one item")


def _present(pattern: str, present: Iterable[str]) -> bool:
    return any(_matches(pattern, ai) for ai in present)


def _matches(pattern: str, ai: str) -> bool:
    return re.fullmatch(pattern.replace("n", "[0-9]"), ai) is not None
