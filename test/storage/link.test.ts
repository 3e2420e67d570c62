import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDesign, writeDesign } from '../../src/piece';
import { linkPart, LONGEST_LINK, makeLink, readLink } from '../../src/storage';
import { arbitraryDesign } from '../piece/arbitrary';
import { readSample, SAMPLES } from '../samples/sample';

const page = 'https://knit.example/edgewise/';

async function linkOf(text: string): Promise<string> {
  const made = await makeLink(text, page);
  if (!made.ok) throw new Error(`a link of ${made.length} characters`);
  return made.link;
}

/** Packs bytes as a link's part, by Node's own means. */
async function packed(bytes: Uint8Array): Promise<string> {
  const { deflateSync } = await import('node:zlib');
  return deflateSync(bytes).toString('base64url');
}

const pullover = writeDesign(readSample('pullover').design);

describe('a link', () => {
  it.each(SAMPLES)('holds the whole of a design and opens as the same: %s', async (name) => {
    const text = writeDesign(readSample(name).design);
    const link = await linkOf(text);
    expect(link).toMatch(/^https:\/\/knit\.example\/edgewise\/#design=[\w-]+$/);
    expect(link.length).toBeLessThan(3000);
    expect(await readLink(linkPart(link)!)).toEqual({ ok: true, text });
  });

  it('does so for any design', async () => {
    await fc.assert(
      fc.asyncProperty(arbitraryDesign, async (design) => {
        const read = await readLink(linkPart(await linkOf(writeDesign(design)))!);
        expect(read.ok && readDesign(read.text).design).toEqual(design);
      }),
      { numRuns: 60 },
    );
  });

  it('is unpacked alike by other means', async () => {
    const { inflateSync } = await import('node:zlib');
    const part = linkPart(await linkOf(pullover))!;
    expect(inflateSync(Buffer.from(part, 'base64url')).toString()).toBe(pullover);
    expect(await readLink(await packed(Buffer.from(pullover)))).toEqual({ ok: true, text: pullover });
  });

  it('takes the place of another one in the address', async () => {
    const made = await makeLink(pullover, `${page}?a=1#design=abc`);
    expect(made).toMatchObject({
      ok: true,
      link: expect.stringMatching(/edgewise\/\?a=1#design=[\w-]{100,}$/) as string,
    });
  });

  it('that gets too long is refused with its length', async () => {
    const noise = fc.sample(fc.string({ minLength: 60_000, maxLength: 60_000 }), { numRuns: 1, seed: 7 })[0]!;
    const made = await makeLink(noise, page);
    expect(made).toMatchObject({ ok: false, limit: LONGEST_LINK });
    if (!made.ok) expect(made.length).toBeGreaterThan(LONGEST_LINK);
  });
});

describe('the part after the mark', () => {
  it('is found in an address and in a text round it', () => {
    expect(linkPart(`${page}#design=a-b_c`)).toBe('a-b_c');
    expect(linkPart(`See <${page}#design=a-b_c>, and tell me.`)).toBe('a-b_c');
    expect(linkPart(`${page}#design=`)).toBe('');
  });

  it('is none in any other address', () => {
    for (const other of [page, `${page}#`, `${page}#top`, `${page}?design=abc`]) expect(linkPart(other)).toBeNull();
  });
});

describe('a link that is not whole', () => {
  it('is refused wherever it was cut', async () => {
    const part = linkPart(await linkOf(pullover))!;
    for (let length = 0; length < part.length - 1; length += 7) {
      expect(await readLink(part.slice(0, length))).toEqual({ ok: false, fault: 'broken' });
    }
    expect(await readLink(part.slice(0, -1))).toEqual({ ok: false, fault: 'broken' });
  });

  it('is never opened as another design, whichever letter was changed', async () => {
    const part = linkPart(await linkOf(pullover))!;
    const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
    await fc.assert(
      fc.asyncProperty(fc.nat(part.length - 1), fc.constantFrom(...Array.from(letters)), async (at, letter) => {
        const read = await readLink(part.slice(0, at) + letter + part.slice(at + 1));
        expect(read).toEqual(read.ok ? { ok: true, text: pullover } : { ok: false, fault: 'broken' });
      }),
      { numRuns: 300 },
    );
  });

  it.each(['', '%', 'A', 'AAAA', 'hello world', 'eJw', '====', 'é'])('is refused: %j', async (part) => {
    expect(await readLink(part)).toEqual({ ok: false, fault: 'broken' });
  });
});

describe('a link that holds too much', () => {
  const limit = 4 * 1024 * 1024;

  it('is one of more than 4 MiB, to the byte', async () => {
    expect(await readLink(await packed(new Uint8Array(limit)))).toMatchObject({ ok: true });
    expect(await readLink(await packed(new Uint8Array(limit + 1)))).toEqual({ ok: false, fault: 'too-large' });
    expect(await readLink(await packed(new Uint8Array(25 * limit)))).toEqual({ ok: false, fault: 'too-large' });
  });
});
