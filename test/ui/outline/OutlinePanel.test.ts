import { render, screen, waitFor, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { writtenSteps } from '../../../src/text';
import { loadEditing, Workbench } from '../../../src/ui';
import { beyond } from '../../../src/ui/outline/beyond.svelte';
import OutlinePanel from '../../../src/ui/outline/OutlinePanel.svelte';
import { readSample, type SampleName } from '../../samples/sample';

function shown(sample: SampleName = 'pullover') {
  const bench = new Workbench(readSample(sample).design, 'test');
  render(OutlinePanel, { bench });
  return { bench, user: userEvent.setup() };
}
const edgeOf = (bench: Workbench, id: string, piece = 0) =>
  bench.design.pieces[piece]!.outline.find((edge) => edge.id === id)!;
const rowOf = (edge: string) => document.querySelector<HTMLElement>(`[data-outline-edge="${edge}"]`)!;
const field = (name: string) => screen.getByRole('textbox', { name });
const choice = (name: string) => screen.getByRole('combobox', { name });

async function type(user: ReturnType<typeof userEvent.setup>, name: string, text: string): Promise<void> {
  await user.clear(field(name));
  await user.type(field(name), `${text}{Enter}`);
}

beforeAll(loadEditing);
beforeEach(() => {
  beyond.along = true;
});

describe('the outline as a table', () => {
  it('has the edges of the chosen piece in the order of its outline, each with its way in words', async () => {
    const { bench, user } = shown();
    const names = () =>
      screen
        .getAllByRole('textbox', { name: /^Edge:/ })
        .map((input) => (input instanceof HTMLInputElement ? input.value : ''));
    expect(names().slice(0, 4)).toEqual(['cast on', 'left side', 'left underarm', 'left armhole']);
    expect(names()).toHaveLength(bench.design.pieces[0]!.outline.length);
    expect(rowOf('neck-curve-left')).toHaveTextContent('down to the left, 6.5 cm');
    await user.selectOptions(choice('Piece'), 'Back');
    expect(names()).toHaveLength(bench.design.pieces[1]!.outline.length);
  });

  it('writes the shaping of a curve and how far its steps stray from it', () => {
    shown();
    expect(rowOf('neck-curve-left')).toHaveTextContent(
      /Bind off 3, 2 at the left edge.*strays from the line drawn by 0\.\d of a stitch at most, at row \d+\./,
    );
    // A worked edge is its own line.
    expect(rowOf('armhole-left')).toHaveTextContent('Bind off 2 at the right edge');
    expect(rowOf('armhole-left')).not.toHaveTextContent('strays');
  });

  it('shows the piece of an edge that is chosen elsewhere, and lights it up', async () => {
    const { bench } = shown();
    bench.select({ piece: 'back', edge: 'cast-on' });
    await waitFor(() => expect(choice('Piece')).toHaveDisplayValue('Back'));
    expect(rowOf('cast-on')).toHaveClass('lit');
  });
});

describe('sizes', () => {
  it('takes stitches, on both halves of a piece whose halves are alike, as one step', async () => {
    const { bench, user } = shown();
    await type(user, 'Stitches across: left underarm', '5');
    expect(bench.steps).toBe(1);
    expect(field('Stitches across: right underarm')).toHaveValue('5');
    expect(bench.announcement).toMatch(/^left underarm: 5 sts.* Neckband:/);
  });

  it('takes a length, says what it came to, and says so no longer once it is not so', async () => {
    const { bench, user } = shown();
    await type(user, 'Rows up: left side', '20 cm');
    expect(field('Rows up: left side')).toHaveValue('60');
    const said = '20 cm comes to 60 rows, which is 20.0 cm.';
    expect(within(rowOf('side-left')).getByRole('status')).toHaveTextContent(said);
    expect(bench.announcement).toContain(said);
    bench.undo();
    await waitFor(() => expect(screen.queryByRole('status')).toBeNull());
  });

  it('moves what lies beyond along, or not', async () => {
    const { bench, user } = shown();
    const top = () => edgeOf(bench, 'neck-center').from[1];
    const before = top();
    await type(user, 'Rows up: left side', '70');
    expect(top()).toBe(before - 4);
    bench.undo();
    await user.click(screen.getByRole('checkbox', { name: 'What lies beyond moves along' }));
    await type(user, 'Rows up: left side', '70');
    expect(top()).toBe(before);
    expect(field('Rows up: left side')).toHaveValue('70');
  });

  it('keeps the old size for nonsense, and for one that makes no outline, says why, and makes no step', async () => {
    const { bench, user } = shown();
    await type(user, 'Rows up: left side', 'some');
    expect(screen.getByRole('alert')).toHaveTextContent('“some” is not a number, so 74 stays.');
    await type(user, 'Stitches across: cast on', '0');
    expect(field('Stitches across: cast on')).toHaveValue('78');
    expect(screen.getAllByRole('alert')).toHaveLength(2);
    expect(field('Stitches across: cast on')).toBeInvalid();
    expect(bench.canUndo).toBe(false);
  });

  it('says why an edge that is its own mirror image stays level', async () => {
    const { bench, user } = shown();
    await type(user, 'Rows up: center neck', '4');
    expect(screen.getByRole('alert')).toHaveTextContent('Center neck is its own mirror image and stays level');
    expect(bench.canUndo).toBe(false);
  });
});

describe('paths, finishes and names', () => {
  it('makes a curve of a straight edge and back, and its twin with it', async () => {
    const { bench, user } = shown();
    await user.selectOptions(choice('Path: left side'), 'curved');
    expect([edgeOf(bench, 'side-left').path, edgeOf(bench, 'side-right').path]).toEqual(['curve', 'curve']);
    expect(bench.announcement).toMatch(/^Left side is now curved\./);
    expect(bench.steps).toBe(1);
  });

  it('uses the schedule of a curve, and draws it smooth again', async () => {
    const { bench, user } = shown();
    await user.click(screen.getByRole('button', { name: 'More: left neck curve' }));
    await user.click(screen.getByRole('button', { name: 'Use this schedule: left neck curve' }));
    expect(edgeOf(bench, 'neck-curve-left').path).toBe('stepped');
    await user.click(await screen.findByRole('button', { name: 'Draw it smooth: left neck curve' }));
    expect(edgeOf(bench, 'neck-curve-left').path).toBe('curve');
    expect(bench.steps).toBe(2);
  });

  it('says why a level edge has no steps, and shows what it still is', async () => {
    const { bench, user } = shown();
    await user.selectOptions(choice('Path: cast on'), 'in worked steps');
    expect(screen.getByRole('alert')).toHaveTextContent('Cast on has no rows to work steps in');
    expect(choice('Path: cast on')).toHaveDisplayValue('straight');
    expect(bench.canUndo).toBe(false);
  });

  it('offers finishes on level edges and selvages on all others', async () => {
    const { bench, user } = shown();
    await user.selectOptions(choice('Made of: center neck'), 'held stitches');
    await user.selectOptions(choice('Made of: left side'), 'garter selvage');
    expect(edgeOf(bench, 'neck-center').finish).toBe('live');
    expect([edgeOf(bench, 'side-left').selvage, edgeOf(bench, 'side-right').selvage]).toEqual(['garter', 'garter']);
    expect(bench.steps).toBe(2);
  });

  it('names an edge, and calls it by its id again when the name is taken away', async () => {
    const { bench, user } = shown();
    await type(user, 'Edge: left side', 'seam side');
    expect(edgeOf(bench, 'side-left').name).toBe('seam side');
    await user.clear(field('Edge: seam side'));
    await user.tab();
    expect(edgeOf(bench, 'side-left')).not.toHaveProperty('name');
    expect(field('Edge: side left')).toHaveValue('side left');
  });
});

describe('the steps of a worked edge', () => {
  const NAME = 'Steps: left armhole';
  const area = () => screen.getByRole<HTMLTextAreaElement>('textbox', { name: NAME });
  const write = async (user: ReturnType<typeof userEvent.setup>, text: string) => {
    await user.clear(area());
    await user.type(area(), `${text}{Control>}{Enter}{/Control}`);
  };
  async function asked() {
    const { bench, user } = shown();
    await user.click(screen.getByRole('button', { name: 'More: left armhole' }));
    return { bench, user };
  }
  const stepsOf = (bench: Workbench, id: string) => {
    const edge = edgeOf(bench, id);
    return edge.path === 'stepped' ? edge.steps : [];
  };

  const written = (bench: Workbench) =>
    writtenSteps(stepsOf(bench, 'armhole-left'), bench.voice).replaceAll('; ', '\n');

  it('are written a clause to a line, and taken as a pattern has them, on both halves', async () => {
    const { bench, user } = await asked();
    expect(area()).toHaveValue(written(bench));
    expect(written(bench)).toMatch(/^bind off 2.*\ndecrease 1 every 2 rows.*\nwork \d+ rows even$/);
    await write(user, 'bo 2, 2; dec 1 every 4 rows 2 times; work 34 rows even');
    const steps = [
      { stitches: -2, every: 2, times: 2 },
      { stitches: -1, every: 4, times: 2 },
      { stitches: 0, every: 34, times: 1 },
    ];
    expect(stepsOf(bench, 'armhole-left')).toEqual(steps);
    expect(stepsOf(bench, 'armhole-right')).toEqual(steps);
    expect(bench.steps).toBe(1);
    expect(bench.announcement).toMatch(/^Left armhole: Bind off 2 at the right edge/);
    await waitFor(() => expect(area()).toHaveValue(written(bench)));
  });

  it('stay where what was typed is not understood: the words are marked, the reason is told', async () => {
    const { bench, user } = await asked();
    await write(user, 'bind off 2, then purl about');
    expect(screen.getByRole('alert')).toHaveTextContent('purl');
    expect(area()).toHaveFocus();
    const { selectionStart, selectionEnd, value } = area();
    expect(value.slice(selectionStart, selectionEnd)).toMatch(/^purl/);
    expect(area()).toBeInvalid();
    expect(bench.canUndo).toBe(false);
    // What was typed is still there to be mended, until it is put back.
    await user.keyboard('{Escape}');
    expect(area()).toHaveValue(written(bench));
    expect(screen.queryByRole('alert')).toBeNull();
  });

  it('that lead elsewhere are told apart by their sums, and the far corner can follow', async () => {
    const { bench, user } = await asked();
    await write(user, 'bind off 3; decrease 1 every 2 rows 4 times; work 38 rows even');
    expect(screen.getByRole('alert')).toHaveTextContent(
      'These steps come to 7 stitches in over 48 rows and the edge has 6 stitches in over 46 rows, so the old steps stay',
    );
    expect(bench.canUndo).toBe(false);
    await user.click(screen.getByRole('button', { name: 'Move the far corner to fit' }));
    expect(field('Stitches across: left armhole')).toHaveValue('7');
    expect(field('Rows up: left armhole')).toHaveValue('48');
    expect(stepsOf(bench, 'armhole-left')[0]).toEqual({ stitches: -3, every: 2, times: 1 });
    expect(bench.steps).toBe(1);
  });

  it('are taken when the field is left, and by their button', async () => {
    const { bench, user } = await asked();
    await user.clear(area());
    await user.type(area(), 'bo 6, work 44 rows even');
    await user.click(screen.getByRole('button', { name: 'Take these steps: left armhole' }));
    expect(stepsOf(bench, 'armhole-left')).toEqual([
      { stitches: -6, every: 2, times: 1 },
      { stitches: 0, every: 44, times: 1 },
    ]);
    expect(bench.steps).toBe(1);
  });
});

describe('corners', () => {
  it('are added in the middle of an edge and taken out again, twins with them', async () => {
    const { bench, user } = shown();
    const count = () => bench.design.pieces[0]!.outline.length;
    const before = count();
    await user.click(screen.getByRole('button', { name: 'More: left side' }));
    await user.click(screen.getByRole('button', { name: 'Add a corner to left side' }));
    expect(count()).toBe(before + 2);
    expect(bench.announcement).toContain(`the outline has ${before + 2} edges now`);
    const added = bench.design.pieces[0]!.outline[2]!;
    expect(added.from).toEqual([39, 37]);
    const [, second] = screen.getAllByRole('button', { name: /^More: left side/ });
    await user.click(second!);
    const remove = screen.getAllByRole('button', { name: /^Remove corner where left side/ });
    await user.click(remove[1]!);
    expect(count()).toBe(before);
    expect(bench.steps).toBe(2);
  });

  it('keep to three at least', async () => {
    const { bench, user } = shown('strip');
    bench.change({ kind: 'piece-fields', piece: bench.design.pieces[0]!.id, fields: { symmetric: false } });
    const remove = async () => {
      const [more] = screen.getAllByRole('button', { name: /^More:/ });
      if (more!.getAttribute('aria-expanded') === 'false') await user.click(more!);
      await user.click(screen.getAllByRole('button', { name: /^Remove corner/ })[0]!);
    };
    await remove();
    expect(bench.design.pieces[0]!.outline).toHaveLength(3);
    const { steps } = bench;
    await remove();
    expect(screen.getByRole('alert')).toHaveTextContent('three corners at least');
    expect(bench.steps).toBe(steps);
  });

  it('bend a curve by its handles, typed from the left and from the bottom', async () => {
    const { bench, user } = shown();
    await user.click(screen.getByRole('button', { name: 'More: left neck curve' }));
    const group = screen.getByRole('group', { name: 'Near its beginning' });
    const input = within(group).getByLabelText('Rows from the bottom');
    await user.clear(input);
    await user.type(input, '110,5{Enter}');
    const edge = edgeOf(bench, 'neck-curve-left');
    expect(edge.path === 'curve' && edge.handles[0][1]).toBe(110.5);
    const twin = edgeOf(bench, 'neck-curve-right');
    expect(twin.path === 'curve' && twin.handles[1][1]).toBe(110.5);
  });
});

describe('pieces', () => {
  it('are named, given a fabric, and let their halves go apart', async () => {
    const { bench, user } = shown();
    await type(user, 'Name of the piece', 'Fore');
    await user.selectOptions(choice('Fabric'), 'garter stitch');
    await user.click(screen.getByRole('checkbox', { name: 'Both halves alike' }));
    expect(bench.design.pieces[0]).toMatchObject({ name: 'Fore', fabric: 'garter', symmetric: false });
    expect(bench.steps).toBe(3);
    await type(user, 'Stitches across: left underarm', '5');
    expect(field('Stitches across: right underarm')).toHaveValue('3');
  });

  it('are duplicated, mirrored and removed, and the last one stays', async () => {
    const { bench, user } = shown('cardigan-front');
    const [piece] = bench.design.pieces;
    await user.click(screen.getByRole('button', { name: 'Remove piece' }));
    expect(screen.getByRole('alert')).toHaveTextContent('one piece at least');
    await user.click(screen.getByRole('button', { name: 'Duplicate' }));
    expect(bench.design.pieces).toHaveLength(2);
    await waitFor(() => expect(choice('Piece')).toHaveDisplayValue(`${piece!.name}, copy`));
    await user.click(screen.getByRole('button', { name: 'Mirror' }));
    expect(bench.design.pieces[1]!.outline).not.toEqual(piece!.outline);
    await user.click(screen.getByRole('button', { name: 'Remove piece' }));
    expect(bench.design.pieces.map(({ id }) => id)).toEqual([piece!.id]);
    expect(bench.steps).toBe(3);
  });
});
