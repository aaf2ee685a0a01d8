import './demo-guide.css';
import { firstSteps } from '../../i18n/en/first-steps';
import { shell } from '../../i18n/en/shell';
import { useApp } from '../app';
import { routeHash, type ScreenName } from '../route';
import { GUIDE_PLACE, guideShown } from './guide-shown';

const asked = ['pace', 'study', 'cell', 'review'] as const;
type Asked = (typeof asked)[number];

/** On the screens that answer a question of the three people: all of them, each a way to its own, and what to look at. */
export function DemoGuide() {
  const { bench, jotter, route } = useApp();
  const words = firstSteps.guide;
  const { screen } = route.value;
  const isShown = guideShown.value ?? jotter.read(GUIDE_PLACE) === null;
  // What is timed has the screen to itself.
  const turn = bench.turn.value;
  const isTiming =
    (screen === 'pace' && turn !== null && turn.status !== 'ended') ||
    (screen === 'study' && bench.study.value?.status === 'open');
  if (!isShown || isTiming || !isAsked(screen)) return null;
  const putAway = () => {
    guideShown.value = false;
    jotter.write(GUIDE_PLACE, 'yes');
  };
  return (
    <nav class="guide" aria-label={words.title}>
      <ul>
        {asked.map((name) => (
          <li key={name}>
            <a
              href={routeHash({ screen: name, id: '', isDemo: true })}
              aria-current={name === screen ? 'page' : undefined}
            >
              <small>{words.who[name]}</small>
              {shell.questions[name]}
            </a>
          </li>
        ))}
      </ul>
      <div class="guide-foot">
        <p>
          <strong>{words.here}</strong> {words.look[screen]}
        </p>
        <button type="button" class="button" onClick={putAway}>
          {words.away}
        </button>
      </div>
    </nav>
  );
}

function isAsked(screen: ScreenName): screen is Asked {
  return asked.some((name) => name === screen);
}
