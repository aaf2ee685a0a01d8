import type { RefObject } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';

/** A sheet of A4 or Letter between its margins: a picture made for a screen would be too small to read there. */
const PAPER_PX = 690;

/** Width of an element in whole pixels, kept up to date when the tablet is turned; 0 until it is known. */
export function useWidth<Kind extends Element = HTMLDivElement>(): {
  ref: RefObject<Kind | null>;
  width: number;
} {
  const ref = useRef<Kind>(null);
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    const measure = () => setWidth(Math.floor(element.clientWidth));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    const fitToPaper = () => setWidth(Math.min(PAPER_PX, Math.floor(element.clientWidth)));
    addEventListener('beforeprint', fitToPaper);
    addEventListener('afterprint', measure);
    return () => {
      observer.disconnect();
      removeEventListener('beforeprint', fitToPaper);
      removeEventListener('afterprint', measure);
    };
  }, []);
  return { ref, width };
}
