/**
 * Whether a name stays inside the folder wherever it is opened: relative, `/` between folders, no
 * `..`, no empty part, no drive, no control character, no reserved part of another system's paths.
 */
export function isSafeName(name: string): boolean {
  if (name === '' || name.length > 1000) return false;
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is refused
  if (/[\u0000-\u001f\u007f\\:]/.test(name)) return false;
  return name.split('/').every((part) => part !== '' && part !== '.' && part !== '..');
}
