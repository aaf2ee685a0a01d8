import type { StudyFact } from '../domain/records/study-fact';
import type { ExclusionCause } from '../domain/study/exclusion-cause';
import type { DemoLog } from './demo-log';
import { demoConditions, demoMethod } from './demo-method';
import { partSizes } from './demo-parts';
import { type SheetCell, studySheet } from './study-sheet';

/** Wednesday of the fourth week, 11:35: K7 works the afternoon. */
const DAY = 17;
const BEGINS = 275;
const THOUSANDTH = 1 / 1_000;
/** Share of two merged elements after which the engineer saw that the break point between them had passed. */
const NOTICED_AFTER = 0.8;

const [E1, E5, E6, MC] = [1, 6, 7, 8];
const [O1, O2, O3] = [10, 11, 12];

/** Work timed apart at the start of the element it fell into. Cycles from 1. */
const occasionals = [
  { cycle: 3, element: E5, elementNo: O2, observed: 470, ratingPct: 100 },
  { cycle: 11, element: E5, elementNo: O2, observed: 430, ratingPct: 105 },
  { cycle: 14, element: E6, elementNo: O1, observed: 630, ratingPct: 95 },
  { cycle: 19, element: E5, elementNo: O2, observed: 500, ratingPct: 95 },
  { cycle: 22, element: E1, elementNo: O3, observed: 860, ratingPct: 100 },
  { cycle: 27, element: E5, elementNo: O2, observed: 440, ratingPct: 100 },
];

/** What is no work of the job: the sheet's time holds it, the engineer timed it apart. */
const foreigns = [
  { cycle: 7, element: E6, observed: 210, description: 'Cloth dropped' },
  { cycle: 12, element: MC, observed: 1_530, description: 'Clamp fault' },
];

/** What the engineer left out afterwards. The high reading of cycle 27 has no cause, so it stays. */
const leftOut: readonly { cycle: number; element: number; cause: ExclusionCause }[] = [
  { cycle: 24, element: E6, cause: 'method-not-followed' },
];

/**
 * The formal study of part M with operator K7, as the engineer tapped it beside the turn.
 *
 * The machine's time stands on the same watch as the hand work, one after the other, as on the sheet;
 * in the shop it ran beside it.
 */
export function writeStudy(log: DemoLog, part: string): void {
  new StudyWriter(log, part).schedule();
}

class StudyWriter {
  private minute = BEGINS;
  private study: string | null = null;
  private readonly keys = new Map<string, string>();

  constructor(
    private readonly log: DemoLog,
    private readonly part: string,
  ) {}

  schedule(): void {
    this.tap({
      kind: 'study-started',
      starts: 'study',
      title: 'M, one piece, K7',
      part: this.part,
      partCode: 'M',
      methodRevision: 1,
      elements: demoMethod,
      partsPerCycle: 1,
      conditions: demoConditions,
      operator: 'K7',
      observer: 'B4',
      personTold: true,
      sizes: partSizes('M'),
      terms: { allowancePct: 14, basis: 'normal_time', machineAllowancePct: 4 },
    });
    for (const [place, cells] of studySheet().entries()) this.cycle(place + 1, cells);
    this.tap({ kind: 'study-ended' });
    this.minute += 1;
    for (const { cycle, element, cause } of leftOut) {
      const fact = () => {
        const reading = this.keys.get(`${cycle} ${element}`)!;
        return { kind: 'reading-excluded', reading, cause } as const;
      };
      this.write(fact);
    }
  }

  private cycle(cycle: number, cells: readonly SheetCell[]): void {
    for (const [element, { observed, ratingPct }] of cells.entries()) {
      const isHere = (one: { cycle: number; element: number }) =>
        one.cycle === cycle && one.element === element;
      for (const one of occasionals.filter(isHere)) {
        this.tap({ kind: 'occasional-began', elementNo: one.elementNo });
        this.pass(one.observed);
        this.tap({ kind: 'occasional-ended', ratingPct: one.ratingPct });
      }
      let left = observed ?? 0;
      for (const one of foreigns.filter(isHere)) {
        this.pass((left - one.observed) / 2);
        this.tap({ kind: 'foreign-began' });
        this.pass(one.observed);
        this.tap({ kind: 'foreign-ended', description: one.description });
        left = (left - one.observed) / 2;
      }
      if (cells[element + 1]?.observed === null) {
        this.pass(left * NOTICED_AFTER);
        this.tap({ kind: 'break-point-missed' });
        this.pass(left * (1 - NOTICED_AFTER));
      } else {
        this.pass(left);
        this.tap({ kind: 'element-ended', ratingPct }, `${cycle} ${element}`);
      }
    }
  }

  private pass(thousandths: number): void {
    this.minute += thousandths * THOUSANDTH;
  }

  private tap(fact: StudyFact, name = ''): void {
    this.write(() => fact, name);
  }

  /** The fact is asked for when its moment has come: only then do the records before it have keys. */
  private write(fact: () => StudyFact, name = ''): void {
    const at = { day: DAY, minute: this.minute };
    this.log.at(at, () => {
      const key = this.log.append(this.study, at, fact());
      this.study ??= key;
      this.keys.set(name, key);
    });
  }
}
