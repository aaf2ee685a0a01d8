import { useState } from 'preact/hooks';
import { study } from '../../i18n/en/study';
import { ElementFields } from './element-fields';
import { kindWords } from './kind-words';
import { type ElementDraft, newElementDraft, wholeOf } from './study-draft';

const words = study.prepare;

interface Props {
  readonly elements: readonly ElementDraft[];
  readonly onChange: (elements: readonly ElementDraft[]) => void;
}

/** The elements of the method on a ruled sheet; one line at a time is open to be written. */
export function MethodSheet({ elements, onChange }: Props) {
  const [openKey, setOpenKey] = useState<number | null>(null);

  const add = () => {
    const element = newElementDraft(elements);
    onChange([...elements, element]);
    setOpenKey(element.key);
  };
  const change = (key: number, part: Partial<ElementDraft>) =>
    onChange(elements.map((element) => (element.key === key ? { ...element, ...part } : element)));
  const remove = (key: number) => {
    onChange(elements.filter((element) => element.key !== key));
    setOpenKey(null);
  };
  const move = (index: number, by: number) => {
    const moved = [...elements];
    moved.splice(index + by, 0, ...moved.splice(index, 1));
    onChange(moved);
  };

  return (
    <div class="stack">
      {elements.length > 0 && (
        <table class="sheet study-method">
          <thead>
            <tr>
              <th scope="col">{words.number}</th>
              <th scope="col" class="words">
                {words.element}
              </th>
              <th scope="col" class="words">
                {words.kind}
              </th>
              <th scope="col">
                <span class="visually-hidden">{words.change}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {elements.map((element, index) =>
              element.key === openKey ? (
                <tr key={element.key}>
                  <td>{index + 1}</td>
                  <td class="words" colSpan={3}>
                    <ElementFields
                      element={element}
                      onChange={(part) => change(element.key, part)}
                      onRemove={() => remove(element.key)}
                      onMoveUp={index > 0 ? () => move(index, -1) : null}
                      onMoveDown={index < elements.length - 1 ? () => move(index, 1) : null}
                      onDone={() => setOpenKey(null)}
                    />
                  </td>
                </tr>
              ) : (
                <ElementLine
                  key={element.key}
                  number={index + 1}
                  element={element}
                  onOpen={() => setOpenKey(element.key)}
                />
              ),
            )}
          </tbody>
        </table>
      )}
      <div>
        <button type="button" class="button" onClick={add}>
          {words.add}
        </button>
      </div>
    </div>
  );
}

interface LineProps {
  readonly number: number;
  readonly element: ElementDraft;
  readonly onOpen: () => void;
}

function ElementLine({ number, element, onOpen }: LineProps) {
  const { name, breakPoint, elementClass, units, driver } = element;
  return (
    <tr>
      <td>{number}</td>
      <td class="words">
        <strong>{name.trim() || words.unnamed}</strong>
        {breakPoint && <div class="quiet small">{breakPoint}</div>}
      </td>
      <td class="words">
        {kindWords(element)}
        {driver !== '' && <div class="quiet small">{words.growsWith(driver)}</div>}
        {elementClass === 'occasional' && (
          <div class="quiet small">
            {wholeOf(units) > 0 ? words.onceIn(wholeOf(units)) : words.onceInMissing}
          </div>
        )}
      </td>
      <td>
        <button
          type="button"
          class="button"
          aria-label={words.open(name.trim() || words.unnamed)}
          onClick={onOpen}
        >
          {words.change}
        </button>
      </td>
    </tr>
  );
}
