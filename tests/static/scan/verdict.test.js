import assert from 'node:assert/strict';
import { test } from 'node:test';
import { ownPieces, verdictOn } from '../../../static/app/screens/scan/verdict.js';

const record = (id, kind, body = {}, supersedes = []) => ({ id, kind, patient: 'p1', supersedes, body, digest: `digest of ${id}` });
const patient = record('p1', 'patient');
const plan = record('l1', 'plan', { patient_id: 'p1', examination_id: 'e1' });
const signature = record('s1', 'signature', { plan_id: 'l1', plan_digest: 'digest of l1' });
const signed = [patient, plan, signature];
const paper = { plan_id: 'l1', plan_digest: 'digest of l1', patient_id: 'p1' };

test('the plan that is signed here is the same', () => {
  const { word, signature: found } = verdictOn(signed, paper);
  assert.equal(word, 'same');
  assert.equal(found.id, 's1');
});

test('a plan that a newer one stands in place of is replaced, and the newer one is at hand', () => {
  const newer = [record('l2', 'plan', {}, ['l1']), record('s2', 'signature', { plan_id: 'l2', plan_digest: 'digest of l2' })];
  const { word, plan: found, signature: by } = verdictOn([...signed, ...newer], paper);
  assert.deepEqual([word, found.id, by.id], ['replaced', 'l2', 's2']);
});

test('it is replaced as well where this device no longer holds the older plan', () => {
  assert.equal(verdictOn([patient, record('l2', 'plan', {}, ['l1'])], paper).word, 'replaced');
});

test('a plan or a signature that was taken back is taken back, whether the plan is held here or not', () => {
  for (const record_id of ['l1', 's1']) {
    assert.equal(verdictOn([...signed, record('r1', 'retraction', { record_id, reason: 'another day' })], paper).word, 'taken back');
  }
  assert.equal(verdictOn([record('r1', 'retraction', { record_id: 'l1', reason: 'another day' })], paper).word, 'taken back');
});

test('another signed plan of the same patient is told', () => {
  const other = [record('l9', 'plan', {}), record('s9', 'signature', { plan_id: 'l9', plan_digest: 'digest of l9' })];
  assert.equal(verdictOn([patient, ...other], paper).word, 'another here');
});

test('a plan that never came here, or came without its signature, is unknown here', () => {
  assert.equal(verdictOn([], paper).word, 'unknown here');
  assert.equal(verdictOn([patient, plan], paper).word, 'unknown here');
});

test('this device makes its own card where it holds the same one, and of no other', () => {
  const { patient: of, plan: by, signature: signer } = ownPieces(signed, verdictOn(signed, paper));
  assert.deepEqual([of.id, by.id, signer.id], ['p1', 'l1', 's1']);
  assert.equal(ownPieces([plan, signature], verdictOn([plan, signature], paper)), null);
  const other = [patient, record('l9', 'plan', { patient_id: 'p1' }), record('s9', 'signature', { plan_id: 'l9', plan_digest: 'digest of l9' })];
  assert.equal(ownPieces(other, verdictOn(other, paper)), null);
});
