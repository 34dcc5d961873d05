/**
 * What every screen stands in: the way back and the storage line, the patient, one question, one next step within the thumb's reach.
 *
 *     <${Frame} title='Measure' patient=${patient.body} back='/patients' next=${{ label: 'See findings', to: '/...' }}>...<//>
 */
import { html, useEffect, useLayoutEffect, useRef } from '../../vendor/preact.js';
import { say, spokenIn } from '../../words/say.js';
import { PatientBanner } from '../banner/banner.js';
import { Emblem } from '../emblem/emblem.js';
import { Mark } from '../mark/mark.js';
import { StorageLine } from '../storage-line/storage-line.js';
import { StorageProblem } from '../storage-problem/storage-problem.js';
import { UpdateOffer } from '../update-offer/update-offer.js';
import { NextStep } from './next-step.js';

/**
 * @param {object} props
 * @param {string} props.title the screen's question or name: its one first heading
 * @param {{full_name: string, born_on: string, hospital_number: string}} [props.patient] body of the patient's record
 * @param {string | (() => void)} [props.back] the route one step up, for example `/patients`, or the router's `back` where a screen is
 *   opened from anywhere; absent at the top
 * @param {import('./next-step.js').Step} [props.next] the one obvious next step
 * @param {import('./next-step.js').Step} [props.also] a quieter step beside it
 * @param {unknown} [props.corner] a link or a word beside the title
 * @param {{label: string, content: unknown}} [props.beside] where to go from here, in a column of its own
 * @param {'column' | 'wide' | 'alone'} [props.layout] a column to read, the whole width, or a lone panel before sign-in, where there
 *   is no storage to tell of
 * @param {unknown} props.children
 */
export function Frame({ title, patient, back, next, also, corner, beside, layout = 'column', children }) {
  const heading = useRef(/** @type {HTMLElement | null} */ (null));

  useEffect(() => {
    document.title = `${title} · Primary Position`;
  }, [title]);

  // Before the effects of what stands in the frame: a list that remembers its place sets it after this.
  useLayoutEffect(() => window.scrollTo(0, 0), []);

  useEffect(() => {
    const held = document.activeElement;
    if (!held?.closest('.frame-main')) heading.current?.focus({ preventScroll: true });
  }, []);

  return html`<div class=${`frame frame-${layout}`}>
    <header class="frame-top" ...${spokenIn()}>
      <div class="frame-bar">
        <${Back} back=${back} />
        ${layout !== 'alone' && html`<${StorageLine} />`}
      </div>
      <${UpdateOffer} />
      <${StorageProblem} />
    </header>
    ${patient && html`<div class="frame-patient"><${PatientBanner} patient=${patient} /></div>`}
    <div class="frame-body">
      ${beside && html`<nav class="frame-beside" aria-label=${beside.label}>${beside.content}</nav>`}
      <main class="frame-main">
        <div class="frame-head">
          <h1 tabindex="-1" ref=${heading}>${title}</h1>
          ${corner}
        </div>
        ${children}
      </main>
    </div>
    ${(next || also) &&
    html`<footer class="frame-foot">
      <div class="frame-steps">
        ${also && html`<${NextStep} step=${also} rank="also" />`}
        ${next && html`<${NextStep} step=${next} rank="main" />`}
      </div>
    </footer>`}
  </div>`;
}

/** @param {{back?: string | (() => void)}} props */
function Back({ back }) {
  const face = html`<${Mark} name="back" /><span>${say('Back')}</span>`;
  if (typeof back === 'string') return html`<a class="button bare frame-back" href=${`#${back}`}>${face}</a>`;
  if (back) return html`<button type="button" class="button bare frame-back" onClick=${() => back()}>${face}</button>`;
  return html`<span class="frame-name"><${Emblem} /><span>Primary Position</span></span>`;
}
