// The sheets of the yard's papers and things, by kind: each is asked for by the id of what it shows.
import type { Procedure } from './procedure.ts';
import { sheetCount } from './sheet-count.ts';
import { sheetDay } from './sheet-day.ts';
import { sheetDelivery } from './sheet-delivery.ts';
import { sheetReturn } from './sheet-return.ts';
import { sheetShortfalls } from './sheet-shortfalls.ts';
import { sheetStrip } from './sheet-strip.ts';
import { sheetLoading } from './sheet-loading.ts';
import { sheetPicklist } from './sheet-picklist.ts';
import { sheetTags } from './sheet-tags.ts';
import { sheetWeek } from './sheet-week.ts';

export const paperSheets: Readonly<Record<string, Procedure>> = {
  count: sheetCount,
  day: sheetDay,
  delivery: sheetDelivery,
  return: sheetReturn,
  loading: sheetLoading,
  picklist: sheetPicklist,
  shortfalls: sheetShortfalls,
  strip: sheetStrip,
  tags: sheetTags,
  week: sheetWeek,
};
