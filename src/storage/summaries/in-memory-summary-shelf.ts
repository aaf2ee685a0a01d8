import type { KeptDay, SummaryMark, SummaryShelf } from '../../application/ports/summary-shelf';

/** Summaries as long as the page lasts: where the browser has no database, and in tests. */
export class InMemorySummaryShelf implements SummaryShelf {
  private readonly days = new Map<string, KeptDay>();
  private mark: SummaryMark | null = null;

  async readMark(): Promise<SummaryMark | null> {
    return this.mark;
  }

  async readDays(from: string, to: string): Promise<KeptDay[]> {
    return [...this.days.values()]
      .filter(({ day }) => day >= from && day <= to)
      .sort((a, b) => (a.day < b.day ? -1 : 1));
  }

  async dropTurns(turns: readonly string[], mark: SummaryMark): Promise<void> {
    const dropped = new Set(turns);
    for (const kept of this.days.values()) {
      if (kept.turns.some((turn) => dropped.has(turn))) this.days.delete(kept.day);
    }
    this.mark = mark;
  }

  async clear(mark: SummaryMark | null): Promise<void> {
    this.days.clear();
    this.mark = mark;
  }

  async keep(days: readonly KeptDay[]): Promise<void> {
    for (const day of days) this.days.set(day.day, day);
  }
}
