import type { ElementDefinition } from '../../../domain/shop/element-definition';
import { studyPaper as words } from '../../../i18n/en/study-paper';
import { studySheet } from '../../../i18n/en/study-sheet';
import { carriedRating, cellKey, type PaperDraft } from './paper-draft';

interface Props {
  readonly draft: PaperDraft;
  readonly elements: readonly ElementDefinition[];
  readonly lines: readonly number[];
  readonly onStand: (place: number) => void;
}

/** The cycle in hand and the one before it, as they were typed; a touch goes to a line. */
export function PaperSheet({ draft, elements, lines, onStand }: Props) {
  const { cycle, place: here, cells } = draft;
  const shown = (inCycle: number, elementIndex: number) => {
    const cell = cells[cellKey(inCycle, elementIndex)];
    if (!cell) return '';
    if (cell.isMissed) return words.missed;
    // What nobody typed and what counts all the same stands in brackets, as on the sheet of the study.
    const isCarried = cell.time !== '' && elements[elementIndex]!.work !== 'machine';
    const carried = isCarried && `(${carriedRating(draft, inCycle, elementIndex)})`;
    return (
      <>
        <span class="study-live-rating">{cell.rating || carried}</span>{' '}
        <span class={cell.cause === '' ? '' : 'struck'}>{cell.time}</span>
      </>
    );
  };
  return (
    <table class="sheet study-live">
      <colgroup>
        <col class="study-live-columns-number" />
        <col />
        <col class="study-live-columns-time" />
        <col class="study-live-columns-time" />
      </colgroup>
      <thead>
        <tr>
          <th scope="col" class="words" colSpan={2}>
            {studySheet.observation.element}
          </th>
          {cycle > 1 ? <th scope="col">{words.cycle(cycle - 1)}</th> : <td />}
          <th scope="col">{words.cycle(cycle)}</th>
        </tr>
      </thead>
      <tbody>
        {lines.map((elementIndex, place) => (
          <tr
            key={elementIndex}
            class={place === here ? 'study-live-hand' : ''}
            aria-current={place === here ? 'step' : undefined}
          >
            <td class="study-live-number">{elementIndex + 1}</td>
            <td class="words study-live-name">
              <button type="button" class="study-live-choose" onClick={() => onStand(place)}>
                {elements[elementIndex]!.name}
              </button>
            </td>
            <td>{shown(cycle - 1, elementIndex)}</td>
            <td>{shown(cycle, elementIndex)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
