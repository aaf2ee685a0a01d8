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
      <label class="field">
        <span>{fromLabel}</span>
        <input
          type="time"
          value={from}
          onInput={(event) => change({ from: event.currentTarget.value, to })}
        />
      </label>
      <label class="field">
        <span>{toLabel}</span>
        <input type="time" value={to} onInput={(event) => change({ from, to: event.currentTarget.value })} />
      </label>
    </>
  );
}
