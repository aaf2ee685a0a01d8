import './latch.css';
import { useState } from 'preact/hooks';
import { checkPin } from '../../application/latch/check-pin';
import { latchWords as words } from '../../i18n/en/latch';
import { useApp } from '../app';
import { answerInWords } from './answer-in-words';
import { PinField } from './pin-field';
import { useLatch } from './use-latch';

/** Says that standards are latched and takes the PIN, in place; nothing at all where they are not. */
export function PinAsk() {
  const { bench, secrets, isUnlatched, isReadOnly } = useApp();
  const isShut = useLatch();
  const [pin, setPin] = useState('');
  const [told, setTold] = useState('');
  if (!isShut) return null;

  const give = async (event: Event) => {
    event.preventDefault();
    setTold(words.checking);
    const machine = await secrets();
    if (!machine) return setTold(words.noCryptography);
    const answer = await checkPin(bench, machine, pin);
    setPin('');
    setTold(answerInWords(answer));
    if (answer.ok) isUnlatched.value = true;
  };
  return (
    <form class="panel latch-ask" onSubmit={give} noValidate>
      <p>
        <strong>{words.shut}</strong>
      </p>
      <PinField label={words.pin} value={pin} change={setPin} />
      <button type="submit" class="button" disabled={isReadOnly || pin === ''}>
        {words.give}
      </button>
      <p role="status">{told}</p>
    </form>
  );
}
