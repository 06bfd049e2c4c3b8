// What the likely causes of the differences of a count are read from: movements, open tickets, notes not booked,
// other jobs, losses at strips so far.
import type { BookReader } from '../book/book.ts';
import { type CauseFacts, likelyCauses, type LikelyCause, standingBefore } from '../yard/likely-causes.ts';
import { componentRates } from '../yard/rates.ts';
import { ticketName } from '../yard/strip-ticket.ts';
import type { CountFacts } from './count-facts.ts';

/** Movements of a component that are looked through, the newest. */
const looked = 200;

/** For each line its likely causes, in the order of the lines. */
export async function readCauses(
  book: BookReader,
  facts: CountFacts,
): Promise<readonly (readonly LikelyCause[])[]> {
  const { differences, locations, partners, drafts, stockAt } = facts;
  const kinds = new Map(locations.map(({ code, kind }) => [code, kind]));
  const tickets = await readTickets(book);
  const losses = await readLosses(book);
  const others = differences.filter(({ state }) => state === 'counted');
  const causes: (readonly LikelyCause[])[] = [];
  for (const line of differences) {
    const at = line.stands?.at;
    if (at === undefined || line.difference === 0) {
      causes.push([]);
      continue;
    }
    const { component } = line;
    const movements = (await book.movements({ component, limit: looked })).filter(
      ({ paper }) => paper !== facts.count.id,
    );
    causes.push(
      likelyCauses({
        line,
        others: others.filter((other) => other !== line),
        partners: partners.get(component) ?? [],
        movements: standingBefore(movements, at),
        locations: kinds,
        tickets: tickets.flatMap(({ name, pour, open }) => {
          const left = open.get(component) ?? 0;
          return left > 0 ? [{ name, pour, open: left }] : [];
        }),
        drafts: drafts.flatMap(({ kind, number, from, to, lines }) => {
          const quantity = lines
            .filter((each) => each.component === component)
            .reduce((sum, each) => sum + (each.counted ?? each.sent), 0);
          return quantity > 0 ? [{ name: number, kind, from, to, quantity }] : [];
        }),
        otherJobs: otherJobs(facts, component, stockAt(at)),
        losses: losses.get(component) ?? null,
      }),
    );
  }
  return causes;
}

function otherJobs(
  { locations }: CountFacts,
  component: string,
  stock: ReturnType<CountFacts['stockAt']>,
): CauseFacts['otherJobs'] {
  return locations
    .filter(({ kind }) => kind === 'other-job')
    .map(({ code }) => ({
      place: code,
      quantity: stock
        .filter((line) => line.location === code && line.component === component)
        .reduce((sum, { quantity }) => sum + quantity, 0),
    }));
}

/** Open tickets, and for each component how many they still expect. */
async function readTickets(book: BookReader) {
  const tickets = await book.tickets({ state: 'open' });
  return Promise.all(
    tickets.map(async (ticket) => {
      const open = new Map<string, number>();
      for (const { expected } of ticket.parts)
        for (const { component, quantity } of expected)
          open.set(component, (open.get(component) ?? 0) + quantity);
      for (const { lines } of await book.ticketEntries(ticket.id))
        for (const { component, quantity } of lines)
          open.set(component, (open.get(component) ?? 0) - quantity);
      return { name: ticketName(ticket), pour: ticket.pour, open };
    }),
  );
}

/** Lost so far by the book's own record, of so many pieces that came back from turns. */
async function readLosses(book: BookReader) {
  const [tickets, counts, components, settings] = await Promise.all([
    book.tickets({ state: 'booked' }),
    book.counts({ state: 'booked' }),
    book.components(),
    book.yardSettings(),
  ]);
  const rates = componentRates({ tickets, counts, components, settings });
  return new Map(rates.map(({ component, lost, pieces }) => [component, { lost, turns: pieces }]));
}
