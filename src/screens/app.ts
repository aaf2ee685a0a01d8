import type { ReadonlySignal, Signal } from '@preact/signals';
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { BackupTools } from '../application/backup/backup-tools';
import type { Upkeep } from '../application/backup/upkeep';
import type { Bench } from '../application/bench';
import type { FileSaver } from '../application/ports/file-saver';
import type { Jotter } from '../application/ports/jotter';
import type { LastingStorage } from '../application/ports/lasting-storage';
import type { ScreenAwake } from '../application/ports/screen-awake';
import type { Secrets } from '../application/ports/secrets';
import type { SummaryShelf } from '../application/ports/summary-shelf';
import type { TapAnswer } from '../application/ports/tap-answer';
import type { TabletTools } from '../application/tablet-tools';
import type { Route, ScreenName } from './route';
import type { TabletPreferences } from './tablet/tablet-preferences';

/** What a screen has: the bench to read and to record on, and the few things a page can do. */
export interface App {
  readonly bench: Bench;
  readonly files: FileSaver;
  readonly jotter: Jotter;
  readonly screenAwake: ScreenAwake;
  readonly lastingStorage: () => Promise<LastingStorage>;
  readonly isDemo: boolean;
  /** Another tab is the writer: nothing may be recorded here. */
  readonly isReadOnly: boolean;
  /** A newer release has changed the database: this page may read and write it no more. */
  readonly isOutdated: boolean;
  readonly route: ReadonlySignal<Route>;
  /** Independent copies of each record on this tablet: 2, 1, or 0 when nothing outlives the page. */
  readonly copies: 0 | 1 | 2;
  /** Brings what copying and restoring needs; null in the demo shop, where nothing is worth a copy. */
  readonly copying: (() => Promise<BackupTools>) | null;
  /** Summaries of days, kept where the browser keeps anything. */
  readonly summaries: () => Promise<SummaryShelf>;
  /** Null where the browser has no cryptography. */
  readonly secrets: () => Promise<Secrets | null>;
  readonly upkeep: ReadonlySignal<Upkeep>;
  /** The supervisor's PIN was given, and Pace was not opened since. */
  readonly isUnlatched: Signal<boolean>;
  /** How this tablet looks and answers: its own, and no record. */
  readonly tablet: Signal<TabletPreferences>;
  /** What answers a tap beside what is seen; brought when somebody wants it. */
  readonly tapAnswer: () => Promise<TapAnswer>;
  /** What looking after the tablet itself needs; brought when somebody looks. */
  readonly tabletTools: () => Promise<TabletTools>;
  /** This release is new on the tablet: what to call once somebody was told. Null when nobody has to be. */
  readonly untold: ReadonlySignal<(() => void) | null>;
  /** Reads what is in hand from the log again, after a restore. */
  reopen(): Promise<void>;
  /** Makes this tab the writer; the other one finishes and then only reads. */
  takeOver(): Promise<void>;
  /** Keeps a language for this tablet and loads the page again in it. */
  speak(language: string): void;
  go(screen: ScreenName, id?: string): void;
  openDemo(): void;
  leaveDemo(): void;
}

export const AppContext = createContext<App | null>(null);

export function useApp(): App {
  const app = useContext(AppContext);
  if (!app) throw new Error('useApp requires a screen inside AppContext');
  return app;
}
