/** How the app gets onto the home screen: offered by the browser, by hand from its share sheet or menu, or there already. */
export interface Installation {
  way(): 'installed' | 'offered' | 'share' | 'menu';
  /** Lets the browser ask the person, from a tap. True once it was installed; an offer can be taken once. */
  install(): Promise<boolean>;
}
