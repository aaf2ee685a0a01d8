import { useEffect, useState } from 'preact/hooks';

/**
 * A value as it was when the last frame was drawn; the new one follows a frame later. For what hangs on a tap and need
 * not be in the frame that answers it: that frame is what the operator waits for, and the word that the tap is saved.
 */
export function useAfterPaint<T>(value: T): T {
  const [shown, setShown] = useState(value);
  // Effects run once the frame is drawn.
  useEffect(() => setShown(value), [value]);
  return shown;
}
