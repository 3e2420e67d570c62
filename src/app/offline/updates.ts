import type { Word } from './serve';

/** At most this often the page asks for a newer version of itself, ms. */
const OFTEN = 60 * 60 * 1000;

/** What of the browser is used: its container of service workers, the page, and how the page is loaded anew. */
export interface Surroundings {
  readonly container: ServiceWorkerContainer;
  readonly page: Document;
  readonly reload: () => void;
  readonly now: () => number;
}

/** A newer version of the page that stands ready. It waits until it is asked for, or until no page is open. */
export interface Update {
  /** Puts the newer version in the place of this one and loads the page anew. */
  take(): void;
}

/**
 * Lets the page be kept for times without a connection, and tells when a newer version of it stands ready. Where the
 * browser refuses, the page works as before, with a connection.
 *
 * @param ready is told each time there is one
 */
export async function keepOffline(around: Surroundings, ready: (update: Update) => void): Promise<void> {
  const { container, page, now } = around;
  const registration = await registered(container);
  if (!registration) return;
  let asked = now();
  let taken = false;
  const offer = () => {
    // The first version of all takes nobody's place.
    const { waiting } = registration;
    if (!waiting || !container.controller) return;
    ready({
      take: () => {
        taken = true;
        (registration.waiting ?? waiting).postMessage('take-over' satisfies Word);
      },
    });
  };
  const watch = (worker: ServiceWorker | null) =>
    worker?.addEventListener('statechange', () => {
      if (worker.state === 'installed') offer();
    });
  let known = container.controller !== null;
  container.addEventListener('controllerchange', () => {
    if (taken) around.reload();
    // Another tab took the newer version: this one goes on with the old one until its user says so.
    else if (known) ready({ take: around.reload });
    known = true;
  });
  registration.addEventListener('updatefound', () => watch(registration.installing));
  watch(registration.installing);
  offer();
  page.addEventListener('visibilitychange', () => {
    if (page.visibilityState !== 'visible' || now() - asked < OFTEN) return;
    asked = now();
    void quietly(registration.update());
  });
}

/** Null where the browser has it switched off, or a guard of the user's privacy stands before it. */
async function registered(container: ServiceWorkerContainer): Promise<ServiceWorkerRegistration | null> {
  return (await quietly(container.register('./sw.js', { scope: './', updateViaCache: 'none' }))) ?? null;
}

/** Undefined where there is no connection or the browser refuses. */
async function quietly<T>(work: Promise<T>): Promise<T | undefined> {
  try {
    return await work;
  } catch (error) {
    if (error instanceof TypeError || error instanceof DOMException) return undefined;
    throw error;
  }
}
