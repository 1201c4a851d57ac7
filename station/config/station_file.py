"""``station.toml``: one station, its scale, printer and line."""

from __future__ import annotations

from datetime import time
from pathlib import Path

from station.config.check import check_keys, check_table
from station.config.faults import Faults
from station.config.packhouse import (
    PrinterSettings,
    ScalePort,
    ScaleSettings,
    StationSettings,
    Timing,
)
from station.config.settings import (
    LabelTable,
    PrinterTable,
    ScaleTable,
    SiteTable,
    StationTable,
    TimingTable,
)
from station.config.toml_file import read_toml
from station.core.mass import Unit

FILE = "station.toml"
_KEYS = ("site", "station", "scale", "printer", "label", "timing")
_NOON = time(12)


def read_station(faults: Faults) -> StationSettings | None:
    """Return the station's settings, or None after noting what is wrong with them.

    A home that is no absolute path lies beside the settings; ``~`` is the user's own folder. A
    printer's folder that is no absolute path lies in the home.
    """
    table = read_toml(FILE, faults)
    if table is None:
        return None
    check_keys(table, _KEYS, "[{}]", FILE, faults)
    site = check_table(SiteTable, table, "site", FILE, faults)
    station = check_table(StationTable, table, "station", FILE, faults)
    scale = check_table(ScaleTable, table, "scale", FILE, faults)
    printer = check_table(PrinterTable, table, "printer", FILE, faults)
    label = check_table(LabelTable, table, "label", FILE, faults)
    timing = check_table(TimingTable, table, "timing", FILE, faults)
    if site is not None:
        _check_cut_off(site.production_day_starts, faults)
    if scale is not None:
        _check_scale(scale, faults)
    if timing is not None and timing.stale_ms < timing.dwell_ms:
        why = f"{timing.stale_ms} is shorter than dwell_ms {timing.dwell_ms}"
        faults.add(FILE, "timing.stale_ms", why, f"{timing.dwell_ms} or more")
    if not (site and station and scale and printer and label and timing):
        return None
    home = _folder(station.home, faults.folder)
    return StationSettings(
        site=site.code,
        site_name=site.name,
        station=station.code,
        line=station.line,
        zone=site.time_zone,
        cut_off=site.production_day_starts,
        home=home,
        market=label.market,
        packer=label.packer,
        scale=_scale(scale),
        printer=PrinterSettings(printer.kind, _folder(printer.folder, home)),
        timing=Timing(timing.dwell_ms, timing.stale_ms),
    )


def _check_cut_off(at: time, faults: Faults) -> None:
    if at >= _NOON:
        key = "site.production_day_starts"
        faults.add(FILE, key, f"{at} is not before noon", "00:00:00 to 11:59:59")


def _check_scale(scale: ScaleTable, faults: Faults) -> None:
    for key, mass in (("interval", scale.interval), ("capacity", scale.capacity)):
        if mass.unit != scale.unit:
            why = f'"{mass}" is in another unit than the scale'
            faults.add(FILE, f"scale.{key}", why, f"a mass in {scale.unit}, the scale's unit")
    if scale.capacity <= scale.interval:
        why = f'"{scale.capacity}" is not above the interval {scale.interval}'
        faults.add(FILE, "scale.capacity", why, "the greatest load of the scale")


def _scale(table: ScaleTable) -> ScaleSettings:
    port = table.port
    return ScaleSettings(
        id=table.id,
        protocol=table.protocol,
        port=ScalePort(port.url, port.baud, port.bits, port.parity, port.stop_bits),
        unit=Unit(table.unit),
        interval=table.interval,
        capacity=table.capacity,
    )


def _folder(text: str, beside: Path) -> Path:
    path = Path(text)
    path = path.expanduser() if text.startswith("~") else path
    return (beside / path).absolute()
