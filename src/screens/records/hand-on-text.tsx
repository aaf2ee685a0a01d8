import { useEffect, useState } from 'preact/hooks';
import type { ReadyFile } from '../../application/ports/hand-over';
import type { TabletTools } from '../../application/tablet-tools';
import { copiesWords } from '../../i18n/en/copies';
import { selfCheckWords as words } from '../../i18n/en/self-check';

const FILE_NAME = 'pacewright-tablet.txt';

/** Shown before it is handed on, so that everybody sees what leaves the tablet. */
export function HandOnText({ tools, text }: { tools: TabletTools; text: string }) {
  const [file, setFile] = useState<ReadyFile | null>(null);
  const [told, setTold] = useState('');
  useEffect(() => {
    // Made ahead: a share sheet opens only right after a tap.
    tools.handOver.gather(FILE_NAME, encoded(text)).then(setFile);
  }, [tools, text]);

  const copy = async () => setTold((await tools.copyText(text)) ? words.copied : words.notCopied);
  const share = async () => {
    if (file) setTold(copiesWords.keep.outcome[await file.share()](FILE_NAME));
  };
  const download = () => {
    file?.download();
    setTold(words.offered(FILE_NAME));
  };
  return (
    <section class="stack" aria-labelledby="hand-on-title">
      <h2 id="hand-on-title">{words.handOn}</h2>
      <p class="quiet">{words.holds}</p>
      <pre class="panel self-check-text">{text}</pre>
      <div class="row">
        <button type="button" class="button" onClick={copy}>
          {words.copy}
        </button>
        {file?.canShare && (
          <button type="button" class="button" onClick={share}>
            {words.share}
          </button>
        )}
        <button type="button" class="button" disabled={!file} onClick={download}>
          {words.download}
        </button>
      </div>
      <p class="records-told" role="status">
        {told}
      </p>
    </section>
  );
}

async function* encoded(text: string): AsyncGenerator<Uint8Array<ArrayBuffer>> {
  yield new TextEncoder().encode(text);
}
