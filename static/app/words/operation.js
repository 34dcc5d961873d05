/** What is said of an operation that was done, in the record's own words. */
import { operationWords } from './anatomy.js';
import { mmWords } from './figures.js';

/** @typedef {{operation: import('./anatomy.js').Operation, mm: number | null, offset: 'up' | 'down' | null}} Work */

/** "recess 5.5 mm, tendon moved up", "not operated". @param {Work | null} work */
export function workShort(work) {
  if (!work) return 'not operated';
  const figure = work.mm === null ? '' : ` ${mmWords(work.mm)}`;
  return `${operationWords(work.operation)}${figure}${work.offset ? `, tendon moved ${work.offset}` : ''}`;
}

/** @param {readonly string[]} words */
const choices = (words) => words.map((value) => ({ value, words: value }));

export const SUTURES = ['polyglactin, absorbable', 'polydioxanone, slowly absorbable', 'polyester, non-absorbable', 'polypropylene, non-absorbable', 'nylon, non-absorbable', 'silk, non-absorbable'];
export const GAUGES = ['4-0', '5-0', '6-0', '7-0', '8-0'];
export const NEEDLES = ['spatulated', 'taper', 'taper-cut', 'cutting', 'reverse cutting'];
export const ANAESTHESIA = ['general', 'general with a local block', 'local block', 'topical'];
export const COMPLICATIONS = ['scleral perforation', 'lost muscle', 'bleeding', 'reflex bradycardia', 'other'];
export const STATES_FOUND = ['in place', 'slipped', 'missing'];
export const SCARRING = ['none', 'slight', 'marked', 'dense'];

const NOT_SAID = { value: null, words: 'not said' };
export const PULL_CHOICES = [...choices(['free', 'restricted']), { value: null, words: 'not tested' }];
export const SUTURE_CHOICES = [...choices(SUTURES), NOT_SAID];
export const GAUGE_CHOICES = [...choices(GAUGES), NOT_SAID];
export const STATE_CHOICES = choices(STATES_FOUND);
export const SCARRING_CHOICES = [...SCARRING.map((words, value) => ({ value, words })), NOT_SAID];
export const ANAESTHESIA_CHOICES = [...choices(ANAESTHESIA), NOT_SAID];
