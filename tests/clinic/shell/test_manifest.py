"""The manifest is complete, and its icons are our own drawing in the sizes it promises."""

import pytest
from PIL import Image

from clinic.shell.draw_icons import ICONS, MASKABLE_SCALE, SIDE, dots, icons, svg
from clinic.shell.manifest import manifest

DRAWN = icons()


def test_it_has_what_a_browser_asks_for_before_it_offers_to_install():
    told = manifest()

    assert told["name"]
    assert told["short_name"]
    assert told["start_url"] == told["scope"] == told["id"] == "/"
    assert told["display"] == "standalone"
    assert {icon["sizes"] for icon in told["icons"] if icon["purpose"] == "any"} >= {"192x192", "512x512"}
    assert any(icon["purpose"] == "maskable" for icon in told["icons"])


@pytest.mark.parametrize("icon", manifest()["icons"], ids=lambda icon: icon["src"])
def test_each_icon_is_there_in_its_size(icon):
    path = ICONS / icon["src"].removeprefix("/icons/")

    if path.suffix == ".svg":
        assert path.read_text() == svg()
    else:
        with Image.open(path) as picture:
            assert "x".join(map(str, picture.size)) == icon["sizes"]


@pytest.mark.parametrize(("name", "drawn"), DRAWN.items(), ids=DRAWN)
def test_each_picture_is_as_the_script_draws_it(name, drawn):
    with Image.open(ICONS / name) as kept:
        assert kept.size == drawn.size
        assert kept.convert("RGBA").tobytes() == drawn.tobytes()


def test_the_maskable_mark_stays_within_the_safe_circle():
    """W3C, Web Application Manifest: the safe zone is the middle circle with a radius of 40 % of the icon's side."""
    middle = SIDE / 2
    reach = max(((d.x - middle) ** 2 + (d.y - middle) ** 2) ** 0.5 + d.radius for d in dots(MASKABLE_SCALE))

    assert reach <= 0.4 * SIDE


def test_the_primary_position_is_the_largest_of_nine():
    radii = sorted(dot.radius for dot in dots())

    assert len(radii) == 9
    assert radii[-1] > 2 * radii[-2]
