export { Answer } from './Answer.tsx';
export { ClaimList } from './ClaimList.tsx';
export { Modes } from './Modes.tsx';
export { Settle } from './Settle.tsx';
export { SlipNotes } from './SlipNotes.tsx';
export { WhySheet } from './WhySheet.tsx';
