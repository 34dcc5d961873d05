import assert from 'node:assert/strict';
import { test } from 'node:test';
import { byPatient, counted, dryRun, makeBundle } from '../../../static/app/exchange/bundles.js';

const ID = (n) => `0192f0c1-0000-7000-8000-${String(n).padStart(12, '0')}`;
const record = (n, patient, more = {}) => ({ id: ID(n), kind: 'patient', clinic: 'C', patient: ID(patient), author: 'a', device: 'D', recorded_at: 'T', supersedes: [], body: {}, digest: `d${n}`, receipt: 'secret', position: n, ...more });
const main = (n, patient) => ({ fullUrl: `u/${n}`, resource: { resourceType: 'Patient', id: ID(n), extension: [{ url: 'x/StructureDefinition/ledger-record', extension: [{ url: 'patient', valueString: ID(patient) }] }] } });
const quiet = () => {};

test('records go patient by patient, in the order of the ledger, and what is unsent stands last', () => {
  const groups = byPatient([record(4, 2, { position: null }), record(3, 1), record(2, 2), record(1, 1)]);
  assert.deepEqual(groups.map((group) => group.map(({ id }) => id)), [[ID(1), ID(3)], [ID(2), ID(4)]]);
});

test('a Bundle is made of the parts, and what every part has stands there once', async () => {
  const asked = [];
  const ask = async (name, payload) => {
    asked.push(payload);
    return { resourceType: 'Bundle', entry: [{ fullUrl: `u/${payload.records[0].id}` }, { fullUrl: 'codes' }] };
  };
  const told = [];
  const bundle = await makeBundle({ records: [record(1, 1), record(2, 2)], export_id: 'E', exported_at: 'T', ask, cards: async () => [], onProgress: (...each) => told.push(each) });
  assert.deepEqual(bundle.entry.map(({ fullUrl }) => fullUrl), [`u/${ID(1)}`, 'codes', `u/${ID(2)}`]);
  assert.deepEqual(told, [[0, 2], [1, 2]]);
  assert.ok(!('receipt' in asked[0].records[0]));
});

test('a Bundle is read patient by patient, and its rows keep their places', async () => {
  const asked = [];
  const ask = async (name, { bundle, bringer }) => {
    asked.push({ count: bundle.entry.length, held: bringer.held.map(({ id }) => id) });
    const rows = bundle.entry.map((entry, at) => ({ place: at + 1, fate: 'taken' }));
    return { rows, records: [{ id: bundle.entry[0].resource.id, digest: 'd' }] };
  };
  const bundle = { resourceType: 'Bundle', entry: [main(1, 1), { resource: { id: 'follows' } }, main(2, 2), { resource: { of: ID(1) } }] };
  const found = await dryRun({ bundle, bringer: { clinic: 'C', full_name: 'N', may: [] }, records: [record(2, 2), record(9, 9)], ask, onProgress: quiet });
  assert.deepEqual(found.rows.map(({ place }) => place), [1, 2, 3, 4]);
  assert.deepEqual(asked, [{ count: 2, held: [] }, { count: 2, held: [ID(2), ID(1)] }]);
});

test('what is no Bundle is left to the engine to refuse', async () => {
  const asked = [];
  const ask = async (name, payload) => (asked.push(payload.bundle.resourceType), { rows: [], records: [] });
  for (const bundle of [null, 3, {}, { entry: 5 }, { entry: [null, 3] }]) await dryRun({ bundle, bringer: { clinic: 'C', full_name: 'N', may: [] }, records: [], ask, onProgress: quiet });
  assert.equal(asked.length, 5);
});

test('fates are counted in the order in which they come', () => {
  assert.deepEqual(counted([{ fate: 'taken' }, { fate: 'not taken' }, { fate: 'taken' }]), [{ fate: 'taken', count: 2 }, { fate: 'not taken', count: 1 }]);
});
