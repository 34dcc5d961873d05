/** What became of a file, in words. Pure. */
import { counted } from '../hand-over/choices.js';

/**
 * @param {import('../../handover/taking.js').Taken} taken
 * @returns {string[]}
 */
export function toldOf({ from, taken, here, notHeld, carried, stuck }) {
  const who = from.full_name || from.username;
  return [
    taken ? `${counted(taken)} from ${who} ${taken === 1 ? 'is' : 'are'} on this device now.` : 'Nothing in it was new: all of it was here already.',
    taken && here ? `${counted(here)} ${here === 1 ? 'was' : 'were'} here already.` : '',
    carried ? `${counted(carried)} the clinic has not got yet: this device brings ${carried === 1 ? 'it' : 'them'} there with its own.` : '',
    stuck ? `${counted(stuck)} only the device that made ${stuck === 1 ? 'it' : 'them'} can send. You can read ${stuck === 1 ? 'it' : 'them'} here meanwhile.` : '',
    notHeld ? `${counted(notHeld)} ${notHeld === 1 ? 'was' : 'were'} left out: a theatre device holds signed plans and their patients alone.` : '',
  ].filter(Boolean);
}
