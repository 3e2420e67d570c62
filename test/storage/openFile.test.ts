import { describe, expect, it } from 'vitest';
import { openFile, readText } from '../../src/storage';
import { BOUNDS, writeDesign } from '../../src/piece';
import { readSample } from '../samples/sample';

const { design } = readSample('pullover');
const text = writeDesign(design);

describe('a file', () => {
  it('that was saved is opened, byte-order mark or not', async () => {
    for (const parts of [[text], ['\uFEFF', text]]) {
      const opened = await openFile(new Blob(parts));
      expect(opened).toEqual({ ok: true, result: { design, notices: [] } });
    }
  });

  it('that is no design is refused in one sentence', async () => {
    const opened = await openFile(new Blob(['%PDF-1.7']));
    expect(opened.ok).toBe(false);
    if (!opened.ok) expect(opened.why).toMatch(/^[^\n]+\.$/);
  });

  it('that is too large is refused before it is read', async () => {
    let read = false;
    class Film extends Blob {
      override get size(): number {
        return BOUNDS.fileBytes + 1;
      }
      override text(): Promise<string> {
        read = true;
        return super.text();
      }
    }
    const opened = await openFile(new Film([text]));
    expect(opened).toMatchObject({ ok: false, why: expect.stringContaining('4') as string });
    expect(read).toBe(false);
  });

  it('that can no longer be read is refused in a sentence', async () => {
    class Gone extends Blob {
      override text(): Promise<string> {
        return Promise.reject(new DOMException('gone', 'NotReadableError'));
      }
    }
    const opened = await openFile(new Gone([text]));
    expect(opened).toMatchObject({ ok: false, why: expect.stringMatching(/could not read/) as string });
  });
});

it('a text with a field of another hand is opened with a notice of it', async () => {
  const opened = await readText(text.replace('"name"', '"colour": "sand", "name"'));
  expect(opened).toMatchObject({ ok: true, result: { notices: [{ kind: 'unknown-fields' }] } });
});
