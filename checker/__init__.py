"""airtally: checks a house's mechanical design while it is still a sketch."""

__version__ = "0.1.0"
