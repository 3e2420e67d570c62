import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import { Diagram, DiagramBody, renderSvg, renderSvgBody } from '../../src/renderer';
import { curvedFront, draw, neckband, planOf } from './designs';

const plan = planOf(curvedFront(), neckband(['neck-left', 'neck-front', 'neck-right']));
const titled = { title: 'Front & <back>', description: 'A "neckband"' };

/** Without the comments that the component leaves, and the line ends between elements that the writer puts. */
const plainly = (text: string) =>
  text
    .replace(/<!--[^]*?-->/g, '')
    .replace(/>\s+</g, '><')
    .replace(/^<\?xml[^>]*>/, '')
    .trim();

describe('the component on a server', () => {
  it.each(['pattern', 'near-edge', 'none'] as const)('gives the very text of the file (fabric: %s)', (fabric) => {
    const drawing = draw(plan, { fabric });
    const { body } = render(Diagram, { props: { drawing, ...titled } });
    const written = plainly(renderSvg(drawing, titled));
    expect(written.length).toBeGreaterThan(5000);
    expect(plainly(body)).toBe(plainly(unquoted(written)));
  });

  it('gives the body alone with a prefix', () => {
    const drawing = draw(plan, { fabric: 'pattern' });
    const { body } = render(DiagramBody, { props: { drawing, idPrefix: 'x-' } });
    expect(plainly(body)).toBe(unquoted(plainly(renderSvgBody(drawing, { idPrefix: 'x-' }))));
  });
});

/** In text the component leaves > as it is, which both are allowed to. */
function unquoted(text: string): string {
  return text.replaceAll('&gt;', '>');
}
