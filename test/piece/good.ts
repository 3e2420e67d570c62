/** A front with a round neck, a sleeve worked from a schedule, a bare strip; a neckband and a border. */
export const GOOD = {
  format: 'edgewise',
  version: 1,
  name: 'Small pullover',
  units: 'cm',
  terms: 'US',
  hand: 'right',
  pieces: [
    {
      id: 'front',
      gauge: { stitches: 22, rows: 30, over: 100 },
      fabric: 'stockinette',
      symmetric: true,
      outline: [
        { id: 'cast-on', from: [-20, 0], path: 'straight', finish: 'cast-on' },
        { id: 'side-right', from: [20, 0], path: 'straight', selvage: 'plain' },
        { id: 'shoulder-right', from: [20, 60], path: 'straight' },
        {
          id: 'neck-right',
          from: [10, 60],
          path: 'curve',
          handles: [
            [10, 53],
            [7, 48],
          ],
        },
        { id: 'neck-foot', from: [4, 48], path: 'straight', finish: 'live' },
        {
          id: 'neck-left',
          from: [-4, 48],
          path: 'curve',
          handles: [
            [-7, 48],
            [-10, 53],
          ],
        },
        { id: 'shoulder-left', from: [-10, 60], path: 'straight' },
        { id: 'side-left', from: [-20, 60], path: 'straight' },
      ],
    },
    {
      id: 'sleeve',
      gauge: { stitches: 22, rows: 30 },
      outline: [
        { id: 'cuff', from: [0, 0], path: 'straight' },
        {
          id: 'slope',
          from: [30, 0],
          path: 'stepped',
          steps: [
            { stitches: -1, every: 4, times: 4 },
            { stitches: 0, every: 4, times: 1 },
          ],
        },
        { id: 'top', from: [26, 20], path: 'straight' },
        { id: 'back-slope', from: [4, 20], path: 'straight' },
      ],
    },
    {
      id: 'strip',
      outline: [
        { id: 'foot', from: [0, 0], path: 'straight' },
        { id: 'side', from: [6, 0], path: 'straight', selvage: 'slipped' },
        { id: 'head', from: [6, 88], path: 'straight' },
        { id: 'far-side', from: [0, 88], path: 'straight' },
      ],
    },
  ],
  pickups: [
    {
      id: 'neckband',
      along: [
        { piece: 'front', edge: 'neck-right' },
        { piece: 'front', edge: 'neck-foot', part: [0, 0.5] },
        { piece: 'front', edge: 'neck-foot', part: [0.5, 1] },
        { piece: 'front', edge: 'neck-left', backwards: false, part: [0, 1] },
      ],
      joined: true,
      measure: 'edge',
      measured: [{ piece: 'front', edge: 'neck-left', mm: 55 }],
      inset: 1,
      band: { gauge: { stitches: 22, rows: 30, over: 100 }, fabric: 'rib', multiple: 4, plus: 0, rows: 10, drawIn: 0 },
      rates: [{ piece: 'front', edge: 'neck-right', rate: { kind: 'ratio', pick: 3, of: 4 } }],
      target: null,
      spread: 'even',
      sections: { by: 'length', parts: 4, counts: 'exact' },
      stated: [{ piece: 'front', edge: 'neck-left', count: 12 }],
      statedTotal: 32,
      statedSections: [8, 8, 8, 8],
      got: null,
      flat: { slight: 3, strong: 8 },
    },
    { id: 'border', along: [{ piece: 'strip', edge: 'side' }] },
  ],
};
