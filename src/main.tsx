import { signal } from '@preact/signals';
import { type ComponentType, render } from 'preact';
import { type Upkeep, untended } from './application/backup/upkeep';
import { Bench } from './application/bench';
import type { RecordLog } from './application/ports/record-log';
import type { SummaryShelf } from './application/ports/summary-shelf';
import type { WriterLock } from './application/ports/writer-lock';
import { whenOutdated } from './application/when-outdated';
import { keepInstallOffer } from './device/install-offer';
import { localAliveMark } from './device/local-alive-mark';
import { localJotter } from './device/local-jotter';
import { localReserve } from './device/local-reserve';
import { nameOfZone, pageClock } from './device/page-clock';
import { onPageReturn } from './device/page-return';
import { randomName } from './device/random-name';
import { screenWakeLock } from './device/screen-wake-lock';
import { takeWriterLock } from './device/writer-lock';
import { type App, AppContext } from './screens/app';
import { PaceScreen } from './screens/pace/pace-screen';
import { opensOnWatch, parseRoute, routeHash } from './screens/route';
import { AppShell, type ScreenLoaders } from './screens/shell/app-shell';
import { tabletPreferences } from './screens/tablet/tablet-preferences';
import { speakFromNowOn, wordsSpoken } from './speaking';
import { DEMO_DATABASE, OWN_DATABASE, OWN_JOURNAL } from './storage/database-names';
import { IndexedDbRecordLog } from './storage/indexeddb-record-log';
import { openJournal, prepareJournal } from './storage/journal-client';
import { TwoShelfRecordLog } from './storage/two-shelf-record-log';

/** After this long without records on the screen, the page says what it waits for. */
const SLOW_MS = 1_000;
/** The first taps come before the upkeep. */
const UPKEEP_AFTER_MS = 3_000;
/** Whoever opens the app in mid-part has tapped by then: nothing else is read before. */
const AFTER_FIRST_TAP_MS = 500;

const root = document.querySelector('#app')!;
const route = signal(parseRoute(location.hash));
const { isDemo } = route.value;
const screenAwake = screenWakeLock();
const jotter = localJotter(isDemo ? DEMO_DATABASE : OWN_DATABASE);
const tablet = tabletPreferences(jotter);
/** A person goes on without the records, as long as they do not open. */
let isGoingOn = false;
/** This browser refuses storage: there is nothing in it to wait for. */
let isRefused = false;
/** What is in hand, and how often it was begun: an opening that was given up must not come back. */
let inHand: Bench | null = null;
let openings = 0;
const isHeldUp = signal(false);
let clockStepMs = 0;
const upkeep = signal<Upkeep>(untended);
const upkeepMark = signal<ComponentType | null>(null);
const isUnlatched = signal(false);
const waiting = signal<(() => void) | null>(null);
const untold = signal<(() => void) | null>(null);

interface OpenedLog {
  readonly log: RecordLog;
  /** How many independent copies of a record the tablet keeps; 0: none past this page. */
  readonly copies: 0 | 1 | 2;
}

const loaders: ScreenLoaders = {
  study: async () => (await import('./screens/study/study-screen')).StudyScreen,
  cell: async () => (await import('./screens/cell/cell-screen')).CellScreen,
  review: async () => (await import('./screens/review/review-screen')).ReviewScreen,
  shop: async () => (await import('./screens/shop/shop-screen')).ShopScreen,
  records: async () => (await import('./screens/records/records-screen')).RecordsScreen,
};

addEventListener('hashchange', () => {
  const next = parseRoute(location.hash);
  // The demo shop has a database of its own: one page never holds both open.
  if (next.isDemo !== isDemo) location.reload();
  else route.value = next;
  // Pace is the operator's: what the supervisor unlatched is latched again there.
  if (next.screen === 'pace') isUnlatched.value = false;
});

/** A browser that has no database, or a person who chose to go on without one. */
function isWithoutStorage(): boolean {
  return !('indexedDB' in globalThis) || indexedDB === null || isRefused || isGoingOn;
}

const otherLogs = () => import('./other-logs');

