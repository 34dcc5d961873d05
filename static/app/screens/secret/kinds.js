/** The two kinds of lock a person can choose, as choices. */
export const KINDS = [
  { value: 'pin', words: 'PIN', hint: '6 digits or more' },
  { value: 'passphrase', words: 'Passphrase', hint: '10 letters or more' },
];
