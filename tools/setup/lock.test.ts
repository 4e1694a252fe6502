import { expect, it } from 'vitest';
import { alone } from './lock.js';

it('lets one after the other at a checkout', async () => {
  const log: string[] = [];
  const work = (name: string) =>
    alone('/an/invented/checkout', async () => {
      log.push(`${name} begins`);
      await new Promise((done) => setTimeout(done, 20));
      log.push(`${name} ends`);
    });
  await Promise.all([work('one'), work('two')]);
  const [first = ''] = (log[0] ?? '').split(' ');
  expect(log.slice(0, 2)).toEqual([`${first} begins`, `${first} ends`]);
  expect(log).toHaveLength(4);
});

it('lets go where the work fails', async () => {
  const failing = () => alone('/an/invented/checkout', () => Promise.reject(new Error('no paper')));
  await expect(failing()).rejects.toThrow('no paper');
  await expect(failing()).rejects.toThrow('no paper');
});
