// `regang calc level` as a script asks it.
import { expect, test } from 'vitest';
import { run } from './run-cli.ts';

test('two activities of one resource come one after the other, and the shape of the question can be asked for', async () => {
  const question = {
    activities: [
      { id: 'set', duration: 3, demand: { crew: 2 }, successors: [] },
      { id: 'strip', duration: 2, demand: { crew: 1 }, successors: [] },
    ],
    capacity: { crew: 2 },
    schedules: 100,
    seed: 1,
  };
  const ran = await run(['calc', 'level'], JSON.stringify(question));
  expect(ran).toMatchObject({ code: 0, stderr: '' });
  expect(ran.document()).toMatchObject({ makespan: 5, lowerBound: 5 });
  const shape = await run(['schema', 'calc', 'level']);
  expect(Object.keys((shape.document()['output'] as { properties: object }).properties)).toEqual([
    'makespan',
    'starts',
    'lowerBound',
  ]);
});

test('a demand over the capacity is refused by name, exit 2', async () => {
  const question = { activities: [{ id: 'set', duration: 1, demand: { crew: 3 } }], capacity: { crew: 2 } };
  const ran = await run(['calc', 'level'], JSON.stringify(question));
  expect(ran.code).toBe(2);
  expect(ran.document()).toMatchObject({
    error: { code: 'demand-over-capacity', field: 'activities[0].demand.crew' },
  });
});
