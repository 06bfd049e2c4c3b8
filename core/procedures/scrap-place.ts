// The location where what is scrapped goes, and the refusal of a place the book does not have.
import { refuse } from '../answer.ts';
import type { Location } from '../yard/movement.ts';
import { outsidePlaces } from '../yard/outside-places.ts';

export function scrapPlace(locations: readonly Location[]): string | null {
  const { scrap } = outsidePlaces(locations, null);
  return typeof scrap === 'string' ? scrap : null;
}

export function unknownLocation(code: string, field = 'location') {
  return refuse('unknown-location', `There is no location ${code}.`, { field });
}
