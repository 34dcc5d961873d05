import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { ACUITIES } from '../../../static/app/parts/acuity-pad/acuities.js';
import { LIMITATIONS } from '../../../static/app/parts/duction-pad/ductions.js';
import { GRADES } from '../../../static/app/parts/version-pad/grades.js';
import { LIMITS } from '../../../static/app/parts/number-pad/limits.js';
import { STEPS } from '../../../static/app/parts/number-pad/steps.js';

const source = (name) => readFileSync(new URL(`../../../planner/records/${name}.py`, import.meta.url), 'utf8');
const examination = source('examination');

/** The limits that the engine's record gives a field, read from its own text. */
function within(text, owner, field) {
  const body = text.slice(text.indexOf(`class ${owner}:`));
  const [, low, high] = new RegExp(`\\b${field}: Annotated\\[\\w+, Within\\((-?[\\d.]+), (-?[\\d.]+)`).exec(body);
  return { low: Number(low), high: Number(high) };
}

test('the pads block exactly what the engine refuses', () => {
  assert.deepEqual(LIMITS.horizontal_pd, within(examination, 'Reading', 'horizontal_pd'));
  assert.deepEqual(LIMITS.vertical_pd, within(examination, 'Reading', 'vertical_pd'));
  assert.deepEqual(LIMITS.previous_mm, within(examination, 'PreviousOperation', 'mm'));
  assert.deepEqual(LIMITS.year, within(examination, 'PreviousOperation', 'year'));
  assert.deepEqual(LIMITS.dose_mm, within(source('case'), 'Change', 'mm'));
  assert.deepEqual(LIMITS.moved_mm, within(source('operation'), 'MovedMuscle', 'mm'));
  for (const [name, limits] of Object.entries({ DoneMm: LIMITS.dose_mm, FromLimbus: LIMITS.from_limbus_mm })) {
    const [, low, high] = new RegExp(`^${name} = Annotated\\[float, Within\\((-?[\\d.]+), (-?[\\d.]+)`, 'm').exec(source('operation'));
    assert.deepEqual(limits, { low: Number(low), high: Number(high) }, name);
  }
  assert.deepEqual(LIMITS.overcorrection_pd, within(source('case'), 'Case', 'overcorrection_pd'));
  assert.deepEqual(LIMITS.second_pd, within(source('technique'), 'Prisms', 'horizontal_second_pd'));
  assert.deepEqual(LIMITS.second_pd, within(source('technique'), 'Prisms', 'vertical_second_pd'));
  assert.deepEqual(LIMITS.prism_from_cornea_mm, within(source('technique'), 'Prisms', 'prism_from_cornea_mm'));
  assert.deepEqual(LIMITS.stereo_octaves_lost, within(source('follow_up'), 'FollowUp', 'stereo_octaves_lost'));
  assert.deepEqual(LIMITS.pupil_distance_mm, within(examination, 'Examination', 'pupil_distance_mm'));
  for (const field of ['turn_deg', 'tilt_deg', 'chin_deg']) assert.deepEqual(LIMITS.posture_deg, within(source('motility'), 'HeadPosture', field));
  for (const [name, limits] of Object.entries({ Lens: LIMITS.lens_d, Torsion: LIMITS.torsion_deg, Dissociated: LIMITS.dvd_pd, AxialLength: LIMITS.axial_length_mm })) {
    const [, low, high] = new RegExp(`^${name} = Annotated\\[float, Within\\((-?[\\d.]+), (-?[\\d.]+)`, 'm').exec(examination);
    assert.deepEqual(limits, { low: Number(low), high: Number(high) }, name);
  }
  const duction = within(source('motility'), 'Duction', 'grade');
  assert.deepEqual([LIMITATIONS.at(-1), LIMITATIONS[0]], [duction.low, duction.high]);
  const { low, high } = within(source('motility'), 'Version', 'grade');
  assert.deepEqual([GRADES[0], GRADES.at(-1), GRADES.length], [low, high, high - low + 1]);
});

test('the acuity pad offers the lines of the engine in its order', () => {
  const body = /class Acuity\(.*?(?=\nclass |\n@dataclass)/s.exec(examination)[0];
  const words = [...body.matchAll(/ = "([^"]+)"/g)].map(([, word]) => word);
  assert.deepEqual(ACUITIES, words);
});

test('the steps rise and stay within the limits', () => {
  for (const [axis, steps] of Object.entries(STEPS)) {
    assert.deepEqual(steps, [...new Set(steps)].sort((one, other) => one - other));
    assert.ok(steps.at(-1) <= LIMITS[`${axis}_pd`].high);
  }
});
