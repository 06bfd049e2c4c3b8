// What `calc level` is asked and what it answers: activities that wait for one another and share resources, in the form
// of the open benchmark sets of resource-constrained scheduling. Rules over more than one field stand in check-level.ts.
import { z } from 'zod';

const id = z.string().min(1).max(200);
const quantity = z.int().min(0).max(1_000_000_000);

const activity = z.strictObject({
  id,
  duration: z.int().min(0).max(1_000_000),
  /** Of each resource for as long as it lasts. */
  demand: z.record(id, quantity).default({}),
  /** Begin when it has ended, or later. */
  successors: z.array(id).default([]),
});

export const levelInput = z.strictObject({
  activities: z.array(activity).max(2000),
  capacity: z.record(id, quantity),
  schedules: z
    .int()
    .min(1)
    .max(10_000_000)
    .default(1000)
    .meta({ description: 'At most so many schedules are generated; a pass that improves one counts as one' }),
  seed: z.int().default(1).meta({ description: 'The same seed gives the same schedule' }),
});
export type LevelInput = z.output<typeof levelInput>;

export const levelAnswer = z.strictObject({
  makespan: z.int().min(0),
  starts: z.record(id, z.int().min(0)),
  lowerBound: z.int().min(0).meta({ description: 'No schedule can be shorter' }),
});
export type LevelAnswer = z.output<typeof levelAnswer>;
