export function StudyScreen() {
  return <div class="page">Study</div>;
}
