import { BOUNDS } from '../piece';

/** What a link begins with after its hash sign. */
const MARK = 'design=';
const LINK = /#design=([\w-]*)/;

/**
 * The longest link that is made, in characters. Browsers open far longer ones, but what stands between two people cuts
 * long addresses: this is the length that is still shown whole in an address bar (common practice, no source). A design
 * of usual size makes a link of 1,000 to 3,000 characters.
 */
export const LONGEST_LINK = 32_000;

export type LinkMade =
  | { readonly ok: true; readonly link: string }
  | { readonly ok: false; readonly length: number; readonly limit: number };

/** Why a link holds no design: it was cut off or altered on its way, or holds more than any design does. */
export type LinkFault = 'broken' | 'too-large';

export type LinkText = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly fault: LinkFault };

/**
 * A link that holds a whole design: its text, compressed, after the hash sign, which no browser sends to a server. The
 * zlib format (RFC 1950, https://www.rfc-editor.org/rfc/rfc1950) carries a checksum, so that a link with one character
 * changed is never opened as another design. Base64url is that of RFC 4648, section 5, without padding.
 * @param text a design file
 * @param page the page's address; what follows a hash sign in it is left out
 */
export async function makeLink(text: string, page: string): Promise<LinkMade> {
  const packed = await drain(streamOf(new TextEncoder().encode(text), new CompressionStream('deflate')), Infinity);
  const link = `${page.replace(/#.*$/s, '')}#${MARK}${toBase64(packed!)}`;
  const { length } = link;
  return length > LONGEST_LINK ? { ok: false, length, limit: LONGEST_LINK } : { ok: true, link };
}

/** What an address, or a text with a link in it, has after the mark; null where there is no such link. */
export function linkPart(text: string): string | null {
  return LINK.exec(text)?.[1] ?? null;
}

/** The text of the design in a link's part after the mark. Hardly more than a design file may hold is ever unpacked. */
export async function readLink(part: string): Promise<LinkText> {
  const bytes = fromBase64(part);
  if (!bytes) return { ok: false, fault: 'broken' };
  let unpacked: Uint8Array | null;
  try {
    unpacked = await drain(streamOf(bytes, new DecompressionStream('deflate')), BOUNDS.fileBytes);
  } catch (error) {
    if (isFault(error)) return { ok: false, fault: 'broken' };
    throw error;
  }
  if (!unpacked) return { ok: false, fault: 'too-large' };
  return { ok: true, text: new TextDecoder().decode(unpacked) };
}

/**
 * So many bytes go into the stream at a time. A browser unpacks all that it is given before it looks whether anybody
 * still wants it, up to 1,032 bytes out of one (https://zlib.net/zlib_tech.html, "Maximum Compression Factor").
 */
const MORSEL = 1024;

function streamOf(
  bytes: Uint8Array<ArrayBuffer>,
  through: CompressionStream | DecompressionStream,
): ReadableStream<Uint8Array> {
  let at = 0;
  const source = new ReadableStream<BufferSource>({
    pull: (controller) => {
      if (at < bytes.length) controller.enqueue(bytes.subarray(at, (at += MORSEL)));
      else controller.close();
    },
  });
  return source.pipeThrough(through);
}

/** All that a stream gives; null, and no more is read, once it has given more than `most` bytes. */
async function drain(stream: ReadableStream<Uint8Array>, most: number): Promise<Uint8Array | null> {
  const chunks: Uint8Array[] = [];
  let length = 0;
  const reader = stream.getReader();
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    length += next.value.length;
    if (length > most) {
      await reader.cancel();
      return null;
    }
    chunks.push(next.value);
  }
  const all = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    all.set(chunk, at);
    at += chunk.length;
  }
  return all;
}

/** Browsers throw a TypeError for data that can't be unpacked, Node an error of its own with a code. */
function isFault(error: unknown): boolean {
  return error instanceof TypeError || (error instanceof Error && 'code' in error);
}

/** So many bytes at a time are turned into letters: a call takes only so many arguments. */
const AT_ONCE = 0x8000;

function toBase64(bytes: Uint8Array): string {
  let letters = '';
  for (let i = 0; i < bytes.length; i += AT_ONCE) letters += String.fromCharCode(...bytes.subarray(i, i + AT_ONCE));
  return btoa(letters).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

function fromBase64(text: string): Uint8Array<ArrayBuffer> | null {
  if (!/^[\w-]+$/.test(text)) return null;
  try {
    return Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (letter) => letter.charCodeAt(0));
  } catch (error) {
    if (error instanceof DOMException) return null;
    throw error;
  }
}
