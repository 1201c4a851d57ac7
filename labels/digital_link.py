"""GS1 Digital Link: the same elements as a web address.

Source: GS1 Digital Link Standard, URI Syntax 1.2 (key of 14 digits in the path, its qualifiers in
a fixed order, attributes as a query, percent-encoding); keys, qualifiers and attributes by the GS1
Barcode Syntax Dictionary (`labels.gs1_table`).
"""

import re
from collections.abc import Iterable
from urllib.parse import quote, unquote

from labels.errors import LabelError, shown
from labels.gs1 import Element, check_pairs, readable
from labels.gs1_table import IDENTIFIERS, LINK_KEYS

STEM = re.compile(r"https?://[A-Za-z0-9.-]+(:[0-9]+)?(/[A-Za-z0-9._~-]+)*", re.ASCII)
WHERE = "Digital Link"


def digital_link(stem: str, elements: Iterable[Element]) -> str:
    """Return elements as a Digital Link, every reserved character percent-encoded.

    Args:
        stem: Scheme, host and path it begins with, no '/' at the end.
        elements: One key, its qualifiers and any attributes, in any order.

    Raises:
        LabelError: The stem is no address, there is no key or a second one, or an element can be
            neither qualifier nor attribute.
    """
    if not STEM.fullmatch(stem):
        raise LabelError(
            f"{WHERE} stem",
            f"{shown(stem)}; write it like 'https://id.example.org', no '/' at the end",
        )
    row = tuple(elements)
    check_pairs(row)
    values = {element.ai: element.value for element in row}
    key = next((ai for ai in LINK_KEYS if ai in values), None)
    if key is None:
        raise LabelError(
            WHERE, f"{readable(row)} has no key; allowed: ({') ('.join(LINK_KEYS)}) and qualifiers"
        )
    path = [key, *(ai for ai in LINK_KEYS[key] if ai in values)]
    query = [ai for ai in values if ai not in path]
    for ai in query:
        if not IDENTIFIERS[ai].attribute:
            raise LabelError(
                WHERE, f"({ai}) {IDENTIFIERS[ai].title} cannot stand in a link with key ({key})"
            )
    _check_lot_place(key, query)
    address = stem + "".join(f"/{ai}/{quote(values[ai], safe='')}" for ai in path)
    attributes = "&".join(f"{ai}={quote(values[ai], safe='')}" for ai in query)
    return f"{address}?{attributes}" if attributes else address


def _check_lot_place(key: str, query: Iterable[str]) -> None:
    """Refuse a qualifier of this key that stands as an attribute."""
    for ai in query:
        if ai in LINK_KEYS[key]:
            raise LabelError(WHERE, f"({ai}) belongs in the path, as a qualifier of ({key})")


def read_digital_link(address: str) -> tuple[Element, ...]:
    """Take a Digital Link apart again: key, qualifiers, then attributes.

    Attributes whose name is no number are not GS1's and are passed over.

    Raises:
        LabelError: No key in the path, qualifiers out of order, or a value its format refuses.
    """
    head, _, query = address.partition("#")[0].partition("?")
    match = re.match(r"https?://[^/]+/", head)
    if match is None:
        raise LabelError(WHERE, f"{address[:60]!r} is no web address")
    segments = head[match.end() :].rstrip("/").split("/")
    start = next((n for n in range(len(segments) % 2, len(segments), 2) if _key(segments, n)), None)
    if start is None:
        raise LabelError(
            WHERE, f"{address[:60]!r} has no key ({') ('.join(LINK_KEYS)}) in its path"
        )
    pairs = list(zip(segments[start::2], segments[start + 1 :: 2], strict=True))
    key = pairs[0][0]
    places = [_place(key, ai) for ai, _ in pairs[1:]]
    if places != sorted(set(places)):
        raise LabelError(
            WHERE, f"the qualifiers of ({key}) stand in another order than {LINK_KEYS[key]}"
        )
    found = [Element(ai, unquote(value)) for ai, value in pairs]
    for part in filter(None, re.split("[&;]", query)):
        ai, _, value = part.partition("=")
        if ai.isdecimal():
            _check_lot_place(key, [ai])
            found.append(Element(ai, unquote(value)))
    check_pairs(found)
    return tuple(found)


def _key(segments: list[str], place: int) -> bool:
    return segments[place] in LINK_KEYS


def _place(key: str, ai: str) -> int:
    if ai not in LINK_KEYS[key]:
        raise LabelError(WHERE, f"({ai}) is no qualifier of ({key}); allowed: {LINK_KEYS[key]}")
    return LINK_KEYS[key].index(ai)
