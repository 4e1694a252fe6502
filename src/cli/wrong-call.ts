/** The command was called in a way that it cannot answer; the message says what is wrong. */
export class WrongCall extends Error {
  override readonly name = 'WrongCall';
}
