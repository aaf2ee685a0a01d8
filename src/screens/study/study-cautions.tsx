import { studySheet } from '../../i18n/en/study-sheet';

/** What a time from studies is not, on every sheet that shows one. */
export function StudyCautions() {
  return (
    <ul class="study-cautions">
      {studySheet.cautions.map((caution) => (
        <li key={caution}>{caution}</li>
      ))}
    </ul>
  );
}
