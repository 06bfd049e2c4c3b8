import path from 'node:path';
import process from 'node:process';
import { describe } from 'vitest';
import { doorTest } from './door-test.ts';
import { makeLargeBook } from '../bench/large-book.ts';
import { doorKinds, newFolder, openDoor } from './doors.ts';
import {
  asksWhy,
  comparesTwoPlans,
  endsTheDay,
  looksForABetterPlan,
  stopsALongSearch,
  takesTheSecondWayOut,
  typesADayLater,
} from './plan-journey.ts';

describe.each(doorKinds)('through the %s door', (kind) => {
  doorTest(
    kind,
    'a pour is a day off, a shortfall gets its way out, plans are compared and bettered, the day is ended',
    async () => {
      const door = await openDoor(kind, { demo: true });
      const { page } = door;
      page.setDefaultTimeout(30_000);
      try {
        await typesADayLater(page);
        await takesTheSecondWayOut(page);
        await asksWhy(page);
        await comparesTwoPlans(page);
        await looksForABetterPlan(page);
        await endsTheDay(page);
      } catch (error) {
        const picture = process.env['REGANG_FAILED_PICTURE'];
        if (picture !== undefined) await page.screenshot({ path: picture });
        throw error;
      } finally {
        await door.close();
      }
    },
  );

  doorTest(
    kind,
    'a long search on a job of 240 turns is stopped while it runs, and its best is kept',
    async () => {
      const book = path.join(newFolder(), 'large.regang');
      await makeLargeBook(book, { seed: 1, pours: 60, weeks: 10 });
      const door = await openDoor(kind, { book });
      door.page.setDefaultTimeout(30_000);
      try {
        await stopsALongSearch(door.page);
      } finally {
        await door.close();
      }
    },
  );
});
