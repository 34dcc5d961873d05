import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { test } from 'node:test';
import { grouped, isMissing, isSuggestedCode } from '../../../static/app/screens/findings/groups.js';
import { placesUnder } from '../../../static/app/screens/findings/places.js';

const finding = (code) => ({ code, text: code, provenance: { mark: '', source: '' }, facts: {} });
const shown = (codes) => grouped(codes.map(finding)).map(({ title, findings }) => [title, ...findings.map(({ code }) => code)]);

test('a finding stands where it is looked for, in the engine’s order', () => {
  assert.deepEqual(shown(['horizontal_distance', 'pattern', 'near_distance', 'three_step', 'limited_duction', 'poorer_eye']), [
    ['Straight ahead', 'horizontal_distance', 'near_distance'],
    ['From gaze to gaze', 'pattern'],
    ['Vertical, torsion, head', 'three_step'],
    ['Movement and earlier surgery', 'limited_duction'],
    ['Sight', 'poorer_eye'],
  ]);
});

test('no finding is lost: an unknown one stands first, and each is in one group, missing or a suggested code', () => {
  assert.deepEqual(shown(['something_new']), [['Straight ahead', 'something_new']]);
  const folder = new URL('../../../planner/findings/', import.meta.url);
  const sources = readdirSync(folder).filter((name) => name.endsWith('.py')).map((name) => readFileSync(new URL(name, folder), 'utf8')).join('');
  const codes = [...new Set([...sources.matchAll(/code="([a-z_0-9]+)"/g)].map(([, code]) => code))];
  assert.ok(codes.length > 5);
  const findings = codes.map(finding);
  const placed = grouped(findings).flatMap((group) => group.findings);
  assert.equal(placed.length + findings.filter((each) => isMissing(each) || isSuggestedCode(each)).length, findings.length);
});

test('the picture shows what counts, and as read only where that differs', () => {
  const measure = (raw_pd, corrected_pd) => ({ raw_pd, corrected_pd, limits_pd: 5, readings: 1, steps: [] });
  const at = (gaze, more) => ({ gaze, range: 'distance', correction: 'with', condition: 'plain', horizontal: null, vertical: null, ...more });
  const measured = [
    at('primary', { horizontal: measure(40, 37.6), vertical: measure(4, 4) }),
    at('up', { horizontal: measure(30, 30) }),
    at('primary', { condition: 'after patching', horizontal: measure(50, 50) }),
    at('primary', { range: 'near', horizontal: measure(45, 45) }),
  ];
  assert.deepEqual(placesUnder(measured, { range: 'distance', correction: 'with' }), [
    { gaze: 'primary', horizontal_pd: 37.6, vertical_pd: 4, raw_pd: 40 },
    { gaze: 'up', horizontal_pd: 30, vertical_pd: null, raw_pd: null },
  ]);
});
