import { useEffect, useRef, useState } from 'react';

interface Shown {
  readonly target: HTMLElement;
  readonly words: string;
}

function numberAt(event: Event): HTMLElement | null {
  const target = event.target;
  return target instanceof Element ? target.closest<HTMLElement>('[data-why]') : null;
}

/** The one explanation on the page: it appears beside the number that is touched; Esc hides it. */
export function Tip() {
  const [shown, setShown] = useState<Shown>();
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const show = (event: Event) => {
      const target = numberAt(event);
      if (target) setShown({ target, words: target.dataset.why ?? '' });
      else if (!box.current?.contains(event.target as Node)) setShown(undefined);
    };
    const hide = (event: KeyboardEvent) => {
      if (event.key === 'Escape') setShown(undefined);
    };
    const gone = () => setShown(undefined);
    for (const type of ['pointerover', 'focusin', 'click']) document.addEventListener(type, show);
    document.addEventListener('keydown', hide);
    document.addEventListener('scroll', gone, { capture: true, passive: true });
    return () => {
      for (const type of ['pointerover', 'focusin', 'click']) {
        document.removeEventListener(type, show);
      }
      document.removeEventListener('keydown', hide);
      document.removeEventListener('scroll', gone, { capture: true });
    };
  }, []);
  useEffect(() => {
    if (!shown || !box.current) return;
    place(box.current, shown.target.getBoundingClientRect());
    shown.target.setAttribute('aria-describedby', 'tip');
    return () => shown.target.removeAttribute('aria-describedby');
  }, [shown]);
  return (
    <div id="tip" role="tooltip" ref={box} className={shown ? 'tip' : 'tip away'}>
      {shown?.words}
    </div>
  );
}

function place(box: HTMLElement, at: DOMRect): void {
  const { width, height } = box.getBoundingClientRect();
  const left = Math.max(8, Math.min(at.right - width, window.innerWidth - width - 8));
  const below = at.bottom + 6;
  const top = below + height > window.innerHeight ? at.top - height - 6 : below;
  box.style.left = `${left}px`;
  box.style.top = `${Math.max(8, top)}px`;
}
