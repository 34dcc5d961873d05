"""A day without a network: the server is down, the browser is closed and opened again, and nothing is missing."""

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.browser.device import TABLET
from tests.journeys.newcomers import somebody
from tests.journeys.people import ORTHOPTIST, SURGEON
from tests.journeys.screens.card import Card
from tests.journeys.screens.case import Case
from tests.journeys.screens.doors import Unlock
from tests.journeys.screens.patients import Patients


def test_the_whole_line_offline_after_a_restart_and_back_exactly_once(lasting, settled, shared_server):
    phone, server, known = lasting(SURGEON), shared_server, somebody()
    steps.ready_for_a_day_without_network(phone)
    before = len(server.ledger())

    phone.switch_off()
    server.kill()
    phone.switch_on()
    phone.cut_network()

    page = phone.go()
    Unlock(page).enter()
    Patients(page).arrive()
    steps.enter_patient(page, known)
    steps.measure_esotropia(page)
    card = steps.sign_both_medial(page)
    made_offline = card.keep_pdf()
    check_word = card.check_word
    steps.expect_waiting(card, 4)

    server.start()
    phone.reconnect()
    steps.expect_sent(card)

    received = server.ledger()[before:]
    assert [record.kind for record in received] == ["patient", "examination", "plan", "signature"]
    assert {record.author for record in received} == {SURGEON.username}
    assert received[-1].body["check_word"] == check_word
    assert made_offline == phone.served_card(received[-1].id)

    tablet = settled(ORTHOPTIST, TABLET)
    Patients(tablet.page).open(known.full_name)
    Case(tablet.page).open_card()
    elsewhere = Card(tablet.page)
    elsewhere.arrive()
    assert elsewhere.check_word == check_word
    assert len(server.ledger()) == before + 4, "and nothing came twice"


def test_a_reply_that_is_lost_on_the_way_makes_no_second_record(settled, shared_server):
    """The server has taken the records in, but the phone never hears of it and sends them again."""
    phone = settled(SURGEON)
    before = len(shared_server.ledger())
    lost = []

    def lose_the_first_reply(route):
        route.fetch()
        lost.append(len(shared_server.ledger()) - before)
        route.abort("connectionreset")

    phone.watch.expect("ERR_CONNECTION_RESET")
    phone.context.route("**/push", lose_the_first_reply, times=1)
    case = steps.enter_patient(phone.page, somebody())

    steps.expect_sent(case)
    assert lost == [1]
    assert [record.kind for record in shared_server.ledger()[before:]] == ["patient"]


def test_a_server_that_dies_in_the_middle_of_the_day_is_not_noticed_at_work(settled, shared_server):
    phone = settled(SURGEON)
    phone.cut_network()
    shared_server.kill()
    case = steps.enter_patient(phone.page, somebody())
    steps.expect_waiting(case, 1)
    steps.measure_esotropia(phone.page)
    card = steps.sign_both_medial(phone.page)

    expect(card.face).to_contain_text("RIGHT EYE")
    steps.expect_waiting(card, 4)
