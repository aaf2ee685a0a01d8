import { useEffect, useRef } from 'preact/hooks';
import { studyPaper as words } from '../../../i18n/en/study-paper';
import { decimalMark } from '../../../i18n/parse-number';

interface Props {
  /** A digit or the decimal mark; an empty text takes the last one away. */
  readonly onType: (sign: string) => void;
  readonly onNext: () => void;
  readonly onBack: () => void;
  readonly next: string;
}

const digits = ['7', '8', '9', '4', '5', '6', '1', '2', '3', '0'];

/** Numbers as they lie on any desk, and the way on; a keyboard types too. */
export function NumberPad(props: Props) {
  const latest = useRef(props);
  latest.current = props;
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      const { onType, onNext } = latest.current;
      const isField = event.target instanceof HTMLSelectElement;
      if (isField || event.ctrlKey || event.metaKey || event.altKey) return;
      if (event.key === ',' || event.key === '.') onType(decimalMark());
      else if (digits.includes(event.key)) onType(event.key);
      else if (event.key === 'Backspace') onType('');
      else if (event.key === 'Enter') onNext();
      else return;
      event.preventDefault();
    };
    document.addEventListener('keydown', onKeyDown);
    return () => document.removeEventListener('keydown', onKeyDown);
  }, []);
  const { onType, onNext, onBack, next } = props;
  return (
    <div class="study-keys">
      {[...digits, decimalMark()].map((sign) => (
        <button key={sign} type="button" class="button number" onClick={() => onType(sign)}>
          {sign}
        </button>
      ))}
      <button type="button" class="button" aria-label={words.erase} onClick={() => onType('')}>
        ⌫
      </button>
      <button type="button" class="button study-keys-back" onClick={onBack}>
        {words.back}
      </button>
      <button type="button" class="button strong study-keys-next" onClick={onNext}>
        {words.next}
        <span class="small">{next}</span>
      </button>
    </div>
  );
}
