"""``python -m app``: the same as the ``bowbench`` command."""

import sys

from app.cli import main

sys.exit(main())
