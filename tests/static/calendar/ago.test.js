import assert from 'node:assert/strict';
import { test } from 'node:test';
import { agoWords, durationWords, momentWords } from '../../../static/app/parts/calendar/ago.js';

const NOW = Date.parse('2026-11-25T12:00:00Z');
const before = (seconds) => new Date(NOW - seconds * 1000).toISOString();

test('an age is rounded down to the unit a person would use', () => {
  assert.equal(durationWords(before(59), NOW), 'just now');
  assert.equal(durationWords(before(60), NOW), '1 min');
  assert.equal(durationWords(before(3599), NOW), '59 min');
  assert.equal(durationWords(before(3600), NOW), '1 h');
  assert.equal(durationWords(before(48 * 3600 - 1), NOW), '47 h');
  assert.equal(durationWords(before(48 * 3600), NOW), '2 days');
});

test('a clock that runs ahead does not make an age negative', () => {
  assert.equal(agoWords(before(-30), NOW), 'just now');
});

test('an offset is part of the moment', () => {
  assert.equal(agoWords('2026-11-25T12:30:00+01:00', NOW), '30 min ago');
});

test('a moment is told in the time of this place', () => {
  const here = new Date(2026, 10, 25, 9, 5);
  assert.equal(momentWords(here.toISOString()), '25 Nov 2026, 09:05');
  assert.equal(momentWords('soon'), 'soon');
});
