"""``station.toml``: one station, its scale, printer and line."""

from __future__ import annotations

from datetime import time

from drivers.errors import DescriptionError
from drivers.frames.description import Description
from drivers.frames.description_file import load_description
from labels.design import DESIGNS
from station.config.check import check_keys, check_table
from station.config.faults import Faults
from station.config.fill_rules_file import KEY as FILL
from station.config.fill_rules_file import read_fill
from station.config.gates_file import KEYS as GATES
from station.config.gates_file import read_checks, read_tare
from station.config.label_checks_file import KEY as LABEL_CHECKS
from station.config.label_checks_file import read_label_checks
from station.config.lot_rules_file import KEY as LOTS
from station.config.lot_rules_file import read_lot_rules
from station.config.packhouse import (
    LabelSettings,
    ScalePort,
    ScaleSettings,
    StationSettings,
    Timing,
)
from station.config.people_rules_file import KEY as PEOPLE
from station.config.people_rules_file import read_people_rules
from station.config.printer_file import check_printer, folder_of, printer_settings
from station.config.quality_file import KEY as QUALITY
from station.config.quality_file import read_quality
from station.config.record_file import BACKUP, DISK, RECORD, read_record
from station.config.scanner_file import KEY as SCANNER
from station.config.scanner_file import read_scanner
from station.config.screen_file import KEY as SCREEN
from station.config.screen_file import read_screen
from station.config.settings import (
    LabelTable,
    PrinterTable,
    ScaleTable,
    SiteTable,
    StationTable,
    TimingTable,
)
from station.config.sync_file import KEY as SYNC
from station.config.sync_file import read_sync
from station.config.toml_file import read_toml
from station.core.mass import Unit
from station.core.metrology.instrument_errors import ErrorSystem, ScaleClass
from station.core.training import reserved

FILE = "station.toml"
_KEYS = ("site", "station", "scale", "printer", "label", "timing", *GATES, LABEL_CHECKS)
_NOON = time(12)


def read_station(faults: Faults) -> StationSettings | None:
    """Return the station's settings, or None after noting what is wrong with them.

    A home that is no absolute path lies beside the settings; ``~`` is the user's own folder. A
    printer's folder that is no absolute path lies in the home.
    """
    table = read_toml(FILE, faults)
    if table is None:
        return None
    optional = (FILL, LOTS, PEOPLE, SCANNER, SYNC, RECORD, BACKUP, DISK, SCREEN, QUALITY)
    may_be = tuple(key for key in optional if key in table)
    check_keys(table, (*_KEYS, *may_be), "[{}]", FILE, faults)
    site = check_table(SiteTable, table, "site", FILE, faults)
    station = check_table(StationTable, table, "station", FILE, faults)
    scale = check_table(ScaleTable, table, "scale", FILE, faults)
    printer = check_table(PrinterTable, table, "printer", FILE, faults)
    label = check_table(LabelTable, table, "label", FILE, faults)
    timing = check_table(TimingTable, table, "timing", FILE, faults)
    checks = read_checks(table, scale.capacity if scale else None, FILE, faults)
    tare = read_tare(table, FILE, faults)
    label_checks = read_label_checks(table, FILE, faults)
    lots = read_lot_rules(table, FILE, faults)
    people = read_people_rules(table, FILE, faults)
    fill = read_fill(table, FILE, faults)
    scanner = read_scanner(table, FILE, faults)
    sync = read_sync(table, FILE, faults)
    screen = read_screen(table, FILE, faults)
    home = None if station is None else folder_of(station.home, faults.folder)
    record = read_record(table, FILE, home, faults)
    quality = read_quality(table, FILE, faults)
    if site is not None:
        _check_cut_off(site.production_day_starts, faults)
    description = None
    if scale is not None:
        _check_scale(scale, faults)
        description = _description(scale, faults)
    if printer is not None:
        check_printer(printer, FILE, faults)
    if label is not None:
        _check_label(label, faults)
    for key, code in (("code", station.code), ("line", station.line)) if station else ():
        if why := reserved(code):
            faults.add(FILE, f"station.{key}", why, "any other code")
    if timing is not None and timing.stale_ms < timing.dwell_ms:
        why = f"{timing.stale_ms} is shorter than dwell_ms {timing.dwell_ms}"
        faults.add(FILE, "timing.stale_ms", why, f"{timing.dwell_ms} or more")
    if not (site and station and scale and printer and label and timing):
        return None
    if checks is None or tare is None or label_checks is None:
        return None
    if lots is None or people is None or quality is None or fill is None:
        return None
    assert home is not None, "there is a table [station]"
    return StationSettings(
        site=site.code,
        site_name=site.name,
        station=station.code,
        line=station.line,
        zone=site.time_zone,
        cut_off=site.production_day_starts,
        home=home,
        label=LabelSettings(
            market=label.market,
            packer=label.packer,
            design=label.design,
            language=label.language,
            second_language=label.second_language or "",
            link_stem=label.link_stem,
        ),
        scale=_scale(scale, description),
        printer=printer_settings(printer, home),
        timing=Timing(timing.dwell_ms, timing.stale_ms),
        checks=checks,
        tare=tare,
        label_checks=label_checks,
        lots=lots,
        people=people,
        fill=fill,
        scanner=scanner,
        sync=sync,
        record=record,
        screen=screen,
        quality=quality,
    )


