// A sheet as the doors are given it: a plain tree, the same whoever turns it into a page.
import { z } from 'zod';
import { type SheetNode, sheetAttributes, sheetTags } from '../sheets/node.ts';
import { code, date } from './shapes.ts';

const node: z.ZodType<SheetNode> = z.union([z.string(), z.lazy(() => element)]);

const element = z.strictObject({
  tag: z.enum(sheetTags),
  attributes: z.partialRecord(z.enum(sheetAttributes), z.string()),
  children: z.array(node),
});

export const sheetOutput = z.strictObject({
  title: z.string(),
  /** At the foot of every page, before the time of printing. */
  foot: z.string(),
  tree: element,
  /** The first day, of a sheet of days. */
  of: z.exactOptional(date),
});

export const sheetInput = z.strictObject({
  design: code,
  /** Of a pour, and whose units and name the sheet carries; absent: that of the design's turns, where it is one. */
  job: z.exactOptional(code),
  /** At which pour the gang is shown in its wall; absent: the first at which it is planned to stand. */
  pour: z.exactOptional(code),
  units: z.exactOptional(z.enum(['us', 'metric'])),
});

/** A sheet of a paper or thing of the yard. */
export const paperSheetInput = z.strictObject({
  /** Of the ticket, count, note, load or gang; a pick list names what it is for. */
  id: z.string().trim().min(1).max(120),
  units: z.exactOptional(z.enum(['us', 'metric'])),
});
