import { useState } from 'preact/hooks';
import { areBreaksInside } from '../../application/shop/set-calendar';
import { type DayException, type ShiftCalendar, shiftsOn } from '../../domain/shop/shift-calendar';
import { calendar as words } from '../../i18n/en/calendar';
import { useApp } from '../app';
import { readSpan } from './shift-form';
import { TimeSpanFields } from './time-span-fields';

interface Props {
  readonly saved: ShiftCalendar;
  save(exception: DayException): void;
  close(): void;
}

/** A day on which the shop is closed, or works at other hours. */
export function DayForm({ saved, save, close }: Props) {
  const { isReadOnly } = useApp();
  const [day, setDay] = useState('');
  const [isClosed, setClosed] = useState(true);
  const [span, setSpan] = useState({ from: '', to: '' });
  const [fault, setFault] = useState('');
  const send = (event: Event) => {
    event.preventDefault();
    const hours = readSpan(span);
    if (day === '') setFault(words.faults.day);
    else if (saved.exceptions.some((each) => each.day === day)) setFault(words.faults.twice);
    else if (isClosed) save({ day, shifts: [] });
    else if (!hours) setFault(words.faults.times);
    else {
      const usual = shiftsOn(saved, day).flatMap(({ breaks }) => breaks);
      const breaks = usual.filter((each) => areBreaksInside({ ...hours, breaks: [each] }));
      save({ day, shifts: [{ ...hours, breaks: areBreaksInside({ ...hours, breaks }) ? breaks : [] }] });
    }
  };
  return (
    <form class="stack panel" onSubmit={send} noValidate>
      <div class="shop-span">
        <label class="field">
          <span>{words.day}</span>
          <input type="date" value={day} onInput={(event) => setDay(event.currentTarget.value)} />
        </label>
        <button type="button" class="choice" aria-pressed={isClosed} onClick={() => setClosed(true)}>
          {words.isClosed}
        </button>
        <button type="button" class="choice" aria-pressed={!isClosed} onClick={() => setClosed(false)}>
          {words.isOpen}
        </button>
      </div>
      {!isClosed && (
        <>
          <div class="shop-span">
            <TimeSpanFields {...span} fromLabel={words.from} toLabel={words.to} change={setSpan} />
          </div>
          <p class="small quiet">{words.dayNote}</p>
        </>
      )}
      {fault && (
        <p class="fault" role="alert">
          {fault}
        </p>
      )}
      <div class="row">
        <button type="submit" class="button strong" disabled={isReadOnly}>
          {words.saveDay}
        </button>
        <button type="button" class="button" onClick={close}>
          {words.cancel}
        </button>
      </div>
    </form>
  );
}
