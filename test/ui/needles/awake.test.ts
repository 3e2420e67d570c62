import { describe, expect, it, vi } from 'vitest';
import { stayAwake } from '../../../src/ui/needles/awake';

function waker() {
  const release = vi.fn(() => Promise.resolve());
  const request = vi.fn(() => Promise.resolve({ release }));
  return { release, request, wakeLock: { request } };
}
const settled = () => new Promise((resolve) => setTimeout(resolve));

describe('the screen', () => {
  it('is held, again each time the page comes back, and let go of in the end', async () => {
    const { wakeLock, request, release } = waker();
    const tell = vi.fn();
    const end = stayAwake({ wakeLock }, document, tell);
    await settled();
    expect(tell).toHaveBeenLastCalledWith(true);
    document.dispatchEvent(new Event('visibilitychange'));
    await settled();
    expect(request).toHaveBeenCalledTimes(2);
    end();
    await settled();
    expect(release).toHaveBeenCalledTimes(1);
    document.dispatchEvent(new Event('visibilitychange'));
    expect(request).toHaveBeenCalledTimes(2);
  });

  it('that is got after the view was left is let go of', async () => {
    const { wakeLock, release } = waker();
    const end = stayAwake({ wakeLock }, document, () => {});
    end();
    await settled();
    expect(release).toHaveBeenCalledTimes(1);
  });

  it('is not asked for while the page is out of sight', async () => {
    const { wakeLock, request } = waker();
    const hidden = vi.spyOn(document, 'visibilityState', 'get').mockReturnValue('hidden');
    stayAwake({ wakeLock }, document, () => {})();
    await settled();
    expect(request).not.toHaveBeenCalled();
    hidden.mockRestore();
  });

  it('that is refused, or can’t be held, is told', async () => {
    const tell = vi.fn();
    const wakeLock = { request: () => Promise.reject(new DOMException('low battery', 'NotAllowedError')) };
    stayAwake({ wakeLock }, document, tell)();
    await settled();
    stayAwake({}, document, tell)();
    await settled();
    expect(tell.mock.calls).toEqual([[false], [false]]);
  });
});
