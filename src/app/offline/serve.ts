/** What of a service worker's surroundings is used here: the DOM library of a page does not know them. */
export interface WorkerEvent extends Event {
  waitUntil(work: Promise<unknown>): void;
}

export interface FetchEvent extends Event {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

export interface WorkerScope {
  readonly caches: CacheStorage;
  readonly registration: { readonly scope: string };
  readonly clients: { claim(): Promise<void> };
  fetch(request: Request): Promise<Response>;
  skipWaiting(): Promise<void>;
  addEventListener(kind: 'install' | 'activate', listener: (event: WorkerEvent) => void): void;
  addEventListener(kind: 'fetch', listener: (event: FetchEvent) => void): void;
  addEventListener(kind: 'message', listener: (event: MessageEvent<unknown>) => void): void;
}

/** The files of one build, by their paths from the page's own address, each with a hash of what is in it. */
export interface Build {
  readonly version: string;
  readonly files: Readonly<Record<string, string>>;
}

/** What a page says to a version that waits: to take its place now. A type, for the worker shares no script with it. */
export type Word = 'take-over';

const START = 'index.html';

/**
 * Serves a whole build from the browser's cache, so that the page works without a connection. A version is served only
 * once all its files are there; it takes the place of the one before when no page of that is open any more, or when
 * the user asks for it. Nothing else is ever kept: no other address, and no file that is not of the build.
 */
export function serve(scope: WorkerScope, { version, files }: Build): void {
  const home = new URL(scope.registration.scope);
  // Caches belong to a whole host, on which other pages may stand too.
  const ours = `edgewise ${home.pathname} `;
  const name = ours + version;
  /** A file is kept under its hash, so that what stays the same need not be fetched again. */
  const keyOf = (path: string): string => new URL(`${path}?${files[path] ?? ''}`, home).href;

  const bring = async (cache: Cache, path: string): Promise<void> => {
    const known = await scope.caches.match(keyOf(path));
    // Asked for as it is when the page is opened: a host may send other addresses of it elsewhere.
    const address = new URL(path === START ? '' : path, home).href;
    const answer = known ?? (await scope.fetch(new Request(address, { cache: 'no-cache' })));
    if (!answer.ok) throw new TypeError(`${address} could not be fetched: ${answer.status}`);
    // A page may not be opened with an answer that came by way of another address.
    const plain = answer.redirected ? new Response(await answer.blob(), { headers: answer.headers }) : answer;
    await cache.put(keyOf(path), plain);
  };

  const install = async (): Promise<void> => {
    const cache = await scope.caches.open(name);
    await Promise.all(Object.keys(files).map((path) => bring(cache, path)));
  };

  const activate = async (): Promise<void> => {
    const old = (await scope.caches.keys()).filter((one) => one.startsWith(ours) && one !== name);
    await Promise.all(old.map((one) => scope.caches.delete(one)));
    await scope.clients.claim();
  };

  /** The path of a file of the build that a request asks for; null for all else. */
  const wanted = ({ method, url }: Request): string | null => {
    const { origin, pathname } = new URL(url);
    if (method !== 'GET' || origin !== home.origin || !pathname.startsWith(home.pathname)) return null;
    const path = decodeURI(pathname.slice(home.pathname.length)) || START;
    return Object.hasOwn(files, path) ? path : null;
  };

  const answer = async (path: string, request: Request): Promise<Response> => {
    const cache = await scope.caches.open(name);
    // A browser that is short of room may have thrown it away.
    return (await cache.match(keyOf(path))) ?? (await scope.fetch(request));
  };

  scope.addEventListener('install', (event) => event.waitUntil(install()));
  scope.addEventListener('activate', (event) => event.waitUntil(activate()));
  scope.addEventListener('message', ({ data }) => {
    if (data === ('take-over' satisfies Word)) void scope.skipWaiting();
  });
  scope.addEventListener('fetch', (event) => {
    const path = wanted(event.request);
    if (path !== null) event.respondWith(answer(path, event.request));
  });
}
