import { signal } from '@preact/signals';
import { render } from 'preact';
import { Bench } from './application/bench';
import type { RecordLog } from './application/ports/record-log';
import type { WriterLock } from './application/ports/writer-lock';
import { downloadFile } from './device/download-file';
import { lastingStorage } from './device/lasting-storage';
import { localReserve } from './device/local-reserve';
import { pageClock } from './device/page-clock';
import { randomName } from './device/random-name';
import { screenWakeLock } from './device/screen-wake-lock';
import { takeWriterLock } from './device/writer-lock';
import { type App, AppContext } from './screens/app';
import { parseRoute, routeHash } from './screens/route';
import { AppShell, type ScreenLoaders } from './screens/shell/app-shell';
import { OpeningTrouble } from './screens/shell/opening-trouble';
import { OpeningWait } from './screens/shell/opening-wait';
import { DEMO_DATABASE, OWN_DATABASE, OWN_JOURNAL } from './storage/database-names';
import { InMemoryRecordLog } from './storage/in-memory-record-log';
import { IndexedDbRecordLog } from './storage/indexeddb-record-log';
import { openJournal } from './storage/journal-client';
import { TwoShelfRecordLog } from './storage/two-shelf-record-log';

/** After this long without records on the screen, the page says what it waits for. */
const SLOW_MS = 1_000;

const root = document.querySelector('#app')!;
const route = signal(parseRoute(location.hash));
const { isDemo } = route.value;
const screenAwake = screenWakeLock();
let withoutStorage = false;
const takeUpdate = signal<(() => void) | null>(null);

interface OpenedLog {
  readonly log: RecordLog;
  /** How many independent copies of a record the tablet keeps; 0: none past this page. */
  readonly copies: 0 | 1 | 2;
}

const loaders: ScreenLoaders = {
  pace: async () => (await import('./screens/pace/pace-screen')).PaceScreen,
  study: async () => (await import('./screens/study/study-screen')).StudyScreen,
  review: async () => (await import('./screens/review/review-screen')).ReviewScreen,
  shop: async () => (await import('./screens/shop/shop-screen')).ShopScreen,
  records: async () => (await import('./screens/records/records-screen')).RecordsScreen,
};

addEventListener('hashchange', () => {
  const next = parseRoute(location.hash);
  // The demo shop has a database of its own: one page never holds both open.
  if (next.isDemo !== isDemo) location.reload();
  else route.value = next;
});

/** A browser that has no database, or a person who chose to go on without one. */
function isWithoutStorage(): boolean {
  return !('indexedDB' in globalThis) || indexedDB === null || withoutStorage;
}

/** The shop's own log, on two shelves where the browser has both. Only the writer may hold the journal. */
async function openOwnLog(isWriter: boolean): Promise<OpenedLog> {
  const newDevice = () => randomName('tablet');
  if (isWithoutStorage()) return { log: new InMemoryRecordLog(newDevice()), copies: 0 };
  const journal = isWriter ? await openJournal(OWN_JOURNAL).catch(() => null) : null;
  const database = await IndexedDbRecordLog.open(OWN_DATABASE, () => journal?.ownEnd?.device ?? newDevice());
  if (!journal) return { log: database, copies: 1 };
  const { log } = await TwoShelfRecordLog.open(database, journal);
  return { log, copies: 2 };
}

async function openDemoLog(): Promise<OpenedLog> {
  const log = await IndexedDbRecordLog.open(DEMO_DATABASE, () => randomName('tablet'));
  if ((await log.count()) === 0) {
    const { fillDemo } = await import('./demo/fill-demo');
    await fillDemo(log);
  }
  return { log, copies: 1 };
}

async function openBench(isWriter: boolean): Promise<{ bench: Bench; copies: 0 | 1 | 2 }> {
  const slow = setTimeout(() => render(<OpeningWait />, root), SLOW_MS);
  try {
    const { log, copies } = await (isDemo ? openDemoLog() : openOwnLog(isWriter));
    const reserve = isWriter && !isDemo ? localReserve : null;
    return { bench: await Bench.open(log, pageClock(randomName('run')), reserve, !isWriter), copies };
  } finally {
    clearTimeout(slow);
  }
}

/** Opens the records and shows the app. Called again when this tab takes over from another. */
async function start(lock: WriterLock): Promise<void> {
  const { bench, copies } = await openBench(lock.isHeld);

  const show = (isReadOnly: boolean) => {
    const app: App = {
      bench,
      files: downloadFile,
      screenAwake,
      lastingStorage,
      isDemo,
      isReadOnly,
      copies,
      route,
      go(screen, id = '') {
        location.hash = routeHash({ screen, id, isDemo });
      },
      openDemo() {
        location.hash = routeHash({ screen: 'pace', id: '', isDemo: true });
      },
      leaveDemo() {
        location.hash = routeHash({ screen: 'pace', id: '', isDemo: false });
      },
      async takeOver() {
        await lock.takeOver();
        bench.close();
        await start(lock);
      },
    };
    const Root = () => (
      <AppContext.Provider value={app}>
        <AppShell loaders={loaders} takeUpdate={takeUpdate.value} />
      </AppContext.Provider>
    );
    render(<Root />, root);
  };
  lock.onAsked(async () => {
    show(true);
    await bench.finish();
  });
  lock.onTaken(() => {
    show(true);
    bench.close();
  });
  show(!lock.isHeld);
  // Asked once there is something to lose; a browser that says no is told about on the Records screen.
  lastingStorage.ask();
}

const lock = takeWriterLock(isDemo ? DEMO_DATABASE : OWN_DATABASE);

function open(): void {
  lock.then(start).catch((error) => {
    // Some browsers refuse a database in a private window: there was never anything in it to lose.
    const isRefused = error instanceof DOMException && error.name === 'SecurityError';
    if (isRefused && !withoutStorage) goOnWithoutStorage();
    else render(<OpeningTrouble error={error} goOn={goOnWithoutStorage} />, root);
  });
}

function goOnWithoutStorage(): void {
  withoutStorage = true;
  open();
}

document.documentElement.dataset.release = __RELEASE__;
open();

async function lookForUpdates(): Promise<void> {
  const { serviceWorkerUpdates } = await import('./device/service-worker-updates');
  const update = serviceWorkerUpdates();
  update.onWaiting(() => {
    takeUpdate.value = () => update.apply();
  });
}

// The records come first: what keeps the app offline is fetched beside them, not before.
if (import.meta.env.PROD && 'serviceWorker' in navigator) lookForUpdates();
