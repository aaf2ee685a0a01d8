export interface Served {
  readonly url: string;
  close(): Promise<void>;
}
export function serve(options: {
  folder: string;
  port: number;
  host?: string;
  isCompressed?: boolean;
}): Promise<Served>;
