"""The tally: the figures of the house on a page. One short module for each section; nothing is computed here."""
