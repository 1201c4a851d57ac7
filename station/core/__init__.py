"""The rules of a pack: standard library only, no clock, no disk, no screen."""
