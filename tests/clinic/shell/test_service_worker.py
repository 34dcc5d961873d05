"""The service worker in a real Chromium: a release is on the phone whole, works offline, and changes only by word.

The page's own modules are asked what they say (`update.js`, `engine.js`), and the caches what is in them.
"""

import contextlib
import json
import shutil
import subprocess
import sys
import time

import pytest
from playwright.sync_api import Error, expect

from clinic.build.folders import folders
from clinic.build.release import read_release
from tests.journeys.browser.chromium import MISSING, chromium_path
from tests.journeys.site.releases import altered_tree, copy_build, deploy
from tests.journeys.site.server import Server, environment

pytestmark = [pytest.mark.journey, pytest.mark.skipif(chromium_path() is None, reason=MISSING)]

PATIENCE_MS = 60_000


@pytest.fixture(scope="module")
def empty_state(built, tmp_path_factory):
    """A database with its tables and nothing in them."""
    state = tmp_path_factory.mktemp("state")
    command = [sys.executable, "manage.py", "migrate", "--verbosity", "0"]
    subprocess.run(command, cwd=folders().project, env=environment(state, folders().build), check=True)
    return state


@contextlib.contextmanager
def _running(empty_state, folder):
    build = copy_build(folders().build, folder / "build")
    running = Server(state=shutil.copytree(empty_state, folder / "state"), build=build)
    running.start()
    yield running
    running.stop()


@pytest.fixture
def server(built, empty_state, tmp_path):
    with _running(empty_state, tmp_path) as running:
        yield running


@pytest.fixture(scope="module")
def lasting_server(built, empty_state, tmp_path_factory):
    """For tests that deploy nothing, and start it again when they have stopped it."""
    with _running(empty_state, tmp_path_factory.mktemp("lasting")) as running:
        yield running


@pytest.fixture(scope="module")
def visited(lasting_server, browser):
    """A phone on which the app was opened once, and all of it kept."""
    opened = browser.new_context()
    opened.set_default_timeout(PATIENCE_MS)
    page = opened.new_page()
    page.goto(lasting_server.address)
    assert _offline_state(page) == "ready"
    yield page
    opened.close()


@pytest.fixture
def without_a_network(lasting_server, visited):
    lasting_server.stop()
    visited.context.set_offline(True)
    yield
    visited.context.set_offline(False)
    lasting_server.start()


@pytest.fixture
def context(browser):
    opened = browser.new_context()
    opened.set_default_timeout(PATIENCE_MS)
    yield opened
    opened.close()


@pytest.fixture
def visit(context, server):
    """Opens the app in a new tab."""

    def opening():
        page = context.new_page()
        page.goto(server.address)
        return page

    return opening


def _current(server):
    return read_release(server.build / "release.json")


def _in_page(page, script, argument=None):
    """Runs a script that may use `app(module)`, a module of the release that this page runs."""
    return page.evaluate(
        f"""async (argument) => {{
            const root = document.querySelector('script[type=module]').src.replace('main.js', '');
            const app = (module) => import(root + module);
            {script}
        }}""",
        argument,
    )


def _release_of(page):
    return _in_page(page, "return (await app('shell/release.js')).release.name")


def _offline_state(page):
    """What the app says about itself once it has stopped fetching."""
    return _in_page(
        page,
        """const { updateState } = await app('shell/update.js');
        const settled = () => !['unknown', 'fetching'].includes(updateState.get().offline);
        while (!settled()) await new Promise((resolve) => setTimeout(resolve, 50));
        return updateState.get().offline""",
    )


def _update_is_ready(page, *, within_ms):
    return _in_page(
        page,
        """const { updateState } = await app('shell/update.js');
        const limit = Date.now() + argument;
        while (!updateState.get().ready && Date.now() < limit) await new Promise((resolve) => setTimeout(resolve, 50));
        return updateState.get().ready""",
        within_ms,
    )


def _look_for_update(page):
    _in_page(page, "await (await navigator.serviceWorker.ready).update()")


def _take_update(page, release):
    """The person's word; the page may open anew more than once until the browser lets the new release in."""
    _in_page(page, "(await app('shell/update.js')).applyUpdate()")
    limit = time.monotonic() + PATIENCE_MS / 1000
    while time.monotonic() < limit:
        with contextlib.suppress(Error):  # the page is just changing
            if _release_of(page) == release.name:
                return
        page.wait_for_timeout(100)
    raise AssertionError(f"The page did not take {release.name}.")


def _ask_engine(page, name="about"):
    return _in_page(
        page,
        """const { ask } = await app('engine/engine.js');
        try { return { answer: await ask(argument) } } catch (error) { return { faults: error.faults } }""",
        name,
    )


def _cached(page):
    """Every cached URL with the date at which the server gave it, by cache."""
    return page.evaluate(
        """async () => {
            const found = {};
            for (const name of await caches.keys()) {
                const cache = await caches.open(name);
                found[name] = {};
                for (const request of await cache.keys())
                    found[name][new URL(request.url).pathname] = (await cache.match(request)).headers.get('date');
            }
            return found;
        }"""
    )


def _engine_in(page):
    return {name: urls for name, urls in _cached(page).items() if name.startswith("engine")}


@pytest.fixture
def next_release(server, tmp_path):
    """Deploys a release in which one module of the app says something more."""

    def deploying(*, losing=None):
        tree = altered_tree(tmp_path / "next", copying="static")
        with (tree / "static/app/main.js").open("a") as main:
            main.write("\n// the next release\n")
        release = deploy(tree, server.build)
        if losing:
            for path in (server.build / "site/static/app" / release.name).glob(f"{losing}*"):
                path.unlink()
        return release

    return deploying


