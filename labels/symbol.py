"""Bar code symbols as modules; a symbol is built once and then only drawn.

`labels.linear` and `labels.matrix` build them. Whoever encoded it, every symbol is read back from
the finished page before release (`labels.readback`).
"""

import re
from dataclasses import dataclass

from labels.gs1 import Element

BAR = re.compile("1+")
GUARD_MODULES = 5  # guard bars of EAN and UPC are this much longer, GenSpecs 5.2.3
QUIET_ZONE_MODULES = 10  # each side of GS1-128, GenSpecs 5.4.4


@dataclass(frozen=True, slots=True)
class Symbol:
    """One symbol, linear or matrix.

    Attributes:
        rows: Rows of modules, '1' dark and '0' light, no quiet zones; a linear symbol has one.
        hri: Human readable interpretation.
        expected_bytes: What a reader must transmit after the symbology identifier.
        identifier: Symbology identifier a reader must report (ISO/IEC 15424).
        elements: The elements carried.
        quiet: Modules that must stay light left and right; for a matrix also above and below.
        guards: Positions, among the bars, of those drawn longer than the others (EAN/UPC).
    """

    rows: tuple[str, ...]
    hri: str
    expected_bytes: bytes
    identifier: str
    elements: tuple[Element, ...]
    quiet: tuple[int, int] = (QUIET_ZONE_MODULES, QUIET_ZONE_MODULES)
    guards: frozenset[int] = frozenset()

    @property
    def modules(self) -> str:
        """The modules of a linear symbol; of a matrix, those of its first row."""
        return self.rows[0]

    @property
    def is_matrix(self) -> bool:
        """True for a symbol of several rows."""
        return len(self.rows) > 1

    @property
    def width_with_quiet_zones(self) -> int:
        """Width in modules, both quiet zones counted."""
        return len(self.modules) + sum(self.quiet)

    @property
    def bars(self) -> tuple[tuple[int, int], ...]:
        """Each bar of the first row as (first module, width in modules)."""
        return tuple((bar.start(), bar.end() - bar.start()) for bar in BAR.finditer(self.modules))