/** The shop's own log, on two shelves where the browser has both. Only the writer may hold the journal. */
async function openLog(isWriter: boolean): Promise<OpenedLog> {
  if (isDemo) return { log: await (await otherLogs()).openDemoLog(), copies: 1 };
  if (isGoingOn) return { log: (await otherLogs()).unopenedLog(), copies: 1 };
  if (isWithoutStorage()) return { log: (await otherLogs()).memoryLog(), copies: 0 };
  // Both at once: the first tap waits for the slower one, not for their sum.
  const opened = isWriter ? openJournal(OWN_JOURNAL).catch(() => null) : null;
  const device = async () => (await opened)?.ownEnd?.device ?? randomName('tablet');
  const database = await IndexedDbRecordLog.open(OWN_DATABASE, device, {
    heldUp() {
      isHeldUp.value = true;
    },
    mayLetGo: () => !inHand?.busy,
  });
  const journal = await opened;
  if (!journal) return { log: database, copies: 1 };
  const { log } = await TwoShelfRecordLog.open(database, journal, localReserve);
  return { log, copies: 2 };
}

/** Of days, for Review: made again wherever they cannot be kept. */
async function openSummaries(isWriter: boolean): Promise<SummaryShelf> {
  const { openSummaryShelf } = await import('./storage/summaries/open-summary-shelf');
  return openSummaryShelf(isWriter && !isWithoutStorage() ? (isDemo ? 'demo' : 'own') : 'none', __RELEASE__);
}

const lastingStorage = async () => (await import('./device/lasting-storage')).lastingStorage;
const copying = () => import('./copying');
const copyingTools = async () => (await copying()).copyingTools();

const opening = () => import('./screens/shell/opening');

/** Says what it waits for when the records take their time. */
async function patiently<Result>(work: Promise<Result>): Promise<Result> {
  let isWaiting = true;
  const slow = setTimeout(async () => {
    const { OpeningWait } = await opening();
    if (isWaiting) render(<OpeningWait isHeldUp={isHeldUp} goOn={goOn} />, root);
  }, SLOW_MS);
  return work.finally(() => {
    isWaiting = false;
    clearTimeout(slow);
  });
}

