/** The sentences of a text; what holds no word is no sentence. */
export function sentencesIn(text: string): readonly string[] {
  return text
    .replace(/\s+/g, ' ')
    .split(/(?<=[.!?]["”’)]*) (?=["“‘(]*[\p{Lu}\p{Lo}\d])|(?<=[。！？][」）]*)/u)
    .map((sentence) => sentence.trim())
    .filter((sentence) => /[\p{L}\p{N}]/u.test(sentence));
}
