/** Hands a file to the person: a download, or the share sheet where that is how files leave. */
export interface FileSaver {
  save(file: FileToSave): Promise<void>;
}

export type FileToSave = { readonly name: string; readonly type: string } & (
  | { readonly text: string }
  | { readonly bytes: Uint8Array<ArrayBuffer> }
);
