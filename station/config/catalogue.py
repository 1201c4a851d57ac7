"""What a lead may choose from, as the settings say it."""

from __future__ import annotations

from station.config.packhouse import Packhouse
from station.line.opening import Catalogue


def catalogue_of(house: Packhouse, software: str) -> Catalogue:
    """Return the catalogue of a packhouse.

    Args:
        house: the settings.
        software: version of the station, as records name it.
    """
    settings = house.settings
    return Catalogue(
        products=house.products,
        lots=house.lots,
        line=settings.line,
        cut_off=settings.cut_off,
        scale=settings.scale.id,
        unit=settings.scale.unit,
        software=software,
    )
