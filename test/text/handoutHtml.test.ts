import { Window } from 'happy-dom';
import { describe, expect, it } from 'vitest';
import { planDesign } from '../../src/pickup';
import { instructions, instructionsHtml, instructionsPage, voiceOf } from '../../src/text';
import { planSample, readSample, SAMPLES } from '../samples/sample';

function read(html: string) {
  const { document } = new Window();
  document.body.innerHTML = html;
  return document.body;
}

const textsOf = (root: ReturnType<typeof read>, selector: string) =>
  [...root.querySelectorAll(selector)].map(({ textContent }) => textContent);

describe.each(SAMPLES)('the instructions of %s as HTML', (name) => {
  const plan = planSample(name);
  const html = instructionsHtml(plan);
  const body = read(html);

  it('hold every paragraph of the written ones, in their order', () => {
    const paragraphs = plan.pickups.flatMap((pickup) => instructions(pickup, voiceOf(plan.design)));
    expect(textsOf(body, 'p')).toEqual(paragraphs);
  });

  it('have a line in a table for every edge and every section, with its count', () => {
    const tables = [...body.querySelectorAll('table')].map((table) =>
      [...table.querySelectorAll('tbody tr')].map((row) => textsOf(row as unknown as typeof body, 'th, td')),
    );
    const edges = tables.filter(([row]) => Number.isNaN(Number(row![0])));
    expect(edges.map((rows) => rows.map((row) => Number(row.at(-1))))).toEqual(
      plan.pickups.map((pickup) => pickup.edges.map(({ count }) => count)),
    );
    const sections = tables.filter((one) => !edges.includes(one));
    const told = sections.map((rows) => rows.map((row) => row.filter((cell) => /^\d+$/.test(cell)).map(Number)));
    expect(told.map((rows) => rows.map((row) => row.slice(0, 3)))).toEqual(
      plan.pickups
        .filter((pickup) => pickup.sections.length > 1)
        .map((pickup) => pickup.sections.map(({ n, count, running }) => [n, count, running])),
    );
  });

  it('are plain elements without looks, scripts or addresses', () => {
    const names = new Set([...body.querySelectorAll('*')].map(({ localName }) => localName));
    const plain = ['h2', 'h3', 'ul', 'li', 'p', 'table', 'thead', 'tbody', 'tfoot', 'tr', 'th', 'td'];
    expect([...names].filter((one) => !plain.includes(one))).toEqual([]);
    const attributes = [...body.querySelectorAll('*')].flatMap((one) => [...one.attributes].map((each) => each.name));
    expect([...new Set(attributes)]).toEqual(['scope']);
  });
});

it('has no column of lengths where none is known', () => {
  const html = instructionsHtml(planSample('strip'));
  expect(textsOf(read(html), 'thead th')).toEqual(['edge', 'from', 'pick up', 'section', 'here', 'in all']);
});

describe('names out of a file', () => {
  const { design } = readSample('pullover');
  const nasty = '<script>alert("1")</script> & \u0007co';
  const plan = planDesign({
    ...design,
    name: nasty,
    pieces: design.pieces.map((piece) => ({ ...piece, name: nasty })),
    pickups: design.pickups.map((pickup) => ({ ...pickup, name: nasty })),
  });

  it('stay words', () => {
    const body = read(instructionsHtml(plan));
    expect(body.querySelector('script')).toBeNull();
    expect(body.querySelector('h2')!.textContent).toContain('<script>alert("1")</script> & co');
  });

  it('stay words in the title of a page', () => {
    const page = instructionsPage(plan);
    expect(page).toContain('<title>&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp; co</title>');
    expect(page).toMatch(/^<!doctype html>\n<html lang="en">\n<head>\n<meta charset="utf-8">/);
    expect(page.endsWith('</body>\n</html>\n')).toBe(true);
  });
});

it('holds one pick-up where one is named, in UK terms where they are asked for', () => {
  const { design } = readSample('blanket');
  const plan = planDesign({ ...design, terms: 'UK' });
  const [first] = plan.pickups;
  const body = read(instructionsHtml(plan, {}, first!.pickup.id));
  expect(textsOf(body, 'h2')).toEqual([`${design.name}: ${first!.pickup.name}`]);
  expect(body.textContent).toContain('Tension');
});
