import { bench, describe } from 'vitest';
import { renderSvg } from '../../src/renderer';
import { around, curvedFront, draw, neckband, planOf, square } from '../renderer/designs';

const round = planOf(curvedFront(40, 80), neckband(['neck-left', 'neck-front', 'neck-right']));
const large = planOf(square(400, 600), around({ joined: true }));
const window = { square: { minX: 800, minY: 1000, maxX: 1000, maxY: 1200 } };

describe('drawing', () => {
  bench('a round neck, whole', () => void draw(round, { fabric: 'pattern' }));
  bench('a round neck as a file', () => void renderSvg(draw(round), { title: '', description: '' }));
  bench('a blanket of 400 by 600, whole', () => void draw(large, { scale: 0.2, fabric: 'pattern' }));
  bench(
    'a blanket of 400 by 600, zoomed in to its stitches',
    () => void draw(large, { scale: 1, detail: 'stitches', windows: window }),
  );
});
