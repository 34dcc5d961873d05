/** The clinic's practice as it is being edited: a draft until the engine has found it sound and it is saved. */
import { ask } from '../../engine/engine.js';
import { faultsIn } from '../../planning/use-answer.js';
import { drafts, saveRecord } from '../../store/store.js';
import { useState } from '../../vendor/preact.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {{item: string, choice?: string | null, words?: string | null}} OwnChoice */
/** @typedef {{schema: 1, decided_by: string, reason: string, choices: OwnChoice[], figures: {name: string, value: number}[], visits?: import('./visit-days.js').UsualVisit[] | null}} Practice */

const DRAFT = 'practice';

/**
 * @param {LedgerRecord | null} current
 * @param {LedgerRecord[]} versions
 * @param {string} who
 */
export function usePractice(current, versions, who) {
  const [draft, setDraft] = useState(/** @type {() => Practice | null} */ (() => drafts.get(DRAFT) ?? null));
  const [faults, setFaults] = useState(/** @type {import('../../planning/use-answer.js').FaultFacts[]} */ ([]));
  const practice = draft ?? { schema: 1, decided_by: current?.body.decided_by ?? who, reason: current?.body.reason ?? '', choices: current?.body.choices ?? [], figures: current?.body.figures ?? [], visits: current?.body.visits ?? null };

  /** @param {Partial<Practice>} fields */
  const set = (fields) => {
    const next = /** @type {Practice} */ ({ ...practice, ...fields });
    drafts.keep(DRAFT, next);
    setDraft(next);
  };

  /** @param {string} item @param {{choice: string | null, words: string}} said */
  const setChoice = (item, { choice, words }) => {
    const others = practice.choices.filter((each) => each.item !== item);
    set({ choices: choice || words ? [...others, { item, choice, words: words || null }] : others });
  };

  /** @param {string} name @param {number | null} value null: as common practice */
  const setFigure = (name, value) => {
    const others = practice.figures.filter((each) => each.name !== name);
    set({ figures: value === null ? others : [...others, { name, value }] });
  };

  const save = async () => {
    const { visits, ...rest } = practice;
    const body = {
      ...rest,
      decided_by: practice.decided_by.trim(),
      reason: practice.reason.trim(),
      choices: practice.choices.map(({ item, choice, words }) => ({ item, ...(choice ? { choice } : {}), ...(words?.trim() ? { words: words.trim() } : {}) })),
      ...(visits ? { visits: visits.map((visit) => ({ ...visit, name: visit.name.trim() })) } : {}),
    };
    try {
      await ask('check', { kind: 'practice', body });
      await saveRecord('practice', { patient: versions[0]?.patient, supersedes: versions.map(({ id }) => id), body, draft: DRAFT });
      setFaults([]);
      setDraft(null);
    } catch (error) {
      setFaults(faultsIn(error));
    }
  };

  return { practice, set, setChoice, setFigure, save, isChanged: draft !== null, faults };
}
