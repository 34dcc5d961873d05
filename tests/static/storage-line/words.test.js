import assert from 'node:assert/strict';
import { test } from 'node:test';
import { storageWords } from '../../../static/app/parts/storage-line/words.js';

const NOW = Date.parse('2026-11-25T12:00:00Z');
const SYNC = { waiting: 0, attention: 0, oldestWaitingAt: null, lastHeard: '2026-11-25T11:55:00Z' };
const words = (sync, login = 'signed-in') => storageWords({ ...SYNC, ...sync }, login, NOW);

test('with nothing waiting everything is sent, and the clinic’s last word has an age', () => {
  assert.deepEqual(words({}), { mark: 'sent', state: 'Sent', more: 'clinic heard 5 min ago' });
});

test('what waits is counted, with the age of the oldest', () => {
  assert.deepEqual(words({ waiting: 3, oldestWaitingAt: '2026-11-25T10:00:00Z' }), {
    mark: 'saved',
    state: 'Saved on this phone: 3',
    more: 'oldest 2 h ago · clinic heard 5 min ago',
  });
});

test('what needs attention comes before what only waits, and hides none of it', () => {
  assert.deepEqual(words({ attention: 1, waiting: 2, oldestWaitingAt: '2026-11-25T10:00:00Z' }), {
    mark: 'attention',
    state: 'Needs attention: 1',
    more: '2 more saved · clinic heard 5 min ago',
  });
});

test('a clinic that was never heard is said so', () => {
  assert.equal(words({ lastHeard: null }).more, 'clinic not heard yet');
});

test('an expired log-in says what would send the work', () => {
  assert.equal(words({ waiting: 1 }, 'expired').more, 'sign in to send and fetch');
});

test('the announced state has no age in it, so that a ticking clock announces nothing', () => {
  const early = storageWords({ ...SYNC, waiting: 1, oldestWaitingAt: SYNC.lastHeard }, 'signed-in', NOW);
  const late = storageWords({ ...SYNC, waiting: 1, oldestWaitingAt: SYNC.lastHeard }, 'signed-in', NOW + 3_600_000);
  assert.equal(early.state, late.state);
  assert.notEqual(early.more, late.more);
});

test('an app too old to send says what to do about it, whatever waits', () => {
  const error = { code: 'client_too_old' };
  assert.equal(words({ error }).more, 'update the app to send');
  assert.equal(words({ error, waiting: 1, oldestWaitingAt: '2026-11-25T10:00:00Z' }).more, 'oldest 2 h ago · update the app to send');
});
