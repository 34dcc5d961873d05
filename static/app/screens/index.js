/**
 * Every screen by its route; the named parts of the path are the screen's props. The first match counts. A screen's module is
 * fetched when it is first opened (the service worker holds them all).
 *
 * `phase` is the session's phase in which a screen makes sense; the shell leads to the right one when it does not fit.
 */

/**
 * @typedef {object} Screen
 * @property {string} path pattern for `match` of the router
 * @property {'signed-out' | 'choose-clinic' | 'no-secret' | 'locked' | 'open'} phase
 * @property {boolean} [spoken] its words were taken up by `say`; without it the screen is in English
 * @property {() => Promise<{default: (props: any) => any}>} load
 */

/** @type {Screen[]} */
export const screens = [
  { path: '/sign-in', spoken: true, phase: 'signed-out', load: () => import('./sign-in/screen.js') },
  { path: '/secret', spoken: true, phase: 'no-secret', load: () => import('./secret/screen.js') },
  { path: '/unlock', spoken: true, phase: 'locked', load: () => import('./unlock/screen.js') },

  { path: '/patients', spoken: true, phase: 'open', load: () => import('./patients/screen.js') },
  { path: '/patients/new', phase: 'open', load: () => import('./patient-edit/screen.js') },
  { path: '/patients/:patient', phase: 'open', load: () => import('./patient/screen.js') },
  { path: '/patients/:patient/same/:other', phase: 'open', load: () => import('./same-person/screen.js') },
  { path: '/patients/:patient/edit', phase: 'open', load: () => import('./patient-edit/screen.js') },

  { path: '/patients/:patient/measure', phase: 'open', load: () => import('./measure/screen.js') },
  { path: '/patients/:patient/measure/:examination', phase: 'open', load: () => import('./measure/screen.js') },
  { path: '/patients/:patient/findings/:examination', phase: 'open', load: () => import('./findings/screen.js') },
  { path: '/patients/:patient/options/:examination', phase: 'open', load: () => import('./options/screen.js') },
  { path: '/patients/:patient/options/:examination/:option', phase: 'open', load: () => import('./options/screen.js') },
  { path: '/patients/:patient/sign/:plan', phase: 'open', load: () => import('./sign/screen.js') },
  { path: '/patients/:patient/card/:signature', phase: 'open', load: () => import('./card/screen.js') },
  { path: '/patients/:patient/operation/:signature', phase: 'open', load: () => import('./operation/screen.js') },
  { path: '/patients/:patient/adjust/:operation', phase: 'open', load: () => import('./adjustment/screen.js') },
  { path: '/patients/:patient/course/:operation', phase: 'open', load: () => import('./course/screen.js') },
  { path: '/patients/:patient/visit/:operation/:visit', phase: 'open', load: () => import('./visit/screen.js') },
  { path: '/patients/:patient/visit/:operation/:visit/measure', phase: 'open', load: () => import('./measure/screen.js') },
  { path: '/patients/:patient/visit/:operation/:visit/measure/:examination', phase: 'open', load: () => import('./measure/screen.js') },
  { path: '/patients/:patient/checks/:signature', phase: 'open', load: () => import('./theatre-check/screen.js') },

  { path: '/patients/:patient/counselling/:plan', spoken: true, phase: 'open', load: () => import('./counselling/screen.js') },
  { path: '/patients/:patient/set-up/:plan', phase: 'open', load: () => import('./set-up/screen.js') },

  { path: '/lists', phase: 'open', load: () => import('./lists/screen.js') },
  { path: '/lists/new', phase: 'open', load: () => import('./operating-list/screen.js') },
  { path: '/lists/packing', phase: 'open', load: () => import('./packing/screen.js') },
  { path: '/lists/:list', phase: 'open', load: () => import('./operating-list/screen.js') },
  { path: '/visits', phase: 'open', load: () => import('./visits/screen.js') },
  { path: '/results', phase: 'open', load: () => import('./results/screen.js') },
  { path: '/practice', phase: 'open', load: () => import('./practice/screen.js') },
  { path: '/own-results', phase: 'open', load: () => import('./own-results/screen.js') },

  { path: '/exchange', phase: 'open', load: () => import('./exchange/screen.js') },
  { path: '/exchange/:way', phase: 'open', load: () => import('./exchange/screen.js') },
  { path: '/patients/:patient/export', phase: 'open', load: () => import('./exchange/screen.js') },
  { path: '/notebook', phase: 'open', load: () => import('./notebook/screen.js') },

  { path: '/hand-over', phase: 'open', load: () => import('./hand-over/screen.js') },
  { path: '/hand-over/:record', phase: 'open', load: () => import('./hand-over/screen.js') },
  { path: '/take-over', phase: 'open', load: () => import('./take-over/screen.js') },
  { path: '/scan', phase: 'open', load: () => import('./scan/screen.js') },
  { path: '/status', spoken: true, phase: 'open', load: () => import('./status/screen.js') },
  { path: '/devices', phase: 'open', load: () => import('./devices/screen.js') },
  { path: '/settings', spoken: true, phase: 'open', load: () => import('./settings/screen.js') },
];
