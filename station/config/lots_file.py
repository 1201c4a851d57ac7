"""``lots.toml``: suppliers and input lots; each day as a date or counted from today."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, timedelta

from station.config.check import check_keys, check_rows, codes
from station.config.faults import Faults, unknown
from station.config.fields import RECEIVED
from station.config.settings import LotRow, SupplierRow
from station.config.toml_file import read_toml
from station.core.lots import InputLot, LotError, LotStatus

FILE = "lots.toml"
_KEYS = ("supplier", "lot")


def read_lots(
    today: date, component_codes: tuple[str, ...] | None, faults: Faults
) -> Mapping[str, InputLot]:
    """Return the input lots by code; notes what is wrong.

    Args:
        today: the production day from which relative days are counted.
        component_codes: the components there are, or None where their file cannot be read.
        faults: takes every fault found.
    """
    table = read_toml(FILE, faults)
    if table is None:
        return {}
    check_keys(table, _KEYS, "[[{}]]", FILE, faults)
    suppliers = check_rows(SupplierRow, table, "supplier", FILE, faults)
    names = {row.code: row.name for row in suppliers.values()}
    supplier_codes = codes(table, "supplier")
    lots: dict[str, InputLot] = {}
    for number, row in check_rows(LotRow, table, "lot", FILE, faults).items():
        path, called = f"lot[{number}]", f" ({row.code})"
        if component_codes is not None and row.component not in component_codes:
            why, allowed = unknown(row.component, component_codes), ", ".join(component_codes)
            faults.add(FILE, f"{path}.component{called}", why, allowed)
        if row.supplier not in supplier_codes:
            why, allowed = unknown(row.supplier, supplier_codes), ", ".join(supplier_codes)
            faults.add(FILE, f"{path}.supplier{called}", why, allowed)
        fault = _two_ways(row) or _used_again(row)
        if fault:
            faults.add(FILE, f"{path}{called}", *fault)
            continue
        try:
            lot = _lot(row, names.get(row.supplier, row.supplier), today)
        except (LotError, OverflowError) as impossible:
            faults.add(FILE, f"{path}{called}", str(impossible))
            continue
        if lots.setdefault(lot.code, lot) is not lot:
            faults.add(FILE, f"{path}.code{called}", f"{lot.code} stands twice", "each one once")
    return lots


def _two_ways(row: LotRow) -> tuple[str, str] | None:
    """Say which day is given in two ways, or not at all; None when all is well."""
    if row.received is None and row.received_days_ago is None:
        return "has no day of receipt", "exactly one of received and received_days_ago"
    for plain, counted, from_today in (
        ("received", row.received, row.received_days_ago),
        ("harvested", row.harvested, row.harvested_days_ago),
    ):
        if counted is not None and from_today is not None:
            return f"gives {plain} twice", f"only one of {plain} and {plain}_days_ago"
    if row.use_by is not None and row.use_by_in_days is not None:
        return "gives use_by twice", "only one of use_by and use_by_in_days"
    return None


def _used_again(row: LotRow) -> tuple[str, str] | None:
    """Say when one code would name another delivery each day; None when all is well."""
    counted = (row.received_days_ago, row.harvested_days_ago, row.use_by_in_days)
    if RECEIVED in row.code or all(days is None for days in counted):
        return None
    return (
        "counts its days from today under a code that stays: two deliveries with one code cannot "
        "be traced apart",
        f"dates, or {RECEIVED} within the code",
    )


def _lot(row: LotRow, supplier: str, today: date) -> InputLot:
    received = _day(row.received, row.received_days_ago, today, -1)
    assert received is not None
    return InputLot(
        code=row.code.replace(RECEIVED, f"{received:%y%j}"),
        component=row.component,
        supplier=supplier,
        received=received,
        harvested=_day(row.harvested, row.harvested_days_ago, today, -1),
        use_by=_day(row.use_by, row.use_by_in_days, today, 1),
        status=LotStatus(row.status),
    )


def _day(fixed: date | None, counted: int | None, today: date, direction: int) -> date | None:
    return fixed if counted is None else today + timedelta(days=counted * direction)
