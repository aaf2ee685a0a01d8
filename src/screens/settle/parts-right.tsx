import { useState } from 'preact/hooks';
import { judgePart } from '../../application/turn/judge-part';
import { partInHand } from '../../application/turn/part-in-hand';
import { recodeParts } from '../../application/turn/recode-parts';
import { setPartAside } from '../../application/turn/set-part-aside';
import { takePartBack } from '../../application/turn/take-part-back';
import type { Cycle, Turn } from '../../domain/turn/turn';
import { putRight as words } from '../../i18n/en/put-right';
import { useApp } from '../app';
import { timeOfDay } from '../pace/time-of-day';
import type { Wanted } from './put-right';

interface Props {
  readonly turn: Turn;
  ask(wanted: Wanted): void;
}

/** One part, or a run of them: how they are, whether they count, and what they were. */
export function PartsRight({ turn, ask }: Props) {
  const { bench } = useApp();
  const { cycles, id } = turn;
  const [first, setFirst] = useState(cycles.length - 1);
  const [last, setLast] = useState(cycles.length - 1);
  const chosen = cycles.slice(first, last + 1);
  /** A tap may stand for several parts: it is set aside, or recoded, as a whole. */
  const taps = [...new Set(chosen.map(({ key }) => key.split('/')[0]!))];
  const each = (act: (tap: string) => void) => {
    for (const tap of taps) act(tap);
  };
  const others = bench.shop.value.parts.filter(
    (part) => !part.retired && chosen.some((cycle) => cycle.part !== part.id),
  );
  const choices: Wanted[] = [
    ...(['good', 'rework', 'scrap'] as const).map((outcome) => ({
      word: { good: words.isGood, rework: words.isRework, scrap: words.isScrap }[outcome],
      isFree: true as const,
      say: () => {
        for (const { key } of chosen) judgePart(bench, id, key, outcome);
      },
    })),
    chosen.every(({ setAside }) => setAside !== '')
      ? { word: words.takeBack, say: ({ by }) => each((tap) => takePartBack(bench, id, tap, by)) }
      : { word: words.setAside, say: ({ by, why }) => each((tap) => setPartAside(bench, id, tap, why, by)) },
    ...others.map((part) => ({
      word: words.itWas(part.code),
      say: (who: { by: string; why: string }) => recodeParts(bench, id, taps, partInHand(part), who),
    })),
  ];
  return (
    <div class="stack">
      <div class="settle-span">
        <PartField
          label={words.fromPart}
          cycles={cycles}
          value={first}
          choose={(place) => {
            setFirst(place);
            setLast(Math.max(place, last));
          }}
        />
        <PartField
          label={words.toPart}
          cycles={cycles}
          value={last}
          choose={(place) => {
            setLast(place);
            setFirst(Math.min(place, first));
          }}
        />
      </div>
      <p>{words.howMany(chosen.length)}</p>
      <div class="choices">
        {choices.map((choice) => (
          <button type="button" key={choice.word} class="button" onClick={() => ask(choice)}>
            {choice.word}
          </button>
        ))}
      </div>
    </div>
  );
}

interface FieldProps {
  readonly label: string;
  readonly cycles: readonly Cycle[];
  readonly value: number;
  choose(place: number): void;
}

function PartField({ label, cycles, value, choose }: FieldProps) {
  return (
    <label class="field">
      <span>{label}</span>
      <select value={value} onChange={(event) => choose(Number(event.currentTarget.value))}>
        {cycles.map(({ key, doneAt, partCode, netMs }, place) => (
          <option key={key} value={place}>
            {words.partLine(timeOfDay(doneAt), partCode, netMs)}
          </option>
        ))}
      </select>
    </label>
  );
}
