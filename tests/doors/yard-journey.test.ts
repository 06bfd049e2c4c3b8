import process from 'node:process';
import { describe, expect } from 'vitest';
import { doorTest } from './door-test.ts';
import { doorKinds, openDoor } from './doors.ts';
import {
  buildsAGang,
  countsTheYard,
  lockRate,
  locksShort,
  receivesADelivery,
  standsIt,
  stripsItsPour,
  trustsTheRecord,
} from './yard-journey.ts';

/** A screen first shows what it had, and the core may be at a long question. */
const patience = { timeout: 15_000 };

describe.each(doorKinds)('through the %s door', (kind) => {
  doorTest(
    kind,
    'pieces are delivered, built in, stripped, counted and explained; the plan and the rates follow',
    async () => {
      const door = await openDoor(kind, { demo: true });
      const { page } = door;
      page.setDefaultTimeout(20_000);
      try {
        // 714 locks held at once, and 630 ready.
        await expect.poll(() => locksShort(page), patience).toBe(84);
        await receivesADelivery(page);
        await buildsAGang(page);
        await standsIt(page);
        await expect.poll(() => lockRate(page), patience).toEqual(['0', '5 %']);
        await stripsItsPour(page);
        // Two of the gang's and four loose ones are gone.
        await expect.poll(() => locksShort(page), patience).toBe(90);
        await expect.poll(() => lockRate(page), patience).toEqual(['6', '5 %']);
        await trustsTheRecord(page);
        // 26 of the gang and 12 loose were expected.
        await expect.poll(() => lockRate(page), patience).toEqual(['6', '15.8 % (6 of 38)']);
        await countsTheYard(page);
        // Three more are gone, and by the day of the count the eight loose ones are dirty beyond their time.
        await expect.poll(() => locksShort(page), patience).toBe(98);
        await expect.poll(() => lockRate(page), patience).toEqual(['9', '23.7 % (9 of 38)']);
      } catch (error) {
        const picture = process.env['REGANG_FAILED_PICTURE'];
        if (picture !== undefined) await page.screenshot({ path: picture });
        throw error;
      } finally {
        await door.close();
      }
    },
  );
});
