import { useEffect, useState } from 'preact/hooks';
import { latchWords } from '../../i18n/en/latch';
import { tabletWords as words } from '../../i18n/en/tablet';
import { useApp } from '../app';
import { PinAsk } from '../latch/pin-ask';
import { PinForm } from '../latch/pin-form';
import { useLatch } from '../latch/use-latch';
import { Group } from './group';

/**
 * Kept on Pace, or not. Keeping needs that a PIN is set, and holds at once; the PIN opens the other screens until
 * Pace is opened again, or lets the tablet go for good.
 */
export function Keeping() {
  const { bench, tablet, isUnlatched, isReadOnly, route, go } = useApp();
  const isShut = useLatch();
  const [isSetting, setSetting] = useState(false);
  const { isKept } = tablet.value;
  const keep = (kept: boolean) => {
    tablet.value = { ...tablet.value, isKept: kept };
    isUnlatched.value = false;
    if (kept) go('pace');
  };
  const isHeld = isKept && isShut;
  // Else whoever gives the PIN is thrown to the screen that the address names.
  useEffect(() => {
    if (isHeld && route.peek().screen !== 'pace') go('pace');
  }, [isHeld]);
  if (isSetting) {
    return (
      <Group title={words.keep}>
        <PinForm done={() => setSetting(false)} />
      </Group>
    );
  }
  if (!bench.shop.value.isLatched) {
    return (
      <Group title={words.keep} note={words.keepNoPin}>
        <button type="button" class="button" disabled={isReadOnly} onClick={() => setSetting(true)}>
          {latchWords.set}
        </button>
      </Group>
    );
  }
  if (!isKept) {
    return (
      <Group title={words.keep} note={words.keepHow}>
        <button type="button" class="button" onClick={() => keep(true)}>
          {words.keepNow}
        </button>
      </Group>
    );
  }
  return (
    <Group title={words.keep}>
      <p role="status">{isShut ? words.kept : words.keptOpen}</p>
      {isShut ? (
        <PinAsk />
      ) : (
        <>
          <button type="button" class="button" onClick={() => keep(true)}>
            {latchWords.close}
          </button>
          <button type="button" class="button" onClick={() => keep(false)}>
            {words.keepNoMore}
          </button>
        </>
      )}
    </Group>
  );
}
