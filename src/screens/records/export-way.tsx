import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { recordsWords } from '../../i18n/en/records';
import { BroughtIntoView } from './brought-into-view';

interface Props {
  readonly title: string;
  readonly text: string;
  readonly button: string;
  /** Hands a file over, and says in one sentence what happened. */
  readonly act: () => Promise<string>;
  readonly children?: ComponentChildren;
}

/** One way out of the tablet. Whatever stands against it is said beside its button, and nothing is handed over. */
export function ExportWay({ title, text, button, act, children }: Props) {
  const [told, setTold] = useState('');
  const go = async () => {
    setTold('');
    try {
      setTold(await act());
    } catch (error) {
      setTold(recordsWords.give.failed(String(error)));
    }
  };
  return (
    <div class="records-way">
      <h3>{title}</h3>
      <p class="quiet">{text}</p>
      {children}
      <button type="button" class="button" onClick={go}>
        {button}
      </button>
      <div class="records-told" role="status">
        {told && (
          <BroughtIntoView answer={told}>
            <p>{told}</p>
          </BroughtIntoView>
        )}
      </div>
    </div>
  );
}
