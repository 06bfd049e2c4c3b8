// What is to be loaded, out of the book: pieces of a note or of free lines, containers with what is in them, gangs with
// the size of their design; each as it lies on a deck.
import { answer, type Answer, refuse } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { laidSize, type LaidSize } from '../yard/laid-sizes.ts';
import { bundlesOf, containerLayer, gangLayer } from '../yard/load-layers.ts';
import type { YardNote } from '../yard/note.ts';
import type { LoadLayer, Truck } from '../yard/truck.ts';
import { byCode, found } from './by-code.ts';
import { type GangFacts, readGangFacts, weightOf } from './gang-facts.ts';
import type { ToSend } from './load-shapes.ts';
import { unknownComponent, unknownContainer, unknownGang } from './unknown.ts';

export interface LoadFacts {
  readonly layers: readonly LoadLayer[];
  /** How the pieces of each component lie. */
  readonly sizes: ReadonlyMap<string, LaidSize>;
  readonly names: Readonly<Record<string, string>>;
}

/** The lines of a note, its containers as wholes; all of them come off at one stop. */
export async function linesOfNote(book: BookReader, note: YardNote): Promise<readonly ToSend[]> {
  const containers = byCode(await book.containers());
  const going = [...new Set(note.lines.flatMap(({ container }) => (container === null ? [] : [container])))];
  const known = going.filter((each) => containers.has(each));
  const pieces = new Map<string, number>();
  for (const { component, container, counted, sent } of note.lines)
    if (container === null || !containers.has(container))
      pieces.set(component, (pieces.get(component) ?? 0) + (counted ?? sent));
  // A rack that goes with what is in it is not one more piece of the load.
  for (const each of known) {
    const { component } = found(containers, each);
    pieces.set(component, Math.max(0, (pieces.get(component) ?? 0) - 1));
  }
  return [
    ...[...pieces]
      .filter(([, quantity]) => quantity > 0)
      .map(([component, quantity]) => ({ component, quantity, stop: 1 })),
    ...known.map((container) => ({ container, stop: 1 })),
  ];
}

/** More than this is a day's work for a fleet, and no list of loads. */
const mostThings = 600;

/** Codes: unknown-component, unknown-container, unknown-gang, gang-not-whole, too-many-things. */
export async function readLoadFacts(
  book: BookReader,
  lines: readonly ToSend[],
  trucks: readonly Truck[],
  note: YardNote | null,
): Promise<Answer<LoadFacts>> {
  const [all, settings, containers, stock, gangs] = await Promise.all([
    book.components(),
    book.yardSettings(),
    book.containers(),
    book.stock(),
    readGangFacts(book),
  ]);
  const components = byCode(all);
  const sizes = new Map<string, LaidSize>();
  const names: Record<string, string> = {};
  const layers: LoadLayer[] = [];
  for (const line of lines) {
    if ('component' in line) {
      const piece = components.get(line.component);
      if (piece === undefined) return unknownComponent(line.component);
      const bundle = Object.hasOwn(settings.bundleSizes, piece.code)
        ? settings.bundleSizes[piece.code]
        : undefined;
      const size = laidSize(piece, bundle);
      sizes.set(piece.code, size);
      names[piece.code] = piece.name;
      const bundles = Math.ceil(line.quantity / size.pieces);
      if (layers.length + bundles > mostThings) return tooMany(layers.length + bundles);
      layers.push(...bundlesOf({ piece, quantity: line.quantity, stop: line.stop }, size, trucks));
    } else if ('container' in line) {
      const container = containers.find((each) => each.code === line.container);
      if (container === undefined) return unknownContainer(line.container);
      const piece = found(components, container.component);
      names[line.container] = piece.name;
      // By the note where there is one: what it brings is not at its place any more, or not yet.
      const inside = note?.lines
        .filter((each) => each.container === line.container)
        .map(({ component, counted, sent }) => ({ component, quantity: counted ?? sent }));
      const content = inside ?? stock.filter((each) => each.location === line.container && each.quantity > 0);
      const weightGrams = container.last.grossGrams ?? piece.weightGrams + weightOf(content, components);
      layers.push(containerLayer({ container: line.container, piece, weightGrams, stop: line.stop }));
    } else {
      const layer = gangOf(gangs, line.gang, line.stop);
      if (!layer.ok) return layer;
      names[line.gang] = layer.value.name;
      layers.push(layer.value.layer);
    }
  }
  return layers.length > mostThings ? tooMany(layers.length) : answer({ layers, sizes, names });
}

function tooMany(things: number): Answer<never> {
  return refuse(
    'too-many-things',
    `${things} bundles, boxes and wholes are to go; loads are made for up to ${mostThings} at a time.`,
    { field: 'lines', hint: 'Maybe make them in two parts.' },
  );
}

function gangOf(
  facts: GangFacts,
  tag: string,
  stop: number,
): Answer<{ readonly layer: LoadLayer; readonly name: string }> {
  const gang = facts.gangs.find(({ code }) => code === tag);
  if (gang === undefined) return unknownGang(tag);
  const { takeOff, name } = facts.makeUpOf(gang);
  if (gang.last.state === 'broken-down' || takeOff === null)
    return refuse(
      'gang-not-whole',
      `Gang ${tag} cannot go as a whole: it is broken down, or its design is gone.`,
      {
        field: 'lines',
        hint: 'Maybe its pieces go loose.',
      },
    );
  const weightGrams = weightOf(facts.contentOf(tag), facts.components);
  const { widthNm, heightNm } = takeOff;
  const layer = gangLayer({ gang: tag, widthNm, heightNm, weightGrams, stop });
  return answer({ layer, name: `${gang.last.design} ${name}` });
}
