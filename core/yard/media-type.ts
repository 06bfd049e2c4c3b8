// What a file is by its first bytes, whatever its name says.
import type { Attachment } from './note.ts';

const marks: readonly (readonly [Attachment['mediaType'], readonly (number | null)[]])[] = [
  ['image/jpeg', [0xff, 0xd8, 0xff]],
  ['image/png', [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]],
  ['image/webp', [0x52, 0x49, 0x46, 0x46, null, null, null, null, 0x57, 0x45, 0x42, 0x50]],
  ['application/pdf', [0x25, 0x50, 0x44, 0x46, 0x2d]],
];

/** Null where it is none of those that are kept. */
export function mediaTypeOf(content: Uint8Array): Attachment['mediaType'] | null {
  const found = marks.find(([, mark]) =>
    mark.every((byte, index) => byte === null || content[index] === byte),
  );
  return found?.[0] ?? null;
}
