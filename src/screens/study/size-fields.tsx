import { useEffect, useRef } from 'preact/hooks';
import { readStandards } from '../../application/shop/read-standards';
import { sizePart } from '../../application/shop/size-part';
import { study } from '../../i18n/en/study';
import { asTyped } from '../../i18n/parse-number';
import { useApp } from '../app';
import { sizesOf, type TypedSizes } from './study-draft';
import { TextField } from './text-field';

interface Props {
  readonly part: string;
  readonly drivers: readonly string[];
  readonly sizes: TypedSizes;
  readonly onChange: (sizes: TypedSizes) => void;
}

/**
 * How much the part has of what its elements grow with. It is of the part, not of one study: what was said of it
 * comes from the log, and what is typed goes there as the field is left, whatever becomes of the rest of the page.
 */
export function SizeFields({ part, drivers, sizes, onChange }: Props) {
  const { bench, isReadOnly } = useApp();
  const latest = useRef({ sizes, onChange });
  latest.current = { sizes, onChange };
  const typed = useRef<Record<string, string>>({});
  const keep = () => {
    const said = sizesOf(Object.keys(typed.current), typed.current);
    typed.current = {};
    if (!isReadOnly && said.length > 0) sizePart(bench, part, said);
  };
  useEffect(() => {
    let isCurrent = true;
    readStandards(bench).then((known) => {
      const said = (known.get(part)?.sizes ?? []).map(({ driver, value }) => [driver, asTyped(value)]);
      // A moment later, and never over what was typed.
      const now = latest.current;
      if (isCurrent && said.length > 0) now.onChange({ ...Object.fromEntries(said), ...now.sizes });
    });
    return () => {
      isCurrent = false;
      // A finger on another part does not leave the field everywhere.
      keep();
    };
  }, [bench, part]);
  return drivers.map((driver) => (
    <TextField
      key={driver}
      label={study.prepare.size(driver)}
      value={sizes[driver] ?? ''}
      mode="decimal"
      narrow
      onInput={(text) => {
        typed.current[driver] = text;
        onChange({ ...sizes, [driver]: text });
      }}
      onLeave={keep}
    />
  ));
}
