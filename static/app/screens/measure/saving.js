/** From a body to a saved examination: the engine's word on it where the engine is there, then the record. */
import { Refused, ask } from '../../engine/engine.js';
import { saveRecord } from '../../store/store.js';

/** @typedef {{code: string, text: string, field: string, value: string, allowed: string}} FaultFacts */

/**
 * @param {object} body of an examination
 * @returns {Promise<FaultFacts[]>}
 */
export async function faultsOf(body) {
  try {
    await ask('check', { kind: 'examination', body });
    return [];
  } catch (error) {
    if (error instanceof Refused) return error.faults;
    throw error;
  }
}

/**
 * @param {object} work
 * @param {string} work.patient id
 * @param {import('../../store/envelope.js').LedgerRecord} [work.corrected]
 * @param {object} work.body
 * @param {string} work.draftName the draft that this save settles
 */
export const saveExamination = ({ patient, corrected, body, draftName }) =>
  saveRecord('examination', { patient, supersedes: corrected ? [corrected.id] : [], body, draft: draftName });
