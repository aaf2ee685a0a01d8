import './latch.css';
import { useState } from 'preact/hooks';
import { latchWords as words } from '../../i18n/en/latch';
import { useApp } from '../app';
import { PinForm } from './pin-form';

/** Sets, changes and removes the supervisor's PIN, and says what it is worth. */
export function LatchSection() {
  const { bench, isUnlatched, isReadOnly } = useApp();
  const { isLatched } = bench.shop.value;
  const [isOpen, setOpen] = useState(false);
  const [told, setTold] = useState('');
  const done = (tell: string) => {
    setOpen(false);
    setTold(tell);
  };
  return (
    <section class="stack" aria-labelledby="latch-title">
      <h2 id="latch-title">{words.title}</h2>
      <p class="small quiet">{words.what}</p>
      <p>{isLatched ? words.on : words.off}</p>
      {isLatched && isUnlatched.value && (
        <div class="row">
          <p>{words.open}</p>
          <button
            type="button"
            class="button"
            onClick={() => {
              isUnlatched.value = false;
            }}
          >
            {words.close}
          </button>
        </div>
      )}
      {isOpen ? (
        <PinForm done={done} />
      ) : (
        <div class="row">
          <button type="button" class="button" disabled={isReadOnly} onClick={() => setOpen(true)}>
            {isLatched ? words.change : words.set}
          </button>
        </div>
      )}
      <p role="status">{told}</p>
      {(isLatched || isOpen) && <p class="small">{words.forgotten}</p>}
    </section>
  );
}
