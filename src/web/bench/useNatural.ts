import { useEffect, useState } from 'react';
import { usePicture } from '../wire/index.ts';
import type { Place } from './part.ts';

/** Size in pixels of a picture as it came; a square until it is there, or where none is asked for. */
export function useNatural(path: string | null, stamp: string): Place {
  const { address } = usePicture(path, stamp);
  const [size, setSize] = useState<Place>([1000, 1000]);
  useEffect(() => {
    if (!address) return;
    const image = new Image();
    image.onload = () => setSize([image.naturalWidth, image.naturalHeight]);
    image.src = address;
    return () => {
      image.onload = null;
    };
  }, [address]);
  return size;
}
