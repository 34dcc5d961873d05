/** What a person is in a clinic, in words. */
import { marked, said } from './say.js';

/** @type {Record<string, string>} */
const WORDS = { surgeon: marked('surgeon'), clinic: marked('clinic'), theatre: marked('theatre'), coordinator: marked('coordinator') };

/** @param {string} role */
export const roleWords = (role) => said(WORDS[role] ?? role);
