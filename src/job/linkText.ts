/**
 * A job in a link: its version, a dot, and the record as lines of text, compressed and in base64url. It stands behind the # of an
 * address, which browsers never send to a server. What comes in is hostile until it is read.
 */
import { forLink } from './forLink.ts';
import { packed, unpacked } from './linkPack.ts';
import { personalNotes } from './notes.ts';
import { type JobRefusal, jobVersion, readJob } from './schema.ts';
import type { Job, NoteKey } from './types.ts';

/** How long a link may be, and what it may hold once inflated, bytes. */
export const linkLimits = { characters: 16_384, inflated: 262_144 } as const;

/** `tooLong`: longer, or more behind it, than a job can be. */
export type LinkRefusal = JobRefusal | 'tooLong';
export type ReadLink = { readonly ok: true; readonly job: Job } | { readonly ok: false; readonly reason: LinkRefusal };

/** The job as text for a link; `named` takes along who and where. */
export async function encodeJob(job: Job, named: boolean): Promise<string> {
  const { notes, ...carried } = forLink(job);
  const kept = Object.entries(notes).filter(([key]) => named || !personalNotes.includes(key as NoteKey));
  const text = packed({ ...carried, notes: Object.fromEntries(kept) });
  return `${jobVersion}.${toBase64(await piped(new Blob([text]), new CompressionStream('deflate-raw')))}`;
}

/** Takes the compression off; throws for what is none, and for more than a job can be. */
type Inflate = (deflated: Uint8Array<ArrayBuffer>) => Promise<Uint8Array> | Uint8Array;

/** The job that a text is, or why it is none. Never rejects, whatever the text; `inflate` stands in for the platform's own. */
export async function decodeJob(text: string, inflate: Inflate = inflated): Promise<ReadLink> {
  if (text.length > linkLimits.characters) return { ok: false, reason: 'tooLong' };
  const [, version, carried] = /^(\d{1,3})\.([\w-]+)$/.exec(text) ?? [];
  if (version === undefined || carried === undefined) return { ok: false, reason: 'notAJob' };
  if (Number(version) > jobVersion) return { ok: false, reason: 'newer' };
  try {
    const bytes = await inflate(fromBase64(carried));
    return readJob(unpacked(new TextDecoder('utf-8', { fatal: true }).decode(bytes)));
  } catch (error) {
    return { ok: false, reason: error === tooMuch ? 'tooLong' : 'broken' };
  }
}

const inflated: Inflate = (deflated) =>
  piped(new Blob([deflated]), new DecompressionStream('deflate-raw'), linkLimits.inflated);

const tooMuch = new Error('more behind the link than a job can be');

/** All bytes that come out of a stream; it is given up as soon as there are more than `most`. */
async function piped(
  from: Blob,
  through: CompressionStream | DecompressionStream,
  most = Number.POSITIVE_INFINITY,
): Promise<Uint8Array<ArrayBuffer>> {
  const reader = from.stream().pipeThrough(through).getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    length += next.value.length;
    if (length > most) {
      await reader.cancel();
      throw tooMuch;
    }
    parts.push(next.value);
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

function toBase64(bytes: Uint8Array): string {
  const binary = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

function fromBase64(text: string): Uint8Array<ArrayBuffer> {
  const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  const bytes = new Uint8Array(binary.length);
  for (let at = 0; at < binary.length; at++) bytes[at] = binary.charCodeAt(at);
  return bytes;
}
