import type { StudyHeading } from '../../domain/records/study-fact';
import type { Study } from '../../domain/study/study';
import { cycleTimes } from '../../domain/study/study-progress';
import { study as allWords } from '../../i18n/en/study';
import { studySheet } from '../../i18n/en/study-sheet';
import { asTyped } from '../../i18n/parse-number';
import { begunWords } from './moment-words';

const words = studySheet.head;
/** Lines that are left away where nothing was said. */
const optional: readonly string[] = [words.agreement, words.plan, words.sizes, words.purpose];

/** What stands at the head of the form: which work, whose pace, under which conditions. */
export function SheetHead({ study }: { study: Study }) {
  const { heading, readings, title } = study;
  const rows = readings.map((reading) => reading.row);
  const row = rows[0];
  const carried = row?.carried ?? {};
  const lines: [string, string | undefined][] = [
    [words.study, title],
    [words.part, heading?.partCode ?? carried.part],
    [words.revision, heading ? String(heading.methodRevision) : carried.method_revision],
    [words.operator, heading?.operator ?? carried.operator],
    [words.observer, heading?.observer ?? carried.observer],
    [words.begun, begunWords(study)],
    [
      words.cycles,
      words.cyclesWhole(Math.max(0, ...rows.map(({ cycle }) => cycle)), cycleTimes(rows).length),
    ],
    [words.perCycle, String(row?.partsPerCycle ?? heading?.partsPerCycle ?? 1)],
    [words.told, heading?.personTold ? words.toldYes : ''],
    [words.purpose, heading?.purpose ? allWords.prepare.purposes[heading.purpose] : ''],
    [words.agreement, heading?.agreement],
    [words.plan, planWords(heading)],
    [words.sizes, heading?.sizes?.map(({ driver, value }) => `${driver}: ${asTyped(value)}`).join('; ')],
    [words.source, sourceWords(study)],
    [words.conditions, heading?.conditions ?? carried.conditions],
  ];
  return (
    <dl class="study-head">
      {lines
        .filter(([name, value]) => value || !optional.includes(name))
        .map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value || words.notStated}</dd>
          </div>
        ))}
    </dl>
  );
}

function sourceWords({ status, method }: Study): string {
  if (status !== 'imported') return words.timed;
  return method.length > 0 ? words.typed : words.imported;
}

function planWords(heading: StudyHeading | null): string {
  const { plan = '', plannedCycles } = heading ?? {};
  const cycles = plannedCycles === undefined ? '' : words.planned(plannedCycles);
  return [cycles, plan].filter((part) => part !== '').join('; ');
}
