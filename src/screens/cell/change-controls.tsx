import { useState } from 'preact/hooks';
import type { CellChange } from '../../domain/cell/cell-change';
import type { CellElement, CellPlace, CellWork } from '../../domain/cell/cell-work';
import { secondPerson } from '../../domain/cell/second-person';
import { decimalMinutes } from '../../i18n/decimal-time';
import { cell as words } from '../../i18n/en/cell';
import { cellWhatIf as says } from '../../i18n/en/cell-what-if';
import { formatNumber } from '../../i18n/format-number';
import type { Setup } from './plan-cell';
import type { ReckonedPart } from './reckon-parts';
import { Stepper } from './stepper';

interface Props {
  readonly part: ReckonedPart;
  readonly change: CellChange;
  readonly setup: Setup;
  readonly isChanged: boolean;
  readonly take: (to: { change?: CellChange; lots?: Partial<LotsTried> }) => void;
  readonly reset: () => void;
}

type LotsTried = Omit<Setup, 'machines'>;

const percent = (value: number) => words.percent(formatNumber(value));
const MINUTE_MS = 60_000;

/** What can be tried: the machine, the hands, who does what and where, the lots. */
export function ChangeControls({ part, change, setup, isChanged, take, reset }: Props) {
  const hands = part.work.elements.filter(({ place }) => place !== 'machine');
  const [name, setName] = useState('');
  const chosen = hands.find((own) => own.name === name) ?? hands[0];
  const set = (to: Partial<CellChange>) => take({ change: { ...change, ...to } });
  const lots = (to: Partial<LotsTried>) => take({ lots: to });
  const places = part.cycle.hasMachine
    ? says.places
    : { external: says.byOperator, other: says.places.other };
  const placeOf = ({ name: own, place: now }: CellElement) => change.moved[own] ?? now;
  const place = chosen ? placeOf(chosen) : 'external';
  const hasOther = hands.some((own) => placeOf(own) === 'other');
  const setPeople = (people: number) => {
    // Who helps already helps again.
    const given = part.cycle.otherMs > 0 ? {} : handedOver(part.work);
    const back = hands
      .filter(({ place: now }) => now === 'other')
      .map((own) => [own.name, 'internal'] as const);
    set({ moved: people > 1 ? given : Object.fromEntries(back) });
  };
  return (
    <section class="stack cell-controls" aria-label={says.title}>
      <div class="row spread">
        <h2>{says.work}</h2>
        <button type="button" class="button" disabled={!isChanged} onClick={reset}>
          {says.reset}
        </button>
      </div>
      {part.cycle.hasMachine && (
        <>
          <Stepper
            label={says.speed}
            value={change.machineSpeedPct}
            low={30}
            high={300}
            step={5}
            text={percent}
            change={(machineSpeedPct) => set({ machineSpeedPct })}
          />
          <Stepper
            label={says.passes}
            value={change.passes}
            low={1}
            high={6}
            change={(passes) => set({ passes })}
          />
          <Stepper
            label={says.fixed}
            value={change.fixedMachineMs / MINUTE_MS}
            low={0}
            high={part.cycle.machineMs / MINUTE_MS}
            step={0.02}
            text={(value) => formatNumber(value, 2)}
            change={(value) => set({ fixedMachineMs: value * MINUTE_MS })}
          />
          <Stepper
            label={says.loading}
            value={change.loadingPct}
            low={5}
            high={200}
            step={5}
            text={percent}
            change={(loadingPct) => set({ loadingPct })}
          />
          <Stepper
            label={says.machines}
            value={change.machines}
            low={1}
            high={4}
            change={(machines) => set({ machines })}
          />
        </>
      )}
      <Stepper label={says.people} value={hasOther ? 2 : 1} low={1} high={2} change={setPeople} />
      {chosen && (
        <div class="cell-one">
          <label class="field">
            <span>{says.element}</span>
            <select value={chosen.name} onChange={(event) => setName(event.currentTarget.value)}>
              {hands.map((own) => (
                <option key={own.name} value={own.name}>
                  {own.name} · {words.minutes(decimalMinutes(own.meanMs, 3))}
                </option>
              ))}
            </select>
          </label>
          <Stepper
            label={says.elementTime}
            value={change.elementPct[chosen.name] ?? 100}
            low={5}
            high={200}
            step={5}
            text={percent}
            change={(value) => set({ elementPct: { ...change.elementPct, [chosen.name]: value } })}
          />
          <label class="field">
            <span>{says.done}</span>
            <select
              value={place in places ? place : 'external'}
              onChange={(event) =>
                set({ moved: { ...change.moved, [chosen.name]: event.currentTarget.value as CellPlace } })
              }
            >
              {Object.entries(places).map(([value, text]) => (
                <option key={value} value={value}>
                  {text}
                </option>
              ))}
            </select>
          </label>
        </div>
      )}
      {hasOther && (
        <Stepper
          label={says.buffer}
          value={setup.buffer}
          low={0}
          high={20}
          change={(buffer) => lots({ buffer })}
        />
      )}
      <h2>{says.lots}</h2>
      <LotSteppers sizes={setup} change={lots} />
    </section>
  );
}

/** What a second person takes: what shortens the part most, and where nothing does, all that can be taken. */
function handedOver(work: CellWork): Readonly<Record<string, CellPlace>> {
  const best = secondPerson(work);
  const all = work.elements.filter(({ place }) => place === 'internal').map(({ name }) => name);
  return Object.fromEntries((best.length > 0 ? best : all).map((name) => [name, 'other'] as const));
}

/** Sizes of lots and trolleys, in steps of a part. */
export function LotSteppers({
  sizes,
  change,
}: {
  sizes: Pick<Setup, 'arrivalLot' | 'refillAt' | 'trolley'>;
  change: (to: Partial<Pick<Setup, 'arrivalLot' | 'refillAt' | 'trolley'>>) => void;
}) {
  const { arrivalLot, refillAt } = sizes;
  return (
    <>
      <Stepper
        label={says.arrivalLot}
        value={arrivalLot}
        low={1}
        high={400}
        change={(value) => change({ arrivalLot: value, refillAt: Math.min(refillAt, value - 1) })}
      />
      <Stepper
        label={says.refillAt}
        value={refillAt}
        low={0}
        high={arrivalLot - 1}
        change={(value) => change({ refillAt: value })}
      />
      <Stepper
        label={says.trolley}
        value={sizes.trolley}
        low={1}
        high={400}
        change={(trolley) => change({ trolley })}
      />
    </>
  );
}
