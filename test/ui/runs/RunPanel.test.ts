import { render, screen, waitFor, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Design } from '../../../src/piece';
import { loadEditing, Workbench } from '../../../src/ui';
import RunPanel from '../../../src/ui/runs/RunPanel.svelte';
import { readSample, type SampleName } from '../../samples/sample';

function shown(sample: SampleName = 'pullover', fields: Partial<Design> = {}) {
  const bench = new Workbench({ ...readSample(sample).design, ...fields }, 'test');
  render(RunPanel, { bench });
  return { bench, user: userEvent.setup() };
}
const along = (bench: Workbench, index = 0) =>
  bench.design.pickups[index]!.along.map(({ edge, backwards }) => (backwards ? `-${edge}` : edge));
const items = () => within(screen.getByRole('list', { name: 'In working order' })).getAllByRole('listitem');
const titles = () => items().map((item) => within(item).getAllByRole('button')[0]!.textContent.trim());
const press = (user: ReturnType<typeof userEvent.setup>, name: string, within_ = screen.queryByRole('main')) =>
  user.click((within_ ? within(within_) : screen).getByRole('button', { name }));
const more = async (user: ReturnType<typeof userEvent.setup>, title: string) => {
  await press(user, `More: ${title}`);
  return within(screen.getByRole('group', { name: title }));
};

beforeAll(loadEditing);

const NECK = [
  'neck-straight-left',
  'neck-curve-left',
  'neck-center',
  'neck-curve-right',
  'neck-straight-right',
  'neck-slope-right',
  'neck-center',
  'neck-slope-left',
];

describe('the run of a pick-up', () => {
  it('is listed in working order, each stretch with its piece, its way and its size', () => {
    const { bench } = shown();
    expect(along(bench)).toHaveLength(8);
    expect(titles().slice(0, 2)).toEqual(['Front, upper left neck', 'Front, left neck curve']);
    expect(items()[1]).toHaveTextContent('down to the left, 9 sts × 14 rows, 6.5 cm');
  });

  it('is listed the other way round for a left-handed knitter, as it is worked', async () => {
    const { bench, user } = shown('pullover', { hand: 'left' });
    expect(titles().at(-2)).toBe('Front, left neck curve');
    expect(items().at(-2)).toHaveTextContent('up to the right');
    const before = along(bench);
    const tools = await more(user, titles()[1]!);
    await user.click(tools.getByRole('button', { name: 'Start here' }));
    expect(titles()[0]).toBe('Back, center neck');
    expect(along(bench)).toEqual([before.at(-1), ...before.slice(0, -1)]);
  });

  it('changes its order, its start and the way of one stretch, a step each', async () => {
    const { bench, user } = shown();
    const tools = await more(user, 'Front, left neck curve');
    await user.click(tools.getByRole('button', { name: 'Earlier' }));
    expect(titles().slice(0, 2)).toEqual(['Front, left neck curve', 'Front, upper left neck']);
    expect(bench.announcement).toMatch(/^Front, left neck curve is now 1 of 8\./);
    await waitFor(() => expect(tools.getByRole('button', { name: 'Later' })).toHaveFocus());
    await user.click(tools.getByRole('button', { name: 'Later' }));
    await user.click(tools.getByRole('button', { name: 'Start here' }));
    expect(titles()[0]).toBe('Front, left neck curve');
    await user.click(tools.getByRole('button', { name: 'The other way' }));
    expect(along(bench)[0]).toBe('-neck-curve-left');
    expect(bench.announcement).toMatch(/is now worked up to the right\./);
    expect(bench.steps).toBe(4);
    for (let i = 0; i < 4; i++) bench.undo();
    await waitFor(() => expect(titles()[0]).toBe('Front, upper left neck'));
  });

  it('starts elsewhere only in the round', async () => {
    const { user } = shown();
    await user.click(screen.getByRole('radio', { name: 'flat, in rows' }));
    const tools = await more(user, 'Front, left neck curve');
    expect(tools.queryByRole('button', { name: 'Start here' })).toBeNull();
  });

  it('goes along a part of an edge, by percent or by length, as the edge is worked', async () => {
    const { bench, user } = shown();
    const tools = await more(user, 'Front, center neck');
    const from = tools.getByLabelText('From');
    await user.clear(from);
    await user.type(from, '25{Enter}');
    expect(bench.design.pickups[0]!.along[2]!.part).toEqual([0.25, 1]);
    expect(items()[2]).toHaveTextContent('25% to 100% of 12 sts');
    await user.click(tools.getByRole('button', { name: 'The other way' }));
    expect(tools.getByLabelText('to')).toHaveValue('75');
    const to = tools.getByLabelText('to');
    await user.clear(to);
    await user.type(to, '50{Enter}');
    expect(bench.design.pickups[0]!.along[2]!.part).toEqual([0.5, 1]);
    await user.clear(from);
    await user.type(from, '60{Enter}');
    expect(screen.getByRole('alert')).toHaveTextContent('between 0% and 49.9%');
    expect(bench.steps).toBe(3);
  });

  it('loses a stretch, and keeps the last one', async () => {
    const { bench, user } = shown('heel-flap');
    const before = titles();
    expect(before).toHaveLength(1);
    const tools = await more(user, before[0]!);
    await user.click(tools.getByRole('button', { name: 'Take out' }));
    expect(screen.getByRole('alert')).toHaveTextContent('one edge at least');
    expect(bench.canUndo).toBe(false);
  });

  it('hands the focus on when a stretch is taken out', async () => {
    const { bench, user } = shown();
    const tools = await more(user, 'Front, center neck');
    await user.click(tools.getByRole('button', { name: 'Take out' }));
    expect(titles()).toHaveLength(7);
    expect(bench.announcement).toMatch(/^Front, center neck was taken out\./);
    await waitFor(() => expect(screen.getByRole('button', { name: 'More: Front, right neck curve' })).toHaveFocus());
  });

  it('lights up its edge, and is lit by it', async () => {
    const { bench, user } = shown();
    await user.hover(items()[2]!);
    expect(bench.lit).toEqual({ piece: 'front', edge: 'neck-center' });
    await user.unhover(items()[2]!);
    bench.select({ piece: 'front', edge: 'neck-curve-left' });
    await waitFor(() => expect(items()[1]).toHaveClass('lit'));
  });

  it('is turned round as a whole', async () => {
    const { bench, user } = shown();
    await press(user, 'Work it the other way round');
    expect(along(bench)).toEqual([...NECK].reverse().map((edge) => `-${edge}`));
    await press(user, 'Work it the other way round');
    expect(along(bench)).toEqual(NECK);
  });
});

