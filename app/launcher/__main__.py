"""``python -m bowbench``: the same as the ``bowbench`` command."""

import sys

from bowbench import main

sys.exit(main())
