import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { beforeAll, describe, expect, it } from 'vitest';
import { loadEditing, Workbench } from '../../src/ui';
import ChangedPanel from '../../src/ui/ChangedPanel.svelte';
import { readSample, type SampleName } from '../samples/sample';

function shown(sample: SampleName = 'cardigan-front', fields: object = {}) {
  const { design } = readSample(sample);
  const bench = new Workbench({ ...design, pickups: [{ ...design.pickups[0]!, ...fields }] }, 'test');
  render(ChangedPanel, { bench });
  return { bench, user: userEvent.setup() };
}
const amount = async (user: ReturnType<typeof userEvent.setup>, text: string) => {
  const field = screen.getByRole('textbox', { name: 'By how much' });
  await user.clear(field);
  await user.type(field, `${text}{Enter}`);
};
const corner = (bench: Workbench, id: string) => bench.design.pieces[0]!.outline.find((edge) => edge.id === id)!.from;

beforeAll(loadEditing);

describe('a piece made longer', () => {
  const stated = [{ piece: 'right-front', edge: 'front-edge', count: 98 }];

  it('shows the counts before and after, and what else changes', async () => {
    const { bench, user } = shown('cardigan-front', { stated, buttonholes: { holes: 6, stitches: 2, from: 4, to: 4 } });
    expect(screen.getByText(/Say by how much/)).toBeInTheDocument();
    await amount(user, '14');
    expect(
      screen.getByText(/^14 rows more, 4\.1 cm\. With it change: Right front, side, 114 to 128 rows\.$/),
    ).toBeVisible();
    const rows = within(screen.getByRole('table', { name: 'Buttonhole band' })).getAllByRole('row');
    expect(rows.map((row) => [...row.children].map((cell) => cell.textContent.trim()).join(' | '))).toEqual([
      'Count | Before | After',
      'Right front, front edge | 114 on 162 rows (114.4 wanted) | 126 on 176 rows (124.2 wanted)',
      'Right front, front edge, by the pattern | 98 | 106.5, so 106 or 107',
      'In all | 114 | 126',
      'Sections | 6 of 19 | 6 of 21',
      'Buttonholes | 6, 18 or 19 stitches between the holes | 6, 21 or 22 stitches between the holes',
    ]);
    expect(bench.steps).toBe(0);
  });

  it('is made so as one step', async () => {
    const { bench, user } = shown('cardigan-front', { stated });
    const before = corner(bench, 'shoulder');
    await amount(user, '14');
    await user.click(screen.getByRole('button', { name: 'Make this change' }));
    expect(corner(bench, 'shoulder')).toEqual([before[0], before[1] + 14]);
    expect(bench.steps).toBe(1);
    expect(screen.queryByRole('table')).toBeNull();
    bench.undo();
    expect(corner(bench, 'shoulder')).toEqual(before);
  });

  it('by a length says how many rows that is', async () => {
    const { user } = shown();
    await user.selectOptions(screen.getByRole('combobox', { name: 'Rows or length' }), 'cm');
    await amount(user, '5');
    expect(screen.getByText(/^5\.0 cm is 17 rows, so|^17 rows more, 5\.0 cm/)).toBeVisible();
  });

  it('or shorter by more than there is gets the reason', async () => {
    const { user } = shown();
    await user.selectOptions(screen.getByRole('combobox', { name: 'Longer or shorter' }), 'shorter by');
    await amount(user, '150');
    expect(screen.getByRole('alert')).toHaveTextContent(/At most 113 rows can be taken out/);
    expect(screen.queryByRole('button', { name: 'Make this change' })).toBeNull();
  });

  it('without a gauge goes by rows alone', async () => {
    const { user } = shown('strip');
    const measures = within(screen.getByRole('combobox', { name: 'Rows or length' })).getAllByRole('option');
    expect(measures.map((one) => one.textContent)).toEqual(['rows']);
    await amount(user, '2');
    expect(screen.getByText(/^2 rows more\./)).toBeVisible();
  });
});
