import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { study } from '../../i18n/en/study';
import { studySheet } from '../../i18n/en/study-sheet';

interface Props {
  readonly element: string;
  readonly cycle: number;
  /** What is written there already. */
  readonly kept: string;
  readonly onKeep: (note: string) => void;
  readonly onClose: () => void;
}

/** A line to write on while the watch runs; it stands in the place of the acts, and the surface goes on taking taps. */
export function RemarkLine({ element, cycle, kept, onKeep, onClose }: Props) {
  const [note, setNote] = useState(kept);
  const field = useRef<HTMLInputElement>(null);
  useLayoutEffect(() => field.current?.focus(), []);
  const keep = (event: Event) => {
    event.preventDefault();
    onKeep(note);
    onClose();
  };
  return (
    <form class="study-remark" onSubmit={keep}>
      <label class="field">
        <span>{study.observe.remarkOn(element, cycle)}</span>
        <input
          type="text"
          value={note}
          autocomplete="off"
          ref={field}
          onInput={(event) => setNote(event.currentTarget.value)}
        />
      </label>
      <button type="submit" class="button strong">
        {studySheet.reading.keepNote}
      </button>
      <button type="button" class="button" onClick={onClose}>
        {studySheet.reading.close}
      </button>
    </form>
  );
}
