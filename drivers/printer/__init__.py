"""Where label pages go."""
