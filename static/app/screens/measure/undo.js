/** A value with its past: every touch can be taken back, as far as this list reaches. */

const REACH = 60;

/**
 * @template T
 * @typedef {{now: T, past: T[]}} Timeline
 */

/**
 * @template T
 * @param {T} now
 * @returns {Timeline<T>}
 */
export const begin = (now) => ({ now, past: [] });

/**
 * @template T
 * @param {Timeline<T>} timeline
 * @param {T} next
 * @returns {Timeline<T>}
 */
export const step = (timeline, next) =>
  next === timeline.now ? timeline : { now: next, past: [...timeline.past.slice(1 - REACH), timeline.now] };

/**
 * A change that undo passes over, such as turning to another range.
 * @template T
 * @param {Timeline<T>} timeline
 * @param {T} next
 * @returns {Timeline<T>}
 */
export const look = (timeline, next) => ({ ...timeline, now: next });

/**
 * @template T
 * @param {Timeline<T>} timeline
 * @returns {Timeline<T>}
 */
export function undo(timeline) {
  const { past } = timeline;
  return past.length ? { now: past[past.length - 1], past: past.slice(0, -1) } : timeline;
}
