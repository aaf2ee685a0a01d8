import './base.css';
import './app-shell.css';
import './large-text.css';
import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { shell as words } from '../../i18n/en/shell';
import { useApp } from '../app';
import { MissingPart } from '../missing-part';
import { routeHash, type ScreenName, screenNames } from '../route';
import { useLazy } from '../use-lazy';
import { SavingMark } from './saving-mark';

/** Every screen but the first one, which is there from the start. */
export type ScreenLoaders = Record<Exclude<ScreenName, 'pace'>, () => Promise<ComponentType>>;

interface Props {
  readonly loaders: ScreenLoaders;
  /** The first screen is in the first frame, not in the one after it. */
  readonly Pace: ComponentType;
  /** Takes the newer release; null while none waits. */
  readonly takeUpdate: (() => void) | null;
  /** How the records fare; null until it was brought. */
  readonly Upkeep: ComponentType | null;
}

/** The frame around every screen: where one is, what is saved, and the screens. */
export function AppShell({ loaders, Pace, takeUpdate, Upkeep }: Props) {
  const app = useApp();
  const isKept = app.tablet.value.isKept && app.bench.shop.value.isLatched && !app.isUnlatched.value;
  const screen = isKept ? 'pace' : app.route.value.screen;
  const [isAsked, setAsked] = useState(false);
  const Tablet = useLazy(isAsked, loadTablet);
  const Notices = useLazy(
    app.isDemo || app.isReadOnly || !!(takeUpdate ?? app.untold.value) || app.upkeep.value.missing > 0,
    loadNotices,
  );
  const [shown, setShown] = useState<{ name: ScreenName; Screen: ComponentType } | null>(null);
  const loaded = shown?.name === screen ? shown.Screen : null;
  const Screen = screen === 'pace' ? Pace : loaded;

  useEffect(() => {
    if (screen === 'pace') return;
    let isCurrent = true;
    loaders[screen]()
      .catch(() => MissingPart)
      .then((Screen) => {
        if (isCurrent) setShown({ name: screen, Screen });
      });
    return () => {
      isCurrent = false;
    };
  }, [screen, loaders]);

  return (
    // The demo's strip is high: drawn after the page, it would push all of it down.
    <div class={isKept ? 'shell is-kept' : 'shell'} hidden={app.isDemo && !Notices}>
      <section class="shell-strip" aria-label={words.notices}>
        {Notices && <Notices takeUpdate={takeUpdate} />}
      </section>
      <header class="shell-head">
        <p class="quiet">{words.questions[screen]}</p>
        {Upkeep && <Upkeep />}
        <SavingMark />
        <button type="button" class="shell-tablet" aria-expanded={isAsked} onClick={() => setAsked(!isAsked)}>
          {words.tablet}
        </button>
      </header>
      {isAsked && Tablet && <Tablet close={() => setAsked(false)} />}
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
      <main class="shell-main">{Screen && <Screen />}</main>
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

const loadTablet = async () => (await import('../tablet/tablet-sheet')).TabletSheet;
const loadNotices = async () => (await import('./notices')).Notices;
