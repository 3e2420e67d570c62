/** Gives what was made for a holder from these values, compared one by one, or makes it. */
type Shelf<Holder extends object, Made> = (holder: Holder, from: readonly unknown[], make: () => Made) => Made;

/**
 * Keeps what was made for an object, by what else it was made from: the latest few of each object, as long as the
 * object itself is in use. What changes in a drag is one edge; all that was made of the others is found here.
 *
 * @param most how many are kept for each object
 */
export function shelf<Holder extends object, Made>(most: number): Shelf<Holder, Made> {
  const shelves = new WeakMap<Holder, { readonly from: readonly unknown[]; readonly made: Made }[]>();
  return (holder, from, make) => {
    let row = shelves.get(holder);
    if (!row) shelves.set(holder, (row = []));
    const known = row.find((one) => sameItems(one.from, from));
    if (known) return known.made;
    const made = make();
    row.unshift({ from, made });
    row.length = Math.min(row.length, most);
    return made;
  };
}

function sameItems<T>(a: readonly T[], b: readonly T[]): boolean {
  return a.length === b.length && a.every((item, i) => Object.is(item, b[i]));
}
