"""The packhouse's settings: TOML files read once into frozen facts."""
