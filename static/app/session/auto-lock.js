/** Locks after a time without a touch or a key; a phone that slept counts the time it slept. */

const EVENTS = ['pointerdown', 'keydown', 'wheel', 'touchmove'];
const LOOK_MS = 5_000;

/** Minutes that a person may choose. */
export const AUTO_LOCK_CHOICES_MIN = [1, 2, 5, 10, 20, 30, 60];
export const AUTO_LOCK_DEFAULT_MIN = 10;

/**
 * @param {number} now_ms
 * @param {number} touched_ms
 * @param {number} limit_min
 */
export function isIdle(now_ms, touched_ms, limit_min) {
  return now_ms - touched_ms >= limit_min * 60_000;
}

/**
 * @param {object} options
 * @param {() => number} options.limit_min
 * @param {() => void} options.onIdle
 * @returns {() => void}  stops watching
 */
export function watchIdle({ limit_min, onIdle }) {
  let touched = Date.now();
  const touch = () => {
    touched = Date.now();
  };
  const look = () => {
    if (isIdle(Date.now(), touched, limit_min())) onIdle();
  };
  const timer = setInterval(look, LOOK_MS);
  for (const event of EVENTS) addEventListener(event, touch, { passive: true, capture: true });
  // On waking, look before the touch that woke the app is counted.
  document.addEventListener('visibilitychange', look);
  return () => {
    clearInterval(timer);
    for (const event of EVENTS) removeEventListener(event, touch, { capture: true });
    document.removeEventListener('visibilitychange', look);
  };
}
