import { describe, expect, it, vi } from 'vitest';
import { Claims } from '../../src/storage';
import { FakeLocks } from './locks';

/** Lets everything that is under way come to rest. */
const rest = () => new Promise((resolve) => setTimeout(resolve, 5));

function tabOf(locks: FakeLocks | null) {
  const onmine = vi.fn();
  const onlost = vi.fn();
  return { claims: new Claims(locks, { onmine, onlost }), onmine, onlost };
}

describe('a work', () => {
  it('is of the tab that claims it first; the next one waits until it is let go of', async () => {
    const locks = new FakeLocks();
    const [first, second] = [tabOf(locks), tabOf(locks)];
    expect(await first.claims.claim('a')).toBe(true);
    expect(await second.claims.claim('a')).toBe(false);
    await rest();
    expect(second.onmine).not.toHaveBeenCalled();
    first.claims.release();
    await rest();
    expect(second.onmine).toHaveBeenCalledExactlyOnceWith('a');
    expect(first.onlost).not.toHaveBeenCalled();
  });

  it('is let go of when the tab claims another one', async () => {
    const locks = new FakeLocks();
    const [first, second] = [tabOf(locks), tabOf(locks)];
    await first.claims.claim('a');
    expect(await first.claims.claim('b')).toBe(true);
    await rest();
    expect(await second.claims.claim('a')).toBe(true);
    expect(await second.claims.held()).toEqual(new Set(['a', 'b']));
  });

  it('is still that of the tab which left it and comes back at once', async () => {
    const { claims, onmine } = tabOf(new FakeLocks());
    await claims.claim('a');
    expect(await claims.claim('b')).toBe(true);
    expect(await claims.claim('a')).toBe(true);
    // Of three at once the last one counts.
    expect(await Promise.all([claims.claim('b'), claims.claim('a'), claims.claim('b')])).toEqual([false, false, true]);
    await rest();
    expect(onmine).not.toHaveBeenCalled();
    expect(await claims.held()).toEqual(new Set(['b']));
  });

  it('is not waited for any more by a tab that went on to another one', async () => {
    const locks = new FakeLocks();
    const [first, second, third] = [tabOf(locks), tabOf(locks), tabOf(locks)];
    await first.claims.claim('a');
    await second.claims.claim('a');
    await third.claims.claim('a');
    await second.claims.claim('b');
    first.claims.release();
    await rest();
    expect(second.onmine).not.toHaveBeenCalled();
    expect(third.onmine).toHaveBeenCalledExactlyOnceWith('a');
  });

  it('that is taken over is lost to the tab that had it, which can wait for it', async () => {
    const locks = new FakeLocks();
    const [first, second] = [tabOf(locks), tabOf(locks)];
    await first.claims.claim('a');
    await second.claims.claim('a');
    await second.claims.take('a');
    await rest();
    expect(first.onlost).toHaveBeenCalledExactlyOnceWith('a');
    expect(await first.claims.claim('a')).toBe(false);
    second.claims.release();
    await rest();
    expect(first.onmine).toHaveBeenCalledExactlyOnceWith('a');
  });
});

it('without locks every claim is granted', async () => {
  const { claims } = tabOf(null);
  expect(await claims.claim('a')).toBe(true);
  await claims.take('a');
  expect(await claims.held()).toEqual(new Set());
});
