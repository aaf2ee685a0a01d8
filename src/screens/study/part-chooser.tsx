import { useState } from 'preact/hooks';
import { definePart } from '../../application/shop/define-part';
import { study } from '../../i18n/en/study';
import { useApp } from '../app';
import { TextField } from './text-field';

const words = study.prepare;

interface Props {
  readonly part: string;
  readonly onChoose: (part: string) => void;
}

/** The part under study: one of the shop's, or a new one right here. */
export function PartChooser({ part, onChoose }: Props) {
  const { bench, isReadOnly } = useApp();
  const parts = bench.shop.value.parts.filter(({ retired }) => !retired);
  const [isAdding, setIsAdding] = useState(parts.length === 0);
  const [code, setCode] = useState('');
  const [name, setName] = useState('');
  const [fault, setFault] = useState('');

  const add = () => {
    const wanted = code.trim();
    if (wanted === '') return setFault(words.partWithoutCode);
    if (parts.some((other) => other.code === wanted)) return setFault(words.partTaken);
    onChoose(definePart(bench, wanted, name));
    setIsAdding(false);
    setCode('');
    setName('');
    setFault('');
  };

  return (
    <div class="stack">
      <div class="choices">
        {parts.map(({ id, code: partCode, name: partName }) => (
          <button
            key={id}
            type="button"
            class="choice"
            aria-pressed={id === part}
            onClick={() => onChoose(id)}
          >
            {partCode}
            {partName && <span class="small"> {partName}</span>}
          </button>
        ))}
        {!isAdding && (
          <button type="button" class="button plain" disabled={isReadOnly} onClick={() => setIsAdding(true)}>
            {words.newPart}
          </button>
        )}
      </div>
      {isAdding && (
        <div class="row study-add-part">
          <TextField label={words.newPartCode} value={code} narrow onInput={setCode} />
          <TextField label={words.newPartName} value={name} onInput={setName} />
          <button type="button" class="button" disabled={isReadOnly} onClick={add}>
            {words.addPart}
          </button>
        </div>
      )}
      {fault && (
        <p class="fault" role="alert">
          {fault}
        </p>
      )}
    </div>
  );
}
