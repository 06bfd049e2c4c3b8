// An attachment as doors speak of it.
import { attachmentText, attachmentId } from '../yard/note.ts';

export const attachmentShape = attachmentText.extend({ id: attachmentId, paper: attachmentId });
