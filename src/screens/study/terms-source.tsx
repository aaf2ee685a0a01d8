import { study } from '../../i18n/en/study';
import { useApp } from '../app';
import type { TermsFrom } from './carried-terms';

const words = study.terms;

/** Where the allowances come from that stand there although nobody typed them, and the way to look. */
export function TermsSource({ from }: { from: TermsFrom | null }) {
  const { go } = useApp();
  if (!from) return null;
  return (
    <div class="row">
      <p>{words.from[from.what](from.partCode)}</p>
      <button type="button" class="button" onClick={() => go('study', from.place)}>
        {words.look}
      </button>
    </div>
  );
}
