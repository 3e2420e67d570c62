import { quietly } from './quietly';

// These are conveniences: where the browser refuses its small store, the page does without.

/** Which work this tab has on its bench. */
const HERE = 'edgewise.here';
/** Which work was last on a bench in any tab. */
const LAST = 'edgewise.last';

/** Whether this browser has kept work of an earlier visit; false as well where it will not say. */
export function isKnown(): boolean {
  return quietly(() => Object.keys(localStorage).some((key) => /^edgewise\.(last|work\.)/.test(key)), false);
}

/** Says what this tab works on, for the next visit. */
export function workOn(id: string): void {
  quietly(() => {
    sessionStorage.setItem(HERE, id);
    localStorage.setItem(LAST, id);
  }, undefined);
}

/** The works to go on with, the likeliest first: this tab's own, then the last one of all. */
export function workedOn(): string[] {
  return quietly(() => [sessionStorage.getItem(HERE), localStorage.getItem(LAST)].filter((id) => id !== null), []);
}
