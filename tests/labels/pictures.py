"""Pictures of bare symbols and the readers that must agree on them."""

import subprocess
from collections.abc import Sequence
from pathlib import Path

import numpy as np
import zxingcpp
from numpy.typing import NDArray
from PIL import Image

from labels.symbol import Symbol

MODULE = 3  # pixels
LINEAR_ROWS = 20  # modules of height


def picture(symbol: Symbol, module: int = MODULE) -> NDArray[np.uint8]:
    """Return the modules of a symbol and its quiet zones, 0 dark and 255 light."""
    rows = symbol.rows if symbol.is_matrix else symbol.rows * LINEAR_ROWS
    dark = np.array([[int(one) for one in row] for row in rows], np.uint8)
    above = max(symbol.quiet)
    dark = np.pad(dark, ((above, above), symbol.quiet))
    return np.kron(255 - 255 * dark, np.ones((module, module), np.uint8))


def read(symbol: Symbol) -> tuple[str, bytes]:
    """Read the picture of one symbol with zxing-cpp."""
    (code,) = zxingcpp.read_barcodes(picture(symbol))
    return code.symbology_identifier, bytes(code.bytes)


def assert_reads(symbol: Symbol) -> None:
    """Compare identifier and bytes with what the symbol must transmit."""
    assert read(symbol) == (symbol.identifier, symbol.expected_bytes)


def read_by_second(symbols: Sequence[Symbol], folder: Path, tool: str) -> list[bytes]:
    """Read symbols of one kind by libzbar or libdmtx, which share no code with zxing-cpp.

    Args:
        symbols: All of one kind.
        folder: Where their pictures may lie.
        tool: Path of zbarimg, or of dmtxread for DataMatrix.

    Returns:
        What was read, one entry a symbol, in order; FNC1 between elements as 0x1D.
    """
    files = []
    for number, symbol in enumerate(symbols):
        file = folder / f"{number:05d}.png"
        quiet = 4 - max(symbol.quiet) if symbol.is_matrix else 0
        wide = np.pad(picture(symbol, 4), 4 * max(0, quiet), constant_values=255)
        Image.fromarray(wide).save(file)
        files.append(str(file))
    if tool.endswith("dmtxread"):
        command = [tool, "--newline", "--stop-after=1", "--gs1=29"]
    else:
        kind = {"]C": "code128", "]Q": "qrcode", "]E": "ean13"}[symbols[0].identifier[:2]]
        command = [tool, "--quiet", "--raw", "--nodbus", "-Sdisable", f"-S{kind}.enable"]
    done = subprocess.run([*command, *files], capture_output=True, timeout=600, check=False)
    for file in files:
        Path(file).unlink()
    lines = done.stdout.split(b"\n")[:-1]
    return [line.removeprefix(b"\x1d") for line in lines]
