/** What the commands are called in the list of keys, which no first drawing needs. */

/** What every command is called. */
export const COMMAND_LABELS = {
  new: 'Begin a new design',
  handout: 'Print a handout, or save as PDF, SVG, PNG, CSV or text',
  quick: 'Ask a quick question, without a drawing',
  open: 'Open a design file',
  save: 'Save the design',
  'save-drawing': 'Save the drawing as SVG',
  designs: 'Show your designs and the samples',
  link: 'Share the design as a link',
  needles: 'Work the pick-up step by step, at the needles',
  undo: 'Undo the last change',
  redo: 'Make it again',
  fit: 'Fit the drawing',
  edges: 'Show the picked edges',
  'zoom-in': 'Zoom in',
  'zoom-out': 'Zoom out',
  'pan-left': 'Look further left',
  'pan-right': 'Look further right',
  'pan-up': 'Look further up',
  'pan-down': 'Look further down',
  'next-edge': 'Go to the next edge',
  'previous-edge': 'Go to the edge before',
  'next-point': 'Go to the next pick-up point',
  'previous-point': 'Go to the point before',
  'first-point': 'Go to the first point',
  'last-point': 'Go to the last point',
  outline: 'Shape the outline, or go back to the pick-ups',
  'choose-edges': 'Choose the edges of the pick-up on the drawing',
  'nudge-left': 'Move it a stitch to the left',
  'nudge-right': 'Move it a stitch to the right',
  'nudge-up': 'Move it a row up',
  'nudge-down': 'Move it a row down',
  'nudge-far-left': 'Move what is chosen ten stitches to the left',
  'nudge-far-right': 'Move it ten stitches to the right',
  'nudge-far-up': 'Move it ten rows up',
  'nudge-far-down': 'Move it ten rows down',
  'add-corner': 'Put a corner into the chosen edge',
  'remove-corner': 'Remove the chosen corners',
  exact: 'Type exact numbers for what is chosen',
  'choose-all': 'Choose every corner of the piece',
  'duplicate-piece': 'Duplicate the piece',
  'mirror-piece': 'Mirror the piece',
  'let-go': 'Let go of the edge or point, or break off a movement',
  keys: 'Show the keys',
} as const;

/** Where the keys must be going. */
export const COMMAND_PLACES = {
  anywhere: '',
  drawing: 'With the drawing in focus',
  grip: 'With a corner or an edge in focus',
} as const;

/** What the groups of commands are about. */
export const COMMAND_GROUPS = {
  design: 'The design',
  changes: 'Changes',
  drawing: 'Looking at the drawing',
  outline: 'Shaping and choosing',
} as const;
