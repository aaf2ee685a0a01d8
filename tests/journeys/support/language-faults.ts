import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { top } from '../../../.config/prepare.mjs';

/** What people of the invented shop wrote themselves is the same in every language. Longest first. */
const written = readdirSync(path.join(top, 'src/demo'))
  .map((file) => readFileSync(path.join(top, 'src/demo', file), 'utf8'))
  .flatMap((text) => text.match(/'[^'\n]*'|`[^`]*`/g) ?? [])
  .flatMap((text) => text.slice(1, -1).split(/\$\{[^}]*\}/))
  // A single small word is a key of the code, not a name.
  .filter((text) => text.length > 2 && /[ A-Z\d]/.test(text) && !text.includes('/'))
  .sort((a, b) => b.length - a.length);

/** Names that are no words: of the app, of tablets, files and standards, and of the languages. */
const names =
  /Pacewright|tablet-\w+|\.csv|\.xlsx|\bPIN\b|SHA-256|\bASTM\b|English|Deutsch|Español|hinges|perimeter/g;

function isEnglish(text: string): boolean {
  // A long name ends in dots where there is no room.
  const [, begun = ''] = /^(.{6,})…$/.exec(text.trim()) ?? [];
  if (begun !== '' && written.some((each) => each.startsWith(begun))) return false;
  const rest = written.reduce((left, each) => left.replaceAll(each, ''), text.replace(names, ''));
  return /[A-Za-z]{3,}/.test(rest);
}

/** What a page shows or says that is left in English, though a language is spoken that is written otherwise. */
export async function leftInEnglish(page: Page): Promise<string[]> {
  const texts = await page.evaluate(() => {
    const said: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      if (!node.parentElement!.closest('script, style, noscript, textarea')) said.push(node.textContent!);
    }
    for (const each of document.querySelectorAll('[aria-label], [title], [placeholder]')) {
      said.push(...['aria-label', 'title', 'placeholder'].map((name) => each.getAttribute(name) ?? ''));
    }
    return [...new Set(said)];
  });
  return texts.filter(isEnglish);
}

/** What does not fit: words that are cut, and a page that can be moved sideways. */
export function cut(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found = [];
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth > clientWidth) found.push('the page moves sideways');
    for (const each of document.querySelectorAll(
      'button, label, a, legend, h1, h2, h3, th, td, p, summary',
    )) {
      const { overflowX, textOverflow } = getComputedStyle(each);
      // Said to end in dots where there is no room, and readable elsewhere.
      if (
        each.matches('.visually-hidden') ||
        textOverflow === 'ellipsis' ||
        overflowX === 'auto' ||
        overflowX === 'scroll'
      )
        continue;
      if (each.clientWidth > 0 && each.scrollWidth > each.clientWidth + 1) {
        found.push(
          `${each.tagName.toLowerCase()}.${each.className}: ${each.textContent!.trim().slice(0, 60)}`,
        );
      }
    }
    // Text that runs out of what holds it, over the edge of the screen or under what stands beside it.
    const main = document.querySelector('main')?.getBoundingClientRect();
    const range = document.createRange();
    const walker = document.createTreeWalker(
      document.querySelector('main') ?? document.body,
      NodeFilter.SHOW_TEXT,
    );
    for (let node = walker.nextNode(); node && main; node = walker.nextNode()) {
      const own = node.parentElement!;
      if (node.textContent!.trim() === '' || own.closest('.visually-hidden, svg, select, .sheet, [style]'))
        continue;
      range.selectNodeContents(node);
      const { left, right, width } = range.getBoundingClientRect();
      if (width > 0 && (left < main.left - 1 || right > main.right + 1)) {
        found.push(`runs out: ${node.textContent!.trim().slice(0, 60)}`);
      }
    }
    return found;
  });
}
