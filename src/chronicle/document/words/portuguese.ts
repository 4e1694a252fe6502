import type { DocumentWords } from './types.ts';

/** The document in Portuguese. */
export const PORTUGUESE_DOCUMENT: DocumentWords = {
  subtitle: 'Todas as impressões conhecidas, quando saíram e quão certo isso é',
  contents: 'Sumário',
  printings: 'As impressões',
  cautions: 'Cuidados',
  certainty: 'Palavras para o grau de certeza, pela probabilidade',
  atLeast: (p) => `${p} ou mais`,
  less: (p) => `menos de ${p}`,
  checklist: (title) => `${title}: lista de conferência`,
  checklistNote: 'Todas as impressões conhecidas, a mais antiga primeiro',
  key: (title) => `Chave de identificação: ${title}`,
  keyNote:
    'Comece no 1, examine e siga o número. Todo exame é tomado por certo; um exemplar que não cabe em lugar nenhum não é de nenhuma destas. Uma chave não dá veredito sobre um exemplar.',
  keyEffort: (looks) => `Um exemplar pede em média ${looks} exames.`,
  keyLeftOut: (share) => `${share} dos exemplares seguem um caminho raro demais para esta página.`,
  keyAlike: (groups) => `Nenhuma característica publicada distingue: ${groups}.`,
  kindOf: (kind, printing) => `${kind} de ${printing}`,
};