describe('adding to a run', () => {
  it('takes an edge that is not in it yet, the next in its direction', async () => {
    const { bench, user } = shown('heel-flap');
    const chooser = screen.getByRole('combobox', { name: 'An edge' });
    const offered = within(chooser)
      .getAllByRole('option')
      .map((option) => option.textContent);
    expect(offered).not.toContain(titles()[0]);
    await user.selectOptions(chooser, offered[0]!);
    await press(user, 'Add');
    expect(titles()).toHaveLength(2);
    expect(titles()[1]).toBe(offered[0]);
    expect(bench.announcement).toContain('now runs along 2 edges');
  });

  it('takes all from here to there, less what is in it', async () => {
    const { bench, user } = shown('strip');
    const before = along(bench);
    const { outline } = bench.design.pieces[0]!;
    await user.selectOptions(screen.getByRole('combobox', { name: 'From here' }), '0');
    await user.selectOptions(screen.getByRole('combobox', { name: 'to there' }), String(outline.length - 1));
    await press(user, 'Add them');
    expect([...along(bench)].sort()).toEqual(outline.map(({ id }) => id).sort());
    expect(along(bench).slice(0, before.length)).toEqual(before);
    await press(user, 'Add them');
    expect(screen.getByRole('alert')).toHaveTextContent('in it already');
    expect(bench.steps).toBe(1);
  });

  it('runs all round a piece instead, in the round', async () => {
    const { bench, user } = shown('strip');
    await user.click(screen.getByRole('button', { name: /^All round .* instead$/ }));
    expect(along(bench)).toEqual(bench.design.pieces[0]!.outline.map(({ id }) => id));
    expect(bench.design.pickups[0]!.joined).toBe(true);
    expect(bench.steps).toBe(1);
  });
});

describe('the pick-ups of a design', () => {
  it('are made, named, duplicated and removed, a step each, and the new one is shown', async () => {
    const { bench, user } = shown('strip');
    await press(user, 'New pick-up');
    const section = screen.getByRole('region', { name: 'Another pick-up' });
    await user.click(within(section).getByRole('button', { name: /^All round/ }));
    expect(bench.design.pickups).toHaveLength(2);
    expect(bench.design.pickups[1]!.joined).toBe(true);
    await waitFor(() => expect(screen.getByLabelText('Name of the pick-up')).toHaveValue('Pick-up 2'));
    const name = screen.getByLabelText('Name of the pick-up');
    await user.clear(name);
    await user.type(name, 'Border{Enter}');
    await press(user, 'Duplicate');
    expect(bench.design.pickups.map((pickup) => pickup.name).slice(1)).toEqual(['Border', 'Border, copy']);
    expect(bench.pickupIndex).toBe(2);
    await press(user, 'Remove pick-up');
    expect(bench.design.pickups).toHaveLength(2);
    expect(bench.steps).toBe(4);
  });

  it('begin on a design without any: the ways in are there, and the first one is shown', async () => {
    const { bench, user } = shown('pullover', { pickups: [] });
    expect(screen.getByText(/A pick-up runs along one edge or several/)).toBeInTheDocument();
    await user.selectOptions(screen.getByRole('combobox', { name: 'From here' }), 'upper left neck');
    await user.selectOptions(screen.getByRole('combobox', { name: 'to there' }), 'upper right neck');
    await press(user, 'Pick up along them');
    expect(along(bench)).toEqual(NECK.slice(0, 5));
    await waitFor(() => expect(items()).toHaveLength(5));
    bench.undo();
    await waitFor(() => expect(screen.getByText(/A pick-up runs along/)).toBeInTheDocument());
  });

  it('keep their names, an empty one is refused', async () => {
    const { bench, user } = shown();
    const name = screen.getByLabelText('Name of the pick-up');
    await user.clear(name);
    await user.tab();
    expect(screen.getByRole('alert')).toHaveTextContent('needs a name');
    expect(name).toHaveValue('Neckband');
    expect(bench.canUndo).toBe(false);
  });
});
