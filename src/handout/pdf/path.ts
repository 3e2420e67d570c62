import { arcCurves } from './arc';

/** Takes a path: absolute coordinates, every curve a cubic. */
export interface Pen {
  moveTo: (x: number, y: number) => void;
  lineTo: (x: number, y: number) => void;
  curveTo: (x1: number, y1: number, x2: number, y2: number, x: number, y: number) => void;
  close: () => void;
}

/** How many numbers follow each letter. */
const COUNTS: Readonly<Record<string, number>> = { M: 2, L: 2, H: 1, V: 1, C: 6, S: 4, Q: 4, T: 2, A: 7, Z: 0 };

const SPACES = ' ,\n\r\t\f';
const NUMBER = /[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/y;
const FLAG = /[01]/y;

/**
 * Draws path data (SVG 1.1, chapter 8.3: M L H V C S Q T A Z, absolute and relative) with a pen.
 *
 * @throws RangeError when the data is broken, naming the place
 */
export function drawPath(data: string, pen: Pen): void {
  let at = 0;
  const skip = (): void => {
    while (at < data.length && SPACES.includes(data[at]!)) at++;
  };
  const broken = () => new RangeError(`The path's data is broken at letter ${at}: "${data.slice(at, at + 20)}".`);
  const number = (pattern: RegExp): number => {
    skip();
    pattern.lastIndex = at;
    if (!pattern.test(data)) throw broken();
    const from = at;
    at = pattern.lastIndex;
    return Number(data.slice(from, at));
  };

  const walk = new Walk(pen);
  skip();
  let letter = '';
  while (at < data.length) {
    const next = data[at]!;
    if (next.toUpperCase() in COUNTS) {
      letter = next;
      at++;
    } else {
      // Further numbers repeat the letter; after the first place of a move they are lines.
      letter = letter === 'M' ? 'L' : letter === 'm' ? 'l' : letter;
    }
    const count = COUNTS[letter.toUpperCase()];
    if (count === undefined || (count === 0 && next !== letter) || (walk.isNew && letter.toUpperCase() !== 'M')) {
      throw broken();
    }
    const isArc = count === 7;
    const numbers: number[] = [];
    for (let i = 0; i < count; i++) numbers.push(number(isArc && (i === 3 || i === 4) ? FLAG : NUMBER));
    walk.step(letter, numbers);
    skip();
  }
}

/** Where the pen stands on its way, and what the next letter goes by. */
class Walk {
  isNew = true;
  readonly #pen: Pen;
  #x = 0;
  #y = 0;
  #startX = 0;
  #startY = 0;
  /** The last control point, after a curve of the kind that is named here. */
  #kind = '';
  #controlX = 0;
  #controlY = 0;

  constructor(pen: Pen) {
    this.#pen = pen;
  }

  step(letter: string, n: readonly number[]): void {
    const kind = letter.toUpperCase();
    const relative = letter !== kind;
    const [dx, dy] = relative ? [this.#x, this.#y] : [0, 0];
    const [x0, y0, x1, y1, x2, y2] = [n[0]! + dx, n[1]! + dy, n[2]! + dx, n[3]! + dy, n[4]! + dx, n[5]! + dy];
    switch (kind) {
      case 'M':
        this.isNew = false;
        [this.#startX, this.#startY] = [x0, y0];
        this.#pen.moveTo(x0, y0);
        this.#stand(x0, y0);
        break;
      case 'L':
        this.#line(x0, y0);
        break;
      case 'H':
        this.#line(x0, this.#y);
        break;
      case 'V':
        this.#line(this.#x, n[0]! + dy);
        break;
      case 'C':
        this.#cubic(x0, y0, x1, y1, x2, y2);
        break;
      case 'S':
        this.#cubic(...this.#mirrored('C'), x0, y0, x1, y1);
        break;
      case 'Q':
        this.#quadratic(x0, y0, x1, y1);
        break;
      case 'T':
        this.#quadratic(...this.#mirrored('Q'), x0, y0);
        break;
      case 'A': {
        const [rx = 0, ry = 0, turn = 0] = n;
        const [x, y] = [n[5]! + dx, n[6]! + dy];
        const arc = { rx, ry, turn, large: n[3] === 1, sweep: n[4] === 1, x, y };
        for (const curve of arcCurves(this.#x, this.#y, arc)) this.#pen.curveTo(...curve);
        this.#stand(x, y);
        break;
      }
      case 'Z':
        this.#pen.close();
        this.#stand(this.#startX, this.#startY);
        break;
    }
  }

  #line(x: number, y: number): void {
    this.#pen.lineTo(x, y);
    this.#stand(x, y);
  }

  #cubic(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void {
    this.#pen.curveTo(x1, y1, x2, y2, x, y);
    this.#stand(x, y);
    [this.#kind, this.#controlX, this.#controlY] = ['C', x2, y2];
  }

  /** A quadratic curve is a cubic whose control points lie two thirds of the way to its own. */
  #quadratic(cx: number, cy: number, x: number, y: number): void {
    const [fromX, fromY] = [this.#x, this.#y];
    const third = (from: number, to: number) => from + ((to - from) * 2) / 3;
    this.#pen.curveTo(third(fromX, cx), third(fromY, cy), third(x, cx), third(y, cy), x, y);
    this.#stand(x, y);
    [this.#kind, this.#controlX, this.#controlY] = ['Q', cx, cy];
  }

  /** The last control point mirrored in the pen's place, after a curve of the same kind; else that place. */
  #mirrored(kind: string): [x: number, y: number] {
    if (this.#kind !== kind) return [this.#x, this.#y];
    return [2 * this.#x - this.#controlX, 2 * this.#y - this.#controlY];
  }

  #stand(x: number, y: number): void {
    this.#x = x;
    this.#y = y;
    this.#kind = '';
  }
}
