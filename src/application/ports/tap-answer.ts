/** Answers a tap so that it is heard or felt. An extra: everything it says is seen as well. */
export interface TapAnswer {
  sound(): void;
  vibrate(): void;
}
