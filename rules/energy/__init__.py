"""Energy: airtightness, minimum efficiencies, resistance heat, and what a year costs."""
