import './shop.css';
import { useState } from 'preact/hooks';
import { useApp } from '../app';
import { LatchSection } from '../latch/latch-section';
import { PinAsk } from '../latch/pin-ask';
import { useLatch } from '../latch/use-latch';
import { PartForm } from './part-form';
import { PartSheet } from './part-sheet';
import { PeopleList } from './people-list';
import { ReasonsForm } from './reasons-form';

/** What do we make, how, and at what pace? Parts, people's codes, and the reasons why work stops. */
export function ShopScreen() {
  const app = useApp();
  const { parts } = app.bench.shop.value;
  /** A part's id, 'new', or nothing. */
  const [inHand, setInHand] = useState<string | null>(null);
  const [told, setTold] = useState('');
  const isShut = useLatch();
  const part = parts.find(({ id }) => id === inHand) ?? null;
  const close = (tell: string) => {
    setInHand(null);
    setTold(tell);
  };
  if (!isShut && inHand !== null && (part || inHand === 'new')) {
    return (
      <div class="page stack">
        <PartForm key={inHand} part={part} close={close} />
      </div>
    );
  }
  return (
    <div class="page stack shop">
      <PinAsk />
      <fieldset class="latch-hold" disabled={isShut}>
        <PartSheet parts={parts} told={told} pick={setInHand} />
        <div class="shop-columns">
          <ReasonsForm />
          <PeopleList />
        </div>
      </fieldset>
      <LatchSection />
    </div>
  );
}
