/** Hands a file to the person: a download, or the share sheet where that is how files leave. */
export interface FileSaver {
  save(file: { name: string; type: string; text: string }): Promise<void>;
}
