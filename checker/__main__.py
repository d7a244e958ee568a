"""`python -m checker` is the command `airtally`."""

import sys

from checker.cli import main

sys.exit(main())
