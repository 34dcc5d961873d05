/** What went wrong: each with where, what was seen and done, and what is thought of first. Nothing recorded is an answer too. */
import { Choice } from '../../parts/choice/choice.js';
import { Field } from '../../parts/field/field.js';
import { Provenance } from '../../parts/provenance/provenance.js';
import { html } from '../../vendor/preact.js';
import { placeWords } from '../../words/anatomy.js';
import { COMPLICATIONS } from '../../words/operation.js';
import { keyOf, told } from './recording.js';

/** @typedef {import('./recording.js').Complicated} Complicated */
/** @typedef {import('./recording.js').Recording} Recording */

/** @param {{recording: Recording, pointers: {complication: string, statements: any[]}[], onKeep: (next: Recording) => void}} props */
export function Complications({ recording, pointers, onKeep }) {
  const { complications } = recording.body;
  /** @param {Complicated[]} next */
  const keep = (next) => onKeep(told(recording, { complications: next }));
  return html`<div class="stack">
    ${complications.length === 0 && html`<p class="soft">None recorded.</p>`}
    ${complications.map(
      (each, index) => html`<${One}
        key=${index}
        number=${index + 1}
        each=${each}
        muscles=${recording.body.muscles}
        pointer=${pointers.find(({ complication }) => complication === each.complication)}
        onChange=${(/** @type {Partial<Complicated>} */ fields) => keep(complications.with(index, { ...each, ...fields }))}
        onRemove=${() => keep(complications.toSpliced(index, 1))}
      />`,
    )}
    <section class="stack tight" aria-label="Add a complication">
      <h2 class="small soft">${complications.length === 0 ? 'Touch what happened' : 'Something else too'}</h2>
      <div class="buttons">
        ${COMPLICATIONS.map((complication) => html`<button type="button" key=${complication} class="button" onClick=${() => keep([...complications, { complication, eye: null, muscle: null, note: '', answer: '' }])}>${complication}</button>`)}
      </div>
    </section>
  </div>`;
}

/** @param {{number: number, each: Complicated, muscles: import('./recording.js').Muscle[], pointer?: {statements: any[]}, onChange: (fields: Partial<Complicated>) => void, onRemove: () => void}} props */
function One({ number, each, muscles, pointer, onChange, onRemove }) {
  const places = [...muscles.map((muscle) => ({ value: keyOf(muscle), words: placeWords(muscle) })), { value: '', words: 'no single muscle' }];
  /** @param {string} key */
  const place = (key) => {
    const [eye = null, muscle = null] = key ? key.split(' ') : [];
    onChange({ eye, muscle });
  };
  return html`<section class="card stack" aria-label=${`Complication ${number}: ${each.complication}`}>
    <h2>${each.complication}</h2>
    ${pointer &&
    html`<div class="operation-pointers">
      <p><strong>Think of first</strong> <span class="small soft">the local protocol goes before it</span></p>
      <ul>${pointer.statements.map((statement) => html`<li key=${statement.code}>${statement.text}</li>`)}</ul>
      <${Provenance} of=${pointer.statements[0].provenance} />
    </div>`}
    <${Choice} legend="Where" name=${`where-${number}`} options=${places} value=${each.eye && each.muscle ? keyOf({ eye: each.eye, muscle: each.muscle }) : ''} onChange=${place} />
    <${Field} label="What was seen" name=${`seen-${number}`} rows=${2} value=${each.note} input=${{ maxlength: 400 }} onInput=${(/** @type {string} */ note) => onChange({ note })} />
    <${Field} label="What was done about it" name=${`answer-${number}`} rows=${2} value=${each.answer} input=${{ maxlength: 400 }} onInput=${(/** @type {string} */ answer) => onChange({ answer })} />
    <button type="button" class="button bare" onClick=${onRemove}>Take it out</button>
  </section>`;
}
