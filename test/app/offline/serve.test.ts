import { beforeEach, describe, expect, it } from 'vitest';
import { serve, type Build, type FetchEvent, type WorkerEvent, type WorkerScope } from '../../../src/app/offline/serve';

const HOME = 'https://knit.test/edgewise/';

class MemoryCaches {
  readonly all = new Map<string, Map<string, Response>>();

  open(name: string) {
    const entries = this.all.get(name) ?? new Map<string, Response>();
    this.all.set(name, entries);
    return Promise.resolve({
      match: (key: string) => Promise.resolve(entries.get(key)?.clone()),
      put: (key: string, answer: Response) => Promise.resolve(void entries.set(key, answer)),
    });
  }
  async match(key: string): Promise<Response | undefined> {
    for (const name of this.all.keys()) {
      const found = await (await this.open(name)).match(key);
      if (found) return found;
    }
    return undefined;
  }
  keys = () => Promise.resolve([...this.all.keys()]);
  delete = (name: string) => Promise.resolve(this.all.delete(name));
}

/** A worker in a pretended browser, with a host that has the files of `texts`. */
class Surroundings {
  readonly fetched: string[] = [];
  skipped = 0;
  claimed = 0;
  readonly #listeners = new Map<string, (event: never) => void>();

  constructor(
    readonly caches: MemoryCaches,
    readonly texts: Record<string, string>,
  ) {}

  run(build: Build): this {
    const scope = {
      caches: this.caches,
      registration: { scope: HOME },
      clients: { claim: () => Promise.resolve(void (this.claimed += 1)) },
      skipWaiting: () => Promise.resolve(void (this.skipped += 1)),
      fetch: ({ url }: Request) => {
        this.fetched.push(url.slice(HOME.length));
        const text = this.texts[url.slice(HOME.length)];
        return Promise.resolve(new Response(text, { status: text === undefined ? 404 : 200 }));
      },
      addEventListener: (kind: string, listener: (event: never) => void) => this.#listeners.set(kind, listener),
    };
    serve(scope as unknown as WorkerScope, build);
    return this;
  }

  async happen(kind: 'install' | 'activate'): Promise<void> {
    const works: Promise<unknown>[] = [];
    const event: Partial<WorkerEvent> = { waitUntil: (one) => void works.push(one) };
    this.#listeners.get(kind)!(event as never);
    await Promise.all(works);
  }

  say(data: unknown): void {
    this.#listeners.get('message')!({ data } as never);
  }

  /** The text of the answer, or null where the worker leaves the request to the browser. */
  async ask(url: string, init: RequestInit = {}): Promise<string | null> {
    const answers: Promise<Response>[] = [];
    const event: Partial<FetchEvent> = {
      request: new Request(url, init),
      respondWith: (one) => void answers.push(one),
    };
    this.#listeners.get('fetch')!(event as never);
    return (await answers[0])?.text() ?? null;
  }
}

const first: Build = { version: 'one', files: { 'index.html': 'h1', 'assets/a.js': 'a1', 'samples/b c.json': 'b1' } };
const second: Build = { version: 'two', files: { 'index.html': 'h2', 'assets/a.js': 'a1', 'assets/new.js': 'n1' } };
const texts = { '': 'page', 'assets/a.js': 'script', 'samples/b%20c.json': 'sample' };

let caches: MemoryCaches;
let worker: Surroundings;
beforeEach(async () => {
  caches = new MemoryCaches();
  worker = new Surroundings(caches, texts).run(first);
  await worker.happen('install');
  await worker.happen('activate');
});

describe('the service worker', () => {
  it('brings every file once, and then serves them without asking the host', async () => {
    expect(worker.fetched.sort()).toEqual(['', 'assets/a.js', 'samples/b%20c.json']);
    expect(worker.claimed).toBe(1);
    expect(await worker.ask(HOME)).toBe('page');
    expect(await worker.ask(`${HOME}index.html`)).toBe('page');
    expect(await worker.ask(`${HOME}?from=home#design=x`)).toBe('page');
    expect(await worker.ask(`${HOME}assets/a.js`)).toBe('script');
    expect(await worker.ask(`${HOME}samples/b%20c.json`)).toBe('sample');
    expect(worker.fetched).toHaveLength(3);
  });

  it.each([
    ['another path', `${HOME}assets/other.js`, {}],
    ['another page of the host', 'https://knit.test/', {}],
    ['another host', 'https://else.test/edgewise/assets/a.js', {}],
    ['a name that every object has', `${HOME}toString`, {}],
    ['anything but a reading', `${HOME}assets/a.js`, { method: 'POST' }],
  ])('leaves %s alone', async (_, url, init) => {
    expect(await worker.ask(url, init)).toBeNull();
  });

  it('asks the host for what the browser has thrown away', async () => {
    caches.all.get('edgewise /edgewise/ one')!.clear();
    expect(await worker.ask(`${HOME}assets/a.js`)).toBe('script');
    expect(worker.fetched).toHaveLength(4);
  });
});

describe('a newer version', () => {
  it('fetches only what is new, waits for a word, and clears away what is old and its own', async () => {
    await caches.open('edgewise /another/ one');
    await caches.open('of another page');
    const next = new Surroundings(caches, { '': 'new page', 'assets/new.js': 'new' }).run(second);
    await next.happen('install');
    expect(next.fetched.sort()).toEqual(['', 'assets/new.js']);
    expect(next.skipped).toBe(0);
    expect(await worker.ask(HOME)).toBe('page');
    next.say('something else');
    expect(next.skipped).toBe(0);
    next.say('take-over');
    expect(next.skipped).toBe(1);
    await next.happen('activate');
    expect([...caches.all.keys()].sort()).toEqual([
      'edgewise /another/ one',
      'edgewise /edgewise/ two',
      'of another page',
    ]);
    expect([await next.ask(HOME), await next.ask(`${HOME}assets/a.js`)]).toEqual(['new page', 'script']);
  });

  it('of which a file is missing does not come', async () => {
    const broken = new Surroundings(caches, { '': 'new page' }).run(second);
    await expect(broken.happen('install')).rejects.toThrow('assets/new.js could not be fetched: 404');
    expect(await worker.ask(HOME)).toBe('page');
  });
});
