import './records.css';
import { recordsWords as words } from '../../i18n/en/records';
import { selfCheckWords } from '../../i18n/en/self-check';
import { useApp } from '../app';
import { TABLET_PLACE } from '../route';
import { CheckSection } from './check-section';
import { CopySection } from './copy-section';
import { ExportSection } from './export-section';
import { HoldingsSheet } from './holdings-sheet';
import { ImportTable } from './import-table';
import { OverlapList } from './overlap-list';
import { RestoreSection } from './restore-section';
import { SelfCheck } from './self-check';

/** Is my data safe, and how do I get it out? */
export function RecordsScreen() {
  const app = useApp();
  if (app.route.value.id === TABLET_PLACE) return <SelfCheck />;
  return (
    <div class="page records">
      <div class="records-column">
        <HoldingsSheet />
        <OverlapList />
        {app.copying && <RestoreSection copying={app.copying} />}
        <CheckSection />
        <section class="stack records-check-all" aria-labelledby="records-tablet-title">
          <h2 id="records-tablet-title">{selfCheckWords.title}</h2>
          <p class="quiet">{selfCheckWords.text}</p>
          <div class="row">
            <button type="button" class="button" onClick={() => app.go('records', TABLET_PLACE)}>
              {selfCheckWords.title}
            </button>
          </div>
        </section>
        <section class="stack records-purpose" aria-labelledby="records-purpose-title">
          <h2 id="records-purpose-title">{words.purpose.title}</h2>
          <p>{words.purpose.text}</p>
        </section>
      </div>
      <div class="records-column">
        <CopySection />
        <ExportSection />
        <ImportTable />
        <section class="stack records-demo" aria-labelledby="records-demo-title">
          <h2 id="records-demo-title">{words.demo.title}</h2>
          <p class="quiet">{words.demo.text}</p>
          <div class="row">
            <button type="button" class="button" onClick={app.isDemo ? app.leaveDemo : app.openDemo}>
              {app.isDemo ? words.demo.leave : words.demo.open}
            </button>
          </div>
        </section>
      </div>
    </div>
  );
}
