import './release-changes.css';
import { changeWords as words } from '../../i18n/en/changes';

/** What the newest releases brought, newest first. */
export function ReleaseChanges({ count }: { count: number }) {
  return (
    <>
      {words.releases.slice(0, count).map(({ version, lines }) => (
        <section key={version} class="changes">
          <h3>{words.release(version)}</h3>
          <ul>
            {lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
      ))}
    </>
  );
}
