import { Window } from 'happy-dom';
import { describe, expect, it } from 'vitest';
import { renderSvg, renderSvgBody, type Drawing } from '../../src/renderer';
import { curvedFront, draw, neckband, planOf, square } from './designs';

const plan = planOf(curvedFront(), neckband(['neck-left', 'neck-front', 'neck-right']));
const titled = { title: 'Front & <back>', description: 'A "neckband"' };
const file = (options: Parameters<typeof draw>[1] = {}) => renderSvg(draw(plan, options), titled);

/** Reads strict XML by hand: every element closed in order, every attribute quoted and once, no bare & or <. */
function readXml(text: string): { readonly elements: number; readonly ids: string[]; readonly names: Set<string> } {
  const names = new Set<string>();
  const ids: string[] = [];
  const open: string[] = [];
  let elements = 0;
  let rest = text.replace(/^<\?xml version="1\.0" encoding="UTF-8"\?>\n/, '');
  if (rest === text) throw new Error('no XML declaration');
  const token = /^(?:<([a-z]+)((?: [A-Za-z:-]+="[^"<]*")*)>|<\/([a-z]+)>|([^<]+))/;
  while (rest !== '') {
    const found = token.exec(rest);
    if (!found) throw new Error(`not XML: ${rest.slice(0, 60)}`);
    const [whole, name, attributes, closed, inner] = found;
    for (const piece of [attributes, inner]) {
      if (piece && /&(?!(?:amp|lt|gt|quot);)/.test(piece)) throw new Error(`a bare & in ${piece.slice(0, 60)}`);
    }
    if (name) {
      elements += 1;
      names.add(name);
      open.push(name);
      const keys = [...(attributes ?? '').matchAll(/ ([A-Za-z:-]+)="([^"]*)"/g)];
      if (new Set(keys.map(([, key]) => key)).size !== keys.length) throw new Error(`an attribute twice in ${whole}`);
      ids.push(...keys.filter(([, key]) => key === 'id').map(([, , value]) => value!));
    }
    if (closed && open.pop() !== closed) throw new Error(`${closed} closed out of order`);
    rest = rest.slice(whole.length);
  }
  if (open.length > 0) throw new Error(`${open.join(', ')} never closed`);
  return { elements, ids, names };
}

describe('a drawing as a file', () => {
  it.each([
    ['shape', {}],
    ['stitches', { detail: 'stitches', scale: 1 }],
    ['tiny', { scale: 0.05 }],
  ] as const)('is strict XML with ids of its own (%s)', (_, options) => {
    const { ids, elements } = readXml(file(options));
    expect(elements).toBeGreaterThan(30);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toContain('piece-front');
    expect(ids).toContain('edge-front-neck-left');
  });

  it('holds only groups, paths and words: no script, no picture, nothing fetched, no pattern, filter or mask', () => {
    for (const detail of ['shape', 'stitches'] as const) {
      const text = file({ detail });
      expect([...readXml(text).names].sort()).toEqual(['desc', 'g', 'path', 'svg', 'text', 'title']);
      expect(text).not.toMatch(/url\(|href| style=| on[a-z]+=|data:/);
      expect(text.match(/https?:[^"]*/g)).toEqual(['http://www.w3.org/2000/svg']);
    }
  });

  it('is as large as the sheet, in mm', () => {
    const drawing = draw(plan);
    const text = renderSvg(drawing, titled);
    const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="0 0 \1 \2"/.exec(text)!;
    expect([Number(width), Number(height)]).toEqual([
      expect.closeTo(drawing.width, 3),
      expect.closeTo(drawing.height, 3),
    ]);
  });

  it('is read by a browser’s own parser without an error', () => {
    const window = new Window();
    const document = new window.DOMParser().parseFromString(file(), 'image/svg+xml');
    expect(document.querySelector('parsererror')).toBeNull();
    expect(document.querySelector('title')!.textContent).toBe('Front & <back>');
    expect(document.querySelector('desc')!.textContent).toBe('A "neckband"');
    expect(document.documentElement.getAttribute('role')).toBe('img');
  });

  it('survives names that no file could hold', () => {
    const nasty = 'a\u0000b\u0008<&>"\ud800c\uffff';
    const drawing = draw(planOf(square(60, 84, {}, { name: nasty })));
    const text = renderSvg(drawing, { title: nasty, description: nasty });
    readXml(text);
    expect(text).toContain('<title id="title">ab&lt;&amp;&gt;"c</title>');
  });

  it('keeps ids apart where pieces or edges have like names', () => {
    const like = [square(10, 10, {}, { id: 'a b' }), square(10, 10, {}, { id: 'a_b' })];
    const { ids } = readXml(renderSvg(draw(planOf(like)), titled));
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('has few elements, however many points: one path for each kind of mark and edge', () => {
    const large = planOf(square(900, 1200), {
      along: ['bottom', 'right', 'top', 'left'].map((edge) => ({ piece: 'square', edge })),
    });
    const drawing = draw(large, { scale: 0.2, rulers: false, names: false });
    expect(large.pickups[0]!.points.length).toBeGreaterThan(3000);
    const paths = renderSvg(drawing, titled).match(/<path /g)!;
    expect(paths.length).toBeLessThan(40);
  });
});

describe('a drawing for the screen', () => {
  const patterned = (options: Parameters<typeof draw>[1]) => draw(plan, { fabric: 'pattern', ...options });
  const ids = (drawing: Drawing) => drawing.patterns.map(({ id }) => id);

  it('has a pattern of stitches in their true size', () => {
    const drawing = patterned({ scale: 0.5 });
    expect(ids(drawing)).toEqual(['stitch-front']);
    expect(drawing.patterns[0]!.width).toBeCloseTo((2 * 100 * 0.5) / 18, 9);
    expect(renderSvg(drawing, { ...titled, idPrefix: 'x-' })).toContain('fill="url(#x-stitch-front)"');
  });

  it('has a plain tint where stitches would be noise', () => {
    expect(ids(patterned({ scale: 0.1 }))).toEqual([]);
  });

  it('has no fabric where none is wanted', () => {
    expect(renderSvg(draw(plan, { fabric: 'none' }), titled)).not.toContain('class="fabric" d=');
  });

  it('puts a prefix before every id', () => {
    const { ids: all } = readXml(
      `<?xml version="1.0" encoding="UTF-8"?>\n<svg>${renderSvgBody(draw(plan), { idPrefix: 'x-' })}</svg>`,
    );
    expect(all.length).toBeGreaterThan(5);
    expect(all.every((id) => id.startsWith('x-'))).toBe(true);
  });
});
