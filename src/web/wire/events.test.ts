import { describe, expect, it } from 'vitest';
import { takeEvents } from './events.ts';

describe('a stream of events', () => {
  it('is taken apart at empty lines, whatever the pieces it comes in', () => {
    const { data, rest } = takeEvents(':\n\nid: 1\ndata: {"a":1}\n\ndata: {"b"');
    expect([data, rest]).toEqual([['{"a":1}'], 'data: {"b"']);
    expect(takeEvents(`${rest}:2}\r\n\r\n`).data).toEqual(['{"b":2}']);
  });
});
