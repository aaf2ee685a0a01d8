import './tablet-sheet.css';
import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import { tabletWords as words } from '../../i18n/en/tablet';
import { languages } from '../../i18n/languages';
import { unspoken } from '../../i18n/speak-language';
import { locale } from '../../i18n/spoken';
import { useApp } from '../app';
import { useKeyLearning } from '../keys/use-learned-keys';
import { MoreBelow } from '../more-below';
import { Group } from './group';
import { Keeping } from './keeping';
import { TabletHelp } from './tablet-help';
import type { TabletPreferences } from './tablet-preferences';
import { useKeyboardWay } from './use-keyboard-way';

/** What the tablet keeps for itself, over the upper half: the surface below goes on being tapped. */
export function TabletSheet({ close }: { close(): void }) {
  const { tablet } = useApp();
  const { learning, learn, keyOf } = useKeyLearning();
  const { theme, hand, sound, vibration, anyKey } = tablet.value;
  const set = (change: Partial<TabletPreferences>) => {
    tablet.value = { ...tablet.value, ...change };
  };
  const known = keyOf('surface');
  const sheet = useRef<HTMLElement>(null);
  useKeyboardWay(sheet, learning === null, close);
  return (
    <section class="panel tablet-sheet" aria-label={words.title} ref={sheet}>
      <div class="tablet-head">
        <h2>{words.title}</h2>
        <button type="button" class="button" onClick={close}>
          {words.close}
        </button>
      </div>
      <div class="tablet-scroll">
        <div class="tablet-groups">
          <Group title={words.light}>
            {(['paper', 'sun', 'dim'] as const).map((each) => (
              <Choice key={each} isTaken={theme === each} take={() => set({ theme: each })}>
                {words.themes[each]}
              </Choice>
            ))}
          </Group>
          <Group title={words.hand} note={words.handNote}>
            {(['left', 'right'] as const).map((each) => (
              <Choice key={each} isTaken={hand === each} take={() => set({ hand: each })}>
                {words.hands[each]}
              </Choice>
            ))}
          </Group>
          <Group title={words.answer} note={words.answerNote}>
            <Choice isTaken={sound} take={() => set({ sound: !sound })}>
              {words.sound}
            </Choice>
            <Choice isTaken={vibration} take={() => set({ vibration: !vibration })}>
              {words.vibration}
            </Choice>
          </Group>
          <Group title={words.keys} note={words.scanner}>
            <Choice isTaken={anyKey} take={() => set({ anyKey: true })}>
              {words.anyKey}
            </Choice>
            <Choice isTaken={!anyKey} take={() => set({ anyKey: false })}>
              {words.taughtKey}
            </Choice>
            <button type="button" class="button" onClick={() => learn('surface')}>
              {learning ? words.pressNow : words.teach}
              {!learning && known && <span class="tablet-known">{words.known(known)}</span>}
            </button>
          </Group>
          <Tongues />
          <Keeping />
          <TabletHelp close={close} />
        </div>
        <MoreBelow />
      </div>
    </section>
  );
}

/** The language, each under its own name. The page loads again in it, so nothing may be there that would be lost. */
function Tongues() {
  const { bench, copies, speak } = useApp();
  const { state, isInReserve } = bench.saving.value;
  const missing = languages.find(({ id }) => id === unspoken);
  const isSafe = copies > 0 && (state === 'saved' || isInReserve);
  const note = isSafe ? words.languageNote : words.languageWaits;
  return (
    <Group title={words.language} note={missing ? words.languageMissing(missing.name) : note}>
      {languages.map(({ id, name, locale: its }) => (
        <Choice key={id} isTaken={its === locale} isOff={!isSafe} language={its} take={() => speak(id)}>
          {name}
        </Choice>
      ))}
    </Group>
  );
}

function Choice({
  isTaken,
  isOff = false,
  language,
  take,
  children,
}: {
  isTaken: boolean;
  isOff?: boolean;
  /** Of the words on it, where that is not the page's. */
  language?: string;
  take(): void;
  children: ComponentChildren;
}) {
  return (
    <button
      type="button"
      class="choice"
      aria-pressed={isTaken}
      disabled={isOff}
      lang={language}
      onClick={take}
    >
      {children}
    </button>
  );
}
