"""The web app manifest: what a phone shows of the app once it is on the home screen."""

from __future__ import annotations

GROUND = "#f6f4ef"
IRIS = "#443c99"


def manifest() -> dict[str, object]:
    """The members of W3C's Web Application Manifest that the app uses."""
    return {
        "id": "/",
        "name": "Primary Position",
        "short_name": "Primary Pos.",
        "description": "Plan strabismus surgery, with or without a network.",
        "lang": "en-GB",
        "dir": "ltr",
        "start_url": "/",
        "scope": "/",
        "display": "standalone",
        "orientation": "any",
        "background_color": GROUND,
        "theme_color": IRIS,
        "categories": ["medical"],
        "icons": [
            {"src": "/icons/icon.svg", "sizes": "any", "type": "image/svg+xml", "purpose": "any"},
            *(_icon("icon", pixels, "any") for pixels in (192, 512)),
            *(_icon("maskable", pixels, "maskable") for pixels in (192, 512)),
        ],
    }


def _icon(name: str, pixels: int, purpose: str) -> dict[str, str]:
    source = f"/icons/{name}-{pixels}.png"
    return {"src": source, "sizes": f"{pixels}x{pixels}", "type": "image/png", "purpose": purpose}
