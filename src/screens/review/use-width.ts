import type { RefObject } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';

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
    return () => observer.disconnect();
  }, []);
  return { ref, width };
}
