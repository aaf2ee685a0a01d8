import './turn-setup.css';
import { useEffect, useState } from 'preact/hooks';
import { lastTurn } from '../../application/turn/last-turn';
import { partInHand } from '../../application/turn/part-in-hand';
import { startTurn } from '../../application/turn/start-turn';
import { isSameCode } from '../../domain/shop/known-code';
import type { Turn } from '../../domain/turn/turn';
import { scanned as says } from '../../i18n/en/scanned';
import { turnSetup as words } from '../../i18n/en/turn-setup';
import { useApp } from '../app';
import { useScanner } from '../keys/use-scanner';
import { InstallHint } from '../tablet/install-hint';
import { TimingButton } from '../timing-button';
import { FirstCaution } from './first-caution';
import { PartChoice } from './part-choice';
import { partTitle } from './part-title';
import { PersonChoice } from './person-choice';
import { timeOfDay } from './time-of-day';

/** Who, which part, and then one large Start. What was chosen last time comes first and is not assumed. */
export function TurnSetup() {
  const { bench, isDemo, isReadOnly, openDemo } = useApp();
  const [last, setLast] = useState<Turn | null | 'reading'>('reading');
  const [person, setPerson] = useState('');
  const [part, setPart] = useState('');
  const [scanned, setScanned] = useState('');

  useEffect(() => {
    let isHere = true;
    const show = (found: Turn | null) => {
      if (isHere) setLast(found);
    };
    lastTurn(bench).then(show, () => show(null));
    return () => {
      isHere = false;
    };
  }, [bench]);

  const { parts, people } = bench.shop.value;
  useScanner({
    tap: null,
    scan: (text) => {
      const known = parts.find(({ code, retired }) => !retired && text !== null && isSameCode(code, text));
      const who = people.find((code) => text !== null && isSameCode(code, text));
      if (known) setPart(known.id);
      else if (who) setPerson(who);
      setScanned(known || who ? '' : text === null ? says.tooLong : says.unknown(text));
    },
  });

  // A list that changes its order under a finger would start the wrong part.
  if (last === 'reading') return null;

  const chosen = parts.find(({ id }) => id === part);
  const missing = person ? words.choosePart : chosen ? words.choosePerson : words.chooseBoth;
  const summary = chosen
    ? words.startWith(
        person,
        partTitle(parts, { part, partCode: chosen.code }),
        words.targetOf(chosen.targetMs),
      )
    : '';
  const isReady = person !== '' && chosen !== undefined;

  return (
    <div class="pace-setup">
      <div class="pace-setup-lists">
        <h1 class="visually-hidden">{words.startTitle}</h1>
        <PersonChoice people={people} last={last?.person ?? ''} chosen={person} choose={setPerson} />
        <PartChoice
          title={words.whichPart}
          parts={parts}
          last={last ? partMadeLast(last) : ''}
          chosen={part}
          choose={({ id }) => setPart(id)}
        />
        {last?.status === 'ended' && (
          <p class="pace-setup-wide">
            <button type="button" class="choice number" onClick={() => bench.showEndedTurn(last.id)}>
              {words.lookBack(last.person, timeOfDay(last.startedAt), timeOfDay(last.lastStamp))}
            </button>
          </p>
        )}
        {!isDemo && last === null && (
          <div class="pace-first">
            {parts.length === 0 && (
              <p class="quiet">
                {words.demoLine}{' '}
                <button type="button" class="button plain pace-demo" onClick={openDemo}>
                  {words.openDemo}
                </button>
              </p>
            )}
            <InstallHint />
          </div>
        )}
        <FirstCaution isFirst={last === null} />
      </div>
      <TimingButton
        class="button strong pace-start"
        disabled={isReadOnly || !isReady}
        onTap={(at) => {
          if (chosen) startTurn(bench, person, partInHand(chosen), at);
        }}
      >
        <span class="pace-start-word">{words.start}</span>
        <span role="status">{scanned || (isReady ? summary : missing)}</span>
      </TimingButton>
    </div>
  );
}

/** The part of the last tap; before the first one, the part that was chosen. */
function partMadeLast({ cycles, inHand }: Turn): string {
  return (cycles.at(-1) ?? inHand).part;
}
