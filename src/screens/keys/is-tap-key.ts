/** Keys that people, browsers and readers need for themselves: none of them is a tap by itself. */
const ownKeys =
  /^(Tab|Escape|Shift|Control|Alt|AltGraph|Meta|Fn|CapsLock|NumLock|ScrollLock|ContextMenu|PrintScreen|Pause|Insert|Dead|Process|Unidentified|F1|F3|F5|F6|F11|F12|Browser.*|Audio.*|Media.*|Launch.*)$/;

/** Whether a key that does not print may be a tap: a pedal sends such as PageDown, an arrow, F7. */
export function isTapKey(key: string): boolean {
  return key.length > 1 && !ownKeys.test(key);
}
