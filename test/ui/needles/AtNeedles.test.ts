import { render, screen, waitFor, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { createRawSnippet } from 'svelte';
import { describe, expect, it, vi } from 'vitest';
import type { NeedlePlace } from '../../../src/pickup';
import { AT_NEEDLES } from '../../../src/text';
import { Workbench, type NeedlesDesk } from '../../../src/ui';
import AtNeedles from '../../../src/ui/needles/AtNeedles.svelte';
import { readSample, type SampleName } from '../../samples/sample';

/** A desk that keeps places as text, as a browser does, and can be told what another tab wrote. */
class TextDesk implements NeedlesDesk {
  readonly places = new Map<string, string>();
  readonly #listeners = new Set<() => void>();
  opened: string | null = null;
  refuses = false;

  get(pickup: string): unknown {
    return JSON.parse(this.places.get(pickup) ?? 'null');
  }
  put(pickup: string, place: NeedlePlace): boolean {
    if (this.refuses) return false;
    this.places.set(pickup, JSON.stringify(place));
    this.opened = pickup;
    return true;
  }
  leave(): void {
    this.opened = null;
  }
  listen(onchange: () => void): () => void {
    this.#listeners.add(onchange);
    return () => this.#listeners.delete(onchange);
  }
  hear(): void {
    for (const listener of this.#listeners) listener();
  }
}

function shown(desk = new TextDesk(), sample: SampleName = 'strip', bench?: Workbench) {
  const onclose = vi.fn();
  const made = bench ?? new Workbench(readSample(sample).design, 'test');
  // Nothing has a size here, so nothing is drawn.
  const diagram = createRawSnippet(() => ({ render: () => '<i></i>' }));
  const { unmount } = render(AtNeedles, { bench: made, desk, onclose, diagram });
  return { desk, onclose, bench: made, unmount, user: userEvent.setup() };
}
const button = (name: string | RegExp) => screen.getByRole('button', { name });
const now = () => screen.getByTestId('now');
const onNeedle = () => Number(screen.getByTestId('on-needle').textContent);
const press = (user: ReturnType<typeof userEvent.setup>, keys: string) => user.keyboard(keys);

describe('at the needles', () => {
  it('shows one thing to do, the count, the next marker, and what comes then', async () => {
    const { user } = shown();
    expect(now()).toHaveTextContent(/Strip, edge.*Section 1 of 4.*Pick up.*4, skip 1, 4 times; then 2/);
    expect(onNeedle()).toBe(0);
    expect(screen.getByText('Place marker 1 after this, at 18')).toBeInTheDocument();
    await user.click(button('Done'));
    expect(onNeedle()).toBe(18);
    expect(screen.getByText('Marker 2 comes at 36')).toBeInTheDocument();
    expect(now()).toHaveTextContent(/2, skip 1; then 4, skip 1, 3 times/);
    await user.click(button('Back'));
    expect(onNeedle()).toBe(0);
    expect(button('Back')).toBeDisabled();
  });

  it('goes on and back by keys, and not on a key that is held', async () => {
    const { user } = shown();
    await press(user, ' ');
    expect(onNeedle()).toBe(18);
    await press(user, '{Enter}');
    expect(onNeedle()).toBe(32);
    await press(user, '{ArrowRight}{ArrowRight}{Backspace}{ArrowLeft}');
    expect(onNeedle()).toBe(32);
    await press(user, '{ArrowRight>5/}');
    expect(onNeedle()).toBe(36);
    button('Back').focus();
    await press(user, '{Enter}');
    expect(onNeedle()).toBe(32);
  });

  it('tells each step to a screen reader', async () => {
    const { user } = shown();
    const live = document.querySelector('[aria-live="polite"]:not(.off)')!;
    await press(user, ' ');
    expect(live).toHaveTextContent(
      /^Pick up 2, skip 1; then 4, skip 1, 3 times\. Strip, edge, Section 2 of 4\. 32 on the/,
    );
  });

  it('ends with the first row, then with what is on the needle; begins again only by its own button', async () => {
    const { user, desk, onclose } = shown();
    for (let i = 0; i < 40; i++) await press(user, '{ArrowRight}');
    expect(now()).toHaveTextContent(/All picked up.*71 stitches on the needle/);
    await user.click(button('Begin again'));
    expect(onNeedle()).toBe(0);
    await press(user, '{Escape}');
    await waitFor(() => expect(onclose).toHaveBeenCalled());
    expect(desk.places.size).toBe(1);
  });

  it('keeps each step at once, and goes on from it in another page', async () => {
    const { user, desk, unmount } = shown();
    await press(user, '  ');
    expect(desk.opened).toBe('band');
    unmount();
    shown(desk);
    expect(onNeedle()).toBe(32);
    expect(button('Done')).toHaveFocus();
  });

  it('opens the pick-up that was left open, of several', () => {
    const desk = new TextDesk();
    const bench = new Workbench(readSample('vest').design, 'test');
    const [, other] = bench.plan.pickups;
    desk.opened = other!.pickup.id;
    shown(desk, 'vest', bench);
    expect(bench.pickup!.pickup.id).toBe(other!.pickup.id);
  });

  it('follows another tab that has gone on', async () => {
    const first = shown();
    const text = () => first.desk.places.get('band')!;
    const start = text();
    await press(first.user, '  ');
    const later = text();
    first.desk.places.set('band', start);
    first.desk.hear();
    await waitFor(() => expect(onNeedle()).toBe(0));
    first.desk.places.set('band', later);
    first.desk.hear();
    await waitFor(() => expect(onNeedle()).toBe(32));
  });

  it('says where the place went when the design changes, and where it can’t be kept', async () => {
    const { user, bench, desk } = shown();
    await press(user, ' ');
    bench.change({ kind: 'pickup', pickup: 'band', fields: { target: 75 } });
    expect(await screen.findByText(/You go on at marker 1 with 18, where 19 are planned now/)).toBeInTheDocument();
    expect(onNeedle()).toBe(18);
    desk.refuses = true;
    await press(user, ' ');
    expect(screen.queryByText(/You go on at marker 1/)).toBeNull();
    expect(screen.getByText(/does not keep your place/)).toBeInTheDocument();
  });

  it('says that the screen may turn off where the browser can’t hold it', () => {
    shown();
    expect(screen.getByText(/it may turn off while you knit/)).toBeInTheDocument();
  });
});

describe('another count than planned', () => {
  it('is stepped or typed, and put right in one of two ways', async () => {
    const { user } = shown();
    expect(button(/another count/)).toHaveClass('away');
    await press(user, ' ');
    await user.click(button(/another count/));
    const field = screen.getByRole('textbox', { name: 'How many are on the needle?' });
    expect(field).toHaveValue('18');
    expect(field).toHaveFocus();
    await user.click(button('One fewer'));
    field.focus();
    await press(user, '{ArrowDown}');
    expect(field).toHaveValue('16');
    expect(screen.getByText('2 too few: 18 are planned here.')).toBeInTheDocument();
    const ways = within(screen.getByRole('group', { name: 'How to put it right' })).getAllByRole('button');
    expect(ways.map((way) => way.textContent)).toEqual([
      expect.stringMatching(/In the next section.*Section 2: 20 instead of 18\..*71 in all/),
      expect.stringMatching(/Over all that is left.*71 in all/),
    ]);
    await user.click(ways[0]!);
    expect(onNeedle()).toBe(16);
    expect(screen.getByText('Place marker 2 after this, at 36')).toBeInTheDocument();
    await waitFor(() => expect(button('Done')).toHaveFocus());
  });

  it('of nonsense, or far off, says so; Escape leaves it and nothing else', async () => {
    const { user, onclose } = shown();
    await press(user, ' ');
    await user.click(button(/another count/));
    const field = screen.getByRole('textbox');
    await user.clear(field);
    await user.type(field, 'many');
    expect(screen.getByText(AT_NEEDLES.wholeNumber)).toBeInTheDocument();
    await user.clear(field);
    await user.type(field, '400');
    expect(screen.getByText(/can't be decreased to 71 in one row/)).toBeInTheDocument();
    await press(user, '{Escape}');
    expect(onclose).not.toHaveBeenCalled();
    expect(onNeedle()).toBe(18);
  });

  it('as planned takes back what was said before', async () => {
    const { user } = shown();
    await press(user, ' ');
    await user.click(button(/another count/));
    await user.click(button('One more'));
    await user.click(button(/^Over all/));
    expect(onNeedle()).toBe(19);
    await user.click(button(/another count/));
    await user.click(button('One fewer'));
    await user.click(button('Done'));
    expect(onNeedle()).toBe(18);
    expect(screen.getByText('Marker 2 comes at 36')).toBeInTheDocument();
  });
});
