import { describe, expect, it } from 'vitest';
import { fileName } from '../../src/storage';

describe('the name of a file', () => {
  it.each([
    ['Round-neck pullover', 'round-neck-pullover.svg'],
    ["Maren's harbour pullover", 'marens-harbour-pullover.svg'],
    ['71 stitches over 88 rows', '71-stitches-over-88-rows.svg'],
    ['Ærø / "øy" \\ <x>', 'ærø-øy-x.svg'],
    ['Gilet à côtes', 'gilet-a-cotes.svg'],
    ['帽子', '帽子.svg'],
    ['../../etc/passwd', 'etc-passwd.svg'],
    ['con', 'design-con.svg'],
    ['...', 'design.svg'],
    ['', 'design.svg'],
  ])('of %j is %s', (name, file) => {
    expect(fileName(name, '.svg')).toBe(file);
  });

  it.each(['very ', '𠮷'])('is not longer than a file system takes: %s', (word) => {
    const long = fileName(`${word.repeat(100)}long`, '.edgewise.json');
    expect(new TextEncoder().encode(long).length).toBeLessThan(255);
    expect(long).not.toMatch(/-\./);
    // No letter is cut in half.
    expect(long).not.toMatch(/\p{Surrogate}/u);
  });
});
