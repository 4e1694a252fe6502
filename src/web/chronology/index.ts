export { Chronology } from './Chronology.tsx';
