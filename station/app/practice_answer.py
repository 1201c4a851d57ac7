"""What ``demo --record-only`` does and answers."""

from __future__ import annotations

import time
from pathlib import Path

from station.app.places import demo_settings, home_folder, packhouse
from station.app.practice_record import pack_record
from station.cli.answer import Answer, iso
from station.cli.page import facts, heading, note
from station.cli.progress import progress
from station.clock import SystemClock
from station.config.packhouse import Packhouse
from station.core.product import Product
from station.errors import BadInput

_MOST_BAGS = 20_000


def record(
    bags: int, product: str | None, home: Path | None, config: Path | None, seed: int, quiet: bool
) -> Answer:
    """Make a practice record and answer with its figures.

    Args:
        bags: good bags of its one run.
        product: code of what is packed; the first product where None.
        home: folder of the record; a fresh one where None.
        config: folder of settings; the demo packhouse where None.
        seed: same seed, same bags.
        quiet: show no progress.

    Raises:
        StationError: an option is wrong, or the record does not serve.
    """
    if not 1 <= bags <= _MOST_BAGS:
        raise BadInput("--record-only", f"{bags} bags: give 1 to {_MOST_BAGS}")
    house = packhouse(config or demo_settings())
    chosen = _product(house, product)
    ends = SystemClock(house.settings.zone).now()
    place, began = home_folder(home), time.monotonic()
    with progress("recording", bags, quiet=quiet) as tell:
        made = pack_record(house, place, bags, seed, tell, product=chosen, ends=ends)
    seconds = time.monotonic() - began
    return Answer(
        {
            "home": str(place),
            "run": made.run,
            "product": made.product.code,
            "packs": made.good,
            "rejects": made.rejects,
            "began": iso(made.began),
            "ended": iso(made.ended),
            "labels_printed": 0,
            "seconds": round(seconds, 3),
        },
        (
            heading(f"{made.good} practice bags are on record; labels were not printed."),
            facts(
                (
                    ("Home", str(place)),
                    ("Run", made.run),
                    ("Product", f"{made.product.name} ({made.product.code})"),
                    ("Set aside", str(made.rejects)),
                    ("Practice shift", f"{made.began:%Y-%m-%d %H:%M} to {made.ended:%H:%M}"),
                    ("Took", f"{seconds:.1f} s"),
                )
            ),
            note(f"Ask the record, for example: station forecast --run last --home {place}"),
        ),
    )


def _product(house: Packhouse, code: str | None) -> Product:
    if code is None:
        return next(iter(house.products.values()))
    found = house.products.get(code)
    if found is None:
        known = ", ".join(house.products)
        raise BadInput("--product", f"{code!r} is not known: give one of {known}")
    return found
