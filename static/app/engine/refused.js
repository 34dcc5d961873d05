/** The engine's refusal, whatever the reason: facts to show, most important first. */

/**
 * @typedef {object} EngineFault
 * @property {string} code  from the engine, or `engine_failed`, `engine_stopped`, `engine_slow`
 * @property {string} text
 * @property {string} field
 * @property {string} value
 * @property {string} allowed
 */

export class Refused extends Error {
  /** @param {EngineFault[]} faults */
  constructor(faults) {
    super(faults.map((fault) => fault.text).join(' '));
    this.name = 'Refused';
    this.faults = faults;
  }
}

/**
 * @param {string} code
 * @param {string} text
 */
export function refusal(code, text) {
  return new Refused([{ code, text, field: '', value: '', allowed: '' }]);
}
