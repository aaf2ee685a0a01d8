import { explainStoppage } from '../../application/turn/explain-stoppage';
import type { StopReason } from '../../domain/records/shop-fact';
import type { Stoppage } from '../../domain/turn/turn';
import { useApp } from '../app';
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
        explainStoppage(bench, turn, stoppage.key, reason);
        chosen(reason);
      }}
    />
  );
}
