import { describe } from 'vitest';
import { doorTest } from './door-test.ts';
import { doorKinds, openDoor } from './doors.ts';
import { board, designs, pours, reversal, shortfalls, yard } from './journey.ts';

describe.each(doorKinds)('through the %s door', (kind) => {
  doorTest(kind, 'a coordinator goes over Board, Shortfalls, Designs, Yard and Pours', async () => {
    const door = await openDoor(kind, { demo: true });
    door.page.setDefaultTimeout(15_000);
    try {
      await board(door.page);
      await shortfalls(door.page);
      await designs(door.page);
      await yard(door.page);
      await reversal(door.page);
      await pours(door.page);
    } catch (error) {
      const picture = process.env['REGANG_FAILED_PICTURE'];
      if (picture !== undefined) await door.page.screenshot({ path: picture });
      throw error;
    } finally {
      await door.close();
    }
  });
});
