import { expect, it } from 'vitest';
import { browserCommand } from './browser.ts';

it('knows each system, and that there may be no screen', () => {
  expect(browserCommand('darwin', {})).toEqual(['open']);
  expect(browserCommand('linux', {})).toBeUndefined();
  expect(browserCommand('linux', { DISPLAY: ':0' })).toEqual(['xdg-open']);
  expect(browserCommand('linux', { WAYLAND_DISPLAY: 'wayland-0' })).toEqual(['xdg-open']);
  expect(browserCommand('win32', {})?.[0]).toBe('cmd');
});
