"""The facts on a label, where the line's own side looks for them."""

from __future__ import annotations

from station.reports.label_facts import design_of, pack_label, specimen_label

__all__ = ["design_of", "pack_label", "specimen_label"]
