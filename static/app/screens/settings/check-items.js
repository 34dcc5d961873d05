/** The questions that this clinic adds to the checks in theatre: which there are, a new one, and the end of one. */
import { ask } from '../../engine/engine.js';
import { useObservable } from '../../observable.js';
import { Choice } from '../../parts/choice/choice.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Field } from '../../parts/field/field.js';
import { Fold } from '../../parts/fold/fold.js';
import { PHASES } from '../../planning/theatre-checks.js';
import { faultsIn } from '../../planning/use-answer.js';
import { useRights } from '../../planning/use-rights.js';
import { heads } from '../../store/heads.js';
import { drafts, records, saveRecord } from '../../store/store.js';
import { html, useState } from '../../vendor/preact.js';
import { TakeBack } from '../patient/take-back.js';

const DRAFT = 'check-item';
const ROLES = ['nurse', 'anaesthetist', 'surgeon'].map((role) => ({ value: role, words: role }));
const TEXTS = [
  { name: 'title', label: 'Its name, in a word or two' },
  { name: 'aloud', label: 'What is read aloud' },
  { name: 'goes_on', label: 'The answer that goes on' },
  { name: 'stops', label: 'The answer that stops' },
];
const EMPTY = { schema: 1, phase: 'time out', role: 'nurse', title: '', aloud: '', goes_on: '', stops: '' };

export function CheckItems() {
  const current = heads(useObservable(records), 'check_item');
  const { write } = useRights();
  return html`<section class="stack" lang="en" dir="ltr" aria-labelledby="check-items">
    <h2 id="check-items">The clinic's own questions in the checks</h2>
    ${current.length === 0 ? html`<p class="soft">None yet: the nineteen items are asked.</p>` : html`<ul class="stack">${current.map((record) => html`<${Item} key=${record.id} record=${record} />`)}</ul>`}
    ${write('check_item') ? html`<${NewItem} />` : html`<p class="small soft">A surgeon of the clinic adds them.</p>`}
  </section>`;
}

/** @param {{record: import('../../store/envelope.js').LedgerRecord}} props */
function Item({ record }) {
  const { title, aloud, phase, role, goes_on, stops } = record.body;
  return html`<li class="card stack tight">
    <p><strong>${title}</strong> <span class="soft">at the end of the ${phase}, ${role}</span></p>
    <p>${aloud}</p>
    <p class="small soft">“${goes_on}” goes on, “${stops}” stops.</p>
    <div class="buttons"><${TakeBack} record=${record} what="this question" /></div>
  </li>`;
}

function NewItem() {
  const [typed, setTyped] = useState(/** @type {Record<string, any>} */ (drafts.get(DRAFT) ?? EMPTY));
  const [faults, setFaults] = useState(/** @type {import('../../planning/use-answer.js').FaultFacts[]} */ ([]));

  /** @param {string} name @param {string} value */
  const type = (name, value) => {
    const next = { ...typed, [name]: value };
    drafts.keep(DRAFT, next);
    setTyped(next);
  };
  const add = async (/** @type {Event} */ event) => {
    event.preventDefault();
    const body = Object.fromEntries(Object.entries(typed).map(([name, value]) => [name, typeof value === 'string' ? value.trim() : value]));
    try {
      await ask('check', { kind: 'check_item', body });
      await saveRecord('check_item', { supersedes: [], body, draft: DRAFT });
      setTyped(EMPTY);
      setFaults([]);
    } catch (error) {
      setFaults(faultsIn(error).map((fault) => ({ ...fault, text: `${labelOf(fault.field)}${fault.text}` })));
    }
  };
  return html`<${Fold} title="Add a question" holds=${typed.title} open=${drafts.get(DRAFT) !== undefined}>
    <form class="stack" onSubmit=${add} novalidate>
      <${FaultList} faults=${faults} />
      <${Choice} legend="Asked at the end of" name="check-item-phase" options=${PHASES.map(({ phase, words }) => ({ value: phase, words }))} value=${typed.phase} onChange=${(/** @type {string} */ phase) => type('phase', phase)} />
      <${Choice} legend="Whose question it is" name="check-item-role" options=${ROLES} value=${typed.role} onChange=${(/** @type {string} */ role) => type('role', role)} />
      ${TEXTS.map(({ name, label }) => html`<${Field} key=${name} label=${label} name=${`check-item-${name}`} value=${typed[name]} onInput=${(/** @type {string} */ value) => type(name, value)} />`)}
      <div class="buttons"><button class="button">Add this question</button></div>
    </form>
  <//>`;
}

/** @param {string} field */
const labelOf = (field) => {
  const text = TEXTS.find(({ name }) => name === field);
  return text ? `${text.label}: ` : '';
};
