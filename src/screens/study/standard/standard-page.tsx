import '../study-paper.css';
import '../study-print.css';
import { studyReduce } from '../../../i18n/en/study-reduce';
import { studyStandard as words } from '../../../i18n/en/study-standard';
import { useApp } from '../../app';
import { StandardOfPart } from './standard-of-part';
import { useStudiesOfPart } from './use-studies-of-part';

/** The analysis of studies of one part, and the standards made from it. */
export function StandardPage({ partId }: { partId: string }) {
  const { bench, go } = useApp();
  const part = bench.shop.value.parts.find(({ id }) => id === partId);
  const found = useStudiesOfPart(part);
  return (
    <div class="page study-paper">
      <div class="row spread">
        <h1>{words.title(part?.code ?? '')}</h1>
        <div class="row no-print">
          <button type="button" class="button" onClick={() => print()}>
            {studyReduce.paper.print}
          </button>
          <button type="button" class="button" onClick={() => go('study')}>
            {words.back}
          </button>
        </div>
      </div>
      {!part && <p>{words.noPart}</p>}
      {part && typeof found === 'string' && (
        <p class="quiet" role="status">
          {words[found]}
        </p>
      )}
      {part && typeof found !== 'string' && <StandardOfPart part={part} {...found} />}
    </div>
  );
}
