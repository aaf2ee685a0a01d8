import { useEffect, useState } from 'preact/hooks';
import type { BackupTools } from '../../application/backup/backup-tools';
import { copyToFolder } from '../../application/backup/copy-to-folder';
import { problemOf } from '../../application/backup/problem-of';
import type { OutsideFolder } from '../../application/ports/outside-folder';
import { copiesWords } from '../../i18n/en/copies';
import { useApp } from '../app';
import { refusalInWords } from './refusal-in-words';

const words = copiesWords.folder;
type Chosen = Awaited<ReturnType<OutsideFolder['chosen']>>;

/** A folder that copies go to by themselves; nothing where the browser cannot write to one. */
export function FolderCopy({ copying }: { copying: () => Promise<BackupTools> }) {
  const { bench, isReadOnly } = useApp();
  const [tools, setTools] = useState<BackupTools | null>(null);
  const [chosen, setChosen] = useState<Chosen>(null);
  const [told, setTold] = useState('');
  const [isRefused, setRefused] = useState(false);
  useEffect(() => {
    copying().then(async (brought) => {
      setTools(brought);
      setChosen((await brought.folder?.chosen()) ?? null);
    });
  }, [copying]);
  const folder = tools?.folder;
  if (!tools || !folder) return null;

  /** Does one thing with the folder from a tap, and says what came of it. */
  const act = (work: () => Promise<string>) => async () => {
    setRefused(false);
    try {
      setTold(await work());
    } catch (error) {
      setRefused(true);
      setTold(words.failed(problemOf(error)));
    }
    setChosen(await folder.chosen());
  };
  const copy = async () => {
    const made = await copyToFolder(bench, tools);
    if (made.ok) return words.done(made.name, made.summary.records);
    setRefused(true);
    if (made.reason === 'no-folder') return words.noFolder;
    if (made.reason === 'permission-needed') return words.asks(made.folder);
    if (made.reason === 'count-collapsed') return words.collapsed(made.records, made.before);
    return refusalInWords(made);
  };
  const choose = act(async () => ((await folder.choose()) ? copy() : ''));
  const allow = act(async () => ((await folder.askAgain()) ? copy() : ''));
  const forget = act(async () => {
    await folder.forget();
    return words.forgotten;
  });
  return (
    <div class="records-way">
      <h3>{words.title}</h3>
      <p class="quiet">{words.text}</p>
      {chosen && <p>{chosen.mayWrite ? words.chosen(chosen.name) : words.asks(chosen.name)}</p>}
      <div class="row">
        {chosen && (
          <button
            type="button"
            class="button"
            disabled={isReadOnly}
            onClick={chosen.mayWrite ? act(copy) : allow}
          >
            {chosen.mayWrite ? words.now : words.ask}
          </button>
        )}
        <button type="button" class="button" disabled={isReadOnly} onClick={choose}>
          {chosen ? words.other : words.choose}
        </button>
        {chosen && (
          <button type="button" class="button plain" disabled={isReadOnly} onClick={forget}>
            {words.forget}
          </button>
        )}
      </div>
      <p class={isRefused ? 'fault' : ''} role={isRefused ? 'alert' : 'status'}>
        {told}
      </p>
    </div>
  );
}
