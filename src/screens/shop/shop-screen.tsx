import './shop.css';
import { useState } from 'preact/hooks';
import { useApp } from '../app';
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
  const part = parts.find(({ id }) => id === inHand) ?? null;
  const close = (tell: string) => {
    setInHand(null);
    setTold(tell);
  };
  if (inHand !== null && (part || inHand === 'new')) {
    return (
      <div class="page stack">
        <PartForm key={inHand} part={part} close={close} />
      </div>
    );
  }
  return (
    <div class="page stack shop">
      <PartSheet parts={parts} told={told} pick={setInHand} />
      <div class="shop-columns">
        <ReasonsForm />
        <PeopleList />
      </div>
    </div>
  );
}
