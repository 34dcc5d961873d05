/** Which screen a person may see now. Pure. */

/** @typedef {import('../session/login.js').Session} Session */

const HOME = '/patients';
/** Routes outside a ledger, by the phase that leads there. */
const DOORS = { 'signed-out': '/sign-in', 'choose-clinic': '/sign-in', 'no-secret': '/secret', locked: '/unlock' };
const OUTSIDE = Object.values(DOORS);

/**
 * @param {Pick<Session, 'phase' | 'login'>} session
 * @param {string} path
 * @param {string} [wanted]  where the person was going when a door came in between
 * @returns {string}  `path` itself when the person may be there
 */
export function gate({ phase, login }, path, wanted = HOME) {
  // To sign in again is possible from everywhere, and leaves when done.
  if (path === '/sign-in' && phase !== 'no-secret' && login !== 'signed-in') return path;
  if (phase === 'starting') return path;
  if (phase === 'open') return OUTSIDE.includes(path) || path === '/' ? wanted : path;
  return DOORS[phase];
}

/** @param {string} path */
export function isInside(path) {
  return path !== '/' && !OUTSIDE.includes(path);
}
