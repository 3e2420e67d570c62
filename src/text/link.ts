/** Words about a link that holds a whole design. */

export const LINK = {
  title: 'Share as a link',
  holds: 'The link itself holds the whole design. Nothing is sent anywhere: whoever opens it gets a copy of their own.',
  field: 'The link',
  copy: 'Copy the link',
  copied: 'The link is on the clipboard.',
  selected: 'The link is selected: press Ctrl C to copy it.',
  broken: 'The link holds no whole design: it was cut or changed on its way. Ask for it again, or for the design file.',
  'too-large': 'The link holds more than any design does, so it was not opened. Ask for the design file.',
  old: 'This browser can’t pack a design into a link: bring it up to date, or use design files.',
  linked: 'What the link holds',
} as const;

const letters = new Intl.NumberFormat('en-US');

/** Longer links than this are cut by some messengers and mail programs (common practice, no source). */
const LONG = 4000;

export function linkLengthText(length: number): string {
  const told = `It is ${letters.format(length)} characters long.`;
  return length > LONG ? `${told} Some mail programs cut links as long as this: the design file is safer then.` : told;
}

export function linkTooLongText(length: number, limit: number): string {
  return `This design makes a link of ${letters.format(length)} characters, and more than ${letters.format(limit)} do not get through whole. Save the design to a file and send that.`;
}
