export function findChromium(): string | null;
export const browserArguments: string[];
