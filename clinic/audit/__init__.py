"""The audit trail: who read and wrote what, when, from which device, and what came of it. It is only added to.

- ``models``: ``Entry``, one answered call; guarded like the ledger, by model and by database triggers (``guards``)
- ``facts``: what a view tells of its call: the records and patients that it was about
- ``middleware``: writes the entry before the answer leaves; without an entry there is no answer
- ``search``: by person, device, clinic, record, patient and time; ``manage.py audit`` prints and exports

Nothing here removes an entry, whatever its age: the trail is exported (``manage.py audit --until 2027-01-01 --csv``)
and kept with the clinic's other papers for as long as its law says.

It holds ids and account names, and nothing of a patient but ids. A page of the feed is written as the range of
positions that it handed out, which stays true since positions never change; what theatre gets and what a card shows is
written id by id. Not written are calls that hand out nothing: a pull without news, the session, the API's description,
and the calls of strangers, who are answered 401 (they are in the log), except tries to sign in.
"""
