/**
 * What the engine warns of, in three levels that differ by shape, word, place and colour:
 * a stop is a framed slab with a filled plate above its text, a caution is a strip with a thick edge, a note is plain text.
 * `Notices` puts stops first, cautions next and notes last, whatever order they come in.
 */
import { html } from '../../vendor/preact.js';
import { sayHere } from '../../words/say.js';
import { Mark } from '../mark/mark.js';
import { Provenance } from '../provenance/provenance.js';

const LEVELS = ['stop', 'caution', 'note'];

/**
 * One warning.
 *
 * @param {object} props
 * @param {'stop' | 'caution' | 'note'} props.level
 * @param {unknown} props.children what is said
 * @param {{mark: string, source: string}} [props.provenance]
 */
export function Notice({ level, provenance, children }) {
  return html`<div class="notice notice-${level}" role=${level === 'stop' ? 'alert' : undefined}>
    <p class="notice-plate"><${Mark} name=${level} /><strong>${levelWords(level)}</strong></p>
    <div class="notice-text">
      ${children}
      ${provenance && html`<${Provenance} of=${provenance} />`}
    </div>
  </div>`;
}

/** @param {'stop' | 'caution' | 'note'} level */
function levelWords(level) {
  if (level === 'stop') return sayHere('Stop');
  return level === 'caution' ? sayHere('Caution') : sayHere('Note');
}

/** @param {{notices: {level: "stop" | "caution" | "note", code: string, text: string, provenance: {mark: string, source: string}}[]}} props */
export function Notices({ notices }) {
  if (notices.length === 0) return null;
  return html`<div class="notices">
    ${LEVELS.flatMap((level) => notices.filter((notice) => notice.level === level)).map(
      (notice) => html`<${Notice} key=${notice.code} level=${notice.level} provenance=${notice.provenance}><p>${notice.text}</p><//>`,
    )}
  </div>`;
}
