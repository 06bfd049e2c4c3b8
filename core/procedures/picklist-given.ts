// What was given by a pick list, and what in place of what: kept as the draft of an issue note, each substitution with
// its remark beside the line, and told as a finding for the designer. Nothing moves before that note is booked.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { conditions } from '../yard/movement.ts';
import { givenInstead, insteadRemark, notGiven } from '../yard/given-instead.ts';
import { readPickId } from '../yard/pick-id.ts';
import { byCode } from './by-code.ts';
import { noteSave } from './note-save.ts';
import { readPickWanted } from './pick-wanted.ts';
import { noteId } from './note-shapes.ts';
import { command } from './procedure.ts';
import { code, commandId, finding, quantity } from './shapes.ts';
import { unknownComponent } from './unknown.ts';

export const picklistGiven = command({
  name: 'picklist.given',
  input: z.strictObject({
    commandId,
    /** Of the pick list, as it was read. */
    pick: z.string().trim().min(1).max(120),
    /** Of the note that is made, and its number on paper. */
    id: noteId,
    number: z.string().trim().min(1).max(60),
    from: code,
    to: code,
    lines: z
      .array(
        z.strictObject({
          component: code,
          owner: code,
          condition: z.enum(conditions),
          quantity,
          /** What the list asked for, where it was something else. */
          insteadOf: code.nullable(),
        }),
      )
      .min(1)
      .max(500),
  }),
  output: z.strictObject({
    note: noteId,
    version: z.int(),
    findings: z.array(finding),
    /** Asked for, and neither given nor anything in its place. */
    missing: z.array(z.strictObject({ component: code, quantity: z.int() })),
  }),
  run: async (book, input, context) => {
    const picked = readPickId(input.pick);
    if (!picked.ok) return picked;
    const wanted = await readPickWanted(book, picked.value.picked, context.at);
    if (!wanted.ok) return wanted;
    const components = byCode(await book.components());
    const strange = input.lines.find(({ insteadOf }) => insteadOf !== null && !components.has(insteadOf));
    if (strange !== undefined) return unknownComponent(strange.insteadOf ?? '');
    const { code: forCode, job } = wanted.value;
    const findings = givenInstead(input.lines, components, forCode);
    const saved = await noteSave.run(
      book,
      {
        commandId: input.commandId,
        note: {
          id: input.id,
          kind: 'issue',
          number: input.number,
          expectedAt: wanted.value.neededAt,
          version: 0,
          from: input.from,
          to: input.to,
          job: job?.code ?? null,
          arrivedAt: null,
          leftAt: null,
          vehicle: null,
          signedHere: null,
          signedThere: null,
          protest: null,
          remark: `By pick list for ${forCode}${findings.length === 0 ? '' : `; ${findings.length} given in place of others: ask the designer`}`,
          lines: input.lines.map((line) => ({
            component: line.component,
            owner: line.owner,
            condition: line.condition,
            sent: line.quantity,
            counted: line.quantity,
            container: null,
            remark: insteadRemark(line),
          })),
        },
      },
      context,
    );
    if (!saved.ok) return saved;
    return answer({
      note: input.id,
      version: saved.value.version,
      findings,
      missing: notGiven(wanted.value.wanted, input.lines),
    });
  },
});
