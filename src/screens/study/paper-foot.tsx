import { studyReduce } from '../../i18n/en/study-reduce';
import { useApp } from '../app';
import { momentWords } from './moment-words';

const words = studyReduce.paper;

/** The foot of the printed form: when it was printed, the formulas, and lines to sign by hand. */
export function PaperFoot({ standardFormula }: { standardFormula: string }) {
  const { bench } = useApp();
  return (
    <footer class="study-paper-foot">
      <p>
        {words.formulas} {standardFormula}. {words.printed(momentWords(bench.clock.now()))}
      </p>
      <div class="study-signs">
        {words.signs.map((sign) => (
          <p key={sign}>{sign}</p>
        ))}
      </div>
    </footer>
  );
}
