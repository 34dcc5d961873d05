/** What is usual here for one item of the set-up sheet, and what the clinic wants said with it. */
import { Choice } from '../../parts/choice/choice.js';
import { Field } from '../../parts/field/field.js';
import { html } from '../../vendor/preact.js';

/** @param {{item: any, own?: {choice?: string | null, words?: string | null}, set: ((item: string, said: {choice: string | null, words: string}) => void) | false}} props */
export function ItemCustom({ item, own, set }) {
  const choice = own?.choice ?? null;
  const words = own?.words ?? '';
  const ways = item.ways.filter((/** @type {any} */ way) => !way.never);
  if (!set) {
    const said = ways.find((/** @type {any} */ way) => way.id === choice)?.words ?? 'as common practice';
    return html`<p><strong>${item.title}:</strong> ${said}. ${words}</p>`;
  }
  return html`<div class="card stack">
    <${Choice}
      legend=${item.title}
      name=${`usual-${item.item}`}
      options=${[{ value: null, words: 'As common practice' }, ...ways.map((/** @type {any} */ way) => ({ value: way.id, words: way.words }))]}
      value=${choice}
      onChange=${(/** @type {string | null} */ value) => set(item.item, { choice: value, words })}
    />
    <${Field} label="Say with it" name=${`words-${item.item}`} value=${words} onInput=${(/** @type {string} */ value) => set(item.item, { choice, words: value })} optional input=${{ maxlength: 400 }} />
  </div>`;
}
