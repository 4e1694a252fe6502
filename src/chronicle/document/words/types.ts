/** Words of the document, the checklist and the key that the site does not have. */
export interface DocumentWords {
  /** Beneath the title of the document. */
  readonly subtitle: string;
  readonly contents: string;
  readonly printings: string;
  readonly cautions: string;
  /** What the words for how sure a statement is stand for. */
  readonly certainty: string;
  readonly atLeast: (p: string) => string;
  readonly less: (p: string) => string;
  readonly checklist: (title: string) => string;
  readonly checklistNote: string;
  readonly key: (title: string) => string;
  readonly keyNote: string;
  readonly keyEffort: (looks: string) => string;
  readonly keyLeftOut: (share: string) => string;
  /** Names that no published trait tells apart, a group each. */
  readonly keyAlike: (groups: string) => string;
  /** A counterfeit, an alteration or a case of some printing. */
  readonly kindOf: (kind: string, printing: string) => string;
}
