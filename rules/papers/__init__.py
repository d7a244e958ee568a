"""Papers: what worksheets and drawings state, held against the design and the jurisdiction."""
