import type { DocumentWords } from './types.ts';

/** The document in Japanese. */
export const JAPANESE_DOCUMENT: DocumentWords = {
  subtitle: '知られているすべての版と、その発売の時期、その確かさ',
  contents: '目次',
  printings: '各版',
  cautions: 'ご注意',
  certainty: '確かさを表す言葉とその確率',
  atLeast: (p) => `${p}以上`,
  less: (p) => `${p}未満`,
  checklist: (title) => `${title}：チェックリスト`,
  checklistNote: '知られているすべての版、発売の早い順',
  key: (title) => `${title}：検索表`,
  keyNote:
    '1から始め、見て、番号をたどってください。見たものはすべて正しいものとして扱います。どこにも当てはまらない一枚は、ここにあるどれでもありません。検索表は個々のカードの判定ではありません。',
  keyEffort: (looks) => `一枚につき平均${looks}回見ます。`,
  keyLeftOut: (share) => `${share}は、まれなためこの紙面に載せていない道をたどります。`,
  keyAlike: (groups) => `公開されている特徴では見分けられないもの：${groups}。`,
  kindOf: (kind, printing) => `${printing}の${kind}`,
};
