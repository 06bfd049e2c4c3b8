// What a door may ask of the host itself, outside any book: which book is open, open another, begin a
// new one, begin the demo; and the phone door. Book procedures are in core/procedures; these are about the file.
import { z } from 'zod';
import { improveCalls } from './improve-calls.ts';
import { phoneCalls } from './phone-calls.ts';

const bookFile = z.strictObject({
  file: z.string(),
  name: z.string(),
  /** Another app has it open for writing: this one only reads. */
  readOnly: z.boolean(),
});

export const hostState = z.strictObject({
  door: z.enum(['desktop', 'local']),
  /** Null on the first start. */
  book: bookFile.nullable(),
  /** Files opened lately that still exist, newest first. */
  recent: z.array(z.strictObject({ file: z.string(), name: z.string() })),
  /** Where new books go unless told otherwise. */
  folder: z.string(),
  version: z.string(),
  who: z.string(),
});

export const bookCalls = {
  'host.state': { input: z.strictObject({}), output: hostState },
  /** Makes a new book with the demo job in the host's folder and opens it. */
  'host.demo': { input: z.strictObject({}), output: hostState },
  /** Makes an empty book: a name in the host's folder, or a full path. */
  'host.create': { input: z.strictObject({ file: z.string().min(1).max(1000) }), output: hostState },
  'host.open': { input: z.strictObject({ file: z.string().min(1).max(1000) }), output: hostState },
  /** Writes a copy of the open book by an online backup. */
  'host.copy': {
    input: z.strictObject({ file: z.string().min(1).max(1000) }),
    output: z.strictObject({ file: z.string() }),
  },
} as const;

export type BookCallName = keyof typeof bookCalls;

export const hostCalls = { ...bookCalls, ...phoneCalls, ...improveCalls } as const;

export type HostCallName = keyof typeof hostCalls;
