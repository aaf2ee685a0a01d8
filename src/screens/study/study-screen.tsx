import './study-page.css';
import { useApp } from '../app';
import { ObserveStudy } from './observe-study';
import { PrepareStudy } from './prepare-study';
import { StudyList } from './study-list';
import { StudySheet } from './study-sheet';

/** How long should this take? The list, the preparation, the watch, the sheets: one at a time. */
export function StudyScreen() {
  const { bench, route } = useApp();
  const { id } = route.value;
  const { value: inHand } = bench.study;
  // While a study is timed, its watch is what one sees first on coming back; another sheet needs its name.
  if (inHand?.status === 'open' && (id === '' || id === 'new' || id === inHand.id)) {
    return <ObserveStudy study={inHand} />;
  }
  if (id === '') return <StudyList />;
  if (id === 'new') return <PrepareStudy />;
  return <StudySheet key={id} id={id} />;
}
