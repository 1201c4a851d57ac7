"""What the first screen does without; it is loaded in the quiet after it.

Whatever is named here is imported inside the function that needs it, never at the head of a module
that a start loads. A test starts the station and holds it to that.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from importlib import import_module

LATER = (
    *("numpy", "reportlab.pdfbase.ttfonts", "labels.raster"),
    *("labels.linear", "labels.matrix", "labels.release"),
    *("station.reports.label_facts", "station.reports.unit_label"),
    *("station.screens.change", "station.screens.lots", "station.screens.labels"),
    *("station.screens.checks", "station.screens.alarms"),
    *("pyqtgraph.Qt", "pyqtgraph", "station.screens.numbers"),
    *("station.app.quality_desks", "station.screens.quality"),
    *("station.app.trace_desk", "station.screens.trace", "station.screens.shipping"),
    *("station.screens.service", "reportlab.platypus", "xlsxwriter"),
    *("station.app.manager_desk", "station.screens.manager"),
)
"""Modules, in the order they are wanted: for a label before the first bag, then for each door."""


def pieces() -> tuple[Callable[[], object], ...]:
    """What loads them, a piece of work for each."""
    return tuple(partial(import_module, one) for one in LATER)
