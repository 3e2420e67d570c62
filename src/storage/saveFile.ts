/** How long the browser may take to fetch what it saves, ms. */
const FETCHED = 60_000;

/** Hands a text or bytes to the browser to save as a file, where and how the browser does that. */
export function saveFile(name: string, data: string | Blob, type: string): void {
  const address = URL.createObjectURL(new Blob([data], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), FETCHED);
}

/** The longest name, without its ending, that every file system takes. */
const LONGEST = 60;
/** Names that one widespread system keeps for its devices. */
const DEVICES = /^(con|prn|aux|nul|com\d|lpt\d)$/;

/** A name that every system can store: letters, figures and hyphens. */
export function fileName(name: string, ...ending: string[]): string {
  const words = name
    .normalize('NFKD')
    .replace(/['’\p{M}]/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .toLowerCase();
  const plain = Array.from(words.replace(/^-/, '')).slice(0, LONGEST).join('').replace(/-$/, '');
  return [plain === '' ? 'design' : DEVICES.test(plain) ? `design-${plain}` : plain, ...ending].join('');
}
