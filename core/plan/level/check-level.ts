// What cannot be levelled, named: the same id twice, ids and resources nobody gave, more of a resource than there is,
// activities that wait for one another in a circle.
import { refuse, type Refusal } from '../../answer.ts';
import { circlesIn, shortestCircle } from '../circles.ts';
import type { LevelInput } from './contract.ts';

/** Starts stay whole numbers and sums of durations exact. */
const longest = 1_000_000_000;

export function checkLevel({ activities, capacity }: LevelInput): Refusal | undefined {
  const place = new Map<string, number>();
  for (const [index, { id }] of activities.entries()) {
    const first = place.get(id);
    if (first !== undefined)
      return refuse(
        'named-twice',
        `The activity "${id}" stands in the list twice, as entry ${first + 1} and ${index + 1}.`,
        { field: `activities[${index}].id` },
      ).error;
    place.set(id, index);
  }
  return (
    checkDemands(activities, capacity) ??
    checkSuccessors(activities, place) ??
    checkCircle(activities) ??
    checkLength(activities)
  );
}

function checkDemands(
  activities: LevelInput['activities'],
  capacity: LevelInput['capacity'],
): Refusal | undefined {
  for (const [index, { id, demand }] of activities.entries()) {
    for (const [resource, quantity] of Object.entries(demand)) {
      const field = `activities[${index}].demand.${resource}`;
      const there = Object.hasOwn(capacity, resource) ? capacity[resource] : undefined;
      if (there === undefined)
        return refuse(
          'unknown-resource',
          `The activity "${id}" needs "${resource}", which is not in the capacities.`,
          { field, hint: 'Maybe the name is mistyped, or its capacity has to be added.' },
        ).error;
      if (quantity > there)
        return refuse(
          'demand-over-capacity',
          `The activity "${id}" needs ${quantity} of "${resource}"; there are never more than ${there}.`,
          { field, hint: 'Maybe the work can be divided among several activities.' },
        ).error;
    }
  }
  return undefined;
}

function checkSuccessors(
  activities: LevelInput['activities'],
  place: ReadonlyMap<string, number>,
): Refusal | undefined {
  for (const [index, { id, successors }] of activities.entries()) {
    for (const [row, successor] of successors.entries()) {
      if (!place.has(successor))
        return refuse(
          'unknown-activity',
          `After "${id}" comes "${successor}", which is not in the list of activities.`,
          { field: `activities[${index}].successors[${row}]`, hint: 'Maybe the id is mistyped.' },
        ).error;
    }
  }
  return undefined;
}

function checkCircle(activities: LevelInput['activities']): Refusal | undefined {
  const after = new Map(activities.map(({ id, successors }) => [id, successors]));
  const [circle] = circlesIn(after);
  if (circle === undefined) return undefined;
  const names = shortestCircle(circle, after);
  return refuse(
    'circle',
    `${[...names, names[0]].map((name) => `"${name}"`).join(' before ')}: in a circle none can begin.`,
    { field: 'activities', hint: 'Maybe one of these successors is mistyped.' },
  ).error;
}

function checkLength(activities: LevelInput['activities']): Refusal | undefined {
  const sum = activities.reduce((total, { duration }) => total + duration, 0);
  if (sum <= longest) return undefined;
  return refuse('too-long', `The activities together last ${sum} units of time, more than ${longest}.`, {
    field: 'activities',
    hint: 'Maybe a coarser unit of time serves as well.',
  }).error;
}
