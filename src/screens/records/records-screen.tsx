export function RecordsScreen() {
  return <div class="page">Records</div>;
}
