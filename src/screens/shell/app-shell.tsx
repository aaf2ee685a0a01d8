import './base.css';
import './app-shell.css';
import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { shell as words } from '../../i18n/en/shell';
import { useApp } from '../app';
import { routeHash, type ScreenName, screenNames } from '../route';
import { SavingMark } from './saving-mark';

export type ScreenLoaders = Record<ScreenName, () => Promise<ComponentType>>;

interface Props {
  readonly loaders: ScreenLoaders;
  /** Takes the newer release; null while none waits. */
  readonly takeUpdate: (() => void) | null;
  /** How the records fare; null until it was brought. */
  readonly Upkeep: ComponentType | null;
}

/** The frame around every screen: where one is, what is saved, and the five screens. */
export function AppShell({ loaders, takeUpdate, Upkeep }: Props) {
  const app = useApp();
  const { screen } = app.route.value;
  const [shown, setShown] = useState<{ name: ScreenName; Screen: ComponentType } | null>(null);

  useEffect(() => {
    let isCurrent = true;
    loaders[screen]().then((Screen) => {
      if (isCurrent) setShown({ name: screen, Screen });
    });
    return () => {
      isCurrent = false;
    };
  }, [screen, loaders]);

  return (
    <div class="shell">
      <section class="shell-strip" aria-label={words.notices}>
        {app.isDemo && (
          <div class="demo-strip">
            <strong>{words.demo}</strong>
            <button type="button" class="button" onClick={app.leaveDemo}>
              {words.leaveDemo}
            </button>
          </div>
        )}
        {app.isReadOnly && <ReadOnlyNotice />}
        {takeUpdate && <UpdateNotice take={takeUpdate} />}
      </section>
      <header class="shell-head">
        <p class="quiet">{words.questions[screen]}</p>
        {Upkeep && <Upkeep />}
        <SavingMark saving={app.bench.saving} isMemoryOnly={app.copies === 0} />
      </header>
      <nav class="shell-nav" aria-label={words.name}>
        {screenNames.map((name) => (
          <a
            key={name}
            href={routeHash({ screen: name, id: '', isDemo: app.isDemo })}
            aria-current={name === screen ? 'page' : undefined}
            aria-describedby={`shell-timing-${name}`}
          >
            {words.screens[name]}
            <TimingMark name={name} isShown={name === screen} />
          </a>
        ))}
      </nav>
      <main class="shell-main">{shown?.name === screen && <shown.Screen />}</main>
    </div>
  );
}

/** On every other screen: something is being timed there, and one tap leads back to it. */
function TimingMark({ name, isShown }: { name: ScreenName; isShown: boolean }) {
  const { bench } = useApp();
  const turn = name === 'pace' ? bench.turn.value : null;
  const study = name === 'study' ? bench.study.value : null;
  const isTiming = (turn !== null && turn.status !== 'ended') || study?.status === 'open';
  return (
    <span class="shell-timing" id={`shell-timing-${name}`} aria-hidden="true" hidden={isShown || !isTiming}>
      {isTiming && words.timing[turn?.status === 'stopped' ? 'stopped' : 'running']}
    </span>
  );
}

/** Another tab writes. Taking over is asked twice, in the same place. */
function ReadOnlyNotice() {
  const app = useApp();
  const [isAsked, setAsked] = useState(false);
  return (
    <div class="notice-strip" role="status">
      {isAsked ? words.takeOverAsk : words.readOnly}
      <button type="button" class="button" onClick={() => (isAsked ? app.takeOver() : setAsked(true))}>
        {isAsked ? words.takeOverYes : words.takeOver}
      </button>
    </div>
  );
}

/** Offered only while nothing is timed; until then it says nothing at all. */
function UpdateNotice({ take }: { take: () => void }) {
  const { bench } = useApp();
  const isTiming = bench.turn.value?.status === 'running' || bench.turn.value?.status === 'stopped';
  if (isTiming || bench.study.value?.status === 'open') return null;
  return (
    <div class="notice-strip" role="status">
      {words.updateWaits}
      <button type="button" class="button" onClick={take}>
        {words.updateTake}
      </button>
    </div>
  );
}
