export * from './dated.ts';
export * from './days.ts';
export * from './edtf.ts';
export * from './explain.ts';
export * from './names.ts';
export * from './numbers.ts';
export * from './properties.ts';
export * from './why.ts';
