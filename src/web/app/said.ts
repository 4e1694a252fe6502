import { useCallback, useRef, useState } from 'react';

const SHOWN_MS = 6000;

/** A sentence that is read aloud and shown for six seconds. */
export function useSaid(): readonly [string, (sentence: string) => void] {
  const [said, setSaid] = useState('');
  const timer = useRef(0);
  const say = useCallback((sentence: string) => {
    window.clearTimeout(timer.current);
    setSaid(sentence);
    timer.current = window.setTimeout(() => setSaid(''), SHOWN_MS);
  }, []);
  return [said, say];
}
