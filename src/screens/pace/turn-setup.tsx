import './turn-setup.css';
import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { lastTurn } from '../../application/turn/last-turn';
import { leftToRework } from '../../application/turn/left-to-rework';
import { partInHand } from '../../application/turn/part-in-hand';
import { startTurn } from '../../application/turn/start-turn';
import type { Stamp } from '../../domain/records/stamp';
import { isSameCode, knownCode } from '../../domain/shop/known-code';
import type { Turn } from '../../domain/turn/turn';
import { endQuestion } from '../../i18n/en/end-question';
import { scanned as says } from '../../i18n/en/scanned';
import { turnSetup as words } from '../../i18n/en/turn-setup';
import { useApp } from '../app';
import { useScanner } from '../keys/use-scanner';
import { MoreBelow } from '../more-below';
import { InstallHint } from '../tablet/install-hint';
import { TimingButton } from '../timing-button';
import { FirstCaution } from './first-caution';
import { PartChoice } from './part-choice';
import { partTitle } from './part-title';
import { PersonChoice } from './person-choice';
import { timeOfDay } from './time-of-day';

interface Typed {
  readonly code: string;
  readonly targetMs: number | null;
}

const nothing: Typed = { code: '', targetMs: null };

/**
 * Who, which part, and then one large Start. What was chosen last time comes first and is not assumed, but in the
 * turn after one that has just ended here: that goes on with the same person and part. Start takes what is typed.
 */
export function TurnSetup({ again }: { again: Turn | null }) {
  const { bench, isDemo, isReadOnly, openDemo } = useApp();
  const [last, setLast] = useState<Turn | null | 'reading'>('reading');
  const [person, setPerson] = useState(again?.person ?? '');
  const [part, setPart] = useState(again ? again.inHand.part : '');
  const [typedPerson, setTypedPerson] = useState('');
  const [typedPart, setTypedPart] = useState(nothing);
  const [toRework, setToRework] = useState(0);
  const lists = useRef<HTMLDivElement>(null);
  const [scanned, setScanned] = useState('');

  useEffect(() => {
    let isHere = true;
    const show = (found: Turn | null) => {
      if (isHere) setLast(found);
    };
    lastTurn(bench).then(show, () => show(null));
    leftToRework(bench).then(
      (left) => isHere && setToRework(left.length),
      () => {},
    );
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

  const typePart = useCallback(
    (code: string, targetMs: number | null) => setTypedPart({ code, targetMs }),
    [],
  );

  // A list that changes its order under a finger would start the wrong part.
  if (last === 'reading') return null;

  // What is typed goes before what was chosen: the list gives way to the form.
  const chosen = typedPart.code ? undefined : parts.find(({ id, retired }) => id === part && !retired);
  const who = typedPerson || person;
  const what = chosen ? partTitle(parts, { part, partCode: chosen.code }) : typedPart.code;
  const missing = who ? words.choosePart : what ? words.choosePerson : words.chooseBoth;
  const isReady = who !== '' && what !== '';

  /** The forms that are open take in what is typed, as their own buttons would, and then the turn begins. */
  const start = (at: Stamp) => {
    const known = new Set(parts.map(({ id }) => id));
    for (const form of lists.current!.querySelectorAll('form'))
      form.dispatchEvent(new Event('submit', { cancelable: true }));
    const now = bench.shop.peek();
    const inHand = chosen ?? now.parts.find(({ id }) => !known.has(id));
    if (inHand) startTurn(bench, knownCode(now.people, who), partInHand(inHand), at);
  };

  return (
    <div class="pace-setup">
      <div class="pace-setup-lists" ref={lists}>
        <h1 class="visually-hidden">{words.startTitle}</h1>
        <PersonChoice
          people={people}
          last={last?.person ?? ''}
          chosen={person}
          choose={setPerson}
          typing={setTypedPerson}
        />
        <PartChoice
          title={words.whichPart}
          parts={parts}
          last={last ? partMadeLast(last) : ''}
          chosen={part}
          choose={({ id }) => setPart(id)}
          typing={typePart}
        />
        {last?.status === 'ended' && (
          <p class="pace-setup-wide">
            <button type="button" class="choice number" onClick={() => bench.showEndedTurn(last.id)}>
              {words.lookBack(last.person, timeOfDay(last.startedAt), timeOfDay(last.lastStamp))}
            </button>
          </p>
        )}
        {toRework > 0 && <p class="pace-setup-wide">{endQuestion.toRework(toRework)}</p>}
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
        <MoreBelow />
      </div>
      <TimingButton class="button strong pace-start" disabled={isReadOnly || !isReady} onTap={start}>
        <span class="pace-start-word">{words.start}</span>
        <span role="status">
          {scanned ||
            (isReady ? words.startWith(who, what, words.targetOf((chosen ?? typedPart).targetMs)) : missing)}
        </span>
      </TimingButton>
    </div>
  );
}

/** The part of the last tap; before the first one, the part that was chosen. */
function partMadeLast({ cycles, inHand }: Turn): string {
  return (cycles.at(-1) ?? inHand).part;
}
