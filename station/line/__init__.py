"""One bag's life as a state machine: pure, but for the runner that carries its effects out."""
