"""A simulated week of packing, with faults planted in it, made through the true store and gates."""
