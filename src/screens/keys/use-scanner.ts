import { useEffect, useRef } from 'preact/hooks';
import type { Stamp } from '../../domain/records/stamp';
import { useApp } from '../app';
import { isTapKey } from './is-tap-key';
import { type KeyRead, KeyReader } from './key-reader';
import { taughtKey } from './use-learned-keys';

interface Acts {
  /** A key or a pedal; null where none may tap. */
  readonly tap: ((at: Stamp) => void) | null;
  /** A scanner's text; null when it was too long to be a code. */
  scan(text: string | null): void;
}

/**
 * Keys, pedals and scanners, wherever the focus is. A text field has what is typed into it; a button has its own Enter
 * and Space. While a form is open no key taps but a pedal that was taught, and what is typed beside it goes into it.
 */
export function useScanner(acts: Acts): void {
  const { bench, jotter, tablet, isReadOnly } = useApp();
  const latest = useRef(acts);
  latest.current = acts;
  useEffect(() => {
    if (isReadOnly) return;
    const reader = new KeyReader<KeyboardEvent>();
    let forget = () => {};
    const act = (read: KeyRead<KeyboardEvent> | null) => {
      if (read?.kind === 'tap') {
        if (tablet.peek().anyKey) latest.current.tap?.(bench.clock.stampOf(read.press));
      } else if (read) latest.current.scan(read.kind === 'scan' ? read.text : null);
    };
    const take = (event: KeyboardEvent, read: KeyRead<KeyboardEvent> | null) => {
      event.preventDefault();
      event.stopPropagation();
      act(read);
    };
    const onKeyDown = (event: KeyboardEvent) => {
      const { key, target, repeat, timeStamp } = event;
      if (event.ctrlKey || event.altKey || event.metaKey) return;
      const isTyping = reader.isTyping(timeStamp);
      const form = latest.current.tap && document.querySelector('form');
      const isPedal =
        (event.code || key) === taughtKey(jotter) && (!form || (key !== 'Enter' && isTapKey(key)));
      const tap = form && !isPedal ? null : latest.current.tap;
      if (!isTyping && tap && isPedal) {
        take(event, null);
        if (!repeat) tap(bench.clock.stampOf(event));
        return;
      }
      if (target instanceof HTMLElement && target.matches('input, textarea, select')) return;
      const isPress = key === 'Enter' || key === ' ';
      if (form) {
        const isSurface = target instanceof HTMLElement && target.matches('.pace-main');
        if (isPress && isSurface) take(event, null);
        else if (key.length > 1 || isPress) return;
        // A key goes where the focus is once everything has seen it pressed.
        form.querySelector('input')?.focus();
        return;
      }
      if (isTyping && (key === 'Enter' || key === 'Tab')) return take(event, reader.end(event));
      if (key.length === 1 && (key !== ' ' || isTyping)) {
        const read = repeat ? null : reader.type(event);
        // A space in a code must not press what has the focus.
        if (isTyping) take(event, read);
        else act(read);
        forget();
        forget = bench.clock.after(reader.settlesAfterMs, () => act(reader.settle()));
        return;
      }
      // A button in focus takes these itself.
      const isStray = isPress && target === document.body;
      const isOther = !isPress && isTapKey(key) && tablet.peek().anyKey;
      if (!tap || !(isStray || isOther)) return;
      take(event, null);
      if (!repeat) tap(bench.clock.stampOf(event));
    };
    document.addEventListener('keydown', onKeyDown, true);
    return () => {
      forget();
      document.removeEventListener('keydown', onKeyDown, true);
    };
  }, [bench, jotter, tablet, isReadOnly]);
}
