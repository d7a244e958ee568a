"""Clothes dryers: their exhaust duct, its length, its terminal, and the air that comes back in."""
