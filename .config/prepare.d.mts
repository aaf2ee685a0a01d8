export const top: string;
export function run(command: string, args: string[], options?: object): void;
export function tool(name: string, args: string[], options?: object): void;
export function installPackages(): void;
export function requireChromium(): void;
