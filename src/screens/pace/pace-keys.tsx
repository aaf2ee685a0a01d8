import { useEffect } from 'preact/hooks';
import type { Stamp } from '../../domain/records/stamp';
import { isSameCode } from '../../domain/shop/known-code';
import { scanned as words } from '../../i18n/en/scanned';
import { useApp } from '../app';
import { useScanner } from '../keys/use-scanner';
import { changePartSaid } from './change-part-said';

interface Props {
  /** How many taps were taken since the screen was opened. */
  readonly taps: number;
  tapMain(at: Stamp): void;
  goBack(): void;
  say(said: string): void;
}

/** What reaches the turn otherwise than by a finger, and how a tap is answered beside what is seen. */
export function PaceKeys({ taps, tapMain, goBack, say }: Props) {
  const { bench, tablet, tapAnswer } = useApp();
  const choose = (text: string | null) => {
    if (text === null) return say(words.tooLong);
    const { parts } = bench.shop.value;
    const part = parts.find(({ code, retired }) => !retired && isSameCode(code, text));
    if (!part) return say(words.unknown(text));
    const isInHand = bench.turn.peek()?.inHand.part === part.id;
    const said = changePartSaid(bench, part);
    say(isInHand ? words.inHand(part.code) : words.chosen(said));
  };
  useScanner({ tap: tapMain, scan: choose });

  useEffect(() => {
    const onKeyDown = ({ key }: KeyboardEvent) => {
      if (key === 'Escape') goBack();
    };
    document.addEventListener('keydown', onKeyDown);
    return () => document.removeEventListener('keydown', onKeyDown);
  }, [goBack]);

  useEffect(() => {
    const { sound, vibration } = tablet.peek();
    if (taps === 0 || !(sound || vibration)) return;
    tapAnswer().then((answer) => {
      if (sound) answer.sound();
      if (vibration) answer.vibrate();
    });
  }, [taps, tablet, tapAnswer]);
  return null;
}
