"""Filters: whether there is one, where it sits, what it catches, and what it costs the fan."""
