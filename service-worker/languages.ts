const LANGUAGES = 'pacewright-languages';

/** Where the words of each language other than English lie, by its name, in the order of the names. */
export type LanguageScripts = Readonly<Record<string, string>>;

/**
 * Fetches the words of one more language, and those of this release for every language that the tablet has spoken:
 * a tablet keeps what is spoken at it, which is one language or two, and not every one there is.
 *
 * @throws {TypeError} when one of them is not to be had; what was there stays
 */
export async function keepLanguages(scripts: LanguageScripts, spoken?: string): Promise<void> {
  const kept = await caches.open(LANGUAGES);
  const before = (await kept.keys()).map(({ url }) => nameOf(url));
  const wanted = Object.keys(scripts).filter((name) => name === spoken || before.includes(name));
  for (const name of wanted) {
    if (!(await kept.match(scripts[name]!, { ignoreVary: true }))) await kept.add(scripts[name]!);
  }
}

/** Those of other releases go when this one is in use. */
export async function dropOtherLanguages(scripts: LanguageScripts): Promise<void> {
  const kept = await caches.open(LANGUAGES);
  for (const request of await kept.keys()) {
    if (scripts[nameOf(request.url)] !== fileOf(request.url)) await kept.delete(request);
  }
}

/** Is it the script of a language of this release? */
export function isLanguage(scripts: LanguageScripts, { href }: URL): boolean {
  return scripts[nameOf(href)] === fileOf(href);
}

/** The words that are kept, else those from the network, which are kept from then on. */
export async function languageWords(request: Request): Promise<Response> {
  const kept = await caches.open(LANGUAGES);
  const words = await kept.match(request, { ignoreVary: true });
  if (words) return words;
  const fetched = await fetch(request);
  if (fetched.ok) await kept.put(request, fetched.clone());
  return fetched;
}

function fileOf(url: string): string {
  return `assets/${url.split('/').at(-1)}`;
}

/** `assets/language-de-Bxyz.js` → `de`. */
function nameOf(url: string): string {
  return /\/?language-([a-z]+)-[^/]*\.js$/.exec(url)?.[1] ?? '';
}