/** Opens the records and shows the app. Called again when this tab takes over from another. */
async function start(lock: WriterLock): Promise<void> {
  openings += 1;
  const own = openings;
  const opened = openLog(lock.isHeld);
  nameOfZone();
  // Reading words takes this thread, opening records hardly does: they are opened meanwhile.
  const words = wordsSpoken();
  // The screen is read in its language; the shell asks for it again.
  const { screen } = route.value;
  if (screen !== 'pace') words.then(loaders[screen]).catch(() => {});
  const { log, copies } = await patiently(opened);
  if (own !== openings) return log.close();
  // Without the records nothing may be taken from the reserve.
  const hasReserve = lock.isHeld && !isDemo && copies > 0;
  const reserve = hasReserve ? (isGoingOn ? (await otherLogs()).reserveBesides() : localReserve) : null;
  const alive = isDemo ? null : localAliveMark;
  const openBench = async () => {
    const clock = pageClock(randomName('run'), () => clockStepMs);
    const opened = await patiently(Bench.open(log, clock, reserve, !lock.isHeld, alive));
    whenOutdated(opened, () => {
      stopTending();
      show(true, true);
    });
    return opened;
  };
  let bench = await openBench();
  await words;
  if (own !== openings) return bench.close();
  if (own === 1 && opensOnWatch(route.value, bench.turn.value, bench.study.value)) {
    location.replace(routeHash({ screen: 'study', id: '', isDemo }));
  }
  let stopTending = tendLater(bench, lock.isHeld);

  // A tab that only reads must not keep what the writing one knows better.
  const summaries = () => openSummaries(lock.isHeld);

  const show = (isReadOnly: boolean, isOutdated = false) => {
    // Whatever took the lock away, also while this was opening.
    if (isReadOnly) bench.rest();
    const app: App = {
      bench,
      files: { save: async (file) => (await import('./device/download-file')).downloadFile.save(file) },
      jotter,
      screenAwake,
      tablet,
      tapAnswer: async () => (await import('./device/tap-answer')).tapAnswer,
      lastingStorage,
      isDemo,
      isReadOnly,
      isOutdated,
      copies,
      route,
      copying: isDemo ? null : copyingTools,
      secrets: async () => (await copying()).webSecrets(),
      summaries,
      upkeep,
      isUnlatched,
      untold,
      tabletTools: async () => (await import('./looking-after')).tabletTools,
      go(screen, id = '') {
        location.hash = routeHash({ screen, id, isDemo });
      },
      openDemo() {
        location.hash = routeHash({ screen: 'pace', id: '', isDemo: true });
      },
      leaveDemo() {
        location.hash = routeHash({ screen: 'pace', id: '', isDemo: false });
      },
      async reopen() {
        stopTending();
        await bench.rest();
        upkeep.value = untended;
        // Records that came in may lie in any day.
        await (await summaries()).clear(null).catch(() => {});
        // The screens that are there belong to the bench that rests: they would record nothing.
        bench = await openBench().catch(async (error) => {
          await sayTrouble(error);
          throw error;
        });
        stopTending = tendLater(bench, lock.isHeld);
        show(!lock.isHeld);
      },
      speak: speakFromNowOn,
      async takeOver() {
        await lock.takeOver();
        // Tapped twice, it is begun once.
        if (own !== openings) return;
        stopTending();
        bench.close();
        await start(lock);
      },
    };
    inHand = bench;
    const Root = () => (
      <AppContext.Provider value={app}>
        <AppShell loaders={loaders} Pace={PaceScreen} takeUpdate={waiting.value} Upkeep={upkeepMark.value} />
      </AppContext.Provider>
    );
    render(<Root />, root);
  };
  const onlyRead = () => {
    stopTending();
    show(true);
    return bench;
  };
  lock.onAsked(() => onlyRead().finish());
  lock.onTaken(() => onlyRead().close());
  show(!lock.isHeld);
  // Asked once there is something to lose; a browser that says no is told about on the Records screen.
  lastingStorage().then((storage) => storage.ask());
}

/** Verifies, copies and tells the copy's age beside the work; the tab that writes does it for all. */
function tendLater(bench: Bench, isWriter: boolean): () => void {
  if (isDemo || !isWriter || isGoingOn) return () => {};
  let stop = bench.clock.after(UPKEEP_AFTER_MS, async () => {
    const { tendRecords, copyingTools, UpkeepMark } = await copying();
    if (isStopped) return;
    upkeepMark.value = UpkeepMark;
    stop = tendRecords(bench, copyingTools(), upkeep);
  });
  let isStopped = false;
  return () => {
    isStopped = true;
    stop();
  };
}

if (!isDemo && !isWithoutStorage()) prepareJournal();
const lock = takeWriterLock(isDemo ? DEMO_DATABASE : OWN_DATABASE);

function open(): void {
  lock.then(start).catch(async (error) => {
    // Some browsers refuse a database in a private window: there was never anything in it to lose.
    if (error instanceof DOMException && error.name === 'SecurityError' && !isRefused) {
      isRefused = true;
      open();
      return;
    }
    await sayTrouble(error);
  });
}

async function sayTrouble(error: unknown): Promise<void> {
  const { OpeningTrouble } = await opening();
  render(<OpeningTrouble error={error} goOn={goOn} />, root);
}

function goOn(): void {
  isGoingOn = true;
  open();
}

onPageReturn(() => inHand?.log.wake());
keepInstallOffer();
open();

setTimeout(async () => {
  const { measuredStepMs } = await import('./device/measured-step');
  clockStepMs = measuredStepMs();
}, AFTER_FIRST_TAP_MS);

async function lookForUpdates(): Promise<void> {
  (await import('./updating')).lookForUpdates(() => inHand, { waiting, untold });
}

// The records come first: what keeps the app offline is fetched after them.
if (import.meta.env.PROD && 'serviceWorker' in navigator) setTimeout(lookForUpdates, AFTER_FIRST_TAP_MS);
