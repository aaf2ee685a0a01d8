import { studyReduce } from '../../i18n/en/study-reduce';
import { turnSetup } from '../../i18n/en/turn-setup';
import { useApp } from '../app';
import { momentWords } from './moment-words';

const words = studyReduce.paper;

/** The foot of the printed form: when it was printed, the formulas, what goes before any time, and lines to sign. */
export function PaperFoot({ standardFormula }: { standardFormula: string }) {
  const { bench } = useApp();
  return (
    <footer class="study-paper-foot">
      <p>
        {words.formulas} {standardFormula}. {words.printed(momentWords(bench.clock.now()))}
      </p>
      <p>{turnSetup.cautions.join(' ')}</p>
      <div class="study-signs">
        {words.signs.map((sign) => (
          <p key={sign}>{sign}</p>
        ))}
      </div>
    </footer>
  );
}
