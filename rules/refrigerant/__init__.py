"""Refrigerant lines: insulation and protection, length and lift, charge, and refrigerants that can burn."""
