// The locations outside the yard that a movement goes to or comes from, where the book has them.
import type { Refusal } from '../answer.ts';
import type { Location, LocationKind } from './movement.ts';

type Place = string | { readonly missing: Refusal };

export interface OutsidePlaces {
  readonly lost: Place;
  readonly scrap: Place;
  readonly supplier: Place;
}

/** @param owner whose own depot is taken before another supplier's, where it bears the owner's code */
export function outsidePlaces(locations: readonly Location[], owner: string | null): OutsidePlaces {
  const first = (kind: LocationKind): Place => {
    const fitting = locations.filter((location) => location.kind === kind);
    const place = fitting.find(({ code }) => code === owner) ?? fitting[0];
    return place?.code ?? { missing: noPlace(kind) };
  };
  return { lost: first('lost'), scrap: first('scrap'), supplier: first('supplier') };
}

function noPlace(kind: LocationKind): Refusal {
  return {
    code: 'no-place',
    message: `The book has no location of kind ${kind}.`,
    field: 'explained',
    hint: 'Maybe enter one.',
  };
}
