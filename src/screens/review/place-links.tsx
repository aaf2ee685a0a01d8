import { reviewPlaces as words } from '../../i18n/en/review-places';
import { useApp } from '../app';
import { routeHash } from '../route';
import { type ReviewPlace, reviewPlaces } from './review-place';

/** The way from one question to another. */
export function PlaceLinks({ place }: { place: ReviewPlace }) {
  const { isDemo } = useApp();
  return (
    <nav class="review-places no-print" aria-label={words.title}>
      {reviewPlaces.map((each) => (
        <a
          key={each}
          href={routeHash({ screen: 'review', id: each === 'day' ? '' : each, isDemo })}
          aria-current={each === place ? 'page' : undefined}
        >
          {words.names[each]}
        </a>
      ))}
    </nav>
  );
}
