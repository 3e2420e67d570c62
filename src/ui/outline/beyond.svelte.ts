/** How sizes that are typed change an outline, as it was last chosen: kept as long as the page is open. */
export const beyond = $state({
  /** What lies beyond an edge moves along with its end. */
  along: true,
});