def _check_cut_off(at: time, faults: Faults) -> None:
    if at >= _NOON:
        key = "site.production_day_starts"
        faults.add(FILE, key, f"{at} is not before noon", "00:00:00 to 11:59:59")


def _check_label(label: LabelTable, faults: Faults) -> None:
    if label.second_language == label.language:
        why = f'"{label.second_language}" is the language of the label already'
        faults.add(FILE, "label.second_language", why, "another one, or none")
    if label.link_stem and not DESIGNS[label.design].column:
        why = f"the design {label.design!r} has no place for a QR Code"
        having = ", ".join(f'"{one.name}"' for one in DESIGNS.values() if one.column)
        faults.add(FILE, "label.link_stem", why, f"none, or a design among {having}")


def _check_scale(scale: ScaleTable, faults: Faults) -> None:
    for key, mass in (("interval", scale.interval), ("capacity", scale.capacity)):
        if mass.unit != scale.unit:
            why = f'"{mass}" is in another unit than the scale'
            faults.add(FILE, f"scale.{key}", why, f"a mass in {scale.unit}, the scale's unit")
    if scale.capacity <= scale.interval:
        why = f'"{scale.capacity}" is not above the interval {scale.interval}'
        faults.add(FILE, "scale.capacity", why, "the greatest load of the scale")


def _description(scale: ScaleTable, faults: Faults) -> Description | None:
    """Return the description of the scale's lines, or None after noting what is wrong with it."""
    key, allowed = "scale.description", "a description beside this file, in quotes"
    given = scale.description
    if (given is not None) is not (scale.protocol == "described"):
        why = "is missing" if given is None else f'"{given}" goes with protocol = "described" only'
        faults.add(FILE, key, why, allowed)
    if given is None or scale.protocol != "described":
        return None
    path = folder_of(given, faults.folder)
    if not path.resolve().is_relative_to(faults.folder.resolve()):
        faults.add(FILE, key, f'"{given}" lies elsewhere', allowed)
        return None
    try:
        description = load_description(path)
    except DescriptionError as fault:
        faults.add(FILE, key, str(fault), "a description that reads its own examples right")
        return None
    units = sorted({*description.units.values(), description.unit} - {""})
    if scale.unit not in units:
        why = f'"{scale.unit}" is no unit of {given}'
        faults.add(FILE, "scale.unit", why, ", ".join(units))
    return description


def _scale(table: ScaleTable, description: Description | None) -> ScaleSettings:
    port = table.port
    return ScaleSettings(
        id=table.id,
        protocol=table.protocol,
        port=ScalePort(port.url, port.baud, port.bits, port.parity, port.stop_bits),
        unit=Unit(table.unit),
        interval=table.interval,
        capacity=table.capacity,
        description=description,
        scale_class=ScaleClass(table.accuracy_class),
        system=ErrorSystem(table.limits_of_error),
    )
