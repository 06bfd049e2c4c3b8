// May a design be kept as it was entered? Its revision, its hand and its pieces must not contradict what the
// book holds: a gang of the wrong hand flies to where it cannot be set.
import { z } from 'zod';
import { type Answer, answer, refuse } from '../answer.ts';
import type { BookReader, BookWriter, Design, Hand } from '../book/book.ts';
import { rulesInForce, systemOf } from '../book/systems.ts';
import type { PanelSystem } from '../catalogue/system.ts';
import { atCorner } from '../gang/at-corner.ts';
import { designGeometry } from '../gang/design.ts';
import { likeness, type Likeness } from '../gang/hand-of.ts';
import { nextRevision } from '../gang/next-revision.ts';
import { placeDesign } from '../gang/placed.ts';
import { takeOff } from '../gang/take-off.ts';
import { type DesignLikeness, likenessOf } from './design-likeness.ts';
import { code, hours } from './shapes.ts';
import { unknownDesign } from './unknown.ts';

export const savedDesign = z.strictObject({
  code,
  name: z.string().trim().min(1).max(120),
  system: code,
  revision: z.string().trim().min(1).max(20),
  hand: z.enum(['left', 'right', 'symmetrical']),
  geometry: designGeometry,
  assembleH: hours,
  breakDownH: hours,
});

export interface Saved {
  /** Of the state in force. */
  readonly number: number;
  /** Designs of the same system that are the same gang or its other hand. */
  readonly sameAs: { design: string; how: Likeness }[];
}

/** Keeps it from its lower left corner, or refuses with the reason. */
export async function saveDesign(book: BookWriter, entered: Design, isNew: boolean): Promise<Answer<Saved>> {
  const [designs, components, versions] = await Promise.all([
    book.designs(),
    book.components(),
    book.ruleVersions(),
  ]);
  const before = designs.find((each) => each.code === entered.code);
  if (isNew && before !== undefined)
    return refuse('design-exists', `There is a design ${entered.code} already: ${before.name}.`, {
      field: 'code',
      hint: 'Maybe another code, or open that design and change it.',
    });
  if (!isNew && before === undefined) return unknownDesign(entered.code);
  const system = systemOf(entered.system, components, rulesInForce(versions));
  if (!system.ok) return { ok: false, error: { ...system.error, field: system.error.field ?? 'system' } };
  const taken = takeOff(system.value, entered.geometry);
  if (!taken.ok) return taken;
  const others = designs.filter((each) => each.system === entered.system && each.code !== entered.code);
  const alike = likenessOf(system.value, entered.geometry, others);
  if (!alike.ok) return alike;
  const wrongHand = checkHand(entered, alike.value, others);
  if (wrongHand !== undefined) return wrongHand;
  if (before !== undefined) {
    const unraised = await checkRevision(book, system.value, before, entered);
    if (unraised !== undefined) return unraised;
  }
  const design = { ...entered, geometry: atCorner(entered.geometry, taken.value.origin) };
  return answer({ number: await book.putDesign(design), sameAs: alike.value.sameAs });
}

type Refused = ReturnType<typeof refuse> | undefined;

const handWords: Readonly<Record<Hand, string>> = {
  left: 'left hand',
  right: 'right hand',
  symmetrical: 'symmetrical',
};

function checkHand(
  { code: entered, hand }: Design,
  { symmetrical, sameAs }: DesignLikeness,
  others: readonly Design[],
): Refused {
  if (hand === 'symmetrical' && !symmetrical)
    return refuse(
      'hand-not-symmetrical',
      `${entered} is called symmetrical, and its mirror image is another gang: panels, fillers, edges or tie holes differ.`,
      { field: 'hand', hint: 'Maybe it is a left or a right hand.' },
    );
  if (hand !== 'symmetrical' && symmetrical)
    return refuse(
      'hand-symmetrical',
      `${entered} is its own mirror image, so it has no ${handWords[hand]}.`,
      {
        field: 'hand',
        hint: 'Maybe call it symmetrical.',
      },
    );
  if (symmetrical) return undefined;
  for (const { design, how } of sameAs) {
    const other = others.find((each) => each.code === design);
    // An asymmetrical gang that is called symmetrical in an imported file says nothing about this one's hand.
    if (other === undefined || other.hand === 'symmetrical') continue;
    if (how === 'mirrored' && other.hand === hand)
      return refuse(
        'hand-taken-for-its-twin',
        `${entered} is the mirror image of ${design} (${other.name}), which is ${handWords[hand]} already: it cannot be set where ${design} stood.`,
        { field: 'hand', hint: `Maybe ${entered} is the ${handWords[opposite(hand)]}.` },
      );
    if (how === 'same' && other.hand !== hand)
      return refuse(
        'hand-taken-for-its-twin',
        `${entered} is the same gang as ${design} (${other.name}), which is ${handWords[other.hand]} and not ${handWords[hand]}.`,
        {
          field: 'hand',
          hint: `Maybe ${entered} is the ${handWords[other.hand]} too, or was to be mirrored.`,
        },
      );
  }
  return undefined;
}

function opposite(hand: Hand): Hand {
  return hand === 'left' ? 'right' : 'left';
}

/** Who holds a sheet of revision A in the yard must not build something else than who holds another. */
async function checkRevision(
  book: BookReader,
  system: PanelSystem,
  before: Design,
  entered: Design,
): Promise<Refused> {
  if (before.revision !== entered.revision || isSameGang(system, before, entered)) return undefined;
  const pours = await poursOf(book, entered.code);
  if (pours.length === 0) return undefined;
  return refuse(
    'revision-not-raised',
    `${entered.code} stands at ${poursText(pours)}, and it was changed under the same revision ${before.revision}.`,
    { field: 'revision', hint: `Maybe revision ${nextRevision(before.revision)}.` },
  );
}

function isSameGang(system: PanelSystem, one: Design, other: Design): boolean {
  if (one.system !== other.system) return false;
  const [placed, now] = [placeDesign(system, one.geometry), placeDesign(system, other.geometry)];
  return placed.ok && now.ok && likeness(placed.value, now.value) === 'same' && facts(one) === facts(other);
}

function facts({ geometry: { equalised, braced = true, face } }: Design): string {
  return JSON.stringify([equalised, braced, face?.widthNm, face?.heightNm]);
}

/** Every pour at which a design stands, as "P01 of TB26". */
export async function poursOf(book: BookReader, design: string): Promise<readonly string[]> {
  const found: string[] = [];
  for (const job of await book.jobs())
    for (const pour of await book.pours(job.code))
      if (pour.sides.some((side) => side.gangs.some((gang) => gang.design === design)))
        found.push(`${pour.code} of ${job.code}`);
  return found;
}

export function poursText(pours: readonly string[]): string {
  const shown = pours.slice(0, 5).join(', ');
  const word = pours.length === 1 ? 'pour' : 'pours';
  return pours.length > 5 ? `${word} ${shown} and ${pours.length - 5} more` : `${word} ${shown}`;
}
