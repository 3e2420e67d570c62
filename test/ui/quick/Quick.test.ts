import { fireEvent, render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { tick } from 'svelte';
import { beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { checkDesign, type Design } from '../../../src/piece';
import { QUICK, type PlaceTyped, type RowTyped } from '../../../src/text';
import { loadEditing, Workbench } from '../../../src/ui';
import Quick from '../../../src/ui/quick/Quick.svelte';
import { EXAMPLE, remembered } from '../../../src/ui/quick/remembered.svelte';
import { QUICK_CASES } from '../../published/quickCases';
import { readSample } from '../../samples/sample';

type User = ReturnType<typeof userEvent.setup>;

function shown(fields: Partial<Design> = {}) {
  const bench = new Workbench({ ...readSample('pullover').design, ...fields }, 'test');
  const begun: Design[] = [];
  const { unmount } = render(Quick, {
    open: true,
    bench,
    onbegin: (design: Design) => {
      begun.push(design);
      return bench.open(design, 'begun');
    },
  });
  return { bench, begun, unmount, user: userEvent.setup() };
}

// Found by their labels, since to look for roles through a whole drawing takes long.
const field = (name: string) => screen.getByLabelText(name, { exact: true, selector: 'input' });
const choice = (name: string) => screen.getByLabelText(name, { exact: true, selector: 'select' });
const button = (name: string) => screen.getByText(name, { selector: 'button' });
const answer = () => screen.getByLabelText(QUICK.answer);
/** All that the answer says, on one line. */
const told = () => answer().textContent.replace(/\s+/gu, ' ');

async function type(user: User, name: string, text: string): Promise<void> {
  await user.clear(field(name));
  if (text !== '') await user.type(field(name), text);
}

/** What a field, or a choice by its words, comes to hold in the end; the keys themselves are tried in a browser. */
async function enter(name: string, text: string): Promise<void> {
  const control = screen.getByLabelText<HTMLInputElement | HTMLSelectElement>(name, {
    exact: true,
    selector: 'input, select',
  });
  if (control instanceof HTMLSelectElement) {
    const option = [...control.options].find(({ textContent }) => textContent === text);
    await fireEvent.change(control, { target: { value: option?.value } });
  } else await fireEvent.input(control, { target: { value: text } });
}

/** Puts a question into the dialog, field by field. */
async function put(asks: PlaceTyped | RowTyped): Promise<void> {
  if ('have' in asks) {
    await fireEvent.click(button(QUICK.row));
    await enter(QUICK.stitchesHad, asks.have);
    await enter(QUICK.change, QUICK.changes[asks.change]);
    await enter(QUICK.amountIs, QUICK.amounts[asks.amountIs]);
    await enter(QUICK.amount, asks.amount);
    await enter(QUICK.worked, QUICK.ways[asks.round ? 'round' : 'flat']);
    return;
  }
  await enter(QUICK.stitchesWanted, asks.place);
  await enter(QUICK.overHowMany, asks.over);
  await enter(QUICK.countedIn, QUICK.measures[asks.measure]);
  await enter(QUICK.sections, asks.sections);
  if (asks.gauge !== '') await enter(asks.measure === 'in' ? 'Rows to 4 in' : 'Rows to 10 cm', asks.gauge);
  await enter(QUICK.spread, QUICK.spreads[asks.spread]);
}

beforeAll(async () => {
  await loadEditing();
});
beforeEach(() => {
  Object.assign(remembered, EXAMPLE);
});

describe('small cases, typed in', () => {
  it.each(QUICK_CASES)('$id: $says [$title, $address]', async ({ asks, shows, sections }) => {
    shown();
    await put(asks);
    for (const words of shows) expect(told()).toContain(words);
    if (sections) {
      const [, ...rows] = within(screen.getByLabelText('Sections', { selector: 'table' })).getAllByRole('row');
      expect(rows.map((row) => Number(within(row).getAllByRole('cell')[0]!.textContent))).toEqual(sections);
    }
    expect(document.querySelectorAll('[aria-invalid="true"]')).toHaveLength(0);
  });
});

describe('what has no answer', () => {
  const place = { ...EXAMPLE.place };
  const row = { ...EXAMPLE.row };
  it.each([
    [
      'more increases than stitches',
      { ...row, change: 'increase', have: '30', amount: '31' },
      QUICK.amount,
      'more increases than stitches',
    ],
    ['zero rows', { ...place, over: '0' }, QUICK.overHowMany, '0 is too few'],
    ['10,000 sections', { ...place, sections: '10000' }, QUICK.sections, '10000 is too many'],
    ['a target below 2', { ...row, amount: '1', amountIs: 'to' }, QUICK.amount, 'keep 2 at least'],
    ['one stitch', { ...place, place: '1' }, QUICK.stitchesWanted, '1 is too few'],
    ['text in a number field', { ...place, place: 'lots' }, QUICK.stitchesWanted, '“lots” is not a number'],
    ['half a stitch', { ...place, place: '4½' }, QUICK.stitchesWanted, 'type 4 or 5'],
    ['nothing', { ...place, over: '' }, QUICK.overHowMany, 'Type a number'],
  ] as const)('%s is said beside its field, and the last answer stays, greyed', async (_, asks, at, part) => {
    shown();
    await put(asks);
    expect(field(at)).toBeInvalid();
    expect(field(at)).toHaveAccessibleDescription(expect.stringContaining(part));
    expect(answer()).toHaveClass('stale');
    expect(screen.getByTestId('quick-answer').textContent).not.toBe('');
    expect(button(QUICK.make)).toBeDisabled();
    expect(button(QUICK.copy)).toBeDisabled();
  });

  it('is an answer again once it is mended', async () => {
    const { user } = shown();
    await type(user, QUICK.overHowMany, '0');
    expect(answer()).toHaveClass('stale');
    expect(told()).toContain('Pick up');
    await type(user, QUICK.overHowMany, '120');
    expect(answer()).not.toHaveClass('stale');
    expect(field(QUICK.overHowMany)).toBeValid();
    expect(told()).toContain('71 of 120 rows');
  });
});

describe('the dialog', () => {
  it('reads numbers as people write them', async () => {
    const { user } = shown();
    await put({ ...EXAMPLE.place, place: '20', over: '5,5', measure: 'in', sections: '' });
    expect(told()).toContain('20 stitches over 5½ in');
    await type(user, QUICK.overHowMany, '5.5');
    expect(told()).toContain('20 stitches over 5½ in');
    await type(user, QUICK.overHowMany, '5 1/2');
    expect(told()).toContain('20 stitches over 5½ in');
  });

  it('draws every place of the strip, and none where only a length is known', async () => {
    const { user } = shown();
    const strip = () => screen.queryByLabelText(QUICK.strip);
    const marks = (role: string) => strip()!.querySelector(`path.${role}`)?.getAttribute('d')?.match(/M/gu)?.length;
    expect(marks('used')).toBe(71);
    expect(marks('skipped')).toBe(17);
    expect(within(strip()!).getByRole('img')).toHaveAccessibleName(/71 stitches over 88 rows/u);
    await user.selectOptions(choice(QUICK.countedIn), 'cm');
    expect(strip()).toBeNull();
    expect(button(QUICK.make)).toBeDisabled();
    await type(user, 'Rows to 10 cm', '28');
    expect(strip()).not.toBeNull();
    expect(button(QUICK.make)).toBeEnabled();
  });

  it('puts a design on the bench in the words of the one that is open, and keeps the question', async () => {
    const { bench, begun, unmount, user } = shown({ units: 'in', terms: 'UK', hand: 'left' });
    await type(user, QUICK.stitchesWanted, '66');
    expect(told()).toContain('Knit up 3, skip 1');
    await user.click(button(QUICK.make));
    expect(begun).toHaveLength(1);
    expect(() => checkDesign(begun[0]!)).not.toThrow();
    expect(bench.design).toMatchObject({ name: '66 stitches over 88 rows', units: 'in', terms: 'UK', hand: 'left' });
    expect(bench.pickup?.target).toBe(66);
    // What was there comes back by one step.
    bench.undo();
    expect(bench.design.name).toBe(readSample('pullover').design.name);
    unmount();
    shown();
    expect(field(QUICK.stitchesWanted)).toHaveValue('66');
  });

  it('makes a design of a row too', async () => {
    const { begun, user } = shown();
    await put({ ...EXAMPLE.row, round: true });
    await user.click(button(QUICK.make));
    expect(begun[0]).toMatchObject({ name: '131 stitches decreased by 39' });
    expect(begun[0]?.pickups[0]).toMatchObject({ target: 92, joined: true });
  });

  it('copies the whole answer as text', async () => {
    const { user } = shown();
    await user.click(button(QUICK.copy));
    const text = await navigator.clipboard.readText();
    expect(text).toContain('71 stitches over 88 rows\n====');
    expect(text).toContain('Pick up 4, skip 1, 17 times; then pick up 3.');
    expect(text).toContain('Spread evenly:');
    expect(answer()).toHaveTextContent(QUICK.copied);
  });

  it('tells a screen reader the answer once the hand rests, not at each keystroke', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    try {
      shown();
      const user = userEvent.setup({ advanceTimers: (ms) => vi.advanceTimersByTime(ms), delay: 100 });
      const status = screen.getByRole('status');
      await type(user, QUICK.overHowMany, '120');
      expect(told()).toContain('71 of 120 rows are used');
      expect(status.textContent).toBe('');
      vi.advanceTimersByTime(1000);
      await tick();
      expect(status).toHaveTextContent('71 of 120 rows are used');
      // Enter asks for it at once.
      await type(user, QUICK.overHowMany, '88');
      expect(status).toHaveTextContent('71 of 120 rows are used');
      await user.type(field(QUICK.overHowMany), '{Enter}');
      expect(status).toHaveTextContent('71 of 88 rows are used');
    } finally {
      vi.useRealTimers();
    }
  });
});
