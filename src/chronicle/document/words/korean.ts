import type { DocumentWords } from './types.ts';

/** The document in Korean. */
export const KOREAN_DOCUMENT: DocumentWords = {
  subtitle: '알려진 모든 판과 그 발매 시기, 그리고 그 확실함',
  contents: '차례',
  printings: '각 판',
  cautions: '주의할 점',
  certainty: '확실함을 나타내는 말과 그 확률',
  atLeast: (p) => `${p} 이상`,
  less: (p) => `${p} 미만`,
  checklist: (title) => `${title}: 점검표`,
  checklistNote: '알려진 모든 판, 발매가 이른 차례',
  key: (title) => `${title}: 검색표`,
  keyNote:
    '1에서 시작하여 보고 번호를 따라가십시오. 본 것은 모두 옳다고 여깁니다. 어디에도 맞지 않는 한 장은 여기 있는 어느 것도 아닙니다. 검색표는 한 장에 대한 판정이 아닙니다.',
  keyEffort: (looks) => `한 장에 평균 ${looks}번 봅니다.`,
  keyLeftOut: (share) => `${share}는 드물어서 이 쪽에 싣지 않은 길로 갑니다.`,
  keyAlike: (groups) => `공개된 특징으로 구별되지 않는 것: ${groups}.`,
  kindOf: (kind, printing) => `${kind}(${printing})`,
};
