"""Local exhaust and range hoods: enough flow, to outdoors, through ducts that let it through."""
