// The new gangs of a proposal with what people add to them before they are kept.
import type { KeptDesigns, Proposal } from './fill-shapes.ts';

export interface NamedGang {
  /** Its code in the proposal. */
  readonly proposed: string;
  readonly code: string;
  readonly name: string;
  readonly revision: string;
  readonly hand: 'symmetrical' | 'left' | 'right' | '';
  /** Hours as typed. */
  readonly assemble: string;
  readonly breakDown: string;
  readonly widthNm: number;
  readonly heightNm: number;
  readonly weightGrams: number;
}

/** Hands and hours are nobody's to guess: a gang of one hand and its hours stay open until they are entered. */
export function namesOf({ designs }: Proposal): readonly NamedGang[] {
  return designs
    .filter(({ isNew }) => isNew)
    .map(({ code, name, symmetrical, widthNm, heightNm, weightGrams }) => ({
      proposed: code,
      code,
      name,
      revision: 'A',
      hand: symmetrical ? 'symmetrical' : '',
      assemble: '',
      breakDown: '',
      widthNm,
      heightNm,
      weightGrams,
    }));
}

/** Null where it is no number of hours from 0 to 10 000. */
export function hoursOf(text: string): number | null {
  const value = /^\d{1,5}(?:[.,]\d{1,4})?$/u.test(text.trim())
    ? Number(text.trim().replace(',', '.'))
    : Number.NaN;
  return value <= 10_000 ? value : null;
}

/** Null where a hand or hours are missing. */
export function keptDesigns(
  proposal: Proposal,
  named: readonly NamedGang[],
  system: string,
): KeptDesigns | null {
  const designs: KeptDesigns = [];
  for (const { proposed, code, name, revision, hand, assemble, breakDown } of named) {
    const found = proposal.designs.find((each) => each.code === proposed);
    const [assembleH, breakDownH] = [hoursOf(assemble), hoursOf(breakDown)];
    if (found === undefined || hand === '' || assembleH === null || breakDownH === null) return null;
    designs.push({ code, name, system, revision, hand, geometry: found.geometry, assembleH, breakDownH });
  }
  return designs;
}

/** Which gang a refusal of `fill.keep` is about, and which of its entries; null where it is about none alone. */
export function refusedGang(
  field: string | undefined,
): { readonly index: number; readonly field: string } | null {
  const [, index, rest = ''] = /^designs\[(\d+)\](?:\.(.*))?$/u.exec(field ?? '') ?? [];
  if (index === undefined) return null;
  const names: Readonly<Record<string, string>> = { assembleH: 'assemble', breakDownH: 'breakDown' };
  return { index: Number(index), field: names[rest] ?? rest };
}
