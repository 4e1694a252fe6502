import { writeFileSync } from 'node:fs';
import { feedOf, researchZip } from '../../src/chronicle/index.ts';
import { HISTORY, TABLES, TITLE } from './ground.ts';

// Writes what checks/makers/downloads/read.py reads.
const folder = new URL('../fixtures/downloads/', import.meta.url);
writeFileSync(new URL('revisions.atom', folder), feedOf(TITLE, HISTORY));
writeFileSync(new URL('research.zip', folder), researchZip(TABLES, new Map(), undefined));
