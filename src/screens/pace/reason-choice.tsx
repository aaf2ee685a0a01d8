import { explainStoppage } from '../../application/turn/explain-stoppage';
import type { Stoppage } from '../../domain/turn/turn';
import { useApp } from '../app';
import { ReasonGrid } from './reason-grid';

interface Props {
  readonly turn: string;
  readonly stoppage: Stoppage;
  readonly title: string;
  chosen(): void;
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
        chosen();
      }}
    />
  );
}
