"""``python -m bowbench``: the same as the ``bowbench`` command."""

import sys

from . import main

sys.exit(main())
