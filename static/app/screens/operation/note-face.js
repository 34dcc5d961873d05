/** The operation note as the engine made it: planned and done side by side, then everything that must be known of it. */
import { dateWords } from '../../parts/calendar/date.js';
import { Notices } from '../../parts/notice/notice.js';
import { html } from '../../vendor/preact.js';

/** @param {{note: any}} props an `OperationNote` of the engine */
export function NoteFace({ note }) {
  return html`<article class="note-face stack" aria-label="Operation note">
    <p class="note-when"><strong>${dateWords(note.operated_on)}</strong>, ${note.surgeon_name}${note.anaesthesia && `, anaesthesia ${note.anaesthesia}`}</p>
    <p class="card-eye">${note.title}</p>
    <ul class="note-lines">
      ${note.lines.map((/** @type {any} */ line) => html`<${NoteLine} key=${`${line.eye_words} ${line.muscle_words}`} line=${line} />`)}
    </ul>
    <${Notices} notices=${note.notices} />
    <section class="stack tight" aria-labelledby="note-complications">
      <h2 id="note-complications">Complications</h2>
      ${note.complications.length === 0 && html`<p>None recorded.</p>`}
      ${note.complications.map(
        (/** @type {any} */ each, /** @type {number} */ index) => html`<p key=${index}><strong>${each.words}.</strong> ${each.note} ${each.answer && html`<span class="soft">Done about it: </span>${each.answer}`}</p>`,
      )}
    </section>
    <${Sentences} title="What the engine expects" sentences=${note.effect_words} />
    <${Sentences} title="Adjustable suture" sentences=${[note.window_words, ...note.adjustment_words].filter(Boolean)} />
    ${note.note && html`<${Sentences} title="Note" sentences=${note.note.split('\n')} />`}
    <footer class="card-foot small">
      <p>${note.plan_words} Check word <strong>${note.check_word}</strong>.</p>
      <p>${note.disclaimer}</p>
    </footer>
  </article>`;
}

/** @param {{line: any}} props a `NoteLine` */
function NoteLine({ line }) {
  const found = [line.found_words, line.material_words, line.adjusted_words].filter(Boolean);
  return html`<li class=${line.differs ? 'note-line differs-line' : 'note-line'}>
    <p class="note-place"><strong>${line.eye_words}</strong> ${line.muscle_words}</p>
    <dl class="note-works">
      <div><dt>Planned</dt><dd>${line.planned_words}</dd></div>
      <div><dt>Done</dt><dd>${line.done_words}</dd></div>
    </dl>
    ${line.differs && html`<p><strong class="operation-changed">Changed</strong> ${line.reason || 'no reason given'}</p>`}
    ${found.map((words) => html`<p key=${words}>${words}</p>`)}
  </li>`;
}

/** @param {{title: string, sentences: string[]}} props */
function Sentences({ title, sentences }) {
  if (sentences.length === 0) return null;
  return html`<section class="stack tight">
    <h2>${title}</h2>
    ${sentences.map((sentence, index) => html`<p key=${index}>${sentence}</p>`)}
  </section>`;
}
