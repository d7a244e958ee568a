"""Whole-house ventilation: how much outdoor air, by what fans, in balance or not, and who can switch it."""
