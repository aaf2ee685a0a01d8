import { useEffect, useRef } from 'preact/hooks';
import { study } from '../../i18n/en/study';
import { ChoiceRow } from './choice-row';
import type { ElementDraft } from './study-draft';
import { TextField } from './text-field';

const words = study.prepare;
const classes = { repetitive: study.classes.repetitive, occasional: study.classes.occasional };

interface Props {
  readonly element: ElementDraft;
  readonly onChange: (part: Partial<ElementDraft>) => void;
  readonly onRemove: () => void;
  /** Null at the edge of the sheet. */
  readonly onMoveUp: (() => void) | null;
  readonly onMoveDown: (() => void) | null;
  readonly onDone: () => void;
}

/** One element, open to be written. */
export function ElementFields({ element, onChange, onRemove, onMoveUp, onMoveDown, onDone }: Props) {
  const fields = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (element.name === '') fields.current?.querySelector('input')?.focus();
  }, [element.key]);
  // The class of a method written elsewhere may be foreign: then it is shown, and no other is offered.
  const elementClass = element.elementClass === 'foreign' ? 'repetitive' : element.elementClass;
  return (
    <div class="stack study-element" ref={fields}>
      <div class="study-element-names">
        <TextField label={words.elementName} value={element.name} onInput={(name) => onChange({ name })} />
        <TextField
          label={words.breakPoint}
          value={element.breakPoint}
          hint={words.breakPointHint}
          onInput={(breakPoint) => onChange({ breakPoint })}
        />
      </div>
      <div class="row study-element-kind">
        <ChoiceRow
          label={words.elementClass}
          options={classes}
          value={elementClass}
          onChoose={(chosen) => onChange({ elementClass: chosen })}
        />
        {element.elementClass === 'occasional' && (
          <label class="field study-units">
            <span>{words.units}</span>
            <span class="row">
              <input
                type="text"
                value={element.units}
                inputMode="numeric"
                autocomplete="off"
                required
                onInput={(event) => onChange({ units: event.currentTarget.value })}
              />
              {words.unitsOf}
            </span>
          </label>
        )}
        <ChoiceRow
          label={words.work}
          options={study.works}
          value={element.work}
          onChoose={(work) => onChange(work === 'machine' ? { work, placement: 'external' } : { work })}
        />
        {element.work !== 'machine' && (
          <ChoiceRow
            label={words.placement}
            options={words.placements}
            value={element.placement}
            onChoose={(placement) => onChange({ placement })}
          />
        )}
      </div>
      {element.work !== 'machine' && element.elementClass !== 'occasional' && (
        <TextField
          label={words.driver}
          value={element.driver}
          hint={words.driverHint}
          onInput={(driver) => onChange({ driver })}
        />
      )}
      <div class="row study-element-acts">
        <button type="button" class="button strong" onClick={onDone}>
          {words.done}
        </button>
        <button type="button" class="button" disabled={!onMoveUp} onClick={() => onMoveUp?.()}>
          {words.up}
        </button>
        <button type="button" class="button" disabled={!onMoveDown} onClick={() => onMoveDown?.()}>
          {words.down}
        </button>
        <button type="button" class="button study-element-remove" onClick={onRemove}>
          {words.remove}
        </button>
      </div>
    </div>
  );
}