def test_after_one_visit_the_whole_app_and_its_engine_work_without_a_network(
    visited, lasting_server, without_a_network
):
    again = visited.context.new_page()
    again.goto(lasting_server.address)

    expect(again.get_by_role("heading", name="Sign in")).to_be_visible()
    assert "engine_version" in _ask_engine(again)["answer"]
    assert _offline_state(again) == "ready"
    again.close()


def test_the_first_visit_puts_every_listed_file_on_the_phone_and_nothing_of_the_api(visited, lasting_server):
    cached = _cached(visited)
    release = _current(lasting_server)
    engine = {f"engine {urls[0].split('/')[3]}": set(urls) for urls in release.engine.values()}
    assert {name: set(urls) for name, urls in cached.items()} == {f"shell {release.name}": set(release.shell), **engine}


def test_the_app_does_not_say_that_it_works_offline_while_a_part_of_the_engine_is_missing(visit, server):
    pdf = server.build / "site" / _current(server).engine["pdf"][0].removeprefix("/")
    for path in pdf.parent.iterdir():
        path.unlink()
    page = visit()

    assert _offline_state(page) == "incomplete"


def test_without_a_network_the_api_is_not_answered_from_the_phone(visited, without_a_network):
    with pytest.raises(Error, match="Failed to fetch"):
        visited.evaluate("fetch('/api/v1/session')")


def test_a_missing_file_stays_missing_behind_the_service_worker(visited):
    status = _in_page(visited, "return (await fetch(root + 'screens/nothing.css')).status")

    assert status == 404


def test_a_new_release_waits_until_a_person_takes_it_and_leaves_the_engine_where_it_is(visit, server, next_release):
    """What is typed is kept before the page changes; if it cannot be, the page stays."""
    page = visit()
    assert _offline_state(page) == "ready"
    old, engine = _release_of(page), _engine_in(page)
    new = next_release()
    _look_for_update(page)
    assert _update_is_ready(page, within_ms=PATIENCE_MS)

    refused = _in_page(
        page,
        """const { applyUpdate, beforeReload } = await app('shell/update.js');
        const forget = beforeReload(() => Promise.reject(new Error('the disk is full')));
        try { await applyUpdate(); return 'went on' } catch (error) { return error.message } finally { forget() }""",
    )
    assert refused == "the disk is full"
    assert _release_of(page) == old
    page.reload()
    assert _release_of(page) == old

    _take_update(page, new)
    assert _release_of(page) == new.name
    assert _ask_engine(page)["answer"]
    assert _offline_state(page) == "ready"
    assert _engine_in(page) == engine, "nothing of it was fetched again"


def test_a_tab_left_open_keeps_its_release_and_its_files_until_no_page_needs_them(visit, server, next_release):
    first, second = visit(), visit()
    assert _offline_state(first) == _offline_state(second) == "ready"
    old = _release_of(first)
    new = next_release()
    _look_for_update(first)
    assert _update_is_ready(first, within_ms=PATIENCE_MS)
    _take_update(first, new)
    assert _offline_state(first) == "ready"
    shutil.rmtree(server.build / "site/static/app" / old)

    status = _in_page(second, "return (await fetch(root + 'screens/index.js')).status")

    assert (_release_of(first), _release_of(second)) == (new.name, old)
    assert status == 200
    assert _update_is_ready(second, within_ms=PATIENCE_MS)
    assert {f"shell {old}", f"shell {new.name}"} <= set(_cached(first))

    second.close()
    first.reload()
    assert _offline_state(first) == "ready"

    assert [name for name in _cached(first) if name.startswith("shell")] == [f"shell {new.name}"]


def test_a_release_that_cannot_be_fetched_whole_is_never_installed(visit, server, next_release):
    page = visit()
    assert _offline_state(page) == "ready"
    before = _cached(page)
    next_release(losing="observable.js")

    _look_for_update(page)

    assert not _update_is_ready(page, within_ms=3000)
    assert _cached(page) == before


@pytest.fixture
def next_engine(server, tmp_path):
    """Deploys a release in which the planner is another."""

    def deploying():
        tree = altered_tree(tmp_path / "next-engine", copying="planner")
        (tree / "planner/one_more.py").write_text('"""Changes nothing but the bundle."""\n')
        return deploy(tree, server.build)

    return deploying


def test_a_new_release_brings_its_engine_before_it_is_offered(visit, server, context, next_engine):
    page = visit()
    assert _offline_state(page) == "ready"
    new = next_engine()
    _look_for_update(page)
    assert _update_is_ready(page, within_ms=PATIENCE_MS)
    server.stop()
    context.set_offline(True)

    _take_update(page, new)

    assert _release_of(page) == new.name
    assert "engine_version" in _ask_engine(page)["answer"]
    assert _offline_state(page) == "ready"


def test_a_new_release_whose_engine_cannot_be_fetched_is_not_offered(visit, server, next_engine):
    page = visit()
    assert _offline_state(page) == "ready"
    old = _release_of(page)
    for url in next_engine().engine["planner"]:
        for path in (server.build / "site").glob(f"{url.removeprefix('/')}*"):
            path.unlink()

    _look_for_update(page)

    assert not _update_is_ready(page, within_ms=3000)
    assert _release_of(page) == old
    assert _ask_engine(page)["answer"]


def test_an_engine_that_fails_its_self_test_is_not_asked(visit, server, tmp_path):
    tree = altered_tree(tmp_path / "wrong", copying="planner")
    cases = tree / "planner/self_test/cases.json"
    frozen = json.loads(cases.read_text())
    frozen[0]["doses"] = ["right MR recess 99"]
    cases.write_text(json.dumps(frozen))
    deploy(tree, server.build)
    page = visit()

    (fault,) = _ask_engine(page)["faults"]

    assert fault["code"] == "engine_failed"
    assert "wrong answer" in fault["text"]
