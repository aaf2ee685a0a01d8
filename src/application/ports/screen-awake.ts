/** Keeps the screen on while something is timed. */
export interface ScreenAwake {
  keep(): void;
  release(): void;
  /** Told whenever it changes: true while the system keeps its promise. */
  onChange(call: (awake: boolean) => void): void;
}
