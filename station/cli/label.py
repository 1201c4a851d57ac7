"""``station label``: the label of a stored bag, or a specimen of a product's, as a file."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson, Config, Home, home_of
from station.cli.page import facts, heading, note
from station.clock import SystemClock
from station.config.printer import HEADS
from station.errors import BadInput, EnvironmentFault

if TYPE_CHECKING:
    from labels.content import PackLabel
    from labels.design import LabelDesign
    from station.config.packhouse import Packhouse
    from station.core.run import Run

_COPY = "COPY"
_CAVEAT = (
    "Drawn for looking at, with its mark across the words. It is no label of a bag: reprints are "
    "made at the station, with a reason."
)

_Pack = Annotated[
    str | None, typer.Option("--pack", metavar="SERIAL", help="Serial of a stored bag.")
]
_Specimen = Annotated[
    bool, typer.Option("--specimen", help="A specimen of what a run of a product would print.")
]
_Product = Annotated[
    str | None, typer.Option("--product", metavar="CODE", help="Product of the specimen.")
]
_Pdf = Annotated[Path, typer.Option("--pdf", metavar="FILE", help="Where the page goes.")]
_Png = Annotated[
    Path | None,
    typer.Option(
        "--png", metavar="FILE", help="Its dots as a picture; a second label as FILE-2.png."
    ),
]
_Dpi = Annotated[
    int, typer.Option("--dpi", metavar="N", help="Dots per inch: 203, 300, 400 or 600.")
]


def label(
    pdf: _Pdf,
    pack: _Pack = None,
    specimen: _Specimen = False,
    product: _Product = None,
    png: _Png = None,
    dpi: _Dpi = 203,
    home: Home = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """Draw the label of a stored bag, marked as a copy, or a specimen of a product's label."""

    def work() -> Answer:
        if (pack is not None) == specimen:
            raise BadInput("--pack, --specimen", "give one of them")
        if specimen != (product is not None):
            raise BadInput("--product", "goes with --specimen, which needs it")
        if dpi not in HEADS:
            raise BadInput("--dpi", f"{dpi}: give one of {', '.join(map(str, HEADS))}")
        if pack is not None:
            facts_of = _of_pack(pack, home, config)
        else:
            facts_of = _of_product(str(product), config)
        return _draw(*facts_of, pdf, png, HEADS[dpi])

    run_verb(as_json, work)


def _of_pack(serial: str, home: Path | None, config: Path | None) -> tuple[PackLabel, LabelDesign]:
    from station.config.load import load_settings  # slow to load
    from station.core.pack import LabelState
    from station.store.labelled import labelled_pack

    found = labelled_pack(home_of(home, config), serial)
    if found.label is LabelState.NONE:
        raise BadInput(
            f"bag {serial} has no label", f"its quality is {found.quality}: none was ever due"
        )
    packer = found.run.product.label.packer
    if not packer:  # a run of the first shape, which left it to the settings
        if config is None:
            raise BadInput("--config", "the record of this bag names no packer; its settings do")
        packer = load_settings(config).packer
    return _checked(found.run, serial, packer, _COPY)


def _of_product(code: str, config: Path | None) -> tuple[PackLabel, LabelDesign]:
    if config is None:
        raise BadInput("--config", "a specimen is drawn from the settings: name their folder")
    from station.cli.settings import today_of
    from station.config.load import load  # slow to load

    house = load(config, today_of(config))
    if code not in house.products:
        raise BadInput("--product", f"{code!r} is not known: {', '.join(house.products)}")
    settings = house.settings
    from station.core.pack import PackId

    serial = PackId(settings.site, settings.station, 0, 0).serial
    return _checked(_run_on_paper(house, code), serial, settings.packer, "SPECIMEN")


def _run_on_paper(house: Packhouse, code: str) -> Run:
    """Open a run of a product with the oldest lots there are, and record nothing."""
    from importlib.metadata import version

    from station.config.catalogue import catalogue_of
    from station.line.lot_offer import free_lots
    from station.line.opening import calendar_day, open_run
    from station.line.state import RunChoice

    settings = house.settings
    at = SystemClock(settings.zone).now()
    product = house.products[code]
    lots = free_lots(product, house.lots, calendar_day(at))
    catalogue = catalogue_of(house, version("pack-line-station"))
    choice = RunChoice(code, product.version, lots, "specimen", "specimen", None)
    try:
        return open_run(choice, catalogue, at, 1, "specimen")
    except ValueError as refused:
        raise BadInput(f"product {code}", str(refused)) from refused


def _checked(run: Run, serial: str, packer: str, mark: str) -> tuple[PackLabel, LabelDesign]:
    from labels.errors import LabelError
    from station.reports.label_facts import design_of, pack_label

    try:
        return pack_label(serial, run, packer, mark), design_of(run.product)
    except LabelError as refused:
        raise BadInput(refused.title, refused.detail) from refused


def _draw(
    facts_of: PackLabel, design: LabelDesign, pdf: Path, png: Path | None, dots: int
) -> Answer:
    from labels.errors import LabelError
    from labels.pdf import drawer_of
    from labels.raster import rasterise_pages
    from labels.release import release

    try:
        released = release(drawer_of(design, dots), facts_of)
    except LabelError as refused:
        raise BadInput(refused.title, refused.detail) from refused
    files = [pdf]
    _write(pdf, released.pdf)
    if png is not None:
        pages = rasterise_pages(released.pdf, dots)
        names = [png, *(png.with_stem(f"{png.stem}-{n}") for n in range(2, len(pages) + 1))]
        for name, page in zip(names, pages, strict=True):
            _write(name, _picture(page, dots))
        files += names
    document: dict[str, Json] = {
        "serial": facts_of.serial,
        "product": facts_of.product_name,
        "blend_lot": facts_of.blend_lot,
        "use_by": facts_of.use_by.isoformat(),
        "mark": facts_of.copy_mark,
        "design": design.name,
        "dots_per_mm": dots,
        "labels": released.pages,
        "symbols": [symbol.hri for symbol in released.symbols],
        "sha256": released.sha256,
        "files": [str(file) for file in files],
    }
    rows = (
        ("Design", f"{design.name} mm, {dots} dots/mm"),
        ("Labels a bag takes", str(released.pages)),
        ("Bar codes, read back", "\n".join(symbol.hri for symbol in released.symbols)),
        ("Files", "\n".join(map(str, files))),
    )
    title = f"{facts_of.copy_mark.capitalize()} of label {facts_of.serial}, {facts_of.subject}"
    return Answer(document, (heading(title), facts(rows), note(_CAVEAT)))


def _picture(page: object, dots: int) -> bytes:
    import io

    from PIL import Image

    paper = io.BytesIO()
    dpi = dots * 25.4
    Image.fromarray(page).save(paper, "PNG", dpi=(dpi, dpi))  # type: ignore[arg-type]
    return paper.getvalue()


def _write(file: Path, content: bytes) -> None:
    try:
        file.write_bytes(content)
    except OSError as fault:
        raise EnvironmentFault(f"{file} cannot be written", fault.strerror or "") from fault
