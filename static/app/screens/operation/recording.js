/**
 * An operation record in the making, as one value that is kept as a draft. The engine fills it in; only the surgeon's touch says
 * of a muscle that it was done so. Values in, values out.
 */

/** @typedef {import('../../words/operation.js').Work} Work */
/**
 * @typedef {object} Muscle
 * @property {'right' | 'left'} eye
 * @property {import('../../words/anatomy.js').Muscle} muscle
 * @property {Work | null} planned
 * @property {Work | null} done
 * @property {string} reason
 * @property {number | null} insertion_mm
 * @property {number | null} limbus_mm
 * @property {string | null} duction_before
 * @property {string | null} duction_after
 * @property {number | null} scarring
 * @property {string} state
 * @property {string | null} suture
 * @property {string | null} gauge
 * @property {string | null} needle
 * @property {boolean} adjustable
 */
/** @typedef {{complication: string, eye: string | null, muscle: string | null, note: string, answer: string}} Complicated */
/** @typedef {{muscles: Muscle[], complications: Complicated[], tied_at: string | null, block_at: string | null, window: any, note: string, [field: string]: any}} Body */
/** @typedef {{body: Body, said: string[], changing: string[], stage: string}} Recording `said`: the muscles that the surgeon has spoken of */

export const COMPLICATIONS = 'complications';
export const AROUND = 'around';
export const CHECK = 'check';

/** @param {{eye: string, muscle: string}} place */
export const keyOf = ({ eye, muscle }) => `${eye} ${muscle}`;

/** Filled in from the plan; nothing is said yet. @param {Body} body @returns {Recording} */
export const begun = (body) => ({ body, said: [], changing: [], stage: keyOf(body.muscles[0]) });

/** A saved record, to be corrected; what it leaves out has its default. @param {Body} body @returns {Recording} */
export const resumed = (body) => ({ body: { ...NOTHING_ELSE, ...structuredClone(body), muscles: body.muscles.map((muscle) => ({ ...UNSAID, ...muscle })) }, said: body.muscles.map(keyOf), changing: [], stage: CHECK });

/** @param {Recording} recording */
export const stagesOf = ({ body }) => [...body.muscles.map(keyOf), COMPLICATIONS, AROUND, CHECK];

/** @param {Recording} recording @param {string} stage @returns {Recording} */
export const at = (recording, stage) => ({ ...recording, stage });

/** @param {Recording} recording @returns {Recording} */
export function onward(recording) {
  const stages = stagesOf(recording);
  return at(recording, stages[Math.min(stages.indexOf(recording.stage) + 1, stages.length - 1)]);
}

/** @param {Recording} recording @param {Partial<Body>} fields @returns {Recording} */
export const told = (recording, fields) => ({ ...recording, body: { ...recording.body, ...fields } });

/** @param {Recording} recording @param {string} key @returns {Muscle | undefined} */
export const muscleOf = ({ body }, key) => body.muscles.find((muscle) => keyOf(muscle) === key);

/**
 * Something said of one muscle. With nothing adjustable left the times of the suture go too.
 * @param {Recording} recording
 * @param {string} key
 * @param {Partial<Muscle>} fields
 * @returns {Recording}
 */
export function tellMuscle(recording, key, fields) {
  const muscles = recording.body.muscles.map((muscle) => (keyOf(muscle) === key ? { ...muscle, ...fields } : muscle));
  const next = told(recording, { muscles });
  return isAdjustable(next.body) ? next : told(next, { tied_at: null, block_at: null, window: null });
}

/** @param {Body} body */
export const isAdjustable = ({ muscles }) => muscles.some(({ adjustable, done }) => adjustable && done);

/** Done as planned: the next muscle comes. @param {Recording} recording @param {string} key @returns {Recording} */
export function asPlanned(recording, key) {
  const muscle = muscleOf(recording, key);
  if (!muscle?.planned) return recording;
  const done = tellMuscle(recording, key, { done: muscle.planned, reason: '' });
  return spoken({ ...done, changing: done.changing.filter((other) => other !== key) }, key);
}

/** Something else was done: what, is said next. @param {Recording} recording @param {string} key @returns {Recording} */
export const differently = (recording, key) => ({ ...recording, changing: [...new Set([...recording.changing, key])], said: recording.said.filter((other) => other !== key) });

/** The surgeon has spoken of the muscle. @param {Recording} recording @param {string} key @returns {Recording} */
export const spoken = (recording, key) => onward({ ...recording, said: [...new Set([...recording.said, key])] });

/** Whether another thing was done than planned, or is being said. @param {Recording} recording @param {Muscle} muscle */
export const isDifferent = (recording, muscle) => recording.changing.includes(keyOf(muscle)) || JSON.stringify(muscle.planned) !== JSON.stringify(muscle.done);

/**
 * What still keeps a muscle from counting as said, or nothing.
 * @param {Muscle} muscle
 * @returns {string | undefined}
 */
export function lacking(muscle) {
  if (muscle.done && (muscle.done.operation === 'recess' || muscle.done.operation === 'resect') && muscle.done.mm === null) return 'How many millimetres were done?';
  if (JSON.stringify(muscle.planned) !== JSON.stringify(muscle.done) && muscle.reason.trim().length < 3) return 'Say in a few words why.';
  return undefined;
}

/** @param {Recording} recording @param {'right' | 'left'} eye @param {import('../../words/anatomy.js').Muscle} muscle @returns {Recording} */
export function withMuscle(recording, eye, muscle) {
  const key = keyOf({ eye, muscle });
  if (muscleOf(recording, key)) return at(recording, key);
  /** @type {Muscle} */
  const added = { ...UNSAID, eye, muscle, done: { operation: muscle === 'SO' || muscle === 'IO' ? 'weaken' : 'recess', mm: null, offset: null } };
  return { ...told(recording, { muscles: [...recording.body.muscles, added] }), changing: [...recording.changing, key], stage: key };
}

/** A muscle that was added by mistake. @param {Recording} recording @param {string} key @returns {Recording} */
export function withoutMuscle(recording, key) {
  const left = recording.body.muscles.filter((muscle) => keyOf(muscle) !== key);
  return { ...told(recording, { muscles: left }), said: recording.said.filter((other) => other !== key), changing: recording.changing.filter((other) => other !== key), stage: keyOf(left[0]) };
}

/** The suture and needle of the last muscle before this one that has any. @param {Recording} recording @param {string} key */
export function usedBefore({ body }, key) {
  const before = body.muscles.slice(0, body.muscles.findIndex((muscle) => keyOf(muscle) === key));
  const last = before.reverse().find(({ suture, gauge, needle }) => suture || gauge || needle);
  return last ? { suture: last.suture, gauge: last.gauge, needle: last.needle } : null;
}

/** The record's body: texts without white space around them. @param {Recording} recording @returns {Body} */
export const bodyOf = ({ body }) => ({
  ...body,
  note: body.note.trim(),
  muscles: body.muscles.map((muscle) => ({ ...muscle, reason: muscle.reason.trim() })),
  complications: body.complications.map((each) => ({ ...each, note: each.note.trim(), answer: each.answer.trim() })),
});

const NOTHING_ELSE = { complications: [], anaesthesia: null, started_at: null, ended_at: null, tied_at: null, block_at: null, window: null, note: '' };

const UNSAID = {
  planned: null,
  done: null,
  reason: '',
  insertion_mm: null,
  limbus_mm: null,
  duction_before: null,
  duction_after: null,
  scarring: null,
  state: 'in place',
  suture: null,
  gauge: null,
  needle: null,
  adjustable: false,
};
