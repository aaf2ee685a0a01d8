import './more-below.css';
import { useEffect, useRef, useState } from 'preact/hooks';
import { moreWords as words } from '../i18n/en/more-below';

/** The last thing in what scrolls: says so for as long as there is more under the edge. Tablets show no scroll bar. */
export function MoreBelow() {
  const end = useRef<HTMLSpanElement>(null);
  const [isMore, setMore] = useState(false);
  useEffect(() => {
    const watch = new IntersectionObserver((seen) => setMore(!seen.at(-1)!.isIntersecting));
    watch.observe(end.current!);
    return () => watch.disconnect();
  }, []);
  return (
    <>
      <p class="more-below no-print" aria-hidden="true" hidden={!isMore}>
        <span>▼ {words.more}</span>
      </p>
      <span class="more-end" ref={end} />
    </>
  );
}
