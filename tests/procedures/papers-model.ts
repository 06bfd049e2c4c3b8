// The yard's papers reckoned a second time, as a clerk would with a list: what lies where by note after note. It knows
// nothing of the ledger and shares no code with it.
export interface ModelLine {
  readonly component: string;
  readonly sent: number;
  readonly counted: number | null;
}

export interface ModelNote {
  readonly id: string;
  readonly kind: 'delivery' | 'return' | 'transfer' | 'hire-on' | 'hire-off';
  readonly from: string;
  readonly to: string;
  readonly version: number;
  readonly state: 'draft' | 'booked' | 'dropped' | 'reversed';
  readonly lines: readonly ModelLine[];
}

export class PapersModel {
  /** Pieces by place and component; what is outside is not held here. */
  readonly held = new Map<string, number>();
  readonly received = new Map<string, number>();
  readonly returned = new Map<string, number>();
  readonly #outside: ReadonlySet<string>;

  constructor(outside: readonly string[]) {
    this.#outside = new Set(outside);
  }

  at(place: string, component: string): number {
    return this.held.get(`${place} ${component}`) ?? 0;
  }

  /** The code of the refusal that booking it must meet; null where it must be booked. */
  refusal(note: ModelNote): string | null {
    if (note.state !== 'draft') return `note-${note.state}`;
    if (note.lines.length === 0) return 'empty-note';
    if (note.lines.some(({ counted }) => counted === null)) return 'not-counted';
    return this.#lacks(note, note.from) ? 'not-enough' : null;
  }

  reversalRefusal(note: ModelNote): string | null {
    if (note.state !== 'booked') return `note-${note.state}`;
    return this.#lacks(note, note.to) ? 'moved-on' : null;
  }

  book(note: ModelNote): void {
    this.#move(note, 1);
  }

  reverse(note: ModelNote): void {
    this.#move(note, -1);
  }

  #lacks(note: ModelNote, place: string): boolean {
    if (this.#outside.has(place)) return false;
    return [...sums(note)].some(([component, sum]) => sum > this.at(place, component));
  }

  #move(note: ModelNote, way: 1 | -1): void {
    for (const [component, sum] of sums(note)) {
      const pieces = sum * way;
      if (this.#outside.has(note.from)) add(this.received, component, pieces);
      else add(this.held, `${note.from} ${component}`, -pieces);
      if (this.#outside.has(note.to)) add(this.returned, component, pieces);
      else add(this.held, `${note.to} ${component}`, pieces);
    }
  }
}

function add(figures: Map<string, number>, key: string, by: number): void {
  figures.set(key, (figures.get(key) ?? 0) + by);
}

function sums(note: ModelNote): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  for (const { component, counted } of note.lines)
    found.set(component, (found.get(component) ?? 0) + (counted ?? 0));
  return found;
}
