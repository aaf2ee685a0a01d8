export function PaceScreen() {
  return <div class="page">Pace</div>;
}
