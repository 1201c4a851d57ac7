"""Random payloads of every symbology through zxing-cpp and a second reader.

`python -m tests.campaigns label-symbols --full` takes 3,000 of each kind; the short form, 300,
runs with the tests. The second readers, libzbar and libdmtx, share no code with zxing-cpp nor with
the encoders; they report bytes but no symbology identifier.
"""

import datetime
import random
import shutil
import tempfile
import time
from collections.abc import Callable
from decimal import Decimal
from pathlib import Path

from labels.catch_weight import COUNTRIES, catch_weight_number
from labels.digital_link import read_digital_link
from labels.gs1 import Element, check_pairs, read_elements
from labels.gs1_components import CSET_82
from labels.gs1_dates import date_value
from labels.gs1_digits import check_digit, sscc
from labels.linear import ean_13, gs1_128, upc_a
from labels.matrix import digital_link_qr, gs1_data_matrix
from labels.symbol import Symbol
from tests.labels.pictures import read, read_by_second

SHORT, FULL = 300, 3000
SEED = 20261129
BATCH = 300  # pictures a second reader takes at once
SIGNS = sorted(CSET_82)


def _code(chance: random.Random, longest: int = 20) -> str:
    return "".join(chance.choices(SIGNS, k=chance.randint(1, longest)))


def _digits(chance: random.Random, count: int) -> str:
    return "".join(chance.choices("0123456789", k=count))


def _keyed(chance: random.Random, count: int) -> str:
    payload = _digits(chance, count - 1)
    return payload + check_digit(payload)


def _item(chance: random.Random) -> tuple[Element, ...]:
    gtin = "0" + _keyed(chance, 13)
    day = datetime.date(2026, 1, 1) + datetime.timedelta(days=chance.randrange(3650))
    row = [Element("01", gtin), Element("17", date_value(day)), Element("10", _code(chance))]
    if chance.random() < 0.5:
        row.append(Element("21", _code(chance)))
    if chance.random() < 0.3:
        row.insert(1, Element(f"310{chance.randrange(6)}", _digits(chance, 6)))
    check_pairs(row)
    return tuple(row)


def _data_matrix(chance: random.Random) -> Symbol:
    symbol = gs1_data_matrix(_item(chance))
    assert read_elements(symbol.expected_bytes.decode("ascii")) == symbol.elements
    return symbol


def _linear(chance: random.Random) -> Symbol:
    lot, serial = Element("10", _code(chance)), Element("21", _code(chance))
    return gs1_128(chance.choice([(lot,), (lot, serial), _item(chance)[:2]]))


def _link(chance: random.Random) -> Symbol:
    symbol = digital_link_qr("https://id.example.org", _item(chance))
    assert set(read_digital_link(symbol.hri)) == set(symbol.elements)
    return symbol


def _catch_weight(chance: random.Random) -> Symbol:
    country = chance.choice(sorted(COUNTRIES))
    prefix = chance.choice(sorted(COUNTRIES[country]))
    pattern = COUNTRIES[country][prefix]
    value = Decimal(_digits(chance, pattern.value)).scaleb(-pattern.decimals)
    return ean_13(catch_weight_number(country, prefix, _digits(chance, pattern.item), value))


def _sscc(chance: random.Random) -> Symbol:
    number = sscc(chance.randrange(10), "952" + _digits(chance, 4), chance.randrange(10**9))
    return gs1_128((Element("00", number),))


KINDS: dict[str, tuple[Callable[[random.Random], Symbol], str]] = {
    "GS1-128": (_linear, "zbarimg"),
    "SSCC": (_sscc, "zbarimg"),
    "GS1 DataMatrix": (_data_matrix, "dmtxread"),
    "Digital Link in QR": (_link, "zbarimg"),
    "EAN-13": (lambda chance: ean_13(_keyed(chance, 13)), "zbarimg"),
    "UPC-A": (lambda chance: upc_a(_keyed(chance, 12)), "zbarimg"),
    "catch weight": (_catch_weight, "zbarimg"),
}


def symbols(kind: str, count: int) -> list[Symbol]:
    """Return `count` random symbols of one kind, always the same ones."""
    chance = random.Random(f"{SEED} {kind}")
    make, _ = KINDS[kind]
    return [make(chance) for _ in range(count)]


def wrong_by_first(batch: list[Symbol]) -> list[str]:
    """Return what zxing-cpp reads otherwise, identifier or bytes."""
    return [
        f"{symbol.hri}: {got}"
        for symbol in batch
        if (got := read(symbol)) != (symbol.identifier, symbol.expected_bytes)
    ]


def wrong_by_second(kind: str, batch: list[Symbol], folder: Path, tool: str) -> list[str]:
    """Return what the second reader reads otherwise or not at all."""
    wanted = [symbol.expected_bytes for symbol in batch]
    found = read_by_second(batch, folder, tool)
    if len(found) != len(wanted):
        return [f"{kind}: {len(wanted)} symbols, {len(found)} read by {tool}"]
    return [f"{one!r}: {other!r}" for one, other in zip(wanted, found, strict=True) if one != other]


def run(full: bool) -> int:
    """Read every kind with both readers; print figures; return the number of faults."""
    faults: list[str] = []
    for kind, (_, name) in KINDS.items():
        started = time.monotonic()
        rows = symbols(kind, FULL if full else SHORT)
        wrong = wrong_by_first(rows)
        tool = shutil.which(name)
        second = f"not read by {name}, which is not installed"
        if tool is not None:
            with tempfile.TemporaryDirectory() as folder:
                for start in range(0, len(rows), BATCH):
                    batch = rows[start : start + BATCH]
                    wrong += wrong_by_second(kind, batch, Path(folder), tool)
            second = f"and by {name}"
        seconds = time.monotonic() - started
        print(f"{kind}: {len(rows)} by zxing-cpp {second}, {len(wrong)} wrong, {seconds:.0f} s")
        faults += wrong
    print(*faults[:20], sep="\n")
    return len(faults)
