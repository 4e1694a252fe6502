export { leavesOf, type PacketPart } from './leaves.ts';
export { packetPaper, pictureTable } from './packet.ts';
export * from './types.ts';
