"""Reads a folder of settings once, into frozen facts; refuses it with every fault it has."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from pathlib import Path
from types import MappingProxyType

from station.config import customers_file, lots_file, people_file, products_file, station_file
from station.config.faults import Faults
from station.config.packhouse import Packhouse, StationSettings
from station.config.record_file import check_keep
from station.errors import BadInput, EnvironmentFault

__all__ = ["FILES", "Packhouse", "StationSettings", "load", "load_settings"]

FILES = (station_file.FILE, products_file.FILE, lots_file.FILE, people_file.FILE)


def load(folder: Path, today: date, instead: Mapping[str, Path] | None = None) -> Packhouse:
    """Return everything the files of a folder say.

    Args:
        folder: holds station.toml, products.toml, lots.toml and people.toml; customers.toml too
            where the station fills cases.
        instead: files that take the place of the folder's own, by name.
        today: the production day; days such as ``received_days_ago`` are counted from it.

    Raises:
        BadInput: names each fault's file, key, value given and what is allowed; all at once.
        EnvironmentFault: a file is there and the machine does not let it be read.
    """
    faults = Faults(_checked(folder), instead=instead or {})
    settings = station_file.read_station(faults)
    people = people_file.read_people(faults)
    goods = products_file.read_products(settings, people, faults)
    lots = lots_file.read_lots(today, goods.component_codes if goods else None, faults)
    home = None if settings is None else settings.home
    if settings is not None and goods is not None:
        lives = {code: product.life_days for code, product in goods.products.items()}
        check_keep(settings.record.keep_years, lives, station_file.FILE, faults)
    shipping = customers_file.read_customers(home, goods.product_codes if goods else None, faults)
    faults.raise_any()
    assert settings is not None
    assert goods is not None
    return Packhouse(
        settings=settings,
        components=MappingProxyType(dict(goods.components)),
        bags=MappingProxyType(dict(goods.bags)),
        products=MappingProxyType(dict(goods.products)),
        lots=MappingProxyType(dict(lots)),
        people=MappingProxyType(dict(people)),
        prices=MappingProxyType(dict(goods.prices)),
        lives=goods.lives,
        shipping=shipping,
        qa=MappingProxyType(dict(goods.qa)),
    )


def load_settings(folder: Path) -> StationSettings:
    """Return what station.toml says, without looking at the other files.

    Raises:
        BadInput: names each fault of the file.
        EnvironmentFault: the machine does not let the file be read.
    """
    faults = Faults(_checked(folder))
    settings = station_file.read_station(faults)
    faults.raise_any()
    assert settings is not None
    return settings


def _checked(folder: Path) -> Path:
    try:
        if folder.is_dir():
            return folder
    except OSError as fault:
        raise EnvironmentFault(f"{folder} cannot be read", fault.strerror or "") from fault
    raise BadInput(f"{folder} is no folder", f"name a folder with {', '.join(FILES)}")
