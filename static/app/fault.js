/**
 * The one error that the app shows: a fact with a code, in the shape of the API's errors.
 */
export class Fault extends Error {
  /**
   * @param {string} code  for programs, e.g. `wrong_secret`
   * @param {string} text  for people, in plain words
   * @param {{field?: string, value?: unknown, allowed?: unknown, retryable?: boolean}} [facts]
   */
  constructor(code, text, { field = '', value = null, allowed = null, retryable = false } = {}) {
    super(text);
    this.name = 'Fault';
    this.code = code;
    this.text = text;
    this.field = field;
    this.value = value;
    this.allowed = allowed;
    this.retryable = retryable;
  }
}
