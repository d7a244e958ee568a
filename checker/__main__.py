"""`python -m checker` is the command `airtally`."""

from checker.cli import command

command()
