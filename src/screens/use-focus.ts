import { useEffect, useRef } from 'preact/hooks';

/** For a field that was asked for: what is typed next belongs to it. */
export function useFocus(isAskedFor: boolean) {
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (isAskedFor) field.current?.focus();
  }, [isAskedFor]);
  return field;
}
