import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { beforeAll, describe, expect, it } from 'vitest';
import { boardOf, type Asked } from '../../src/text';
import { loadEditing, Workbench } from '../../src/ui';
import BandPanel from '../../src/ui/BandPanel.svelte';
import { askedBy } from '../../src/ui/board/asks';
import { readSample } from '../samples/sample';

beforeAll(loadEditing);

function shown(name: 'blanket' | 'cardigan-front') {
  const bench = new Workbench(readSample(name).design, 'test');
  render(BandPanel, { bench });
  return { bench, user: userEvent.setup() };
}

describe('the corners of a band', () => {
  it('follow its depth, and each number can be asked for its sum', async () => {
    const { bench, user } = shown('blanket');
    expect(
      screen.getByText(/^Corners: mark stitches 1, 112, 249 and 360 .* every second round, 6 times/),
    ).toBeVisible();
    const depth = screen.getByRole('textbox', { name: 'Rows deep' });
    await user.clear(depth);
    await user.type(depth, '20{Enter}');
    expect(screen.getByText(/every second round, 10 times/)).toBeVisible();
    expect(screen.getByText('With all corners worked there are 576 stitches: 496 + 4 × 20.')).toBeVisible();
    const asked = (button: string) => askedBy(screen.getByRole('button', { name: button }))!;
    expect(asked('Why 10 each side')).toEqual({ of: 'corner', corner: 0 } satisfies Asked);
    expect(boardOf(bench.pickup!, asked('Free edge'), bench.voice)!.lines.at(-1)).toBe(
      '360 cm × 1.6 stitches to the cm = 576.0',
    );
  });

  it('are not spoken of where there are none', () => {
    shown('cardigan-front');
    expect(screen.queryByText(/free edge/i)).toBeNull();
  });
});
