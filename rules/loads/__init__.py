"""Heating and cooling loads: the load calculation against the design, and the envelope that loads rest on."""
