/** A visit after an operation in the making, kept as a draft, and the record body that is made of it. Values in, values out. */

/** @typedef {import('../../words/anatomy.js').Eye} Eye */
/** @typedef {{sign: string, eye: Eye | null}} SignSeen */
/** @typedef {{name: string, from_on: string, to_on: string}} Ahead a planned visit by its dates */
/**
 * @typedef {object} Visiting
 * @property {string} seen_on
 * @property {string | null} planned name of the planned visit; null: the one that the day proposes
 * @property {string} named what an unplanned visit is called, where `planned` is `''`
 * @property {boolean} looked for signs of infection
 * @property {SignSeen[]} signs
 * @property {number | null} stereo_octaves_lost
 * @property {boolean} stereo_lost_to_nil
 * @property {string | null} reoperation
 * @property {Ahead[] | null} ahead the visits after this one planned anew; null: as they were
 * @property {string} ahead_reason
 * @property {string} note
 * @property {boolean} unmeasured nothing was measured, and this is said
 */

/** What is looked for, in the record's words; a fever has no side. */
export const SIGNS = ['growing pain', 'swollen lids', 'discharge', 'vision has dropped', 'moving the eye hurts', 'eye stands forward', 'fever'];
export const WITHOUT_SIDE = ['fever'];
export const REOPERATIONS = ['not needed', 'to be considered', 'planned'];
const DAY_MS = 86_400_000;

/** @param {string} today @returns {Visiting} */
export const newVisit = (today) => ({
  seen_on: today,
  planned: null,
  named: '',
  looked: false,
  signs: [],
  stereo_octaves_lost: null,
  stereo_lost_to_nil: false,
  reoperation: null,
  ahead: null,
  ahead_reason: '',
  note: '',
  unmeasured: false,
});

/**
 * The draft that shows a saved visit. Its name is kept as it is, planned or not.
 * @param {any} body of a `follow_up`
 * @param {string} operatedOn
 * @returns {Visiting}
 */
export const visitFrom = (body, operatedOn) => ({
  seen_on: body.seen_on,
  planned: body.visit,
  named: '',
  looked: body.infection_signs != null,
  signs: body.infection_signs ?? [],
  stereo_octaves_lost: body.stereo_octaves_lost ?? null,
  stereo_lost_to_nil: body.stereo_lost_to_nil ?? false,
  reoperation: body.reoperation ?? null,
  ahead: body.ahead?.map((/** @type {any} */ each) => ({ name: each.name, from_on: dayAfter(operatedOn, each.first_day), to_on: dayAfter(operatedOn, each.last_day) })) ?? null,
  ahead_reason: body.ahead_reason ?? '',
  note: body.note ?? '',
  unmeasured: !body.examination_id,
});

/** @param {string} from @param {number} days */
export const dayAfter = (from, days) => new Date(Date.parse(from) + days * DAY_MS).toISOString().slice(0, 10);

/** @param {string} from @param {string} to */
const daysAfter = (from, to) => Math.round((Date.parse(to) - Date.parse(from)) / DAY_MS);

/** What the visit is called. @param {Visiting} visiting @param {string | null} proposed by its day */
export const nameOf = ({ planned, named }, proposed) => (planned === null ? (proposed ?? named.trim()) : planned || named.trim());

/**
 * Whether a sign was seen there.
 * @param {SignSeen[]} signs
 * @param {string} sign
 * @param {Eye | null} eye
 */
export const isSeen = (signs, sign, eye) => signs.some((each) => each.sign === sign && (each.eye ?? null) === eye);

/**
 * The signs with one of them turned, in one order whatever the order of touching.
 * @param {SignSeen[]} signs
 * @param {string} sign
 * @param {Eye | null} eye
 * @returns {SignSeen[]}
 */
export function turned(signs, sign, eye) {
  const next = isSeen(signs, sign, eye) ? signs.filter((each) => !isSeen([each], sign, eye)) : [...signs, { sign, eye }];
  const order = (/** @type {SignSeen} */ each) => SIGNS.indexOf(each.sign) * 3 + ['right', 'left'].indexOf(each.eye ?? '');
  return [...next].sort((one, other) => order(one) - order(other));
}

/**
 * What still keeps it from being asked about, or nothing.
 * @param {Visiting} visiting
 * @param {string} name
 * @returns {string | undefined}
 */
export function lacking({ ahead, ahead_reason: reason }, name) {
  if (!name) return 'What is this visit called?';
  if (ahead?.some((each) => !each.name.trim())) return 'A visit ahead has no name.';
  if (ahead && !reason.trim()) return 'Why are the visits planned anew?';
  return undefined;
}

/**
 * @param {Visiting} visiting
 * @param {object} with_
 * @param {string} with_.name
 * @param {{id: string, digest: string, body: any}} with_.operation the version that the visit names
 * @param {{id: string, digest: string} | undefined} with_.examination
 */
export function bodyOf({ seen_on, looked, signs, stereo_octaves_lost, stereo_lost_to_nil, reoperation, ahead, ahead_reason, note }, { name, operation, examination }) {
  const on = operation.body.operated_on;
  return {
    schema: 1,
    operation_id: operation.id,
    visit: name,
    seen_on,
    ...(examination ? { examination_id: examination.id, examination_digest: examination.digest } : {}),
    ...(stereo_octaves_lost === null ? {} : { stereo_octaves_lost }),
    ...(stereo_lost_to_nil ? { stereo_lost_to_nil } : {}),
    ...(looked ? { infection_signs: signs.map(({ sign, eye }) => (eye ? { sign, eye } : { sign })) } : {}),
    ...(ahead ? { ahead: ahead.map((each) => ({ name: each.name.trim(), first_day: daysAfter(on, each.from_on), last_day: daysAfter(on, each.to_on) })), ahead_reason: ahead_reason.trim() } : {}),
    ...(reoperation ? { reoperation } : {}),
    note: note.trim(),
  };
}
