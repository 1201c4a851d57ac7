"""The parts a screen is made of, each painted from one frozen value."""
