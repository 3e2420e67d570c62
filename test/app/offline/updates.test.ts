import { beforeEach, describe, expect, it, vi } from 'vitest';
import { keepOffline, type Update } from '../../../src/app/offline/updates';

class Worker extends EventTarget {
  state = 'installing';
  readonly heard: unknown[] = [];
  postMessage(word: unknown): void {
    this.heard.push(word);
  }
  become(state: string): void {
    this.state = state;
    this.dispatchEvent(new Event('statechange'));
  }
}

class Registration extends EventTarget {
  installing: Worker | null = null;
  waiting: Worker | null = null;
  update = vi.fn(() => Promise.resolve());

  /** A version arrives and is ready. */
  bring(): Worker {
    const worker = new Worker();
    this.installing = worker;
    this.dispatchEvent(new Event('updatefound'));
    this.waiting = worker;
    worker.become('installed');
    return worker;
  }
}

class Container extends EventTarget {
  controller: object | null = {};
  readonly registration = new Registration();
  register = vi.fn((): Promise<unknown> => Promise.resolve(this.registration));
  change(): void {
    this.controller = {};
    this.dispatchEvent(new Event('controllerchange'));
  }
}

let container: Container;
let reload: ReturnType<typeof vi.fn<() => void>>;
let ready: Update[];
let time: number;
const start = () =>
  keepOffline(
    { container: container as unknown as ServiceWorkerContainer, page: document, reload, now: () => time },
    (update) => ready.push(update),
  );
beforeEach(() => {
  container = new Container();
  reload = vi.fn();
  ready = [];
  time = 0;
});

describe('a page that is kept', () => {
  it('registers its worker beside itself; its first version is no news', async () => {
    container.controller = null;
    await start();
    expect(container.register).toHaveBeenCalledWith('./sw.js', { scope: './', updateViaCache: 'none' });
    container.registration.bring();
    container.change();
    expect([ready.length, reload.mock.calls.length]).toEqual([0, 0]);
  });

  it('tells of a newer version, and takes it only on a word', async () => {
    await start();
    const worker = container.registration.bring();
    expect(ready).toHaveLength(1);
    expect(worker.heard).toEqual([]);
    ready[0]!.take();
    expect(worker.heard).toEqual(['take-over']);
    expect(reload).not.toHaveBeenCalled();
    container.change();
    expect(reload).toHaveBeenCalledTimes(1);
  });

  it('tells of one that stood ready before the page came', async () => {
    container.registration.waiting = new Worker();
    await start();
    expect(ready).toHaveLength(1);
  });

  it('is not loaded anew because another tab was: it is told', async () => {
    await start();
    container.change();
    expect(reload).not.toHaveBeenCalled();
    ready[0]!.take();
    expect(reload).toHaveBeenCalledTimes(1);
  });

  it('asks for a newer version when it comes back into sight, once an hour', async () => {
    await start();
    const come = () => document.dispatchEvent(new Event('visibilitychange'));
    const { update } = container.registration;
    come();
    expect(update).not.toHaveBeenCalled();
    time = 61 * 60 * 1000;
    update.mockRejectedValueOnce(new TypeError('no connection'));
    come();
    come();
    expect(update).toHaveBeenCalledTimes(1);
  });

  it.each([
    ['switched off', () => Promise.reject(new DOMException('off', 'SecurityError'))],
    ['without a connection', () => Promise.reject(new TypeError('failed'))],
    ['guarded', () => Promise.resolve(undefined)],
  ])('works as before where keeping is %s', async (_, register) => {
    container.register.mockImplementation(register);
    await start();
    container.change();
    expect([ready.length, reload.mock.calls.length]).toEqual([0, 0]);
  });
});
