export function ReviewScreen() {
  return <div class="page">Review</div>;
}
