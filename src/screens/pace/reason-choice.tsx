import { explainStoppage } from '../../application/turn/explain-stoppage';
import type { StopReason } from '../../domain/records/shop-fact';
import { NOT_STATED, type Stoppage } from '../../domain/turn/turn';
import { useApp } from '../app';
import { leftUnsaid } from './left-unsaid';
import { ReasonGrid } from './reason-grid';

interface Props {
  readonly turn: string;
  readonly stoppage: Stoppage;
  readonly title: string;
  chosen(reason: StopReason): void;
}

/** Why work stood still. */
export function ReasonChoice({ turn, stoppage, title, chosen }: Props) {
  const { bench } = useApp();
  return (
    <ReasonGrid
      title={title}
      reason={stoppage.reason}
      choose={(reason) => {
        if (reason.id === NOT_STATED) leftUnsaid.value = stoppage.key;
        explainStoppage(bench, turn, stoppage.key, reason);
        chosen(reason);
      }}
    />
  );
}
