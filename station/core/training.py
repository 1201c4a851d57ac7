"""What sets training apart from work: a code no station may have.

A record of training belongs to the station :data:`CODE`, whatever station it was made at. Settings
cannot name that code, so a station opens no record of training, training opens no station's, and no
centre takes one in. Every serial and every blend lot of training begins with it.
"""

from __future__ import annotations

CODE = "TR"
"""Code of the station and of the line while people train; short, so that it fits every label."""
MARK = "TRAINING"
"""What stands on every screen and label of it."""
FOLDER = "training"
"""Its folder, in the station's home."""
NO_PRODUCT = "no bag of this is a product"


def is_training(serial: str) -> bool:
    """Whether a serial as printed is one of training."""
    return serial.startswith(f"{CODE}-")


def reserved(code: str) -> str:
    """Why a station or line may not have a code; empty where it may."""
    return f"{code!r} is kept for training" if code == CODE else ""
