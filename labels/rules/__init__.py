"""Labelling rules by market, each figure with its source clause."""
