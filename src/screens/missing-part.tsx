import { shell as words } from '../i18n/en/shell';

/** In the place of a part whose file is gone from the tablet, where there is no network to fetch it. */
export function MissingPart() {
  return (
    <p class="fault" role="alert">
      {words.missing}{' '}
      <a class="shell-rescue" href="rescue.html">
        {words.rescue}
      </a>
    </p>
  );
}
