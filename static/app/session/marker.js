/**
 * A mark that this browser was in use here, kept where a browser that clears its storage for want of room does not: in a cookie. It
 * says nothing of anybody, and lets a phone tell without a network that its storage was cleared.
 */

/** @typedef {{get: () => boolean, set: () => void}} Marker */

const NAME = 'in-use';
const YEAR_S = 365 * 24 * 3600;

/** @type {Marker} */
export const marker = {
  get: () => document.cookie.split('; ').includes(`${NAME}=1`),
  set() {
    document.cookie = `${NAME}=1; Max-Age=${YEAR_S}; Path=/; SameSite=Strict; Secure`;
  },
};
