import { describe, expect, it } from 'vitest';
import type { Jotter } from '../../src/application/ports/jotter';
import { untoldRelease } from '../../src/application/release-seen';

function jotter(): Jotter {
  const kept = new Map<string, string>();
  return {
    read: (name) => kept.get(name) ?? null,
    write: (name, text) => (text === null ? kept.delete(name) : kept.set(name, text)),
  };
}

describe('what a release changed', () => {
  it('is told to nobody on a tablet that runs its first', () => {
    const kept = jotter();
    expect(untoldRelease(kept, '1')).toBeNull();
    expect(untoldRelease(kept, '1')).toBeNull();
  });

  it('is told after an update, at every opening until somebody has answered, and then no more', () => {
    const kept = jotter();
    untoldRelease(kept, '1');
    expect(untoldRelease(kept, '2')).not.toBeNull();
    const told = untoldRelease(kept, '2');
    told!();
    expect(untoldRelease(kept, '2')).toBeNull();
    expect(untoldRelease(kept, '3')).not.toBeNull();
  });
});
