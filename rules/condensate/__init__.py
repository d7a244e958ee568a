"""Condensate: where the water of coils, recovery units and condensing appliances goes, and what happens when it cannot."""
