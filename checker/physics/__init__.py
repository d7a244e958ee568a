"""Formulas of the trade: plain functions of SI numbers, each with its source."""
