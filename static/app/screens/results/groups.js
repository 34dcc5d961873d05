/** The groups in a line each; one of them is shown in full. */
import { html } from '../../vendor/preact.js';

/** @typedef {{name: string, words: string, own: boolean, cases: number, few: boolean, success_words: string}} Line */

/** @param {{lines: Line[], chosen?: string, onChoose: (name: string) => void}} props */
export function Groups({ lines, chosen, onChoose }) {
  return html`<fieldset class="results-groups">
    <legend>Groups, and within 10 Δ of those judged</legend>
    ${lines.map(
      (line) => html`<label class="results-group" key=${line.name}>
        <input type="radio" name="results-group" checked=${line.name === chosen} onChange=${() => onChoose(line.name)} />
        <span class="results-group-name"><strong>${line.words}</strong>${line.own && ' (yours)'}</span>
        <span class="results-group-count">${line.cases} operated${line.few ? ', a small number' : ''}</span>
        <span class="results-group-share">${line.success_words}</span>
      </label>`,
    )}
  </fieldset>`;
}
