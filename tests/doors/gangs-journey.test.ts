import { rmSync } from 'node:fs';
import process from 'node:process';
import { describe } from 'vitest';
import { doorTest } from './door-test.ts';
import { doorKinds, newFolder, openDoor } from './doors.ts';
import { changesABand, fillsAWall, mirrorsIt, printsBothSheets, typesAGang } from './gangs-journey.ts';

describe.each(doorKinds)('through the %s door', (kind) => {
  doorTest(
    kind,
    'a gang is typed, mended, mirrored, a wall filled; it follows its rule tables and is printed',
    async () => {
      const folder = newFolder();
      const door = await openDoor(kind, { demo: true });
      door.page.setDefaultTimeout(15_000);
      try {
        await typesAGang(door.page);
        await mirrorsIt(door.page);
        await fillsAWall(door.page);
        await changesABand(door.page);
        await printsBothSheets(door, folder);
      } catch (error) {
        const picture = process.env['REGANG_FAILED_PICTURE'];
        if (picture !== undefined) await door.page.screenshot({ path: picture });
        throw error;
      } finally {
        await door.close();
        rmSync(folder, { recursive: true, force: true });
      }
    },
  );
});
