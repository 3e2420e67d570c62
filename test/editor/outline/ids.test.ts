import { expect, it } from 'vitest';
import { freshId } from '../../../src/editor';
import { idOf } from '../../../src/editor/outline/ids';

it('an id that is free is taken as it is', () => {
  expect(freshId('neck', ['side'])).toBe('neck');
});

it('an id that is taken gets the lowest number that is free', () => {
  expect(freshId('neck', ['neck'])).toBe('neck-2');
  expect(freshId('neck', ['neck', 'neck-2', 'neck-4'])).toBe('neck-3');
});

it('an id with a number is numbered on', () => {
  expect(freshId('neck-2', ['neck', 'neck-2'])).toBe('neck-3');
});

it('an id made of a name has its letters and digits', () => {
  expect(idOf('Border, all round', 'band')).toBe('border-all-round');
  expect(idOf('Blende für Größe 40½', 'band')).toBe('blende-fur-große-401-2');
  expect(idOf(' … ', 'band')).toBe('band');
});
