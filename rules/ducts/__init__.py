"""Ducts: static pressure, friction, velocity, outlets, balancing, construction, insulation, leakage and returns."""
