"""What the settings of a packhouse say, frozen: the station reads them once and never again."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, time
from decimal import Decimal
from pathlib import Path

from drivers.frames.description import Description
from station.config.fill_rules import FillSettings
from station.config.gates import CheckSettings, TareSettings
from station.config.label_checks import LabelChecks
from station.config.lot_rules import LotSettings
from station.config.people_rules import PeopleRules
from station.config.printer import PrinterSettings
from station.config.quality import QualitySettings
from station.config.record_rules import RecordSettings
from station.config.screen import ScreenSettings
from station.config.shipping import ShippingSettings
from station.config.sync_settings import SyncSettings
from station.core.checks.qa import QaLimit
from station.core.languages import Language
from station.core.lots import InputLot
from station.core.mass import Mass, Unit
from station.core.metrology.instrument_errors import ErrorSystem, ScaleClass
from station.core.metrology.scale_suitability import Scale
from station.core.product import BagItem, Component, Product
from station.core.rights import Role as Role


@dataclass(frozen=True, slots=True)
class Person:
    """Someone who works at the station; ``id`` is what records carry.

    Training for the work holds up to ``trained_until``; None where nobody wrote a day. Screens
    speak ``language`` to the person; None takes that of the station.
    """

    id: str
    name: str
    role: Role
    trained_until: date | None = None
    language: Language | None = None


@dataclass(frozen=True, slots=True)
class ShelfLife:
    """The days a bag may live in one atmosphere, by the packhouse's own policy.

    Args:
        atmosphere: in the packhouse's words.
        least_days, most_days: both counted in.
        basis: the study it rests on.
    """

    atmosphere: str
    least_days: int
    most_days: int
    basis: str


@dataclass(frozen=True, slots=True)
class ScalePort:
    """The line to the scale.

    Args:
        url: device path, ``COM3``, ``socket://host:port`` or ``rfc2217://host:port``.
        baud: bits per second.
        bits: data bits, 7 or 8.
        parity: ``none``, ``even`` or ``odd``.
        stop_bits: 1 or 2.
    """

    url: str
    baud: int
    bits: int
    parity: str
    stop_bits: int


@dataclass(frozen=True, slots=True)
class ScannerSettings:
    """A bar-code scanner on a serial line; ``port`` is its line."""

    port: ScalePort


@dataclass(frozen=True, slots=True)
class ScaleSettings:
    """The scale of the line.

    Args:
        id: what identifies it, such as its serial number.
        protocol: ``scp0499``, ``described`` or ``hid``.
        port: the line to it.
        unit: the unit it shows; a reading in another unit stops the line.
        interval: its scale interval, in ``unit``.
        capacity: its greatest load, in ``unit``.
        description: of its lines; None but with the protocol ``described``.
        scale_class: accuracy class.
        system: whose limits of error hold for it.
    """

    id: str
    protocol: str
    port: ScalePort
    unit: Unit
    interval: Mass
    capacity: Mass
    description: Description | None = None
    scale_class: ScaleClass = ScaleClass.III
    system: ErrorSystem = ErrorSystem.R_76

    @property
    def plate(self) -> Scale:
        """What its plate says, as the rules ask it."""
        return Scale(self.scale_class, self.interval, self.capacity, system=self.system)


@dataclass(frozen=True, slots=True)
class LabelSettings:
    """What every label of the station has in common.

    Args:
        market: whose label rules hold where a product names no other.
        packer: name and address of the responsible business.
        design: name of the design where a product names no other.
        language: language of the products' own texts and of the fixed words.
        second_language: second language of every label; empty for one language.
        link_stem: start of the web address of a QR Code with a GS1 Digital Link in the place of the
            GS1 DataMatrix; empty for the latter.
    """

    market: str
    packer: str
    design: str
    language: str = "en"
    second_language: str = ""
    link_stem: str = ""


@dataclass(frozen=True, slots=True)
class Timing:
    """How long the line waits, in milliseconds.

    Args:
        dwell_ms: a reading is judged once it was steady for this long.
        stale_ms: a reading older than this does not exist.
    """

    dwell_ms: int
    stale_ms: int


@dataclass(frozen=True, slots=True)
class StationSettings:
    """One station: one scale, one printer, one line.

    Args:
        site: short code of the packhouse.
        site_name: what people call it.
        station: short code of the station; every serial starts with it.
        line: short code of the line; every blend lot starts with it.
        zone: IANA name of the plant's time zone.
        cut_off: wall-clock time at which the production day changes.
        home: absolute folder of the store.
        label: what every label has in common.
        scale, printer, timing: the parts of the line.
        checks, tare, label_checks: what must be checked before bags are taken.
        lots: how input lots are followed on the line.
        fill: who settles what bags are filled to.
        scanner, sync: the scanner, and the way to the centre, where there is one.
        record: how the record is proved and kept.
        people: how people sign.
        screen: how the station looks and sounds.
        quality: the policy QA's work follows.
    """

    site: str
    site_name: str
    station: str
    line: str
    zone: str
    cut_off: time
    home: Path
    label: LabelSettings
    scale: ScaleSettings
    printer: PrinterSettings
    timing: Timing
    checks: CheckSettings
    tare: TareSettings
    label_checks: LabelChecks
    lots: LotSettings = field(default_factory=LotSettings)
    people: PeopleRules = field(default_factory=PeopleRules)
    fill: FillSettings = field(default_factory=FillSettings)
    scanner: ScannerSettings | None = None
    sync: SyncSettings | None = None
    record: RecordSettings = field(default_factory=RecordSettings)
    screen: ScreenSettings = field(default_factory=ScreenSettings)
    quality: QualitySettings = field(default_factory=QualitySettings)

    @property
    def market(self) -> str:
        """Whose label rules hold where a product names no other."""
        return self.label.market

    @property
    def packer(self) -> str:
        """Name and address as the label prints them."""
        return self.label.packer


@dataclass(frozen=True, slots=True)
class Packhouse:
    """All settings of one station and its packhouse; every mapping is by code.

    Prices are those of a kilogram, of the products that have one. Shipping is None where the
    packhouse fills no cases at its stations.
    """

    settings: StationSettings
    components: Mapping[str, Component]
    bags: Mapping[str, BagItem]
    products: Mapping[str, Product]
    lots: Mapping[str, InputLot]
    people: Mapping[str, Person]
    prices: Mapping[str, Decimal]
    lives: tuple[ShelfLife, ...] = ()
    shipping: ShippingSettings | None = None
    qa: Mapping[str, tuple[QaLimit, ...]] = field(default_factory=dict)
    """Checks of QA, of the products that have any."""
