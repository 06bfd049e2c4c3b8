// Keeps a photo or scan beside the book and names it on a paper. What the file is, its first bytes say.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { mediaTypeOf } from '../yard/media-type.ts';
import { attachmentId, occasions } from '../yard/note.ts';
import { attachmentShape } from './attachment-shape.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';

/** Of the file; as text it is a third longer. */
export const largestAttachmentBytes = 12 * 1024 * 1024;

export const attachmentAdd = command({
  name: 'attachment.add',
  input: z.strictObject({
    commandId,
    id: attachmentId,
    paper: attachmentId,
    occasion: z.enum(occasions),
    fileName: z.string().trim().min(1).max(200),
    base64: z.base64().min(1),
    component: code.nullable(),
    remark: z.string().trim().max(400).nullable(),
  }),
  output: z.strictObject({ attachment: attachmentShape }),
  run: async (book, asked, { at, who }) => {
    const { id, paper, occasion, fileName, component, remark } = asked;
    const content = new Uint8Array(Buffer.from(asked.base64, 'base64'));
    if (content.length > largestAttachmentBytes)
      return refuse(
        'file-too-large',
        `${fileName} has ${content.length} bytes; at most ${largestAttachmentBytes} are kept.`,
        { field: 'base64', hint: 'Maybe take the photo smaller.' },
      );
    const mediaType = mediaTypeOf(content);
    if (mediaType === null)
      return refuse('not-a-picture', `${fileName} is no JPEG, PNG, WebP or PDF file.`, { field: 'base64' });
    if ((await book.attachments()).some((each) => each.id === id))
      return refuse('attachment-exists', `There is an attachment ${id} already.`, { field: 'id' });
    const sha256 = await book.keepFile(content, mediaType);
    const attachment = {
      id,
      paper,
      occasion,
      fileName,
      mediaType,
      bytes: content.length,
      sha256,
      component,
      remark,
      at,
      who,
    };
    await book.addAttachment(attachment);
    return answer({ attachment });
  },
});
