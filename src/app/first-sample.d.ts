/** The first sample as a whole design, read and checked when the page is built, so that it shows without the reader. */
declare module 'virtual:first-sample' {
  const design: unknown;
  export default design;
}
