// What is attached to a paper.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { attachmentId } from '../yard/note.ts';
import { attachmentShape } from './attachment-shape.ts';
import { query } from './procedure.ts';

export const attachmentList = query({
  name: 'attachment.list',
  input: z.strictObject({ paper: attachmentId }),
  output: z.strictObject({ attachments: z.array(attachmentShape) }),
  run: async (book, { paper }) => answer({ attachments: [...(await book.attachments(paper))] }),
});
