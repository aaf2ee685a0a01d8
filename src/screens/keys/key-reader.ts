/** What of a key's press matters here. */
export interface KeyPress {
  readonly key: string;
  readonly timeStamp: number;
}

/** What some presses turned out to be. The press of a tap is its first one, so that the tap has its own moment. */
export type KeyRead<Press extends KeyPress> =
  | { readonly kind: 'tap'; readonly press: Press }
  | { readonly kind: 'scan'; readonly text: string }
  | { readonly kind: 'scan-too-long' };

/** A scanner types on at this pace or quicker, also over radio; no finger does. */
const SCAN_GAP_MS = 120;
/** So many characters in one go come from a scanner, whose Enter may follow late: it must not press the surface. */
const LATE_END_MS = 700;
/** Without Enter at the end, so many characters make a scan: two keys under one glove are one tap. */
const FEWEST_WITHOUT_END = 3;
/** Nothing comes after this long: a timer must not be there before the key it waits for. */
const SETTLED_MS = 10;
/** No code of a part is longer. */
const LONGEST = 64;

/**
 * Tells a scanner, which types a code in one go, from a key or a pedal that is pressed. One printable key is known for
 * a tap only when nothing has followed it, so whoever feeds this asks `settle` a while after the last press.
 */
export class KeyReader<Press extends KeyPress> {
  private typed: Press[] = [];
  private text = '';
  private isTooLong = false;

  /** True while characters come so quickly that they belong together. */
  isTyping(at: number): boolean {
    const last = this.typed.at(-1);
    return last !== undefined && at - last.timeStamp <= this.patienceMs;
  }

  /** How long after the last press it is known that nothing follows. */
  get settlesAfterMs(): number {
    return this.patienceMs + SETTLED_MS;
  }

  /** A printable key. What came before it, and does not belong to it, is settled first. */
  type(press: Press): KeyRead<Press> | null {
    const before = this.isTyping(press.timeStamp) ? null : this.settle();
    this.typed = [this.typed[0] ?? press, press];
    this.isTooLong ||= this.text.length >= LONGEST;
    if (!this.isTooLong) this.text += press.key;
    return before;
  }

  /** Enter or Tab: the end of a scan when characters came just before it, and null otherwise. */
  end(press: Press): KeyRead<Press> | null {
    if (!this.isTyping(press.timeStamp)) return null;
    const read = this.isTooLong
      ? ({ kind: 'scan-too-long' } as const)
      : ({ kind: 'scan', text: this.text } as const);
    this.clear();
    return read;
  }

  /** Nothing has followed: one key, or two at once, is a tap; more are a scan without an end. */
  settle(): KeyRead<Press> | null {
    const { text, isTooLong } = this;
    const press = this.typed[0];
    this.clear();
    if (!press) return null;
    if (isTooLong) return { kind: 'scan-too-long' };
    return text.length < FEWEST_WITHOUT_END ? { kind: 'tap', press } : { kind: 'scan', text };
  }

  private get patienceMs(): number {
    return this.text.length < FEWEST_WITHOUT_END ? SCAN_GAP_MS : LATE_END_MS;
  }

  private clear(): void {
    this.typed = [];
    this.text = '';
    this.isTooLong = false;
  }
}
