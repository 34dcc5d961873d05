/** What a record of an operation or of its adjustment says, field by field in words, so that two of them can be compared. */
import { momentWords } from '../../parts/calendar/ago.js';
import { placeWords } from '../../words/anatomy.js';
import { mmWords } from '../../words/figures.js';
import { workShort } from '../../words/operation.js';
import { deviationWords } from '../../words/reading.js';

/** @typedef {{field: string, words: string, value: string}} Fact */

const SAID = { surgeon_name: 'Surgeon', recorded_by: 'Recorded by', anaesthesia: 'Anaesthesia' };
const TIMES = { started_at: 'Began', ended_at: 'Ended', tied_at: 'Suture tied', block_at: 'Last local block', adjusted_at: 'Adjusted' };

/** @param {any} body @returns {Fact[]} */
export function operatedFacts(body) {
  return [
    ...Object.entries(SAID).flatMap(([field, words]) => fact(field, words, body[field])),
    ...Object.entries(TIMES).flatMap(([field, words]) => fact(field, words, body[field] && momentWords(body[field]))),
    ...fact('block_wait_h', 'Wait after a block', body.block_wait_h && `${body.block_wait_h} hours`),
    ...(body.muscles ?? []).flatMap(muscleFacts),
    ...(body.complications ?? []).map((/** @type {any} */ each, /** @type {number} */ index) => ({
      field: `complication ${index}`,
      words: `Complication ${index + 1}`,
      value: [each.complication, each.eye && each.muscle && placeWords(each), each.note, each.answer].filter(Boolean).join(', '),
    })),
    ...(body.moved ?? []).map((/** @type {any} */ each) => ({ field: `moved ${placeWords(each)}`, words: `${placeWords(each)}, moved`, value: `${each.way} by ${mmWords(each.mm)}${lies(each.limbus_mm)}` })),
    ...['before', 'after'].flatMap((when) => alignments(body, when)),
  ];
}

/** @param {string} field @param {string} words @param {string | null | undefined} value @returns {Fact[]} */
const fact = (field, words, value) => (value ? [{ field, words, value }] : []);

/** @param {any} muscle only one that was spoken of in an operation record; a plan's have no `done` @returns {Fact[]} */
function muscleFacts(muscle) {
  const place = placeWords(muscle);
  const found = [
    muscle.state !== undefined && muscle.state !== 'in place' && `found ${muscle.state}`,
    muscle.insertion_mm != null && `attached ${mmWords(muscle.insertion_mm)} from the limbus before`,
    muscle.duction_before && `forced duction ${muscle.duction_before} before`,
    muscle.duction_after && `forced duction ${muscle.duction_after} after`,
    muscle.scarring != null && `scarring ${muscle.scarring}`,
  ].filter(Boolean);
  const sewn = [muscle.suture, muscle.gauge, muscle.needle, muscle.adjustable && 'adjustable'].filter(Boolean);
  return [
    { field: `done ${place}`, words: place, value: `${workShort(muscle.done ?? null)}${lies(muscle.limbus_mm)}` },
    ...fact(`reason ${place}`, `${place}, reason`, muscle.reason),
    ...fact(`found ${place}`, `${place}, found`, found.join(', ')),
    ...fact(`sewn ${place}`, `${place}, sewn with`, sewn.join(', ')),
  ];
}

/** @param {number | null | undefined} limbus_mm */
const lies = (limbus_mm) => (limbus_mm == null ? '' : `, ${mmWords(limbus_mm)} from the limbus`);

/** @param {any} body @param {string} when @returns {Fact[]} */
const alignments = (body, when) =>
  (body[when] ?? []).map((/** @type {any} */ { range, horizontal_pd, vertical_pd }) => ({
    field: `${when} ${range}`,
    words: `Deviation ${when}, ${range}`,
    value: [horizontal_pd != null && deviationWords('horizontal', horizontal_pd), vertical_pd != null && deviationWords('vertical', vertical_pd)].filter(Boolean).join(', '),
  }));
