import { ClockField } from '../clock-field';

interface Props {
  readonly from: string;
  readonly to: string;
  readonly fromLabel: string;
  readonly toLabel: string;
  change(span: { from: string; to: string }): void;
}

/** From and to, as times of the day. */
export function TimeSpanFields({ from, to, fromLabel, toLabel, change }: Props) {
  return (
    <>
      <ClockField label={fromLabel} value={from} change={(next) => change({ from: next, to })} />
      <ClockField label={toLabel} value={to} change={(next) => change({ from, to: next })} />
    </>
  );
}
