import assert from 'node:assert/strict';
import { test } from 'node:test';
import { bodyOf, draftFrom, emptyDraft } from '../../../static/app/screens/measure/examination.js';
import { lensWords, lessOftenWords, postureWords, torsionWords } from '../../../static/app/screens/measure/rest/holds.js';

const plain = (text) => text.replaceAll('\u202f', ' ');
const empty = emptyDraft('2026-11-25');
const reading = { gaze: 'primary', range: 'distance', correction: 'with', horizontal_pd: 40 };
const full = {
  ...empty,
  readings: [reading],
  spectacles_right_d: -8.25,
  spectacles_left_d: 2,
  excyclotorsion_right_deg: 6,
  excyclotorsion_left_deg: -3,
  excyclotorsion_down_deg: 0,
  head_posture: { turn: null, turn_deg: null, tilt: 'left', tilt_deg: 10 },
  ductions: [{ eye: 'right', muscle: 'LR', grade: -3 }],
  forced_ductions: [{ eye: 'right', muscle: 'LR', result: 'free' }],
  diagnoses: [{ diagnosis: 'sixth nerve palsy', eye: 'right' }, { diagnosis: 'myasthenia', eye: null }],
  conditions: [{ breaker: 'myasthenia', presence: 'absent' }],
};

test('what a fold holds is told with sides and directions in words', () => {
  assert.equal(plain(lensWords(full)), 'RIGHT eye minus 8.25 D, LEFT eye plus 2 D');
  assert.equal(plain(torsionWords(full)), 'RIGHT eye excyclo 6 °, LEFT eye incyclo 3 °, down-gaze 0 °');
  assert.equal(plain(postureWords(full)), 'head tilted to the left shoulder 10 °');
});

test('the less common parts are told in one line, and say none when they hold nothing', () => {
  assert.equal(lessOftenWords(empty), 'none');
  assert.match(lessOftenWords(full), /^sixth nerve palsy, RIGHT eye, myasthenia · head tilted .* · 1 duction, 1 forced duction · 1 absent$/);
});

test('an examination with all of it is the same body when it is opened and saved unchanged', () => {
  const body = bodyOf(full);
  assert.deepEqual(body.head_posture, { tilt: 'left', tilt_deg: 10 });
  assert.deepEqual(body.diagnoses, [{ diagnosis: 'sixth nerve palsy', eye: 'right' }, { diagnosis: 'myasthenia' }]);
  assert.ok(!('dvd_right_pd' in body));
  assert.equal(body.excyclotorsion_down_deg, 0);
  assert.deepEqual(bodyOf(draftFrom(body)), body);
});
