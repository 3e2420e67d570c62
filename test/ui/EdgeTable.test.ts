import { render, screen, waitFor, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { Workbench } from '../../src/ui';
import EdgeTable from '../../src/ui/EdgeTable.svelte';
import { readSample } from '../samples/sample';

function shown(sample: 'pullover' | 'strip' = 'pullover') {
  const bench = new Workbench(readSample(sample).design, 'test');
  render(EdgeTable, { bench });
  return { bench, user: userEvent.setup() };
}
const rowOf = (edge: string) => document.querySelector<HTMLElement>(`tr[data-piece="front"][data-edge="${edge}"]`)!;
const countOf = (name: string) => screen.getByRole('textbox', { name: `Count: Front, ${name}` });

describe('the table of edges', () => {
  it('has a row for every edge in working order, and the total', () => {
    shown();
    const rows = screen.getAllByRole('row').filter((row) => row.dataset.edge !== undefined);
    expect(rows.map((row) => row.dataset.edge).slice(0, 3)).toEqual([
      'neck-straight-left',
      'neck-curve-left',
      'neck-center',
    ]);
    expect(rows).toHaveLength(8);
    const cells = within(rowOf('neck-curve-left')).getAllByRole('cell');
    expect(cells[0]).toHaveTextContent('9');
    expect(cells[1]).toHaveTextContent('14');
    expect(rowOf('neck-curve-left')).toHaveTextContent(/curved.*19.*14\.4.*2\.8% short/s);
    expect(screen.getByRole('row', { name: /^In all/ })).toHaveTextContent('84');
  });

  it('takes a count on Enter, and gives the edge its own rate back when it is cleared', async () => {
    const { bench, user } = shown();
    await user.clear(countOf('left neck curve'));
    await user.type(countOf('left neck curve'), '18{Enter}');
    expect(bench.pickup!.edges[1]!.rate).toEqual({ kind: 'count', count: 18 });
    expect(bench.steps).toBe(1);
    await user.clear(countOf('left neck curve'));
    await user.tab();
    expect(bench.pickup!.edges[1]!.rate).toEqual({ kind: 'length' });
    expect(bench.steps).toBe(2);
  });

  it('keeps the old count for nonsense, says why, and makes no step', async () => {
    const { bench, user } = shown();
    await user.clear(countOf('left neck curve'));
    await user.type(countOf('left neck curve'), 'many{Enter}');
    expect(countOf('left neck curve')).toHaveValue('14');
    expect(screen.getByRole('alert')).toHaveTextContent('“many” is not a number, so 14 stays.');
    expect(countOf('left neck curve')).toHaveAccessibleDescription(/not a number/);
    expect(bench.canUndo).toBe(false);
    // Once something else stands there, the sentence is no longer true.
    bench.change({ kind: 'pickup', pickup: 'neckband', fields: { target: 88 } });
    await waitFor(() => expect(countOf('left neck curve')).not.toHaveValue('14'));
    expect(screen.queryByRole('alert')).toBeNull();
  });

  it('puts a half-typed count back on Escape', async () => {
    const { bench, user } = shown();
    await user.type(countOf('left neck curve'), '9{Escape}');
    expect(countOf('left neck curve')).toHaveValue('14');
    expect(bench.canUndo).toBe(false);
  });

  it('takes a length by the tape, with a comma or a unit', async () => {
    const { bench, user } = shown();
    const length = screen.getByRole('textbox', { name: /^Length, cm: Front, left neck curve/ });
    await user.clear(length);
    await user.type(length, '7,2{Enter}');
    expect(bench.pickup!.edges[1]!.lengthMm).toBe(72);
    expect(length).toHaveValue('7.2');
  });

  it('lights an edge under the pointer, and chooses it with the focus', async () => {
    const { bench, user } = shown();
    await user.hover(rowOf('neck-center'));
    expect(bench.lit).toEqual({ piece: 'front', edge: 'neck-center' });
    expect(rowOf('neck-center')).toHaveClass('lit');
    await user.unhover(rowOf('neck-center'));
    expect(bench.lit).toBeNull();
    await user.tab();
    expect(bench.selected).toEqual({ piece: 'front', edge: 'neck-straight-left' });
  });

  it('leaves lengths out on a piece without a gauge', () => {
    shown('strip');
    expect(screen.queryByRole('textbox', { name: /^Length/ })).toBeNull();
  });
});

describe('more about the edge that is chosen', () => {
  it('shows its sum, and takes a plain rate', async () => {
    const { bench, user } = shown();
    await user.click(screen.getByRole('button', { name: 'left neck curve' }));
    const rate = await screen.findByRole('button', { name: /^4 of 5/ });
    expect(screen.getByText(/stitches to the cm = 14\.4, so 14/)).toBeInTheDocument();
    await user.click(rate);
    expect(bench.pickup!.edges[1]!.rate).toEqual({ kind: 'ratio', pick: 4, of: 5 });
    await waitFor(() =>
      expect(screen.getByRole('button', { name: /^4 of 5/ })).toHaveAttribute('aria-pressed', 'true'),
    );
  });

  it('takes a rate of one’s own once both its numbers are there', async () => {
    const { bench, user } = shown();
    await user.click(screen.getByRole('button', { name: 'left neck curve' }));
    await user.type(await screen.findByLabelText('pick up'), '5{Enter}');
    expect(bench.canUndo).toBe(false);
    await user.type(screen.getByLabelText('of every'), '7{Enter}');
    expect(bench.pickup!.edges[1]!.rate).toEqual({ kind: 'ratio', pick: 5, of: 7 });
    expect(bench.steps).toBe(1);
  });

  it('offers the same to the mirror image of an edge that differs from it', async () => {
    const { bench, user } = shown();
    bench.change({
      kind: 'rate',
      pickup: 'neckband',
      edge: { piece: 'front', edge: 'neck-curve-left' },
      rate: { kind: 'count', count: 18 },
    });
    await user.click(screen.getByRole('button', { name: 'left neck curve' }));
    await user.click(await screen.findByRole('button', { name: 'The same on right neck curve' }));
    expect(bench.pickup!.edges[3]!.count).toBe(18);
    await waitFor(() => expect(screen.queryByRole('button', { name: /^The same/ })).toBeNull());
  });
});
