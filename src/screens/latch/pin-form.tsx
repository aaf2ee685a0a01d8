import { useState } from 'preact/hooks';
import { setPin } from '../../application/latch/set-pin';
import { latchWords as words } from '../../i18n/en/latch';
import { useApp } from '../app';
import { answerInWords } from './answer-in-words';
import { PinField } from './pin-field';

/** A new PIN, typed twice; where one is set, that one first, and the way to remove it. */
export function PinForm({ done }: { done: (tell: string) => void }) {
  const { bench, secrets, isUnlatched } = useApp();
  const { isLatched } = bench.shop.value;
  const [current, setCurrent] = useState('');
  const [wanted, setWanted] = useState('');
  const [again, setAgain] = useState('');
  const [told, setTold] = useState('');

  const put = async (pin: string | null, tell: string) => {
    setTold(words.checking);
    const machine = await secrets();
    if (!machine) return setTold(words.noCryptography);
    const answer = await setPin(bench, machine, pin, current);
    if (!answer.ok) {
      setCurrent('');
      return setTold(answerInWords(answer));
    }
    isUnlatched.value = false;
    done(tell);
  };
  const set = (event: Event) => {
    event.preventDefault();
    if (!/^\d{4,12}$/.test(wanted)) return setTold(words.shape);
    if (wanted !== again) return setTold(words.differs);
    put(wanted, words.wasSet);
  };
  return (
    <form class="panel stack" onSubmit={set} noValidate>
      {isLatched && <PinField label={words.current} value={current} change={setCurrent} />}
      <div class="row">
        <PinField label={words.newPin} value={wanted} change={setWanted} />
        <PinField label={words.again} value={again} change={setAgain} />
      </div>
      <p role="status">{told}</p>
      <div class="row">
        <button type="submit" class="button strong">
          {isLatched ? words.changeTo : words.set}
        </button>
        {isLatched && (
          <button type="button" class="button" onClick={() => put(null, words.wasRemoved)}>
            {words.remove}
          </button>
        )}
        <button type="button" class="button plain" onClick={() => done('')}>
          {words.cancel}
        </button>
      </div>
    </form>
  );
}
