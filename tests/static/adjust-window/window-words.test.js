import assert from 'node:assert/strict';
import { test } from 'node:test';
import { clockWords, leftWords, phaseOf, windowWords } from '../../../static/app/parts/adjust-window/window-words.js';

const at = (/** @type {string} */ clock, day = '25') => new Date(`2026-11-${day}T${clock}:00`);
const WINDOW = { earliest_at: at('15:30').toISOString(), latest_at: at('10:00', '26').toISOString() };

test('the phase follows from the stored times alone', () => {
  assert.deepEqual(
    [at('15:29'), at('15:30'), at('10:00', '26'), at('10:01', '26')].map((now) => phaseOf(WINDOW, now.getTime())),
    ['early', 'now', 'now', 'late'],
  );
});

test('a list says what is next and when', () => {
  assert.equal(windowWords(WINDOW, at('11:18').getTime()), 'Adjust from 15:30, in 4 h 12 min');
  assert.equal(windowWords(WINDOW, at('16:00').getTime()), 'Adjust now, until 10:00 tomorrow, 18 h 0 min left');
  assert.equal(windowWords(WINDOW, at('12:00', '26').getTime()), 'Not adjusted; usual until 10:00');
});

test('time that is left is rounded up and never below nothing', () => {
  const start = at('15:30').getTime();
  assert.equal(leftWords(WINDOW.earliest_at, start - 1), '1 min');
  assert.equal(leftWords(WINDOW.earliest_at, start), '0 min');
  assert.equal(leftWords(WINDOW.earliest_at, start + 60_000), '0 min');
  assert.equal(leftWords(WINDOW.earliest_at, start - 3_600_000), '1 h 0 min');
});

test('another day than today or tomorrow is named', () => {
  assert.equal(clockWords(WINDOW.latest_at, at('12:00', '28').getTime()), '26 Nov 2026, 10:00');
});
