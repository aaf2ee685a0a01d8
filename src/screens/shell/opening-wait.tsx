import './base.css';
import { useEffect, useState } from 'preact/hooks';
import { shell as words } from '../../i18n/en/shell';

/** Storage that has not answered after this long is said to be slow. */
const VERY_SLOW_MS = 4_000;

/** Shown while the records are being opened, when that takes longer than a blink. Never an empty shop. */
export function OpeningWait() {
  const [isVerySlow, setVerySlow] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setVerySlow(true), VERY_SLOW_MS);
    return () => clearTimeout(timer);
  }, []);
  return (
    <div class="page stack" role="status">
      <h1>{words.opening}</h1>
      {isVerySlow && <p>{words.openingSlow}</p>}
    </div>
  );
}
