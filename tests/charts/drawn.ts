import type { ComponentChildren, VNode } from 'preact';

/** An element as it was drawn: its tag, its attributes, and the text inside it. */
export interface Drawn {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, unknown>>;
  readonly text: string;
}

type Attributes = Record<string, unknown> & { children?: ComponentChildren };

/** Everything a drawing consists of, in order: charts are plain functions, so they are drawn by calling them. */
export function drawn(node: ComponentChildren): Drawn[] {
  if (Array.isArray(node)) return node.flatMap(drawn);
  if (!isElement(node)) return [];
  const { type, props } = node;
  if (typeof type === 'function') {
    return drawn((type as (attributes: Attributes) => ComponentChildren)(props as Attributes));
  }
  const { children, ...attributes } = props as Attributes;
  return [{ tag: String(type), attributes, text: textOf(children) }, ...drawn(children)];
}

function isElement(node: ComponentChildren): node is VNode {
  return typeof node === 'object' && node !== null && 'type' in node;
}

function textOf(node: ComponentChildren): string {
  if (Array.isArray(node)) return node.map(textOf).join('');
  if (typeof node === 'string' || typeof node === 'number') return String(node);
  return '';
}

/** The elements of one tag. */
export function tags(elements: readonly Drawn[], tag: string): Drawn[] {
  return elements.filter((element) => element.tag === tag);
}

/** A numeric attribute, by its name. */
export function at(element: Drawn | undefined, name: string): number {
  return Number(element?.attributes[name]);
}

interface Box {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Where each text lies, taken a little wider than any of the page's typefaces draws it. */
export function textBoxes(elements: readonly Drawn[], inherited: { size: number; anchor: string }): Box[] {
  return tags(elements, 'text').map((element) => {
    const size = at(element, 'font-size') || inherited.size;
    const anchor = String(element.attributes['text-anchor'] ?? inherited.anchor);
    const width = [...element.text].length * 0.6 * size;
    const x = at(element, 'x');
    const left = anchor === 'middle' ? x - width / 2 : anchor === 'end' ? x - width : x;
    const baseline = at(element, 'y');
    return {
      text: element.text,
      left,
      right: left + width,
      top: baseline - 0.78 * size,
      bottom: baseline + 0.22 * size,
    };
  });
}

/** Pairs of texts that lie on each other. */
export function collisions(boxes: readonly Box[]): string[] {
  return boxes.flatMap((one, place) =>
    boxes
      .slice(place + 1)
      .filter(
        (other) =>
          one.left < other.right &&
          other.left < one.right &&
          one.top < other.bottom &&
          other.top < one.bottom,
      )
      .map((other) => `${one.text} × ${other.text}`),
  );
}

/** Texts that reach beyond the drawing. */
export function clipped(boxes: readonly Box[], width: number, height: number): string[] {
  return boxes
    .filter(({ left, right, top, bottom }) => left < 0 || right > width || top < 0 || bottom > height)
    .map(({ text }) => text);
}
