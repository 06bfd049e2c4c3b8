// What one attachment holds, as it was kept: a file that is gone or was changed is said to be so.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { attachmentId } from '../yard/note.ts';
import { attachmentShape } from './attachment-shape.ts';
import { query } from './procedure.ts';

export const attachmentRead = query({
  name: 'attachment.read',
  input: z.strictObject({ attachment: attachmentId }),
  output: z.strictObject({ attachment: attachmentShape, base64: z.string() }),
  run: async (book, { attachment: id }) => {
    const attachment = (await book.attachments()).find((each) => each.id === id);
    if (attachment === undefined)
      return refuse('unknown-attachment', `There is no attachment ${id}.`, { field: 'attachment' });
    const content = await book.attachedFile(attachment);
    return content.ok
      ? answer({ attachment, base64: Buffer.from(content.value).toString('base64') })
      : content;
  },
});
