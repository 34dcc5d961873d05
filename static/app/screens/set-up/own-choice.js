/** The surgeon's own choice for an item, with the reason that is kept and printed. What a stop forbids is not among the choices. */
import { Choice } from '../../parts/choice/choice.js';
import { Field } from '../../parts/field/field.js';
import { Sheet } from '../../parts/sheet/sheet.js';
import { html, useState } from '../../vendor/preact.js';

const SHORTEST = 10;

/** @param {{item: any, onChoose: (override: import('../../preparing/set-ups.js').Override | null) => void, onClose: () => void}} props */
export function OwnChoice({ item, onChoose, onClose }) {
  const [choice, setChoice] = useState(item.choice);
  const [reason, setReason] = useState(item.override_reason);
  const [fault, setFault] = useState(/** @type {{text: string, allowed: string} | undefined} */ (undefined));
  const ways = [{ id: item.choice, words: item.choice_words }, ...item.alternatives.filter((/** @type {any} */ way) => !way.refused)];
  const isRules = choice === item.suggested;

  const take = (/** @type {Event} */ event) => {
    event.preventDefault();
    const said = reason.trim();
    if (!isRules && said.length < SHORTEST) return setFault({ text: 'Say why, so that theatre can read it.', allowed: '10 to 400 characters' });
    onChoose(isRules ? null : { item: item.item, choice, reason: said });
    onClose();
  };

  return html`<${Sheet} open=${true} title=${item.title} onClose=${onClose}>
    <form class="stack" onSubmit=${take} novalidate>
      <${Choice}
        legend="Which way?"
        name=${`own-${item.item}`}
        options=${ways.map((/** @type {any} */ way) => ({ value: way.id, words: way.words, hint: way.id === item.suggested ? 'what the rules say' : undefined }))}
        value=${choice}
        onChange=${setChoice}
      />
      ${!isRules && html`<${Field} label="Reason" name=${`reason-${item.item}`} value=${reason} onInput=${setReason} fault=${fault} rows=${2} hint="It is printed on the sheet." input=${{ maxlength: 400 }} />`}
      <button class="button main">${isRules ? 'Keep to the rules' : 'Take this way'}</button>
    </form>
  <//>`;
}
