"""A release is named by what is in it, lies in one folder, and stays for a while after the next."""

import json
import os

import pytest

from clinic.build.bundles import Bundle
from clinic.build.folders import Folders
from clinic.build.publishing import KEPT_RELEASES, publish, write_release
from clinic.build.release import UnreadableRelease, plan_release, read_release

CATALOGUE = r"""
msgid ""
msgstr "Language: fr\nPlural-Forms: nplurals=2; plural=(n > 1);\n"

msgid "Back"
msgstr "Retour"
"""

PROJECT = {
    "pyproject.toml": '[project]\nversion = "1.2.3"\n',
    "static/app/main.js": "import './part.js';",
    "static/app/part.js": "export const part = 1;",
    "static/app/types.d.ts": "export {};",
    "static/sw.js": "// worker",
    "static/icons/icon.svg": "<svg/>",
    "clinic/shell/page.html": "<p>",
    "node_modules/htm/preact/standalone.module.js": "preact",
    "node_modules/htm/LICENSE": "licence of htm",
    "node_modules/idb/build/index.js": "idb",
    "node_modules/idb/LICENSE": "licence of idb",
    "node_modules/jsqr/dist/jsQR.js": "jsqr",
    "node_modules/jsqr/LICENSE": "licence of jsqr",
    "clinic/locale/fr/LC_MESSAGES/django.po": CATALOGUE,
}


@pytest.fixture
def places(tmp_path):
    for name, text in PROJECT.items():
        path = tmp_path / "project" / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text)
    return Folders(project=tmp_path / "project", build=tmp_path / "build")


def _bundle(content=b"planner"):
    return Bundle(name="planner", archive="planner.zip", files={}, sources={"planner/desk.py": content})


def _release(places, bundle):
    (places.engine / bundle.folder).mkdir(parents=True, exist_ok=True)
    release, files = plan_release(places.project, [bundle])
    write_release(release, files, places)
    publish(release, places)
    return release


def test_the_same_tree_gives_the_same_release(places):
    assert plan_release(places.project, [_bundle()]) == plan_release(places.project, [_bundle()])


def test_the_words_of_another_language_are_in_the_release_which_they_name_too(places):
    before, files = plan_release(places.project, [_bundle()])
    place = "words/catalogues/fr.json"

    assert json.loads(files[place])["texts"] == {"Back": "Retour"}
    assert f"{before.root}{place}" in before.shell
    path = places.project / "clinic/locale/fr/LC_MESSAGES/django.po"
    path.write_text(CATALOGUE.replace("Retour", "Revenir"))
    after, _ = plan_release(places.project, [_bundle()])
    assert after.name != before.name


@pytest.mark.parametrize(
    "name", ["static/app/part.js", "static/sw.js", "clinic/shell/page.html", "static/icons/icon.svg"]
)
def test_a_change_of_anything_the_phone_gets_is_a_new_release(places, name):
    before, _ = plan_release(places.project, [_bundle()])
    (places.project / name).write_text("changed")
    after, _ = plan_release(places.project, [_bundle()])

    assert before.name != after.name
    assert after.name.startswith("1.2.3-")


def test_a_change_of_the_engine_is_a_new_release(places):
    before, _ = plan_release(places.project, [_bundle()])
    after, _ = plan_release(places.project, [_bundle(b"changed")])

    assert before.name != after.name


def test_the_shell_lists_every_file_of_the_folder_but_the_worker_and_no_types(places):
    release = _release(places, _bundle())
    folder = places.app / release.name
    there = {f"{release.root}{path.relative_to(folder).as_posix()}" for path in folder.rglob("*") if path.is_file()}

    listed = {url for url in release.shell if url.startswith(release.root)}

    assert listed == there - {f"{release.root}sw.js"}
    assert f"{release.root}vendor/preact.js" in listed
    assert f"{release.root}types.d.ts" not in listed
    assert {"/", "/manifest.webmanifest", "/icons/icon.svg"} < set(release.shell)


def test_libraries_come_with_their_licences(places):
    folder = places.app / _release(places, _bundle()).name / "vendor"

    assert (folder / "htm.txt").read_text() == "licence of htm"
    assert (folder / "idb.txt").read_text() == "licence of idb"
    assert "Jason Miller" in (folder / "preact.txt").read_text()


def test_the_app_can_read_which_release_it_is_and_where_its_engine_lies(places):
    bundle = _bundle()
    release = _release(places, bundle)
    module = (places.app / release.name / "shell/release.js").read_text()

    told = json.loads(module.partition("export const release = ")[2].rstrip(";\n"))

    assert told["name"] == release.name
    assert told["engine"] == {"planner": {"folder": f"/static/engine/{bundle.folder}/", "files": ["planner.zip"]}}


def test_the_record_of_a_release_is_read_as_it_was_written(places):
    release = _release(places, _bundle())

    assert read_release(places.current) == release


def test_earlier_releases_and_their_engines_stay_until_newer_ones_push_them_out(places):
    made = []
    for number in range(KEPT_RELEASES + 2):
        (places.project / "static/app/part.js").write_text(f"export const part = {number};")
        bundle = _bundle(str(number).encode())
        release = _release(places, bundle)
        os.utime(places.releases / f"{release.name}.json", (number, number))
        made.append((release.name, bundle.folder))

    kept = made[-KEPT_RELEASES:]

    assert {path.name for path in places.app.iterdir()} == {name for name, _ in kept}
    assert {path.name for path in places.engine.iterdir()} == {folder for _, folder in kept}


def test_going_back_to_an_earlier_tree_makes_its_release_the_current_one_again(places):
    first = _release(places, _bundle())
    (places.project / "static/app/part.js").write_text("export const part = 2;")
    second = _release(places, _bundle())
    (places.project / "static/app/part.js").write_text(PROJECT["static/app/part.js"])

    assert _release(places, _bundle()) == first
    assert json.loads(places.current.read_bytes())["name"] == first.name != second.name


def test_a_record_of_another_version_of_the_build_is_not_misread(places):
    release = _release(places, _bundle())
    record = places.releases / f"{release.name}.json"
    record.write_text('{"name": "0.0.1-old"}')

    with pytest.raises(UnreadableRelease):
        read_release(record)
    assert _release(places, _bundle()) == release


def test_the_release_in_use_is_never_taken_away_even_if_its_record_was_lost(places):
    release = _release(places, _bundle())
    (places.releases / f"{release.name}.json").unlink()

    _release(places, _bundle())

    assert (places.app / release.name / "main.js").is_file()
