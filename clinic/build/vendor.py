"""The libraries that the app imports, under names of our own, each with its licence beside it."""

from __future__ import annotations

from pathlib import Path

LICENCES = Path(__file__).resolve().with_name("licences")

AS_MODULE = b"\nexport default self.jsQR;\n"
"""The QR decoder is a script that leaves its function in the global scope."""


def vendor_files(project: Path) -> dict[str, bytes]:
    """Contents by their place in the release."""
    modules = project / "node_modules"
    return {
        "vendor/preact.js": (modules / "htm/preact/standalone.module.js").read_bytes(),
        "vendor/preact.txt": (LICENCES / "preact.txt").read_bytes(),
        "vendor/htm.txt": (modules / "htm/LICENSE").read_bytes(),
        "vendor/idb.js": (modules / "idb/build/index.js").read_bytes(),
        "vendor/idb.txt": (modules / "idb/LICENSE").read_bytes(),
        "vendor/jsqr.js": (modules / "jsqr/dist/jsQR.js").read_bytes() + AS_MODULE,
        "vendor/jsqr.txt": (modules / "jsqr/LICENSE").read_bytes(),
    }
