/**
 * Diagnoses and conditions in the engine's own words (planner/records/diagnosis.py), the common ones first.
 * tests/static/measure/known.test.js holds the two together.
 */
export const DIAGNOSES = [
  'infantile esotropia',
  'accommodative esotropia',
  'sensory deviation',
  'consecutive deviation',
  'convergence insufficiency',
  'sixth nerve palsy',
  'fourth nerve palsy',
  'third nerve palsy',
  'thyroid eye disease',
  'Duane syndrome',
  'Brown syndrome',
  'orbital fracture',
  'strabismus with high myopia',
  'monocular elevation deficiency',
  'congenital fibrosis of the extraocular muscles',
  'Moebius syndrome',
  'progressive external ophthalmoplegia',
  'internuclear ophthalmoplegia',
  'myasthenia',
  'skew deviation',
  'nystagmus',
];

export const BREAKERS = [
  'dissociated vertical deviation',
  'restriction or contracture of a vertical rectus',
  'previous vertical muscle surgery',
  'palsy of more than one muscle',
  'skew deviation',
  'myasthenia',
  'small vertical deviation that goes with a horizontal one',
];
