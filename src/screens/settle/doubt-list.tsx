import { useRef, useState } from 'preact/hooks';
import { answerGap } from '../../application/turn/answer-gap';
import type { Doubt } from '../../domain/turn/doubt';
import { partOfDoubt } from '../../domain/turn/part-of-doubt';
import type { Turn } from '../../domain/turn/turn';
import { settle as words } from '../../i18n/en/settle';
import { turnQuestion as asks } from '../../i18n/en/turn-question';
import { useApp } from '../app';
import { ReasonGrid } from '../pace/reason-grid';
import { timeOfDay } from '../pace/time-of-day';
import { DoubtLine, UNREAD_MS } from './doubt-line';
import { PersonForm } from './person-form';
import type { Choice, Who } from './question';
import { WhoForm } from './who-form';

interface Props {
  readonly turns: readonly { readonly turn: Turn; readonly doubts: readonly Doubt[] }[];
  readonly who: Who;
  setWho?(who: Who): void;
}

/** So many stand open at once; the others are one tap away. */
const SHOWN = 3;

/** The open questions of some turns in order of time, each with its answers. */
export function DoubtList({ turns, who, setWho }: Props) {
  const [asked, setAsked] = useState<{ key: string; choice: Choice; isWhoKnown: boolean } | null>(null);
  const [areAllShown, setAllShown] = useState(false);
  const close = () => setAsked(null);
  const lines = turns
    .flatMap(({ turn, doubts }) =>
      doubts.map((doubt) => ({ turn, doubt, key: `${doubt.kind} ${doubt.key}` })),
    )
    .sort((a, b) => wallMs(a) - wallMs(b));
  const shown = areAllShown ? lines : lines.slice(0, SHOWN);

  const answeredAt = useRef(-UNREAD_MS);

  const act = (key: string, choice: Choice, by: Who) => {
    const isKnown = by.isAtStation || (by.by !== '' && (choice.needsWhy !== true || by.why !== ''));
    if (isKnown && 'say' in choice) {
      choice.say(by);
      close();
    } else setAsked({ key, choice, isWhoKnown: isKnown });
  };

  return (
    <div class="settle-list">
      {shown.map(({ turn, doubt, key }) => {
        const open = asked?.key === key ? asked : null;
        return (
          <div key={key} class="settle-list">
            <DoubtLine
              turn={turn}
              doubt={doubt}
              label={labelOf(turn, doubt, who)}
              choose={(choice, event) => {
                if (who.isAtStation && event.timeStamp - answeredAt.current < UNREAD_MS) return;
                answeredAt.current = event.timeStamp;
                act(key, choice, who);
              }}
            />
            {open && !open.isWhoKnown && (
              <WhoForm
                who={who}
                submit={words.answerWith(open.choice.word)}
                needsWhy={open.choice.needsWhy === true}
                done={(given) => {
                  setWho?.(given);
                  act(key, open.choice, given);
                }}
                close={close}
              />
            )}
            {open?.isWhoKnown && 'asks' in open.choice && open.choice.asks === 'person' && (
              <PersonForm turn={turn.id} fromMs={doubt.toMs} who={who} close={close} />
            )}
            {open?.isWhoKnown && 'asks' in open.choice && open.choice.asks === 'why' && (
              <GapReasons turn={turn} doubt={doubt} who={who} close={close} />
            )}
          </div>
        );
      })}
      {!who.isAtStation && who.by !== '' && lines.length > 0 && (
        <p class="row">
          {words.answersAs(who.by)}
          <button type="button" class="button" onClick={() => setWho?.({ ...who, by: '', why: '' })}>
            {words.anotherCode}
          </button>
        </p>
      )}
      {lines.length > shown.length && (
        <button type="button" class="button settle-more" onClick={() => setAllShown(true)}>
          {words.showMore(lines.length - shown.length)}
        </button>
      )}
    </div>
  );
}

/** What a gap was, when it was no work. */
function GapReasons({ turn, doubt, who, close }: { turn: Turn; doubt: Doubt; who: Who; close(): void }) {
  const { bench } = useApp();
  return (
    <ReasonGrid
      title={asks.gapTitle(doubt.toMs - doubt.fromMs)}
      reason=""
      choose={({ id, label, category }) => {
        const by = who.isAtStation ? undefined : who.by;
        answerGap(bench, turn.id, doubt.key, { reason: id, label, category }, by);
        close();
      }}
    />
  );
}

function wallMs({ turn, doubt }: { turn: Turn; doubt: Doubt }): number {
  return turn.startedAt.wallMs + doubt.fromMs;
}

/** At the station it is clear whose turn it is; elsewhere somebody has to be asked. */
function labelOf(turn: Turn, doubt: Doubt, { isAtStation }: Who): string {
  const at = timeOfDay({ wallMs: wallMs({ turn, doubt }), offsetMin: turn.startedAt.offsetMin });
  const part = partOfDoubt(turn, doubt);
  const label = words.label(at, part);
  return isAtStation ? label : words.label(label, turn.person);
}
