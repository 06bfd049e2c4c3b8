import { expect } from 'vitest';
import { doorTest } from './door-test.ts';
import { doorKinds, openDoor } from './doors.ts';
for (const kind of doorKinds)
  doorTest(kind, `x ${kind}`, async () => {
    const door = await openDoor(kind, {});
    console.log(await door.page.evaluate(() => document.body.innerText.slice(0, 300)), door.page.url());
    expect(await door.page.title()).toBe('Regang');
    console.log(await door.close());
  });
