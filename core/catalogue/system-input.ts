// A panel system as a person or a script writes it, read into internal units and checked as a whole.
import { z } from 'zod';
import { type Answer, answer } from '../answer.ts';
import type { LengthReader } from '../units/length-reader.ts';
import { type Component, readComponentKind } from './component.ts';
import { codeInput, lengthInput, rulesFromInput, rulesInput } from './rules-input.ts';
import { type PanelSystem, panelSystem } from './system.ts';

export const systemInput = z.strictObject({
  panels: z
    .array(
      z.strictObject({
        code: codeInput,
        width: lengthInput,
        height: lengthInput,
        weightKg: z.number(),
        crossMembers: z.exactOptional(z.array(lengthInput).max(100)),
        tieHoles: z.exactOptional(z.array(z.tuple([lengthInput, lengthInput])).max(400)),
        pressureKpa: z.exactOptional(z.number()),
        pressureOnSideKpa: z.exactOptional(z.number()),
      }),
    )
    .max(5000),
  components: z
    .array(
      z.strictObject({
        code: codeInput,
        kind: z.string().min(1).max(60),
        weightKg: z.number(),
        length: z.exactOptional(lengthInput),
        /** Of corner pieces: the leg along a face, the height, tie holes from the corner, whether it can be drawn in. */
        width: z.exactOptional(lengthInput),
        height: z.exactOptional(lengthInput),
        tieHoles: z.exactOptional(z.array(z.tuple([lengthInput, lengthInput])).max(400)),
        canShrink: z.exactOptional(z.boolean()),
      }),
    )
    .max(5000)
    .default([]),
  rules: rulesInput.default({}),
});

export type SystemInput = z.output<typeof systemInput>;

/** Refuses lengths and weights that cannot be read or be, and whatever panelSystem refuses; fields under `at`. */
export function systemFromInput(input: SystemInput, reader: LengthReader, at: string): Answer<PanelSystem> {
  const panels = input.panels.map((panel, index): Component => {
    const field = `${at}.panels[${index}]`;
    const { code, crossMembers = [], tieHoles = [], pressureKpa, pressureOnSideKpa } = panel;
    return {
      code,
      name: code,
      kind: 'panel',
      weightGrams: reader.weight(panel.weightKg, `${field}.weightKg`),
      widthNm: reader.positive(panel.width, `${field}.width`),
      heightNm: reader.positive(panel.height, `${field}.height`),
      crossMembersNm: crossMembers.map((height, row) => reader.any(height, `${field}.crossMembers[${row}]`)),
      tieHolesNm: tieHoles.map(([x, y], row) => [
        reader.any(x, `${field}.tieHoles[${row}][0]`),
        reader.any(y, `${field}.tieHoles[${row}][1]`),
      ]),
      ...(pressureKpa !== undefined && { pressurePa: reader.pressure(pressureKpa, `${field}.pressureKpa`) }),
      ...(pressureOnSideKpa !== undefined && {
        pressureOnSidePa: reader.pressure(pressureOnSideKpa, `${field}.pressureOnSideKpa`),
      }),
    };
  });
  const components = input.components.map((item, index): Component => {
    const field = `${at}.components[${index}]`;
    return {
      code: item.code,
      name: item.code,
      kind: readComponentKind(item.kind) ?? 'other',
      weightGrams: reader.weight(item.weightKg, `${field}.weightKg`),
      ...(item.length !== undefined && { lengthNm: reader.positive(item.length, `${field}.length`) }),
      ...(item.width !== undefined && { widthNm: reader.positive(item.width, `${field}.width`) }),
      ...(item.height !== undefined && { heightNm: reader.positive(item.height, `${field}.height`) }),
      ...(item.tieHoles !== undefined && {
        tieHolesNm: item.tieHoles.map(([x, y], row): [number, number] => [
          reader.any(x, `${field}.tieHoles[${row}][0]`),
          reader.any(y, `${field}.tieHoles[${row}][1]`),
        ]),
      }),
      ...(item.canShrink === true && { canShrink: true }),
    };
  });
  const rules = rulesFromInput(input.rules, reader, `${at}.rules`);
  const refusal = reader.refusal();
  if (refusal !== undefined) return refusal;
  const system = panelSystem([...panels, ...components], rules);
  if (system.ok) return answer(system.value);
  return { ok: false, error: { ...system.error, field: placeOf(system.error.field, input, at) } };
}

/** `components.P3.tieHoles` of a catalogue is `system.panels[0].tieHoles` of what was written; rules are as named. */
function placeOf(field: string | undefined, { panels, components }: SystemInput, at: string): string {
  if (field === undefined) return `${at}.rules`;
  if (!field.startsWith('components.')) return `${at}.rules.${field}`;
  const written = [
    ...panels.map(({ code }, index) => [code, `${at}.panels[${index}]`] as const),
    ...components.map(({ code }, index) => [code, `${at}.components[${index}]`] as const),
  ];
  // the last of a code: where one stands twice, that is the one to change
  const found = written.findLast(
    ([code]) => field === `components.${code}` || field.startsWith(`components.${code}.`),
  );
  return found === undefined ? at : found[1] + field.slice(`components.${found[0]}`.length);
}
