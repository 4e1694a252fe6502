export {
  type Clock,
  clockOf,
  type DeadlineRow,
  type OpenDeadline,
  type UnclearDeadline,
} from './deadlines/deadlines.ts';
