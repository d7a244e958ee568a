"""Outputs: one small function each over the same list of outcomes."""
