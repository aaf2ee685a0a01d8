import './study-page.css';
import type { FunctionComponent } from 'preact';
import { useApp } from '../app';
import { useLazy } from '../use-lazy';
import { StudyList } from './study-list';
import { PAPER_STUDY, PREPARE_OF, STANDARD_DATA, STANDARD_OF } from './study-places';

const places = {
  observe: async () => (await import('./observe-study')).ObserveStudy,
  prepare: async () => (await import('./prepare-study')).PrepareStudy,
  sheet: async () => (await import('./study-sheet')).StudySheet,
  data: async () => (await import('./standard/standard-data-page')).StandardDataPage,
  paper: async () => (await import('./paper/paper-page')).PaperPage,
  standard: async () => (await import('./standard/standard-page')).StandardPage,
};

/** How long should this take? The list, the preparation, the watch, the sheets: one at a time, each brought when it is asked for. */
export function StudyScreen() {
  const { bench, route } = useApp();
  const { id } = route.value;
  const { value: inHand } = bench.study;
  // While a study is timed, its watch is what one sees first on coming back; another sheet needs its name.
  const isNew = id === 'new' || id.startsWith(PREPARE_OF);
  if (inHand?.status === 'open' && (id === '' || isNew || id === inHand.id)) {
    return <Place key="observe" load={places.observe} given={{ study: inHand }} />;
  }
  if (id === '') return <StudyList />;
  if (isNew) return <Place key={id} load={places.prepare} given={{ wanted: id.slice(PREPARE_OF.length) }} />;
  if (id === PAPER_STUDY) return <Place key={id} load={places.paper} given={{}} />;
  if (id === STANDARD_DATA) return <Place key={id} load={places.data} given={{}} />;
  if (id.startsWith(STANDARD_OF)) {
    const partId = id.slice(STANDARD_OF.length);
    return <Place key={id} load={places.standard} given={{ partId }} />;
  }
  return <Place key={id} load={places.sheet} given={{ id }} />;
}

function Place<Given>({ load, given }: { load: () => Promise<FunctionComponent<Given>>; given: Given }) {
  const View = useLazy(true, load);
  return View && <View {...(given as Given & object)} />;
}
