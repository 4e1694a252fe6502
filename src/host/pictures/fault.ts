/** A file that cannot be measured as a picture: which, what was found in it and what was expected. */
export class PictureFault extends Error {
  override readonly name = 'PictureFault';
  constructor(file: string, found: string, expected: string) {
    super(`${file}: found ${found}; expected ${expected}.`);
  }
}
