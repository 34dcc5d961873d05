"""The page is told of every module that it needs at once, and of no other."""

import pytest

from clinic.build.modules import ModuleMissing, needed_at_start

APP = {
    "main.js": b"import { a } from './parts/a.js';\nimport './side.js';\nconst go = () => import('./later.js');\n",
    "side.js": b"// import './comment.js'\nexport const text = \"from './text.js'\";\n",
    "parts/a.js": b"import {\n  b,\n  c,\n} from '../b.js';\nexport { d } from './d.js';\n",
    "parts/d.js": b"import { a } from './a.js';\n",
    "b.js": b"export const b = 1;\n",
    "later.js": b"",
}


def test_static_imports_are_followed_and_those_for_later_are_not():
    assert needed_at_start(APP) == ("main.js", "parts/a.js", "side.js", "b.js", "parts/d.js")


def test_an_import_that_leads_nowhere_stops_the_build():
    with pytest.raises(ModuleMissing, match=r"parts/a\.js imports \./d\.js"):
        needed_at_start({name: content for name, content in APP.items() if name != "parts/d.js"})


def test_the_app_itself_names_its_first_screens_and_leaves_the_others_for_later(built):
    names = [url.removeprefix(built.root) for url in built.start]

    assert {"main.js", "shell/app.js", "vendor/preact.js", "engine/engine.js"} <= set(names)
    assert "engine/worker.js" not in names
