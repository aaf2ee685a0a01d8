import { readFileSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import type { PrecisionAsked } from '../src/domain/study/summarise-study';
import { recomputeTable } from '../src/exchange/recompute-table';
import { tableFaultInWords } from '../src/screens/records/fault-in-words';

const USAGE = 'npm run --silent recompute -- FILE.csv [--confidence 0.95] [--precision 0.05]';

/**
 * Recomputes a readings table outside the browser and prints its figures as JSON. Gives the exit status:
 * 0, or 1 with sentences on standard error and nothing on standard output.
 */
export async function recomputeCommand(argv: string[]): Promise<number> {
  const asked = readArguments(argv);
  if (typeof asked === 'string') return refuse([asked]);
  let bytes: Uint8Array;
  try {
    // npm runs its scripts in the project's folder and says in INIT_CWD where the person stands.
    bytes = readFileSync(path.resolve(process.env.INIT_CWD ?? '', asked.file));
  } catch (error) {
    return refuse([`${asked.file} cannot be read: ${(error as NodeJS.ErrnoException).code}.`]);
  }
  const result = recomputeTable(bytes, asked);
  if (!result.ok) return refuse(result.faults.map(tableFaultInWords));
  process.stdout.write(`${JSON.stringify(result.recomputed, null, 2)}\n`);
  return 0;
}

/** The file and the precision asked, or a sentence about what is wrong with them. */
function readArguments(argv: string[]): (PrecisionAsked & { file: string }) | string {
  let read: { values: { confidence: string; precision: string }; positionals: string[] };
  try {
    read = parseArgs({
      args: argv,
      allowPositionals: true,
      options: {
        confidence: { type: 'string', default: '0.95' },
        precision: { type: 'string', default: '0.05' },
      },
    });
  } catch {
    return `The options are not understood; the command is: ${USAGE}`;
  }
  const [file, ...others] = read.positionals;
  if (file === undefined || others.length > 0) return `The command takes one file: ${USAGE}`;
  const confidence = share(read.values.confidence);
  const precision = share(read.values.precision);
  if (confidence === null) return `--confidence is a share above 0 and below 1, such as 0.95.`;
  if (precision === null) return `--precision is a share above 0 and below 1, such as 0.05.`;
  return { file, confidence, precision };
}

function share(text: string): number | null {
  const value = Number(text);
  return text.trim() !== '' && value > 0 && value < 1 ? value : null;
}

function refuse(sentences: readonly string[]): number {
  process.stderr.write(sentences.map((sentence) => `${sentence}\n`).join(''));
  return 1;
}
