import { readTargetTime } from '../../../domain/shop/read-target-time';
import { promisesWords } from '../../../i18n/en/promises';
import type { SizeTyped } from './quoted-part';

const words = promisesWords.quote;

/** A size that the shop has no part for, with the time that standard data gives it. */
export function SizeFields({ size, change }: { size: SizeTyped; change: (size: SizeTyped) => void }) {
  const isWrong = [size.time, size.half].some((typed) => typed.trim() !== '' && !readTargetTime(typed).ok);
  const fields = [
    ['code', words.sizeCode],
    ['time', words.sizeTime],
    ['half', words.sizeHalf],
  ] as const;
  return (
    <div class="stack no-print">
      <div class="review-dates">
        {fields.map(([name, label]) => (
          <label class="field" key={name}>
            <span>{label}</span>
            <input
              value={size[name]}
              maxLength={40}
              onInput={(event) => change({ ...size, [name]: event.currentTarget.value })}
            />
          </label>
        ))}
      </div>
      {isWrong && <p role="status">{words.notATime}</p>}
      <p class="small quiet">{words.sizeNote}</p>
    </div>
  );
}
