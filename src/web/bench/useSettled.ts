import { useEffect, useState } from 'react';

/** A value once it has stood still for some milliseconds. */
export function useSettled<Value>(value: Value, ms: number): Value {
  const [still, setStill] = useState(value);
  useEffect(() => {
    const timer = window.setTimeout(() => setStill(value), ms);
    return () => window.clearTimeout(timer);
  }, [value, ms]);
  return still;
}
