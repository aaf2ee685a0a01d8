import './shop.css';
import { useState } from 'preact/hooks';
import { useApp } from '../app';
import { LatchSection } from '../latch/latch-section';
import { PinAsk } from '../latch/pin-ask';
import { useLatch } from '../latch/use-latch';
import { CalendarSection } from './calendar-section';
import { LearningSection } from './learning-section';
import { PartForm } from './part-form';
import { PartSheet } from './part-sheet';
import { PeopleList } from './people-list';
import { ReasonsForm } from './reasons-form';
import type { PartTyped } from './save-part';
import { useKeptDraft } from './use-kept-draft';

/** A part in hand: its id, or 'new', and what is typed about it. */
interface OpenForm {
  readonly of: string;
  readonly typed: PartTyped;
}

/** What do we make, how, and at what pace? Parts, people's codes, and the reasons why work stops. */
export function ShopScreen() {
  const app = useApp();
  const { parts } = app.bench.shop.value;
  const [form, keepForm] = useKeptDraft<OpenForm>(app.bench, 'part');
  const [told, setTold] = useState('');
  const isShut = useLatch();
  const part = parts.find(({ id }) => id === form?.of) ?? null;
  const open = (of: string) => {
    const known = parts.find(({ id }) => id === of);
    const { code = '', name = '' } = known ?? {};
    keepForm({ of, typed: { code, name, target: null } });
  };
  const close = (tell: string) => {
    keepForm(null);
    setTold(tell);
  };
  if (!isShut && form && (part || form.of === 'new')) {
    return (
      <div class="page stack">
        <PartForm
          key={form.of}
          part={part}
          typed={form.typed}
          change={(typed) => keepForm({ ...form, typed })}
          close={close}
        />
      </div>
    );
  }
  return (
    <div class="page stack shop">
      <PinAsk />
      <fieldset class="latch-hold" disabled={isShut}>
        <PartSheet parts={parts} told={told} pick={open} />
      </fieldset>
      <div class="shop-columns">
        <fieldset class="latch-hold" disabled={isShut}>
          <ReasonsForm />
        </fieldset>
        <div class="stack shop-people">
          <PeopleList isShut={isShut} />
          <fieldset class="latch-hold" disabled={isShut}>
            <LearningSection />
          </fieldset>
        </div>
      </div>
      <fieldset class="latch-hold" disabled={isShut}>
        <CalendarSection />
      </fieldset>
      <LatchSection />
    </div>
  );
}
