"""Labels as the station's desks draw them: what draws them is loaded with the first.

Typefaces, dots and bar codes with all they stand on take longer to load than the record takes to
open, and nobody waits for paper at a start. So nothing else that a start loads may import them;
:mod:`station.app.later` does once the first screen is there.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from station.config.printer import PrinterSettings
from station.core.pack import PackRecord
from station.core.run import Run

if TYPE_CHECKING:
    from drivers.printer.pwg_raster import Bitmap
    from labels.content import PackLabel
    from labels.frames import Framed
    from labels.pdf import Label, LabelDrawer
    from labels.release import ReleasedLabel
    from station.core.shipping import Case, Pallet

_MM_PER_INCH = 25.4
_DARK = 128


def release(drawer: LabelDrawer, label: Label) -> ReleasedLabel:
    """Draw a label and read it back; see :func:`labels.release.release`."""
    from labels.release import release as released

    return released(drawer, label)


def pack_label(serial: str, run: Run, packer: str, copy_mark: str = "") -> PackLabel:
    """The label of a bag; see :func:`station.reports.label_facts.pack_label`."""
    from station.reports.label_facts import pack_label as label

    return label(serial, run, packer, copy_mark)


def specimen_label(run: Run, site: str, station: str, packer: str) -> PackLabel:
    """The specimen of a run's label, with a serial no bag can have."""
    from station.reports.label_facts import specimen_label as label

    return label(run, site, station, packer)


def reject_ticket(record: PackRecord, run: Run, reason: str) -> Framed:
    """The ticket of a bag that was set aside."""
    from station.reports.label_facts import reject_ticket as ticket

    return ticket(record, run, reason).framed()


def unit_label(
    unit: Case | Pallet, packer: str, copy: int, dots_per_mm: int
) -> tuple[LabelDrawer, Framed]:
    """The label of a case or pallet, and what draws it."""
    from station.reports.unit_label import unit_label as label

    return label(unit, packer, copy, dots_per_mm)


def drawers(printer: PrinterSettings) -> Callable[[Run], LabelDrawer]:
    """The drawer of the label of a run; the first-off and every scan expect the very same label."""

    def drawer_for(run: Run) -> LabelDrawer:
        from labels.pdf import drawer_of
        from station.reports.label_facts import design_of

        return drawer_of(design_of(run.product), printer.dots_per_mm)

    return drawer_for


def ticket_drawers(printer: PrinterSettings) -> Callable[[Run], LabelDrawer]:
    """The drawer of the tickets of a run's rejects, on the stock its labels are printed on."""

    def drawer_for(run: Run) -> LabelDrawer:
        from labels.frame_designs import REJECT_60_BY_40, REJECT_100_BY_60
        from labels.pdf import drawer_of
        from station.reports.label_facts import design_of

        wide = design_of(run.product).width >= REJECT_100_BY_60.width
        return drawer_of(REJECT_100_BY_60 if wide else REJECT_60_BY_40, printer.dots_per_mm)

    return drawer_for


def dots(pdf: bytes, per_inch: int) -> Bitmap:
    """Return the dots of a label for a printer that takes no PDF; see drivers.printer.ipp_document.

    Args:
        pdf: the label.
        per_inch: as the printer states it; 203 stands for 8 dots a millimetre.
    """
    import numpy as np

    from drivers.printer.pwg_raster import Bitmap
    from labels.raster import rasterise

    page = rasterise(pdf, round(per_inch / _MM_PER_INCH))
    rows, columns = page.shape
    return Bitmap(columns, rows, np.packbits(page < _DARK, axis=1).tobytes())
