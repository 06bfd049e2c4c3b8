// Cells of pours.csv that hold several things: gangs with their places, loose pieces, gates by others.
import type { Gate, LooseLine, PlacedGang, SideName } from '../plan/pours.ts';
import { type Read, readDate, readKnown, readLength } from './cells.ts';
import { maybe } from './nearest.ts';

/** `GA-36 @ 12'-0"`: a design and the distance of its left edge from the pour's start. */
export function readPlacedGang(designs: ReadonlySet<string>): Read<PlacedGang> {
  const at = readLength('zero');
  const known = readKnown('design', designs);
  return (text, unit) => {
    const [, design, place] = /^(.+?)\s*@\s*(.+)$/u.exec(text) ?? [];
    if (design === undefined || place === undefined) {
      const hint = designs.has(text) ? `. Maybe ${text} @ 0 is meant` : '';
      return { wanted: `gangs with their places from the pour's start, such as GA @ 0; GB @ 12'-0"${hint}` };
    }
    const code = known(design, null);
    const atNm = at(place, unit);
    if ('wanted' in code) return code;
    return 'wanted' in atNm ? atNm : { value: { design: code.value, atNm: atNm.value } };
  };
}

/** `both LK 10 locks between gangs`: side, component, how many, and what for. */
export function readLoose(components: ReadonlySet<string>): Read<LooseLine> {
  // Codes may have spaces in them, so the longest known one that the text begins with is taken.
  const byLength = [...components].sort((one, other) => other.length - one.length);
  return (text) => {
    const wanted =
      'loose pieces as side, component, how many, what for, such as both LK 10 locks between gangs; A BR 4 braces';
    const [, word = '', rest] = /^(both|a|b)\s+(\S.*)$/iu.exec(text) ?? [];
    if (rest === undefined) return { wanted };
    const component = byLength.find((code) => rest.startsWith(`${code} `));
    if (component === undefined) {
      const first = rest.split(/\s/u)[0] ?? rest;
      return { wanted: `a known component${maybe(first, components)}` };
    }
    const [, digits, purpose] = /^(\d{1,7})\s+(\S.*)$/u.exec(rest.slice(component.length).trim()) ?? [];
    if (digits === undefined || purpose === undefined || Number(digits) === 0) return { wanted };
    if (purpose.length > 80) return { wanted: 'a purpose of at most 80 characters' };
    return { value: { side: sideOf(word), component, quantity: Number(digits), purpose } };
  };
}

function sideOf(word: string): SideName | 'both' {
  const upper = word.toUpperCase();
  return upper === 'A' || upper === 'B' ? upper : 'both';
}

/** `close: steel fixed, steel crew, 2026-03-03`, and `, done` behind it where it is. */
export const readGate: Read<Gate> = (text) => {
  const wanted =
    'gates as step: what, who, date promised, such as close: steel fixed, steel crew, 2026-03-03; `, done` behind it where it is done';
  const [, step = '', rest] = /^(set|close|pour)\s*:\s*(\S.*)$/iu.exec(text) ?? [];
  if (rest === undefined) return { wanted };
  const parts = rest.split(',').map((part) => part.trim());
  const done = parts.length === 4 && parts[3]?.toLowerCase() === 'done';
  const [name = '', who = '', date = ''] = parts;
  if (name === '' || who === '' || name.length > 80 || who.length > 80) return { wanted };
  if (parts.length !== (done ? 4 : 3)) return { wanted };
  const promised = readDate(date, null);
  if ('wanted' in promised) return promised;
  return { value: { before: stepOf(step), name, who, promised: promised.value, done } };
};

function stepOf(word: string): Gate['before'] {
  const step = word.toLowerCase();
  return step === 'set' || step === 'close' ? step : 'pour';
}
