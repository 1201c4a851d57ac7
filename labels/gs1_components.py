"""The parts a GS1 value is made of, and what each is checked for.

Formats are written as in the GS1 Barcode Syntax Dictionary (GS1 AISBL, Apache-2.0):

    N14,csum        fourteen digits, the last a check digit
    X..20           one to twenty of GS1 character set 82
    N6 [N6],yymmdd  six digits, or twelve whose last six are a date

Source of the checks: the dictionary's reference linters (csum, yymmdd, yymmd0, hhmi, hh, mi, ss,
iso3166, iso3166999), restated here.
"""

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from labels.errors import LabelError, shown
from labels.gs1_dates import wrong_date, wrong_time
from labels.gs1_digits import DIGITS, check_digit, describe, has_valid_check_digit

# GenSpecs figure 7.11-1: GS1 AI encodable character set 82. No blank, no '#', no letter beyond A-Z.
CSET_82 = frozenset(
    "!\"%&'()*+,-./0123456789:;<=>?ABCDEFGHIJKLMNOPQRSTUVWXYZ_abcdefghijklmnopqrstuvwxyz"
)
CSET_82_WORDS = (
    "A-Z, a-z, 0-9 and ! \" % & ' ( ) * + , - . / : ; < = > ? _ (GS1 character set 82; no blank)"
)

# ISO 3166-1 numeric codes in use, as the dictionary's linter iso3166 lists them.
_COUNTRY_CODES = """
004 008 010 012 016 020 024 028 031 032 036 040 044 048 050 051 052 056 060 064 068 070 072 074
076 084 086 090 092 096 100 104 108 112 116 120 124 132 136 140 144 148 152 156 158 162 166 170
174 175 178 180 184 188 191 192 196 203 204 208 212 214 218 222 226 231 232 233 234 238 239 242
246 248 250 254 258 260 262 266 268 270 275 276 288 292 296 300 304 308 312 316 320 324 328 332
334 336 340 344 348 352 356 360 364 368 372 376 380 384 388 392 398 400 404 408 410 414 417 418
422 426 428 430 434 438 440 442 446 450 454 458 462 466 470 474 478 480 484 492 496 498 499 500
504 508 512 516 520 524 528 531 533 534 535 540 548 554 558 562 566 570 574 578 580 581 583 584
585 586 591 598 600 604 608 612 616 620 624 626 630 634 638 642 643 646 652 654 659 660 662 663
666 670 674 678 682 686 688 690 694 702 703 704 705 706 710 716 724 728 729 732 740 744 748 752
756 760 762 764 768 772 776 780 784 788 792 795 796 798 800 804 807 818 826 831 832 833 834 840
850 854 858 860 862 876 882 887 894
"""
COUNTRIES = frozenset(_COUNTRY_CODES.split())
SEVERAL_COUNTRIES = "999"  # AI 703n only


def _wrong_key(value: str) -> str:
    if has_valid_check_digit(value):
        return ""
    return f"{shown(value)} ends in {value[-1]}, but its check digit is {check_digit(value[:-1])}"


def _wrong_country(value: str) -> str:
    return "" if value in COUNTRIES else f"{shown(value)} is no numeric country code of ISO 3166-1"


CHECKS: dict[str, Callable[[str], str]] = {
    "": lambda _: "",
    "csum": _wrong_key,
    "yymmdd": lambda value: wrong_date(value, day_00=False),
    "yymmd0": lambda value: wrong_date(value, day_00=True),
    "hhmi": wrong_time,
    "hh": wrong_time,
    "mi": lambda value: wrong_time("00" + value),
    "ss": lambda value: wrong_time("0000" + value),
    "iso3166": _wrong_country,
    "iso3166999": lambda value: "" if value == SEVERAL_COUNTRIES else _wrong_country(value),
}
NOTATION = re.compile(r"(\[(?=[^],]+\]))?([NX])(\.\.)?([0-9]+)(?(1)\])(?:,([a-z0-9]+))?")


@dataclass(frozen=True, slots=True)
class Component:
    """One part of a value.

    Attributes:
        numeric: True for digits only, False for character set 82.
        shortest: Fewest characters.
        longest: Most characters.
        check: Name of its check in `CHECKS`.
        optional: True when the value may end before it.
    """

    numeric: bool
    shortest: int
    longest: int
    check: str
    optional: bool


def components(notation: str) -> tuple[Component, ...]:
    """Return the components a format notation names."""
    found = []
    for part in notation.split():
        match = NOTATION.fullmatch(part)
        if match is None or (match[5] or "") not in CHECKS:
            raise ValueError(f"{part!r} in {notation!r} is no component")
        longest = int(match[4])
        shortest = 1 if match[3] else longest
        found.append(
            Component(match[2] == "N", shortest, longest, match[5] or "", match[1] is not None)
        )
    return tuple(found)


def lengths(parts: Sequence[Component]) -> tuple[range, ...]:
    """Return the lengths a value may have, a range for each component it may end with."""
    found = []
    shortest = longest = 0
    for number, part in enumerate(parts):
        shortest += part.shortest
        longest += part.longest
        if number + 1 == len(parts) or parts[number + 1].optional:
            found.append(range(shortest, longest + 1))
    return tuple(found)


def check_value(where: str, value: str, parts: Sequence[Component]) -> None:
    """Check a value against its components.

    Raises:
        LabelError: Wrong length, character, check digit, date, time or country.
    """
    allowed = lengths(parts)
    if not any(len(value) in span for span in allowed):
        words = " or ".join(
            str(span[0]) if len(span) == 1 else f"{span[0]} to {span[-1]}" for span in allowed
        )
        raise LabelError(where, f"{shown(value)} has {len(value)} characters; allowed: {words}")
    start = 0
    for part in parts:
        piece = value[start : start + part.longest]
        if piece:
            _check_characters(where, value, start, piece, numeric=part.numeric)
            if wrong := CHECKS[part.check](piece):
                raise LabelError(where, wrong)
        start += part.longest


def _check_characters(where: str, value: str, start: int, piece: str, *, numeric: bool) -> None:
    allowed, words = (DIGITS, "digits 0-9") if numeric else (CSET_82, CSET_82_WORDS)
    for position, character in enumerate(piece, start=start + 1):
        if character not in allowed:
            raise LabelError(
                where,
                f"{shown(value)} has {describe(character)} at place {position}; allowed: {words}",
            )
