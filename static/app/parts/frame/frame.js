/**
 * What every screen stands in: the way back and the storage line, the patient, one question, one next step within the thumb's reach.
 *
 *     <${Frame} title="Measure" patient=${patient.body} back="/patients" next=${{ label: "See findings", to: "/..." }}>...<//>
 */
import { html, useEffect, useRef } from '../../vendor/preact.js';
import { PatientBanner } from '../banner/banner.js';
import { Mark } from '../mark/mark.js';
import { StorageLine } from '../storage-line/storage-line.js';
import { UpdateOffer } from '../update-offer/update-offer.js';
import { NextStep } from './next-step.js';

/**
 * @param {object} props
 * @param {string} props.title the screen's question or name: its one first heading
 * @param {{full_name: string, born_on: string, hospital_number: string}} [props.patient] body of the patient's record
 * @param {string} [props.back] the route one step up, for example `/patients`; absent at the top
 * @param {import("./next-step.js").Step} [props.next] the one obvious next step
 * @param {import("./next-step.js").Step} [props.also] a quieter step beside it
 * @param {"column" | "wide" | "alone"} [props.layout] a column to read, the whole width, or a lone panel before sign-in, where there
 *   is no storage to tell of
 * @param {unknown} props.children
 */
export function Frame({ title, patient, back, next, also, layout = 'column', children }) {
  const heading = useRef(null);

  useEffect(() => {
    document.title = `${title} · Primary Position`;
  }, [title]);

  useEffect(() => {
    window.scrollTo(0, 0);
    const held = document.activeElement;
    if (!held?.closest('.frame-main')) heading.current.focus({ preventScroll: true });
  }, []);

  return html`<div class=${`frame frame-${layout}`}>
    <header class="frame-top">
      <div class="frame-bar">
        ${back
          ? html`<a class="button bare frame-back" href=${`#${back}`}><${Mark} name="back" /><span>Back</span></a>`
          : html`<span class="frame-name">Primary Position</span>`}
        ${layout !== 'alone' && html`<${StorageLine} />`}
      </div>
      <${UpdateOffer} />
    </header>
    ${patient && html`<div class="frame-patient"><${PatientBanner} patient=${patient} /></div>`}
    <main class="frame-main">
      <h1 class="frame-title" tabindex="-1" ref=${heading}>${title}</h1>
      ${children}
    </main>
    ${(next || also) &&
    html`<footer class="frame-foot">
      <div class="frame-steps">
        ${also && html`<${NextStep} step=${also} rank="also" />`}
        ${next && html`<${NextStep} step=${next} rank="main" />`}
      </div>
    </footer>`}
  </div>`;
}
