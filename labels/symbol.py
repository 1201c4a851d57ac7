"""Bar code symbols as rows of modules; a symbol is built once and then only drawn.

python-barcode encodes (GS1-128, ISO/IEC 15417). Its objects change while they build, a second
build gives another symbol, and it takes any character as data, U+00F1 even as FNC1. So elements
are checked in `labels.gs1` first, each object builds exactly once, and every symbol is read back
from the finished page before release (`labels.readback`).
"""

from collections.abc import Iterable
from dataclasses import dataclass

from barcode.codex import Gs1_128

from labels.gs1 import SEPARATOR, Element, element_string, readable

QUIET_ZONE_MODULES = 10  # each side, GenSpecs 5.4.4
GS1_128_IDENTIFIER = "]C1"  # ISO/IEC 15424; plain Code 128 would read ]C0
LONGEST_MM = 165.10  # GS1-128 with its quiet zones, GenSpecs 5.4


@dataclass(frozen=True, slots=True)
class Symbol:
    """One linear symbol.

    Attributes:
        modules: '1' for a bar module, '0' for a space module; no quiet zones.
        hri: Human readable interpretation.
        expected_bytes: What a reader must transmit after the symbology identifier.
        identifier: Symbology identifier a reader must report.
        elements: The elements carried.
    """

    modules: str
    hri: str
    expected_bytes: bytes
    identifier: str
    elements: tuple[Element, ...]

    @property
    def width_with_quiet_zones(self) -> int:
        """Width in modules, both quiet zones counted."""
        return len(self.modules) + 2 * QUIET_ZONE_MODULES

    @property
    def bars(self) -> tuple[tuple[int, int], ...]:
        """Each bar as (first module, width in modules)."""
        found = []
        start = 0
        while (start := self.modules.find("1", start)) >= 0:
            end = self.modules.find("0", start)
            end = len(self.modules) if end < 0 else end
            found.append((start, end - start))
            start = end
        return tuple(found)


def gs1_128(elements: Iterable[Element]) -> Symbol:
    """Encode elements as one GS1-128 symbol.

    Raises:
        LabelError: The elements do not make a valid element string.
    """
    row = tuple(elements)
    data = element_string(row)
    encoder = Gs1_128(data.replace(SEPARATOR, Gs1_128.FNC1_CHAR))
    (modules,) = encoder.build()
    return Symbol(modules, readable(row), data.encode("ascii"), GS1_128_IDENTIFIER, row)
