// A note: the paper that goes with pieces from place to place. A draft is edited and may be due on a day; once
// booked, its lines are movements and it can only be reversed as a whole.
import { z } from 'zod';
import {
  componentCode,
  conditionWord,
  moment,
  ownerCode,
  paperId,
  person,
  pieces,
  placeCode,
  remark,
} from './paper-shapes.ts';

export const noteKinds = ['delivery', 'return', 'transfer', 'issue', 'hire-on', 'hire-off'] as const;
export type NoteKind = (typeof noteKinds)[number];

export const noteStates = ['draft', 'booked', 'dropped', 'reversed'] as const;
export type NoteState = (typeof noteStates)[number];

export const noteLine = z.strictObject({
  component: componentCode,
  owner: ownerCode,
  condition: conditionWord,
  /** As the paper has it. */
  sent: pieces,
  /** As we counted it on arrival or at loading; null while nobody has. This is what is booked. */
  counted: pieces.nullable(),
  /** A container that the pieces came or go in. */
  container: placeCode.nullable(),
  remark: remark.nullable(),
});
export type NoteLine = z.output<typeof noteLine>;

/** What is written on it, beside its kind, number and date. */
export const noteText = z.strictObject({
  from: placeCode,
  to: placeCode,
  job: z.string().max(40).nullable(),
  /** When the truck came and left. */
  arrivedAt: moment.nullable(),
  leftAt: moment.nullable(),
  vehicle: z.string().max(80).nullable(),
  /** Both ends by name; `protest` is what was written beside the signature. */
  signedHere: person.nullable(),
  signedThere: person.nullable(),
  protest: remark.nullable(),
  remark: remark.nullable(),
  lines: z.array(noteLine).max(500),
});
export type NoteText = z.output<typeof noteText>;

export interface YardNote extends NoteText {
  readonly id: string;
  readonly kind: NoteKind;
  /** The number on the paper. */
  readonly number: string;
  readonly state: NoteState;
  /** When it is due; null where nobody said. */
  readonly expectedAt: string | null;
  /** What the other end counted, in the order of the lines; told later, once, and kept beside ours. */
  readonly countedThere: readonly (number | null)[] | null;
  readonly version: number;
}

/** How an attachment came to be taken. */
export const occasions = ['damage-at-delivery', 'load-before-leaving', 'damage-at-strip', 'other'] as const;

/** A photo or scan kept in the folder beside the book, under its digest. */
export const attachmentText = z.strictObject({
  occasion: z.enum(occasions),
  fileName: z.string().trim().min(1).max(200),
  mediaType: z.enum(['image/jpeg', 'image/png', 'image/webp', 'application/pdf']),
  bytes: z.int().min(1),
  /** Of the whole file, in hexadecimal. */
  sha256: z.string().regex(/^[0-9a-f]{64}$/u),
  component: componentCode.nullable(),
  remark: remark.nullable(),
  at: moment,
  who: person,
});
export interface Attachment extends z.output<typeof attachmentText> {
  readonly id: string;
  /** The note, ticket, count, repair or movement that it belongs to. */
  readonly paper: string;
}
export const attachmentId = paperId;
