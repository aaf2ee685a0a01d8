export function ShopScreen() {
  return <div class="page">Shop</div>;
}
