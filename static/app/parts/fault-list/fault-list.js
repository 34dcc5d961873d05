/**
 * What kept something from being saved: one entry for each fault, leading to its field. It takes the focus when it appears.
 */
import { html, useEffect, useRef } from '../../vendor/preact.js';

/**
 * @typedef {object} FaultFacts
 * @property {string} code
 * @property {string} text
 * @property {string} [field]
 * @property {any} [value]
 * @property {any} [allowed]
 */

/**
 * @param {object} props
 * @param {FaultFacts[]} props.faults
 * @param {string} [props.title]
 */
export function FaultList({ faults, title = 'Not saved yet. Nothing you entered is lost.' }) {
  const box = useRef(/** @type {HTMLElement | null} */ (null));
  const told = useRef(/** @type {FaultFacts[]} */ ([]));
  useEffect(() => {
    // Not when one is mended and leaves the list: the person is typing then.
    if (faults.some((fault) => !told.current.includes(fault))) box.current?.focus();
    told.current = faults;
  }, [faults]);

  if (faults.length === 0) return null;
  return html`<div class="fault-list" role="alert" tabindex="-1" ref=${box}>
    <p><strong>${title}</strong></p>
    <ul>
      ${faults.map(
        (fault) => html`<li key=${`${fault.field} ${fault.code}`}>
          ${fault.text}${fault.value && html` Given: ${fault.value}.`}${fault.allowed && html` Allowed: ${fault.allowed}.`}
        </li>`,
      )}
    </ul>
  </div>`;
}
