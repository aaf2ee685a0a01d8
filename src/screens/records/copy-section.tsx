import { useState } from 'preact/hooks';
import { copiesWords } from '../../i18n/en/copies';
import { formatAge } from '../../i18n/format-age';
import { useApp } from '../app';
import { FolderCopy } from './folder-copy';
import { MakeCopy } from './make-copy';
import { useCopyAge } from './use-copy-age';

const words = copiesWords.keep;

/** How old the last copy outside is, and how to make another. */
export function CopySection() {
  const { copying } = useApp();
  const age = useCopyAge();
  const [copies, setCopies] = useState(0);
  return (
    <section class="stack records-copy" aria-labelledby="records-copy-title">
      <h2 id="records-copy-title">{words.title}</h2>
      {copying && <p class="quiet">{words.text}</p>}
      {age && copying && (age.isCopied || age.recordsSince > 0) && (
        <p class={age.isDue ? 'fault' : ''}>
          <strong>{age.isCopied ? words.age(formatAge(age.ageMs)) : words.none}</strong>{' '}
          {age.isCopied ? words.since(age.recordsSince) : words.notYet(age.recordsSince)}
          {age.isCopied && <small class="records-how"> {words.how[age.how]}</small>}
        </p>
      )}
      {copying ? (
        <>
          <MakeCopy copying={copying} key={copies} again={() => setCopies(copies + 1)} />
          <FolderCopy copying={copying} />
        </>
      ) : (
        <p>{copiesWords.inDemo}</p>
      )}
    </section>
  );
}
