/** The two kinds of lock a person can choose, as choices. */
import { say } from '../../words/say.js';

export const kinds = () => [
  { value: 'pin', words: say('PIN'), hint: say('6 digits or more') },
  { value: 'passphrase', words: say('Passphrase'), hint: say('10 letters or more') },
];
