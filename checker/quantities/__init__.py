"""What a design works out to: flows, balance, pressures, duct losses; each worked out once per design."""
