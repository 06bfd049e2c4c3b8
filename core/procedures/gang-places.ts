// The places that gangs and loose pieces go to and come from: a location for a gang's tag and for a pour is made when
// it is first needed; pieces are taken from a place and from the racks, bins and pallets that stand there.
import { type Answer, answer, refuse } from '../answer.ts';
import type { BookReader, BookWriter } from '../book/book.ts';
import { isHeld, isLoose, type Location } from '../yard/movement.ts';

/** Where loose pieces of a pour lie and its gangs stand. */
export function pourPlaceCode(job: string, pour: string): string {
  return `${job}/${pour}`;
}

/** Makes the location where it is not there yet. Codes: code-too-long, place-taken. */
export async function makePourPlace(
  book: BookWriter,
  job: string,
  pour: { readonly code: string; readonly name: string },
): Promise<Answer<string>> {
  const code = pourPlaceCode(job, pour.code);
  return makePlace(book, {
    code,
    name: pour.name === '' ? code : `${pour.code}, ${pour.name}`,
    kind: 'pour',
  });
}

/** The gang's own location. Codes: code-too-long, place-taken. */
export async function makeGangPlace(book: BookWriter, tag: string, design: string): Promise<Answer<string>> {
  return makePlace(book, { code: tag, name: `Gang ${tag} (${design})`, kind: 'gang' });
}

export async function makePlace(book: BookWriter, wanted: Location): Promise<Answer<string>> {
  if (wanted.code.length > 40)
    return refuse('code-too-long', `${wanted.code} is longer than the 40 letters of a location's code.`);
  const there = (await book.locations()).find((each) => each.code === wanted.code);
  if (there === undefined) await book.putLocation(wanted);
  else if (there.kind !== wanted.kind)
    return refuse(
      'place-taken',
      `${wanted.code} is a location of kind ${there.kind} already: ${there.name}.`,
      {
        field: wanted.kind,
        hint: 'Maybe another tag is free.',
      },
    );
  return answer(wanted.code);
}

/** A place, and the containers that stand there: loose pieces may be taken from all. Codes: unknown-location, not-loose. */
export async function loosePlaces(book: BookReader, from: string): Promise<Answer<readonly string[]>> {
  const [locations, containers] = await Promise.all([book.locations(), book.containers()]);
  const place = locations.find((each) => each.code === from);
  if (place === undefined) return unknownPlace(from, 'from');
  if (!isLoose(place.kind))
    return refuse('not-loose', `${from} is a location of kind ${place.kind}; no loose pieces lie there.`, {
      field: 'from',
      hint: 'Maybe a yard, a site, a rack or a container is meant.',
    });
  const standing = containers.filter((each) => each.last.place === from).map((each) => each.code);
  return answer([from, ...standing.sort()]);
}

/** Where pieces are laid that come out of a gang. Codes: unknown-location, not-loose. */
export async function layingPlace(book: BookReader, to: string): Promise<Answer<string>> {
  const place = (await book.locations()).find((each) => each.code === to);
  if (place === undefined) return unknownPlace(to, 'to');
  if (isLoose(place.kind) || place.kind === 'repair') return answer(to);
  return refuse('not-loose', `${to} is a location of kind ${place.kind}; loose pieces are not laid there.`, {
    field: 'to',
    hint: 'Maybe a yard, a site, a rack, a container or a repair shop is meant.',
  });
}

/** Where a gang or a container may stand: everywhere that is with us. Codes: unknown-location, not-held. */
export async function standingPlace(book: BookReader, place: string): Promise<Answer<string>> {
  const there = (await book.locations()).find((each) => each.code === place);
  if (there === undefined) return unknownPlace(place, 'place');
  if (isHeld(there.kind) && there.kind !== 'gang') return answer(place);
  return refuse('not-held', `${place} is a location of kind ${there.kind}; nothing of ours stands there.`, {
    field: 'place',
    hint: 'Maybe a yard, a site or a pour is meant.',
  });
}

function unknownPlace(code: string, field: string) {
  return refuse('unknown-location', `There is no location ${code} in this book.`, {
    field,
    hint: 'Maybe it is spelt in another way.',
  });
}
