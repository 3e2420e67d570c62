import { beforeEach, describe, expect, it } from 'vitest';
import { Places } from '../../src/storage';
import { MemoryStore } from './store';

const DAY = 24 * 60 * 60 * 1000;
let store: MemoryStore;
let now: number;
let places: Places;
beforeEach(() => {
  store = new MemoryStore();
  now = 100 * DAY;
  places = new Places(
    () => store,
    () => now,
  );
});

describe('the place in a pick-up', () => {
  it('is there for the next page as soon as it is put', () => {
    expect(places.put('a', 'neckband', { opening: 7 })).toBe(true);
    places.put('a', 'armhole', { opening: 2 });
    const next = new Places(() => store);
    expect(next.get('a', 'neckband')).toEqual({ opening: 7 });
    expect(next.opened('a')).toBe('armhole');
    expect(next.get('a', 'toString')).toBeUndefined();
    expect(next.get('b', 'neckband')).toBeUndefined();
  });

  it('stays when its view is left', () => {
    places.put('a', 'neckband', { opening: 7 });
    places.leave('a');
    expect([places.opened('a'), places.get('a', 'neckband')]).toEqual([null, { opening: 7 }]);
    places.leave('none');
    expect(store.length).toBe(1);
  });

  it('goes along when a work goes on as another one', () => {
    places.put('a', 'neckband', { opening: 7 });
    places.copy('a', 'b');
    places.copy('none', 'c');
    places.put('a', 'neckband', { opening: 9 });
    expect([places.opened('b'), places.get('b', 'neckband'), places.opened('c')]).toEqual([
      'neckband',
      { opening: 7 },
      null,
    ]);
  });

  it('of a design that is gone is forgotten after a week', () => {
    places.put('gone', 'x', 1);
    places.put('here', 'x', 1);
    store.setItem('edgewise.theme', 'dark');
    now += 6 * DAY;
    places.keepOnly(new Set(['here']));
    expect(places.get('gone', 'x')).toBe(1);
    now += 2 * DAY;
    places.keepOnly(new Set(['here']));
    expect([places.get('gone', 'x'), places.get('here', 'x'), store.length]).toEqual([undefined, 1, 2]);
  });
});

describe('a small store', () => {
  it.each(['no JSON', '3', 'null', '{"at": 1, "places": null}', '{"places": {}}'])(
    'with %s in it has no place',
    (text) => {
      store.setItem('edgewise.place.a', text);
      expect([places.opened('a'), places.get('a', 'x')]).toEqual([null, undefined]);
      expect(places.put('a', 'x', 1)).toBe(true);
      expect(places.get('a', 'x')).toBe(1);
    },
  );

  it('that is full or shut says that nothing is kept, and does not disturb', () => {
    store.full = true;
    expect(places.put('a', 'x', 1)).toBe(false);
    store.shut = true;
    expect(places.put('a', 'x', 1)).toBe(false);
    expect(places.opened('a')).toBeNull();
    places.leave('a');
    places.keepOnly(new Set());
  });
});
