/**
 * Both eyes with their muscles, seen facing the patient, to show a plan or to touch one in.
 *
 *     <${Eyes} works=${option.doses} />                                 shows
 *     <${Eyes} works=${drawn} chosen=${place} onTouch=${touch} />       every muscle is a button
 *
 * The sides stand under the eyes in words, and so does the direction of view.
 */
import { html, useMemo } from '../../vendor/preact.js';
import { EYES, EYE_WORDS, MUSCLES, doneWords, placeWords, workWords } from '../../words/anatomy.js';
import { mmWords } from '../../words/figures.js';
import { MuscleBand, MuscleWords } from './muscle.js';
import { GLOBE, HEIGHT, LIMBUS, WIDTH, middleOf, zoneOf } from './places.js';

/** @typedef {import('../../words/anatomy.js').Eye} Eye */
/** @typedef {import('../../words/anatomy.js').Muscle} Muscle */
/** @typedef {{eye: Eye, muscle: Muscle}} Place */
/** @typedef {import('../../words/anatomy.js').Work & {mm?: number | null}} Work */

/**
 * @param {object} props
 * @param {Work[]} props.works
 * @param {string} [props.label] what the picture is, read out before its content
 * @param {Place | null} [props.chosen] the muscle that was touched last
 * @param {(place: Place) => void} [props.onTouch] makes every muscle a button
 */
export function Eyes({ works, label = 'Both eyes', chosen = null, onTouch }) {
  const spoken = works.map((work) => workWords(work) + (typeof work.mm === 'number' ? ` ${mmWords(work.mm)}` : '')).join('; ') || 'nothing marked';
  // The same drawing is the same nodes, so that a redraw of many options passes over those that stay.
  const eyes = useMemo(
    () => EYES.map((eye) => html`<${EyePicture} key=${eye} eye=${eye} works=${works} chosen=${chosen} onTouch=${onTouch} />`),
    [spoken, chosen, onTouch],
  );
  return html`<figure class=${onTouch ? 'eyes eyes-touch' : 'eyes'}>
    <svg viewBox=${`0 0 ${WIDTH} ${HEIGHT}`} role=${onTouch ? 'group' : 'img'} aria-label=${`${label}, facing the patient: ${spoken}`}>
      ${eyes}
    </svg>
    <figcaption class="eyes-caption">Facing the patient</figcaption>
  </figure>`;
}

/** @param {{eye: Eye, works: Work[], chosen: Place | null, onTouch?: (place: Place) => void}} props */
function EyePicture({ eye, works, chosen, onTouch }) {
  const { x, y } = middleOf(eye);
  /** @param {Muscle} muscle */
  const workOn = (muscle) => works.find((work) => work.eye === eye && work.muscle === muscle);
  return html`<g class="eye">
    <circle class="eye-globe" cx=${x} cy=${y} r=${GLOBE} />
    ${MUSCLES.filter((muscle) => !workOn(muscle)).map((muscle) => html`<${MuscleBand} key=${muscle} eye=${eye} muscle=${muscle} />`)}
    ${MUSCLES.filter(workOn).map((muscle) => html`<${MuscleBand} key=${muscle} eye=${eye} muscle=${muscle} work=${workOn(muscle)} />`)}
    <circle class="eye-iris" cx=${x} cy=${y} r=${LIMBUS} />
    <circle class="eye-pupil" cx=${x} cy=${y} r="7" />
    ${works.filter((work) => work.eye === eye).map((work) => html`<${MuscleWords} key=${work.muscle} eye=${eye} muscle=${work.muscle} work=${work} />`)}
    <text class="eye-words" x=${x} y=${HEIGHT - 6} text-anchor="middle">${EYE_WORDS[eye]}</text>
    ${onTouch && MUSCLES.map((muscle) => html`<${Zone} key=${muscle} place=${{ eye, muscle }} work=${workOn(muscle)} chosen=${chosen} onTouch=${onTouch} />`)}
  </g>`;
}

/** @param {{place: Place, work?: Work, chosen: Place | null, onTouch: (place: Place) => void}} props */
function Zone({ place, work, chosen, onTouch }) {
  const isChosen = chosen?.eye === place.eye && chosen.muscle === place.muscle;
  const { x, y, width, height } = zoneOf(place.eye, place.muscle);
  /** @param {KeyboardEvent} event */
  const onKeyDown = (event) => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    onTouch(place);
  };
  return html`<rect
    class=${isChosen ? 'eye-zone chosen' : 'eye-zone'}
    x=${x + 1}
    y=${y + 1}
    width=${width - 2}
    height=${height - 2}
    rx="8"
    role="button"
    tabindex="0"
    aria-pressed=${String(isChosen)}
    aria-label=${`${placeWords(place)}: ${work ? doneWords(work) : 'nothing'}`}
    onClick=${() => onTouch(place)}
    onKeyDown=${onKeyDown}
  />`;
}
