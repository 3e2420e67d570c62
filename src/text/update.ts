/** What is said when a newer version of the page stands ready. */
export const UPDATE = {
  ready: 'A new version is ready.',
  now: 'Reload now',
  later: 'Later',
  notYet: 'The page is not loaded anew, for your last changes are not kept: save the design to a file first.',
} as const;
