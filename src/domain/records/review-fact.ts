/** What the foreman decides, notes and promises. It lies in the shop's stream. */
export type ReviewFact =
  /** What a set-up earns; null takes it away. It holds for set-ups from then on. */
  | { readonly kind: 'set-up-standard-set'; readonly standardMs: number | null }
  | {
      readonly kind: 'day-noted';
      /** As 2026-03-02. */
      readonly day: string;
      readonly text: string;
      /** The work itself changed on that day: limits are worked out anew from it on. */
      readonly isChange: boolean;
      readonly by: string;
    }
  | {
      readonly kind: 'day-note-removed';
      /** Key of the day-noted record. */
      readonly note: string;
      readonly by: string;
    }
  /** Two periods to compare and the difference that matters, fixed before anybody looked. */
  | ({ readonly kind: 'comparison-fixed'; readonly by: string } & ComparisonTerms)
  /** It was wrongly asked, or of the wrong days. It stays in the book, marked: a verdict is not unsaid. */
  | {
      readonly kind: 'comparison-withdrawn';
      /** Key of the comparison-fixed record. */
      readonly comparison: string;
      readonly by: string;
    }
  /** A time of the method as it was, taken before this tablet recorded anything. */
  | {
      readonly kind: 'old-method-timed';
      readonly part: string;
      /** Milliseconds a part. */
      readonly perPartMs: number;
      /** The new time taken by the same hand; without it the old one stands beside what the tablet recorded. */
      readonly newPerPartMs?: number;
      /** How it was taken, and by whom: an unsourced figure is called one. */
      readonly source: string;
      readonly by: string;
    }
  | {
      readonly kind: 'old-timing-removed';
      /** Key of the old-method-timed record. */
      readonly timing: string;
      readonly by: string;
    }
  | ({ readonly kind: 'quotation-made'; readonly by: string } & Quotation)
  /** It holds no longer, or was never given. It stays in the book, marked. */
  | {
      readonly kind: 'quotation-withdrawn';
      /** Key of the quotation-made record. */
      readonly quotation: string;
      readonly by: string;
    }
  /** Somebody looked at figures of single persons, and said why. */
  | {
      readonly kind: 'people-looked-at';
      readonly purpose: string;
      readonly by: string;
      readonly fromDay: string;
      readonly toDay: string;
    };

/** What is compared: days from and to, both included. */
export interface ComparisonTerms {
  readonly title: string;
  /** One part, or null for all parts that both periods made. */
  readonly part: string | null;
  readonly beforeFrom: string;
  readonly beforeTo: string;
  readonly afterFrom: string;
  readonly afterTo: string;
  /** The smallest difference that matters, percent of the time before. */
  readonly thresholdPct: number;
}

/** A promise of time, with the standard that it rests on. */
export interface Quotation {
  readonly part: string;
  readonly partCode: string;
  readonly quantity: number;
  /** All milliseconds. */
  readonly setUpMs: number;
  readonly perPartMs: number;
  readonly totalMs: number;
  /** The interval of the total; null where nothing tells how far it may be off. */
  readonly lowMs: number | null;
  readonly highMs: number | null;
  /** Of the method, as the shop counts them; null when none is written. */
  readonly methodRevision: number | null;
  /** The study whose standard time it is; null for a typed target. */
  readonly study: string | null;
  readonly note: string;
  /** The days it was promised for, as 2026-03-02, and by how many people; absent where nobody asked by when. */
  readonly due?: QuotedDays;
}

/** From when an order can be worked on, and the days on which it is done. */
export interface QuotedDays {
  readonly freeFrom: string;
  readonly people: number;
  readonly finish: string;
  /** In an unlucky course; null where nothing tells. */
  readonly latest: string | null;
}
