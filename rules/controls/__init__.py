"""Controls: thermostats, heat outdoors, tests and their reports, commissioning, the energy certificate."""
