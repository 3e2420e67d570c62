import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { HANDOUT_BLOCKS, type HandoutBlock } from '../../../src/piece';
import { HANDOUT, HANDOUT_BLOCK } from '../../../src/text';
import Blocks from '../../../src/ui/handout/Blocks.svelte';

async function shown(first: readonly HandoutBlock[] = ['title', 'diagram', 'ruler']) {
  let blocks = first;
  const changes: (readonly HandoutBlock[])[] = [];
  const change = (next: readonly HandoutBlock[]): void => {
    blocks = next;
    changes.push(next);
    void view.rerender({ blocks, change });
  };
  const view = render(Blocks, { blocks, change });
  await view.rerender({ blocks, change });
  return { changes, user: userEvent.setup() };
}

const box = (block: HandoutBlock) => screen.getByRole('checkbox', { name: HANDOUT_BLOCK[block] });
const button = (word: string, block: HandoutBlock) =>
  screen.getByRole('button', { name: `${word}: ${HANDOUT_BLOCK[block]}`, hidden: true });
const order = () => screen.getAllByRole('listitem').map((row) => row.dataset.block);

describe('the blocks of a handout', () => {
  it('are all there, those that are printed first and in their order', async () => {
    await shown(['ruler', 'title']);
    expect(order().slice(0, 2)).toEqual(['ruler', 'title']);
    expect([...order()].sort()).toEqual([...HANDOUT_BLOCKS].sort());
    expect(screen.getAllByRole('checkbox', { checked: true })).toHaveLength(2);
  });

  it('are turned on at the end, and off, by a tick', async () => {
    const { changes, user } = await shown();
    await user.click(box('sum'));
    await user.click(box('diagram'));
    expect(changes).toEqual([
      ['title', 'diagram', 'ruler', 'sum'],
      ['title', 'ruler', 'sum'],
    ]);
    expect(box('diagram')).not.toBeChecked();
    expect(box('sum')).toBeChecked();
  });

  it('are moved by their buttons, which keep the focus as long as they can go on', async () => {
    const { changes, user } = await shown();
    await user.click(button(HANDOUT.up, 'ruler'));
    expect(changes.at(-1)).toEqual(['title', 'ruler', 'diagram']);
    expect(button(HANDOUT.up, 'ruler')).toHaveFocus();
    await user.click(button(HANDOUT.up, 'ruler'));
    expect(changes.at(-1)).toEqual(['ruler', 'title', 'diagram']);
    // At the top there is no button to go on with.
    expect(button(HANDOUT.up, 'ruler')).toBeDisabled();
    expect(box('ruler')).toHaveFocus();
    await user.click(button(HANDOUT.down, 'ruler'));
    expect(changes.at(-1)).toEqual(['title', 'ruler', 'diagram']);
    expect(button(HANDOUT.down, 'ruler')).toHaveFocus();
  });

  it('are moved by Alt and an arrow, the focus going with them, and not beyond the ends', async () => {
    const { changes, user } = await shown();
    box('title').focus();
    await user.keyboard('{Alt>}{ArrowUp}{/Alt}');
    expect(changes).toEqual([]);
    await user.keyboard('{Alt>}{ArrowDown}{/Alt}');
    expect(changes.at(-1)).toEqual(['diagram', 'title', 'ruler']);
    expect(box('title')).toHaveFocus();
    await user.keyboard('{Alt>}{ArrowDown}{/Alt}');
    await user.keyboard('{Alt>}{ArrowDown}{/Alt}');
    expect(changes).toHaveLength(2);
    expect(changes.at(-1)).toEqual(['diagram', 'ruler', 'title']);
    expect(box('title')).toHaveFocus();
  });

  it('move by no arrow alone, and none that is off', async () => {
    const { changes, user } = await shown();
    box('title').focus();
    await user.keyboard('{ArrowDown}');
    box('sum').focus();
    await user.keyboard('{Alt>}{ArrowUp}{/Alt}');
    expect(changes).toEqual([]);
  });
});
