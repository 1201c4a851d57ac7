"""Keeps a chart as files: a picture, a drawing and its values."""

from __future__ import annotations

import csv
import io
from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QRectF, QSize
from PySide6.QtGui import QColor, QImage, QImageWriter, QPainter
from PySide6.QtSvg import QSvgGenerator

from station.screens.widgets.chart import Chart, Table

FORMS = ("png", "svg", "csv")
_FINER = 2
"""A picture has so many times the screen's pixels, for paper."""


def keep(chart: Chart, folder: Path, stem: str, title: str) -> tuple[Path, ...]:
    """Write a chart as PNG, SVG and CSV; returns the files.

    Args:
        chart: as it is shown.
        folder: made where it is missing.
        stem: name of the files without their ending.
        title: what the drawing says it is.

    Raises:
        OSError: a file cannot be written.
    """
    folder.mkdir(parents=True, exist_ok=True)
    contents = {
        "png": _picture(chart),
        "svg": _drawing(chart, title),
        "csv": _values(chart.table()),
    }
    files = []
    for form in FORMS:
        path = folder / f"{stem}.{form}"
        part = path.with_suffix(f".{form}.part")
        part.write_bytes(contents[form])
        part.replace(path)
        files.append(path)
    return tuple(files)


def _picture(chart: Chart) -> bytes:
    image = QImage(chart.size() * _FINER, QImage.Format.Format_RGB32)
    image.setDevicePixelRatio(_FINER)
    image.fill(QColor(chart.colours.paper))
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    chart.paint_on(painter, QRectF(0, 0, chart.width(), chart.height()))
    painter.end()
    kept = QByteArray()
    buffer = QBuffer(kept)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    if not QImageWriter(buffer, QByteArray(b"png")).write(image):
        raise OSError("the picture of the chart cannot be drawn")
    buffer.close()
    return bytes(kept.data())


def _drawing(chart: Chart, title: str) -> bytes:
    kept = QByteArray()
    buffer = QBuffer(kept)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    box = QRectF(0, 0, chart.width(), chart.height())
    drawing = QSvgGenerator()
    drawing.setOutputDevice(buffer)
    drawing.setTitle(title)
    drawing.setSize(QSize(chart.width(), chart.height()))
    drawing.setViewBox(box)
    painter = QPainter(drawing)
    chart.paint_on(painter, box)
    painter.end()
    buffer.close()
    return bytes(kept.data())


def _values(table: Table) -> bytes:
    text = io.StringIO()
    writer = csv.writer(text)
    writer.writerow(table.columns)
    writer.writerows(table.rows)
    return text.getvalue().encode("utf-8")
