import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { test } from 'node:test';
import { ServerFault } from '../../../static/app/session/server.js';
import { sending } from '../../../static/app/sync/parcel.js';

const sha256 = text => createHash('sha256').update(text).digest('hex');
const FIRST = { id: 'a', body: { full_name: 'Arvid Lunde' }, digest: sha256('{"full_name":"Arvid Lunde"}') };
const SECOND = { id: 'b', body: { full_name: 'Berit Lunde' }, digest: sha256('{"full_name":"Berit Lunde"}'), receipt: 'r' };
const BOTH = sha256(FIRST.digest + SECOND.digest);
const ACCEPTED = { status: 'accepted', position: 1 };
const REJECTED = { status: 'rejected', code: 'missing' };

/** A clinic that answers each call as told, an error being thrown; with what it was asked. */
function clinic(...answers) {
  const asked = [];
  return {
    asked,
    post: async body => {
      asked.push(body);
      const answer = answers.shift();
      if (answer instanceof Error) throw answer;
      return answer;
    },
  };
}

const refusal = (status, code) => new ServerFault(status, { code });

test('a parcel goes without digests, under one of them all in their order', async () => {
  const { asked, post } = clinic({ parcel: BOTH, results: [ACCEPTED, ACCEPTED] });
  await sending(post)([FIRST, SECOND]);

  assert.deepEqual(asked, [{ parcel: { digest: BOTH, records: [{ id: 'a', body: FIRST.body }, { id: 'b', body: SECOND.body, receipt: 'r' }] } }]);
});

test('the results of a parcel are those of its records in order', async () => {
  const { post } = clinic({ parcel: BOTH, wipe: false, results: [REJECTED, ACCEPTED] });

  assert.deepEqual(await sending(post)([FIRST, SECOND]), { parcel: BOTH, wipe: false, results: [{ ...REJECTED, id: 'a' }, { ...ACCEPTED, id: 'b' }] });
});

test('an answer to another parcel, or with a result too few, is none', async () => {
  for (const answer of [{ parcel: sha256(''), results: [ACCEPTED, ACCEPTED] }, { parcel: BOTH, results: [ACCEPTED] }, { results: [ACCEPTED, ACCEPTED] }]) {
    const { asked, post } = clinic(answer);
    await assert.rejects(sending(post)([FIRST, SECOND]), error => error.status === 0 && error.retryable);
    assert.equal(asked.length, 1);
  }
});

test('what is refused as a parcel goes with its digests, and the next goes as a parcel again', async () => {
  const told = { results: [{ ...ACCEPTED, id: 'a' }] };
  const { asked, post } = clinic(refusal(400, 'parcel_differs'), told, { parcel: sha256(SECOND.digest), results: [ACCEPTED] });
  const send = sending(post);

  assert.deepEqual(await send([FIRST]), told);
  await send([SECOND]);
  assert.deepEqual(asked[1], { records: [FIRST] });
  assert.ok(asked[2].parcel);
});

test('a clinic that knows no parcels is asked with one once', async () => {
  const { asked, post } = clinic(refusal(400, 'records_missing'), { results: [] }, { results: [] });
  const send = sending(post);
  await send([FIRST]);
  await send([SECOND]);

  assert.deepEqual(asked.slice(1), [{ records: [FIRST] }, { records: [SECOND] }]);
});

test('any other trouble is told as it is, and nothing is sent a second time', async () => {
  for (const [status, code] of [[0, 'unreachable'], [401, 'not_authenticated'], [413, 'batch_too_large'], [422, 'odd'], [503, 'down']]) {
    const { asked, post } = clinic(refusal(status, code));
    await assert.rejects(sending(post)([FIRST]), { status, code });
    assert.equal(asked.length, 1);
  }
});
