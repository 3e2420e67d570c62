import { flushSync, mount, unmount } from 'svelte';
import { afterEach, describe, expect, it } from 'vitest';
import { Diagram, DiagramBody, renderSvg, type DrawnElement, type Lit } from '../../src/renderer';
import { svgElement } from '../../src/renderer/elements';
import { curvedFront, draw, neckband, planOf } from './designs';

const plan = planOf(curvedFront(), neckband(['neck-left', 'neck-front', 'neck-right']));
const titled = { title: 'Front', description: 'A neckband' };

let mounted: ReturnType<typeof mount> | null = null;

afterEach(async () => {
  if (mounted) await unmount(mounted);
  mounted = null;
  document.body.replaceChildren();
});

/** What stands in the page, as the tree that both the writer and the component draw. */
function readTree(element: Element): Omit<DrawnElement, 'name'> & { name: string } {
  const children = [...element.children].map((child) => readTree(child) as DrawnElement);
  const attributes = Object.fromEntries([...element.attributes].map(({ name, value }) => [name, value]));
  const text = children.length === 0 && element.textContent !== '' ? { text: element.textContent } : {};
  return { name: element.tagName, attributes, children, ...text };
}

describe('the component on a page', () => {
  it('holds the elements of the file, all in the namespace of SVG', () => {
    const drawing = draw(plan);
    mounted = mount(Diagram, { target: document.body, props: { drawing, ...titled } });
    const svg = document.querySelector('svg')!;
    expect(readTree(svg)).toEqual(svgElement(drawing, titled));
    expect(renderSvg(drawing, titled)).toContain('<svg');
    for (const element of svg.querySelectorAll('*')) expect(element.namespaceURI).toBe('http://www.w3.org/2000/svg');
  });

  it('lights one edge and touches nothing else', () => {
    const props = $state<{ drawing: ReturnType<typeof draw>; lit: Lit | null }>({ drawing: draw(plan), lit: null });
    const target = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
    document.body.append(target);
    mounted = mount(DiagramBody, { target, props });
    const edge = target.querySelector('#edge-front-neck-left')!;
    const before = [...target.querySelectorAll('*')];
    props.lit = { piece: 'front', edge: 'neck-left' };
    flushSync();
    expect(edge.getAttribute('class')).toBe('edge lit');
    expect(target.querySelectorAll('.lit')).toHaveLength(1);
    expect([...target.querySelectorAll('*')]).toEqual(before);
    props.lit = null;
    flushSync();
    expect(target.querySelectorAll('.lit')).toHaveLength(0);
  });

  it('redraws in place when the drawing changes', () => {
    let drawing = $state.raw(draw(plan));
    mounted = mount(Diagram, {
      target: document.body,
      props: {
        get drawing() {
          return drawing;
        },
        ...titled,
      },
    });
    const svg = document.querySelector('svg')!;
    const outlines = [...svg.querySelectorAll('path.outline')];
    const larger = draw(plan, { scale: 0.8 });
    drawing = larger;
    flushSync();
    expect(readTree(svg)).toEqual(svgElement(larger, titled));
    expect([...svg.querySelectorAll('path.outline')]).toEqual(outlines);
    expect(document.querySelector('svg')).toBe(svg);
  });
});
