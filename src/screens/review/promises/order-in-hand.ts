import { type Signal, signal } from '@preact/signals';
import type { Bench } from '../../../application/bench';
import { localDay } from '../../../domain/day/local-day';
import type { SizeTyped } from './quoted-part';

/** An order as it is typed. */
export interface OrderTyped {
  /** A part's id, ANOTHER_SIZE, or empty for the first part. */
  readonly wanted: string;
  readonly quantity: string;
  readonly setUps: string;
  readonly freeFrom: string;
  readonly people: string;
  /** By which day it is asked how many can be made; empty while nobody asks. */
  readonly until: string;
  readonly size: SizeTyped;
}

const orders = new WeakMap<Bench, Signal<OrderTyped>>();

/** The order that somebody asks about, kept while the page lives: quotation and people needed are of the same one. */
export function orderInHand(bench: Bench): Signal<OrderTyped> {
  const known = orders.get(bench);
  if (known) return known;
  const made = signal<OrderTyped>({
    wanted: '',
    quantity: '100',
    setUps: '1',
    freeFrom: localDay(bench.clock.now()),
    people: '1',
    until: '',
    size: { code: '', time: '', half: '' },
  });
  orders.set(bench, made);
  return made;
}
