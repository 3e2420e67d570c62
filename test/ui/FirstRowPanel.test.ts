import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { beforeAll, describe, expect, it } from 'vitest';
import { firstRowGist, firstRowText } from '../../src/text';
import { loadEditing, Workbench } from '../../src/ui';
import FirstRowPanel from '../../src/ui/FirstRowPanel.svelte';
import { countFirstRow } from '../text/firstRowReader';
import { readSample } from '../samples/sample';

/** The sample's neckband with more stitches than its edges were given: 84 picked up, 88 wanted. */
function shown(target: number | null = 88) {
  const { design } = readSample('pullover');
  const bench = new Workbench(design, 'test');
  const counts = bench.pickup!.edges.map(({ stretch: { piece, edge }, count }) => ({
    piece,
    edge,
    rate: { kind: 'count' as const, count },
  }));
  const [neckband, ...others] = design.pickups;
  const fixed = { ...design, pickups: [{ ...neckband!, rates: counts, target }, ...others] };
  const made = new Workbench(fixed, 'test');
  render(FirstRowPanel, { bench: made });
  return { bench: made, user: userEvent.setup() };
}
const wish = (bench: Workbench) => bench.design.pickups[0]!.firstRow;

beforeAll(loadEditing);

describe('the first row', () => {
  it('stands there with its proof and what its words mean', () => {
    const { bench } = shown();
    const row = firstRowText(bench.pickup!.firstRow);
    expect(screen.getByText(row)).toBeVisible();
    expect(countFirstRow(row)).toEqual({ uses: 84, leaves: 88 });
    expect(screen.getByText('Uses 84 stitches, leaves 88.')).toBeVisible();
    expect(screen.getByText(/^m1: make one/)).toBeVisible();
    expect(firstRowGist(bench.pickup!)).toBe('4 increases');
  });

  it('is kept clear of markers, in the rib, and put right section by section, a step each; undo takes each back', async () => {
    const { bench, user } = shown();
    await user.click(screen.getByRole('checkbox', { name: 'Keep clear of markers and seams' }));
    expect(wish(bench)).toEqual({ by: 'whole', clear: true, rib: false });
    await user.click(screen.getByRole('checkbox', { name: 'Keep the rib' }));
    expect(wish(bench)).toEqual({ by: 'whole', clear: true, rib: true });
    expect(screen.getByText(/\brib \d+, m1p\b/)).toBeVisible();
    await user.click(screen.getByRole('radio', { name: 'section by section' }));
    const [first] = bench.pickup!.firstRow.parts!;
    expect(screen.getByRole('row', { name: `1 14 ${firstRowText(first!)} 15` })).toBeVisible();
    expect(screen.getAllByRole('row', { name: /^\d 14 no change 14$/ })).toHaveLength(2);
    expect(screen.getByText('Uses 84 stitches, leaves 88.')).toBeVisible();
    expect(bench.steps).toBe(3);
    bench.undo();
    bench.undo();
    bench.undo();
    expect(wish(bench)).toBeUndefined();
  });

  it('says beside the choice what it cannot keep', async () => {
    const { bench, user } = shown(140);
    await user.click(screen.getByRole('checkbox', { name: 'Keep the rib' }));
    expect(bench.pickup!.notes).toContainEqual({ kind: 'row-not-in-rib', why: 'no-room' });
    expect(screen.getByText(/^The first round changes too many stitches to keep the rib\./)).toBeVisible();
  });

  it('leaves no trace in the design once nothing is asked of it', async () => {
    const { bench, user } = shown();
    const clear = screen.getByRole('checkbox', { name: 'Keep clear of markers and seams' });
    await user.click(clear);
    await user.click(clear);
    expect(wish(bench)).toBeUndefined();
  });

  it('says where there is nothing to put right', () => {
    const { bench } = shown(null);
    expect(firstRowGist(bench.pickup!)).toBe('no change');
    expect(screen.getByText(/^The count is right/)).toBeVisible();
  });
});
