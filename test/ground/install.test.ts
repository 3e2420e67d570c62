import { describe, expect, it } from 'vitest';
import { isInstalled } from '../../.scripts/install.mjs';

const lock = {
  packages: {
    '': { version: '0.1.0' },
    'node_modules/a': { version: '1.0.0' },
    'node_modules/elsewhere': { version: '1.0.0', optional: true },
    'node_modules/left-over': { version: '1.0.0', extraneous: true },
  },
};

describe('isInstalled', () => {
  it('is content when every package is there in its version, but for those that nothing demands', () => {
    expect(isInstalled(lock, { packages: { 'node_modules/a': { version: '1.0.0' } } })).toBe(true);
  });

  it.each([
    ['nothing is installed', null],
    ['a package is missing', { packages: {} }],
    ['a package has another version', { packages: { 'node_modules/a': { version: '1.0.1' } } }],
  ])('is not when %s', (_, installed) => {
    expect(isInstalled(lock, installed)).toBe(false);
  });
});
