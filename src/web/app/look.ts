import { useState } from 'react';

export type Look = 'light' | 'dark' | 'system';
const KEY = 'printlore-look';

/** The look chosen on this machine; `system` follows the system's preference. */
export function storedLook(): Look {
  const look = localStorage.getItem(KEY);
  return look === 'light' || look === 'dark' ? look : 'system';
}

/** Puts a look on the page. */
export function wear(look: Look): void {
  if (look === 'system') delete document.documentElement.dataset.look;
  else document.documentElement.dataset.look = look;
}

/** The look, and the way to choose another, which is remembered. */
export function useLook(): readonly [Look, (look: Look) => void] {
  const [look, setLook] = useState(storedLook);
  const choose = (next: Look) => {
    localStorage.setItem(KEY, next);
    wear(next);
    setLook(next);
  };
  return [look, choose];
}
