/** Takes a text to the clipboard; false where the browser does not let it. */
export type CopyText = (text: string) => Promise<boolean>;
