import { checksum } from '../../domain/records/checksum';
import type { LogRecord } from '../../domain/records/log-record';

/** How far a tablet's own records go: its name in the log and its last sequence number. */
export interface OwnPlace {
  readonly device: string;
  readonly sequence: number;
}

/** The same, and which record it is: another tab may have given the same number to another one. */
export interface OwnEnd extends OwnPlace {
  /** Of that record; 0 before the first. Null where it lies too far back in the journal to be read at opening. */
  readonly chain: number | null;
}

/** A line of the journal: a record, and how far the tablet's own records went when it was written. */
export interface JournalLine {
  readonly own: OwnPlace;
  readonly record: LogRecord;
}

/** `checksum device sequence record` and a line feed; JSON writes a line feed inside a text as \n. */
export function encodeLine({ own, record }: JournalLine): string {
  const content = `${own.device} ${own.sequence} ${JSON.stringify(record)}`;
  return `${checksum(content).toString(16).padStart(8, '0')} ${content}\n`;
}

/** The line, or null when it was torn or damaged. */
export function decodeLine(line: string): JournalLine | null {
  const [, sum, content, device, sequence, json] = /^([0-9a-f]{8}) ((\S+) (\d+) (.*))$/s.exec(line) ?? [];
  if (!content || !device || !json || Number.parseInt(sum!, 16) !== checksum(content)) return null;
  return { own: { device, sequence: Number(sequence) }, record: JSON.parse(json) };
}
