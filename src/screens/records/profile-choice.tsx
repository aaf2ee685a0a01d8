import { recordsWords } from '../../i18n/en/records';
import { chosenProfile } from './chosen-profile';

const words = recordsWords.give;

/** How numbers are written in the tables that leave the tablet. */
export function ProfileChoice() {
  return (
    <fieldset class="records-profile">
      <legend>{words.profile}</legend>
      <div class="choices">
        {(['point', 'comma'] as const).map((profile) => (
          <button
            key={profile}
            type="button"
            class="choice"
            aria-pressed={chosenProfile.value === profile}
            onClick={() => {
              chosenProfile.value = profile;
            }}
          >
            <strong class="number">{words.profiles[profile].name}</strong>
            <small>{words.profiles[profile].note}</small>
          </button>
        ))}
      </div>
    </fieldset>
  );
}
