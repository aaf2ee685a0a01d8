import { useState } from 'preact/hooks';
import { lotArrives } from '../../application/cell/lot-arrives';
import { releaseLot } from '../../application/cell/release-lot';
import { scanLot } from '../../application/cell/scan-lot';
import { undoLot } from '../../application/cell/undo-lot';
import { cellLeadTime as says } from '../../i18n/en/cell-lead-time';
import { useApp } from '../app';
import { Stepper } from './stepper';
import type { CellData } from './use-cell';

/** One tap when a lot arrives, one when parts are free: at the moment of the tap. */
export function LotTaps({ cell }: { cell: CellData }) {
  const { bench } = useApp();
  const { lots } = cell.history;
  const [arriving, setArriving] = useState(cell.settings.arrivalLot);
  const [leaving, setLeaving] = useState(cell.settings.trolley);
  const [number, setNumber] = useState('');
  const [problem, setProblem] = useState('');
  const [took, setTook] = useState('');
  const tell = (work: Promise<string>) =>
    work.then(
      (done) => {
        setProblem('');
        setTook(done);
      },
      (error) => setProblem(String(error)),
    );
  const arrive = async () => {
    await lotArrives(bench, arriving);
    return says.tookArrived(says.parts(arriving));
  };
  const release = async () => {
    const inside = lots.inside.reduce((sum, own) => sum + own.parts, 0);
    await releaseLot(bench, leaving);
    const unseen = Math.max(0, leaving - inside);
    return unseen > 0 ? says.tookUnseen(says.parts(leaving), unseen) : says.tookFree(says.parts(leaving));
  };
  const scan = async () => {
    const way = await scanLot(bench, lots, number, arriving);
    return says.tookLot[way](number.trim());
  };
  const undo = () => {
    undoLot(bench, lots);
    setTook(says.tookBack);
  };
  return (
    <section class="cell-taps" aria-label={says.taps}>
      <button type="button" class="button strong" onClick={() => tell(arrive())}>
        {says.arrived(says.parts(arriving))}
      </button>
      <button type="button" class="button" onClick={() => tell(release())}>
        {says.released(says.parts(leaving))}
      </button>
      <button type="button" class="button" disabled={!lots.last} onClick={undo}>
        {says.undo}
      </button>
      <p class="cell-took" role="status">
        {took}
      </p>
      {problem && (
        <p class="fault" role="alert">
          {says.failed(problem)}
        </p>
      )}
      <details class="cell-how">
        <summary>{says.otherLots}</summary>
        <div class="stack">
          <Stepper label={says.partsArrive} value={arriving} low={1} high={400} change={setArriving} />
          <Stepper label={says.partsLeave} value={leaving} low={1} high={400} change={setLeaving} />
          <form
            onSubmit={(event) => {
              event.preventDefault();
              if (number.trim() === '') return;
              tell(scan());
              setNumber('');
            }}
          >
            <label class="field">
              <span>{says.scan}</span>
              <input
                value={number}
                autocomplete="off"
                enterkeyhint="done"
                onInput={(event) => setNumber(event.currentTarget.value)}
              />
            </label>
            <p class="small quiet">{says.scanHint}</p>
          </form>
        </div>
      </details>
    </section>
  );
}
