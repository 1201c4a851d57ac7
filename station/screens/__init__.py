"""What people see and touch; the only part that knows Qt."""
