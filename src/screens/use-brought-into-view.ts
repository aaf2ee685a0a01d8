import { useEffect, useRef } from 'preact/hooks';

/** Whenever what was asked for is another, it is brought into view: opened below the fold it would seem not to be there. */
export function useBroughtIntoView<Box extends HTMLElement>(opened: string) {
  const box = useRef<Box>(null);
  useEffect(() => {
    if (opened) box.current?.scrollIntoView({ block: 'nearest' });
  }, [opened]);
  return box;
}
