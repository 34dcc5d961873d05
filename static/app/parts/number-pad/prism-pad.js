/** Touching in a prism reading: direction words, then the usual steps as one-touch keys, then exact entry. */
import { html, useLayoutEffect, useRef, useState } from '../../vendor/preact.js';
import { DIRECTIONS, deviationWords } from '../../words/reading.js';
import { Mark } from '../mark/mark.js';
import { figure } from './prism-entry.js';
import { DIGIT_KEYS, Keys, keyOf } from './keys.js';
import { STEPS } from './steps.js';

/** @typedef {import('../../words/reading.js').Axis} Axis */

/** @type {Axis[]} */
const AXES = ['horizontal', 'vertical'];

/** Letters of a keyboard for the four directions. */
const LETTERS = /** @type {Record<string, [Axis, 'plus' | 'minus']>} */ ({
  e: ['horizontal', 'plus'],
  x: ['horizontal', 'minus'],
  r: ['vertical', 'plus'],
  l: ['vertical', 'minus'],
});

/**
 * @param {object} props
 * @param {string} props.title the place that is measured, e.g. "primary, distance"
 * @param {string} props.conditions e.g. "with correction"
 * @param {unknown} [props.how] says how it is measured, beside the title
 * @param {unknown} [props.readings] other readings of the same place
 * @param {import('./prism-entry.js').Entry} props.entry
 * @param {(touch: import('./prism-entry.js').Touch) => void} props.onTouch
 * @param {() => void} props.onNext Enter on the keyboard
 * @param {() => void} props.onClose
 */
export function PrismPad({ title, conditions, how, readings, entry, onTouch, onNext, onClose }) {
  const heading = useRef(/** @type {HTMLElement | null} */ (null));
  const [exact, setExact] = useState(false);
  useLayoutEffect(() => {
    setExact(false);
    heading.current?.focus({ preventScroll: true });
  }, [title, conditions]);

  /** @param {KeyboardEvent} event */
  const onKeyDown = (event) => {
    if (event.defaultPrevented || /** @type {Element} */ (event.target).closest('input, textarea, dialog')) return;
    const key = keyOf(event);
    const direction = LETTERS[event.key];
    if (key) {
      setExact(true);
      onTouch(key === 'erase' ? { type: 'erase' } : { type: 'key', key });
    } else if (direction && !event.ctrlKey && !event.metaKey) onTouch({ type: 'direction', axis: direction[0], sign: direction[1] });
    else if (event.key === 'Enter' && !(/** @type {Element} */ (event.target).closest('button, a'))) onNext();
    else if (event.key === 'Escape') onClose();
    else return;
    event.preventDefault();
  };

  // Wherever the focus is: who has just touched the foot of the screen types on, and no key falls into a gap.
  useLayoutEffect(() => {
    document.addEventListener('keydown', onKeyDown);
    return () => document.removeEventListener('keydown', onKeyDown);
  });

  const axis = entry.axis ?? 'horizontal';
  const waiting = entry.axis === null;
  return html`<section class="prism-pad" aria-label=${`Reading: ${title}, ${conditions}`}>
    <header class="pad-head">
      <div>
        <h2 class="pad-title" tabindex="-1" ref=${heading}>${title}</h2>
        <p class="pad-conditions">${conditions}</p>
      </div>
      ${how}
    </header>
    <div class="pad-displays">
      ${AXES.map((one) => html`<${Display} key=${one} axis=${one} entry=${entry} onClear=${() => onTouch({ type: 'clear', axis: one })} />`)}
    </div>
    ${AXES.map((one) => html`<${Directions} key=${one} axis=${one} entry=${entry} onTouch=${onTouch} />`)}
    <div class="pad-between">
      <p class=${entry.refusal ? 'pad-refusal' : 'pad-hint'} role="status">
        ${entry.refusal
          ? html`<strong>${entry.refusal.text}</strong> Allowed: ${entry.refusal.allowed}`
          : waiting
            ? 'First the direction, then the figure.'
            : html`Figure for <strong>${DIRECTIONS[axis][entry[axis].sign ?? 'plus']}</strong>, in Δ`}
      </p>
      <button type="button" class="button bare pad-turn" onClick=${() => setExact(!exact)}>${exact ? 'Usual steps' : 'Exact figure'}</button>
    </div>
    <div class=${`pad-figures${exact ? ' exact' : ''}`}>
      <${Keys}
        label=${`${axis} steps in prism dioptres`}
        layout="steps"
        waiting=${waiting}
        keys=${STEPS[axis].map((pd) => ({
          key: String(pd),
          words: String(pd),
          label: `${pd} prism dioptres`,
          chosen: !waiting && Math.abs(figure(entry, axis) ?? NaN) === pd,
        }))}
        onKey=${(/** @type {string} */ key) => onTouch({ type: 'step', pd: Number(key) })}
      />
      <${Keys}
        label="exact figure"
        layout="digits"
        waiting=${waiting}
        keys=${DIGIT_KEYS}
        onKey=${(/** @type {string} */ key) => onTouch(key === 'erase' ? { type: 'erase' } : { type: 'key', key })}
      />
    </div>
    ${readings}
  </section>`;
}

/** @param {{axis: Axis, entry: import('./prism-entry.js').Entry, onClear: () => void}} props */
function Display({ axis, entry, onClear }) {
  const { sign } = entry[axis];
  const pd = figure(entry, axis);
  const shown = pd === null ? sign && DIRECTIONS[axis][sign] : pd === 0 ? `no ${axis}` : deviationWords(axis, pd);
  return html`<div class=${`pad-display${entry.axis === axis ? ' active' : ''}`}>
    <output class="pad-figure" aria-label=${`${axis}: ${shown || 'not measured'}`}>
      ${shown || html`<span class="pad-unset">${axis}</span>`}
    </output>
    ${shown && html`<button type="button" class="pad-clear" aria-label=${`Clear ${axis}`} onClick=${onClear}><${Mark} name="close" /></button>`}
  </div>`;
}

/** @param {{axis: Axis, entry: import('./prism-entry.js').Entry, onTouch: (touch: import('./prism-entry.js').Touch) => void}} props */
function Directions({ axis, entry, onTouch }) {
  const { sign } = entry[axis];
  const none = figure(entry, axis) === 0;
  const keys = [
    { key: 'plus', words: DIRECTIONS[axis].plus, chosen: sign === 'plus' },
    { key: 'minus', words: DIRECTIONS[axis].minus, chosen: sign === 'minus' },
    { key: 'none', words: 'none', label: `none, ${axis}`, chosen: none },
  ];
  /** @param {string} key */
  const onKey = (key) => {
    if (key === 'none') onTouch({ type: none ? 'clear' : 'none', axis });
    else onTouch({ type: 'direction', axis, sign: /** @type {'plus' | 'minus'} */ (key) });
  };
  return html`<${Keys} label=${`${axis} direction`} layout="directions" keys=${keys} onKey=${onKey} />`;
}
