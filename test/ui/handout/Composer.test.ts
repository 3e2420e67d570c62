import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { tick } from 'svelte';
import { beforeAll, describe, expect, it } from 'vitest';
import { DEFAULT_HANDOUT, type Handout } from '../../../src/piece';
import { gaugesFault, HANDOUT, HANDOUT_BLOCK, HANDOUT_INK, HANDOUT_VERSION } from '../../../src/text';
import { loadEditing, Workbench } from '../../../src/ui';
import Composer from '../../../src/ui/handout/Composer.svelte';
import { readSample, type SampleName } from '../../samples/sample';

beforeAll(loadEditing);

function shown(name: SampleName = 'pullover', fields?: Partial<Handout>) {
  const { design } = readSample(name);
  const bench = new Workbench(fields ? { ...design, handout: { ...DEFAULT_HANDOUT, ...fields } } : design, 'test');
  const handout = () => bench.design.handout ?? DEFAULT_HANDOUT;
  const change = (changes: Partial<Handout>) => {
    const outcome = bench.change({ kind: 'handout', handout: { ...handout(), ...changes } });
    void view.rerender({ bench, handout: handout(), change });
    return outcome;
  };
  const view = render(Composer, { bench, handout: handout(), change });
  return { bench, handout, user: userEvent.setup() };
}

const radio = (name: string) => screen.getByRole('radio', { name });
const field = (name: string) => screen.getByRole('textbox', { name });

describe('what a handout is made of', () => {
  it('is changed one step at a time, each of which is taken back by one undo', async () => {
    const { bench, handout, user } = shown();
    const steps: [() => Promise<void>, Partial<Handout>][] = [
      [() => user.click(radio(HANDOUT_VERSION.exercise)), { version: 'exercise' }],
      [() => user.click(radio('Letter')), { paper: 'Letter' }],
      [() => user.click(radio(HANDOUT.landscape)), { orientation: 'landscape' }],
      [() => user.click(radio(HANDOUT_INK.black)), { ink: 'black' }],
      [() => user.type(field(HANDOUT.note), 'Bring wool{Enter}'), { note: 'Bring wool' }],
      [
        () => user.click(screen.getByRole('checkbox', { name: HANDOUT_BLOCK.gauges })),
        { blocks: [...DEFAULT_HANDOUT.blocks, 'gauges'] },
      ],
      [
        () => user.type(field(HANDOUT.gauges), '20 × 28; 5,5 × 7{Enter}'),
        {
          gauges: [
            { stitches: 20, rows: 28, over: 100 },
            { stitches: 5.5, rows: 7, over: 100 },
          ],
        },
      ],
    ];
    const stages = [handout()];
    for (const [step, fields] of steps) {
      await step();
      expect(handout()).toEqual({ ...stages.at(-1)!, ...fields });
      stages.push(handout());
    }
    for (const stage of stages.slice(0, -1).reverse()) {
      bench.undo();
      await tick();
      expect(handout()).toEqual(stage);
    }
    expect(bench.design.handout).toBeUndefined();
  });

  it('keeps what was typed and says what is wrong with it where it is no gauge', async () => {
    const { bench, handout, user } = shown('pullover', { blocks: ['gauges'] });
    const before = bench.design;
    await user.type(field(HANDOUT.gauges), 'twenty{Enter}');
    expect(screen.getByText(gaugesFault('twenty'))).toBeInTheDocument();
    expect(handout().gauges).toEqual([]);
    expect(bench.design).toBe(before);
  });

  it('asks for gauges only where something is printed of them, and for the pick-up only where there are several', () => {
    shown('pullover');
    expect(screen.queryByRole('textbox', { name: HANDOUT.gauges })).toBeNull();
    expect(screen.queryByRole('combobox', { name: HANDOUT.pickup })).toBeNull();
  });

  it('offers every pick-up of the design by its name', async () => {
    const { bench, user } = shown('vest');
    const choice = screen.getByRole('combobox', { name: HANDOUT.pickup });
    expect([...choice.querySelectorAll('option')].map(({ textContent }) => textContent)).toEqual(
      bench.plan.pickups.map(({ pickup }) => pickup.name),
    );
    await user.selectOptions(choice, bench.plan.pickups[2]!.pickup.name);
    expect(bench.pickupIndex).toBe(2);
  });
});
