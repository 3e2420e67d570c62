import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { beforeAll, describe, expect, it } from 'vitest';
import { allFlat } from '../../src/pickup';
import { checkReport } from '../../src/text';
import { loadEditing, Workbench } from '../../src/ui';
import CheckPanel from '../../src/ui/CheckPanel.svelte';
import { readSample } from '../samples/sample';

function shown(fields: object = {}) {
  const { design } = readSample('cardigan-front');
  const bench = new Workbench({ ...design, pickups: [{ ...design.pickups[0]!, ...fields }] }, 'test');
  render(CheckPanel, { bench });
  return { bench, user: userEvent.setup() };
}
const ref = { piece: 'right-front', edge: 'front-edge' };
const pickup = (bench: Workbench) => bench.design.pickups[0]!;
const fill = async (user: ReturnType<typeof userEvent.setup>, name: string, text: string) => {
  const field = screen.getByRole('textbox', { name });
  await user.clear(field);
  await user.type(field, `${text}{Enter}`);
};
const rows = () => within(screen.getByRole('table')).getAllByRole('row');
/** The cells of a row with bars between. */
const textOf = (row: HTMLElement | undefined) =>
  [...(row?.querySelectorAll('th, td') ?? [])].map((cell) => cell.textContent.replace(/\s+/g, ' ').trim()).join(' | ');

beforeAll(loadEditing);

describe('what a pattern says', () => {
  it('is entered as counts, a ratio, a total and sections, a step each', async () => {
    const { bench, user } = shown();
    expect(screen.queryByRole('table')).toBeNull();
    await fill(user, 'Count: Right front, front edge', '56');
    await fill(user, 'Ratio: Right front, front edge', '3 of every 4');
    await user.selectOptions(screen.getByRole('combobox', { name: 'Counted in: Right front, front edge' }), 'ridges');
    await fill(user, 'In all', '114');
    await fill(user, 'By section', '57, 57');
    await fill(user, 'What you got', '110');
    expect(pickup(bench)).toMatchObject({
      stated: [{ ...ref, count: 56 }],
      statedRatios: [{ ...ref, pick: 3, of: 4, per: 'ridge' }],
      statedTotal: 114,
      statedSections: [57, 57],
      got: 110,
    });
    expect(bench.steps).toBe(6);
    await fill(user, 'Ratio: Right front, front edge', ' ');
    expect(pickup(bench).statedRatios).toEqual([]);
  });

  it('that is no ratio is refused with an example', async () => {
    const { bench, user } = shown();
    await fill(user, 'Ratio: Right front, front edge', 'three of four');
    expect(screen.getByRole('alert')).toHaveTextContent('such as 3 of 4 or 3/4');
    expect(pickup(bench)).not.toHaveProperty('statedRatios');
  });
});

describe('the table', () => {
  const fields = {
    stated: [{ ...ref, count: 57 }],
    statedRatios: [{ ...ref, pick: 5, of: 7, per: 'row' }],
    statedTotal: 114,
    got: 80,
  };

  it('has what is stated, what is needed, the verdict in a word beside its shape, and the cause', () => {
    shown(fields);
    const [, count, cause, ratio, total, got] = rows();
    expect(textOf(count)).toBe('Right front, front edge | 57 | 114 (114.4) | 50% short | 12 to 10 cm | will pucker');
    expect(count!.querySelector('svg path')).not.toBeNull();
    expect(cause).toHaveTextContent('Likely cause: 57 is half of what is wanted');
    expect(textOf(ratio)).toMatch(/ \| 5 of every 7 rows: 116 \| 114 \(114\.4\) \| 1\.4% over \| .* \| lies flat$/);
    expect(textOf(total)).toMatch(/^In all \| 114 \| .* \| lies flat$/);
    expect(textOf(got)).toMatch(/^What you got \| 80 \| .* \| will pucker$/);
    const shapes = screen.getByRole('table').querySelectorAll('svg path');
    expect(new Set([...shapes].map((path) => path.getAttribute('d'))).size).toBe(2);
  });

  it('says what the command says', () => {
    const { bench } = shown(fields);
    const report = checkReport(bench.plan, (plan) => allFlat(plan.stated, plan.notes)).replace(/\s+/g, ' ');
    for (const row of rows().slice(1)) {
      for (const text of textOf(row).split(' | ')) {
        if (text.startsWith('Likely cause: ')) expect(report).toContain(text.slice('Likely cause: '.length));
        else for (const part of text.split(/ \(|\)/)) expect(report).toContain(part);
      }
    }
    const facts = within(screen.getByRole('list', { name: 'Does it agree with itself?' })).getAllByRole('listitem');
    expect(facts.length).toBeGreaterThan(1);
    for (const fact of facts) expect(report).toContain(fact.textContent.trim());
  });

  it('goes by the thresholds, which are set beside it', async () => {
    const { bench, user } = shown({ statedTotal: 109 });
    expect(textOf(rows()[1])).toContain('slightly tight');
    await fill(user, 'Lies flat within, %', '6');
    expect(textOf(rows()[1])).toContain('lies flat');
    expect(pickup(bench).flat).toEqual({ slight: 6, strong: 8 });
    expect(screen.getByText(/Up to 6% off lies flat, up to 8%/)).toBeInTheDocument();
  });
});
