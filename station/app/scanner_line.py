"""The bar-code scanner of a station: its line, and what becomes of its scans."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from drivers.hid_port import open_hid_scanner
from drivers.scanner import Refused, Scan
from drivers.scanner_link import ScannerDown, ScannerItem, ScannerLink, ScannerUp
from station.app.serial_line import port_settings
from station.config.packhouse import ScannerSettings


def scanner_link(
    settings: ScannerSettings,
    scan: Callable[[str, str], None],
    say: Callable[[str], None],
) -> ScannerLink:
    """Return the link to a scanner, not yet started.

    Args:
        settings: of the scanner.
        scan: given symbology identifier and data of each symbol, in order.
        say: told in words what was refused, and that the scanner is lost.
    """

    def hear(item: ScannerItem) -> None:
        match item:
            case Scan(symbols):
                for symbol in symbols:
                    scan(symbol.identifier, symbol.data)
            case Refused(_, why):
                say(f"A scan was refused: {why}. Scan again.")
            case ScannerDown(why):
                say(f"No scanner: {why}")
            case ScannerUp():
                pass

    url = settings.port.url
    if url.startswith("hid://"):
        return ScannerLink(partial(open_hid_scanner, url), hear)
    return ScannerLink(port_settings(settings.port, "scanner"), hear)
