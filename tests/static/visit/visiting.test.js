import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { REOPERATIONS, SIGNS, bodyOf, lacking, nameOf, newVisit, turned, visitFrom } from '../../../static/app/screens/visit/visiting.js';

const OPERATION = { id: 'O', digest: 'd', body: { operated_on: '2026-11-25' } };
const visit = newVisit('2026-12-02');
const body = (/** @type {any} */ fields = {}, /** @type {any} */ examination = undefined) => bodyOf({ ...visit, ...fields }, { name: 'Week 1', operation: OPERATION, examination });

test('the words of the screen are those of the record', () => {
  const source = readFileSync(new URL('../../../planner/records/follow_up.py', import.meta.url), 'utf8');
  const wordsOf = (/** @type {string} */ name) => [...(new RegExp(`class ${name}\\(.*?(?=\\n@dataclass|\\nclass )`, 's').exec(source)?.[0] ?? '').matchAll(/ = "([^"]+)"/g)].map(([, word]) => word);
  assert.deepEqual([...SIGNS].sort(), wordsOf('InfectionSign').sort());
  assert.deepEqual(REOPERATIONS, wordsOf('Reoperation'));
});

test('a visit is what its day proposes until somebody says otherwise', () => {
  assert.equal(nameOf(visit, 'Week 1'), 'Week 1');
  assert.equal(nameOf({ ...visit, planned: 'Day 1' }, 'Week 1'), 'Day 1');
  assert.equal(nameOf({ ...visit, planned: '', named: ' Red eye ' }, 'Week 1'), 'Red eye');
  assert.match(String(lacking(visit, '')), /called/);
});

test('nobody looked is not the same as nothing was found', () => {
  assert.equal(body().infection_signs, undefined);
  assert.deepEqual(body({ looked: true }).infection_signs, []);
});

test('a sign has its side, a fever has none, and a second touch takes it back', () => {
  const signs = turned(turned([], 'fever', null), 'discharge', 'left');
  assert.deepEqual(signs, [{ sign: 'discharge', eye: 'left' }, { sign: 'fever', eye: null }]);
  assert.deepEqual(body({ looked: true, signs }).infection_signs, [{ sign: 'discharge', eye: 'left' }, { sign: 'fever' }]);
  assert.deepEqual(turned(signs, 'discharge', 'left'), [{ sign: 'fever', eye: null }]);
});

test('the examination is named with its digest, or not at all', () => {
  assert.deepEqual([body({}, { id: 'E', digest: 'of E' }).examination_id, body({}, { id: 'E', digest: 'of E' }).examination_digest], ['E', 'of E']);
  assert.ok(!('examination_id' in body()));
});

test('visits planned anew are told in days after the operation, with a reason', () => {
  const ahead = [{ name: ' Week 3 ', from_on: '2026-12-15', to_on: '2026-12-18' }];
  assert.match(String(lacking({ ...visit, ahead }, 'Week 1')), /Why/);
  assert.match(String(lacking({ ...visit, ahead: [{ ...ahead[0], name: ' ' }], ahead_reason: 'Ferry.' }, 'Week 1')), /name/);
  assert.equal(lacking({ ...visit, ahead, ahead_reason: 'Ferry.' }, 'Week 1'), undefined);
  const told = body({ ahead, ahead_reason: ' Ferry. ' });
  assert.deepEqual([told.ahead, told.ahead_reason], [[{ name: 'Week 3', first_day: 20, last_day: 23 }], 'Ferry.']);
});

test('a saved visit comes back as it was', () => {
  const said = { looked: true, signs: [{ sign: 'discharge', eye: 'left' }], stereo_octaves_lost: 1, stereo_lost_to_nil: true, reoperation: 'to be considered', note: 'Sticky.', ahead: [{ name: 'Week 3', from_on: '2026-12-15', to_on: '2026-12-18' }], ahead_reason: 'Ferry.' };
  const saved = body(said, { id: 'E', digest: 'of E' });
  const again = visitFrom(saved, '2026-11-25');
  assert.deepEqual(bodyOf(again, { name: nameOf(again, 'Day 1'), operation: OPERATION, examination: { id: 'E', digest: 'of E' } }), saved);
});
