import assert from 'node:assert/strict';
import { test } from 'node:test';
import { caseOf } from '../../../static/app/planning/case.js';
import { allOptions, isCombined, ownerOf, partsOf, turned } from '../../../static/app/planning/combining.js';
import { withClinics } from '../../../static/app/planning/clinic-tables.js';

const dose = (eye, muscle, mm) => ({ eye, muscle, mm });
const both = { id: 'recess-both-mr', doses: [dose('right', 'MR', 5), dose('left', 'MR', 5)] };
const one = { id: 'recess-mr-resect-lr-left', doses: [] };
const vertical = { id: 'recess-sr-right', answers: 'vertical', doses: [dose('right', 'SR', 3)] };
const moved = { id: 'offset-both-mr', answers: 'pattern', doses: [dose('right', 'MR', null), dose('left', 'MR', null)] };
const offered = [both, one, vertical, moved];

test('options are marked and unmarked, in the order of marking', () => {
  const two = turned(turned([], both, offered), vertical, offered);
  assert.deepEqual(two, ['recess-both-mr', 'recess-sr-right']);
  assert.deepEqual(turned(two, both, offered), ['recess-sr-right']);
});

test('a second horizontal option takes the place of the first', () => {
  assert.deepEqual(turned(['recess-both-mr', 'recess-sr-right'], one, offered), ['recess-sr-right', 'recess-mr-resect-lr-left']);
});

test('a figure set in a combined option belongs to the part that has the millimetres', () => {
  const combined = { id: 'recess-both-mr+offset-both-mr', doses: both.doses };
  const proposal = { options: [both, one], additions: [vertical, moved], combined };
  assert.equal(ownerOf(proposal, combined, dose('right', 'MR', 5)), 'recess-both-mr');
  assert.equal(ownerOf(proposal, both, dose('right', 'MR', 5)), 'recess-both-mr');
  assert.deepEqual(allOptions(proposal).map(({ id }) => id), [...offered.map(({ id }) => id), combined.id]);
  assert.deepEqual([isCombined(combined.id), partsOf(combined.id)], [true, ['recess-both-mr', 'offset-both-mr']]);
});

test('a plain case says nothing that is as usual', () => {
  const facts = { examination: {}, table: 't', born_on: '2020-01-01', changes: [] };
  assert.deepEqual(Object.keys(caseOf({ ...facts, aim: 'distance', overcorrection_pd: 0, combine: [], clinic_table: null })), ['schema', 'examination', 'table', 'born_on', 'changes']);
  const full = caseOf({ ...facts, aim: 'near', overcorrection_pd: 5, combine: ['a', 'b'], clinic_table: { id: 't' } });
  assert.deepEqual([full.aim, full.overcorrection_pd, full.combine, full.clinic_table], ['near', 5, ['a', 'b'], { id: 't' }]);
});

test('a clinic’s table stands after the engine’s, is said to be the clinic’s own, and never takes an engine’s place', () => {
  const engines = [{ id: 'classic', name: 'Classic', caution: '', provenance: { mark: 'published', source: '' } }];
  const body = { id: 'ours', name: 'Ours', caution: 'Few cases.', origin: { mark: 'from memory, verify', publication: 'Our audit', place: 'table 2' } };
  const listed = withClinics(engines, [body, { ...body, id: 'classic' }]);
  assert.deepEqual(listed.map(({ id, clinics_own = false }) => [id, clinics_own]), [['classic', false], ['ours', true]]);
  assert.equal(listed[1].provenance.source, 'Our audit, table 2');
});
