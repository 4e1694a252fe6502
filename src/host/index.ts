export { filesOf, replaceFile, type FolderFiles } from './files.ts';
