import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { beforeAll, describe, expect, it } from 'vitest';
import { loadEditing, Workbench } from '../../src/ui';
import ButtonholePanel from '../../src/ui/ButtonholePanel.svelte';
import { readSample } from '../samples/sample';

function shown() {
  // 114 stitches, a multiple of 4 plus 2.
  const { design } = readSample('cardigan-front');
  const { buttonholes: _holes, ...pickup } = design.pickups[0]!;
  const bench = new Workbench({ ...design, pickups: [pickup] }, 'test');
  render(ButtonholePanel, { bench });
  return { bench, user: userEvent.setup() };
}
const fill = async (user: ReturnType<typeof userEvent.setup>, name: string, text: string) => {
  const field = screen.getByRole('textbox', { name });
  await user.clear(field);
  if (text === '') await user.tab();
  else await user.type(field, `${text}{Enter}`);
};
const holes = (bench: Workbench) => bench.design.pickups[0]!.buttonholes;

beforeAll(loadEditing);

describe('buttonholes', () => {
  it('are planned with their number, and gone without one', async () => {
    const { bench, user } = shown();
    expect(screen.queryByRole('textbox', { name: 'Stitches in each' })).toBeNull();
    await fill(user, 'Buttonholes', '6');
    expect(holes(bench)).toEqual({ holes: 6, stitches: 2, from: 3, to: 3 });
    expect(screen.getByText('19 or 20 stitches between the holes')).toBeVisible();
    expect(screen.getByText(/work 3, buttonhole over 2, .* \(114 in all\)/)).toBeVisible();
    await fill(user, 'Before the first', '4');
    await fill(user, 'After the last', '4');
    await fill(user, 'Stitches in each', '3');
    expect(holes(bench)).toEqual({ holes: 6, stitches: 3, from: 4, to: 4 });
    expect(bench.steps).toBe(4);
    await fill(user, 'Buttonholes', '');
    expect(holes(bench)).toBeUndefined();
  });

  it('get their ends, their number or the total worked out from a gap', async () => {
    const { bench, user } = shown();
    await fill(user, 'Buttonholes', '5');
    await user.click(screen.getByRole('radio', { name: 'both ends' }));
    await fill(user, 'Between two', '23');
    expect(holes(bench)).toEqual({ holes: 5, stitches: 2, from: 6, to: 6 });
    await user.click(screen.getByRole('radio', { name: 'how many' }));
    await fill(user, 'Between two', '10');
    expect(holes(bench)).toMatchObject({ holes: 9, from: 6, to: 6 });
    await user.click(screen.getByRole('radio', { name: 'the total' }));
    await fill(user, 'Between two', '12');
    expect(screen.getByText(/They fit a band of 126 stitches\./)).toBeVisible();
    await user.click(screen.getByRole('button', { name: 'Use 126 as the total' }));
    expect(bench.pickup!.target).toBe(126);
    expect(bench.pickup!.holes!.gaps).toEqual(Array.from({ length: 8 }, () => 12));
  });

  it('are moved into the purl columns when asked, and without a trace when not', async () => {
    const { bench, user } = shown();
    await fill(user, 'Buttonholes', '6');
    const rib = screen.getByRole('checkbox', { name: 'In the purl columns of the rib' });
    await user.click(rib);
    expect(holes(bench)).toEqual({ holes: 6, stitches: 2, from: 3, to: 3, rib: true });
    for (const { first } of bench.pickup!.holes!.holes) expect(first % 4).toBe(3);
    expect(screen.getByText('18 or 22 stitches between the holes')).toBeVisible();
    expect(screen.getByText(/each with its middle in a purl column of the rib: work 2, /)).toBeVisible();
    await fill(user, 'Buttonholes', '29');
    expect(screen.getByText(/there is no room to move them there/)).toBeVisible();
    await user.click(rib);
    expect(holes(bench)).toEqual({ holes: 29, stitches: 2, from: 3, to: 3 });
  });

  it('for which there is no room are said to have none', async () => {
    const { user } = shown();
    await fill(user, 'Buttonholes', '50');
    expect(screen.getByText(/no room for that on this band/)).toBeVisible();
  });
});
