// A design as a person or a script writes it, read into whole nanometres.
import { z } from 'zod';
import { edgeKinds } from '../catalogue/edges.ts';
import { codeInput, lengthInput } from '../catalogue/rules-input.ts';
import type { LengthReader } from '../units/length-reader.ts';
import type { DesignGeometry } from './design.ts';

const edge = z.enum(edgeKinds).default('open');

export const designInput = z.strictObject({
  panels: z
    .array(
      z.strictObject({
        panel: codeInput,
        x: lengthInput,
        y: lengthInput,
        onSide: z.boolean().default(false),
      }),
    )
    .max(2000),
  fillers: z
    .array(z.strictObject({ x: lengthInput, y: lengthInput, width: lengthInput, height: lengthInput }))
    .max(2000)
    .default([]),
  edges: z.strictObject({ left: edge, right: edge }).default({ left: 'open', right: 'open' }),
  equalised: z.boolean().default(false),
  braced: z.exactOptional(z.boolean()),
  face: z.exactOptional(z.strictObject({ length: lengthInput, height: lengthInput })),
});

export type DesignInput = z.output<typeof designInput>;

/** To internal units; the reader keeps the first refusal, fields under `at`. */
export function designFromInput(input: DesignInput, reader: LengthReader, at: string): DesignGeometry {
  const { face, braced } = input;
  return {
    panels: input.panels.map(({ panel, x, y, onSide }, index) => ({
      panel,
      xNm: reader.any(x, `${at}.panels[${index}].x`),
      yNm: reader.any(y, `${at}.panels[${index}].y`),
      onSide,
    })),
    fillers: input.fillers.map(({ x, y, width, height }, index) => ({
      xNm: reader.any(x, `${at}.fillers[${index}].x`),
      yNm: reader.any(y, `${at}.fillers[${index}].y`),
      widthNm: reader.positive(width, `${at}.fillers[${index}].width`),
      heightNm: reader.positive(height, `${at}.fillers[${index}].height`),
    })),
    edges: input.edges,
    equalised: input.equalised,
    ...(braced !== undefined && { braced }),
    ...(face && {
      face: {
        widthNm: reader.positive(face.length, `${at}.face.length`),
        heightNm: reader.positive(face.height, `${at}.face.height`),
      },
    }),
  };
}
