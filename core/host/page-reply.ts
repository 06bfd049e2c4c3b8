// What a door answers to a question for its page: a file of it, or the page itself for any address that a person
// went to.
import type { IncomingMessage } from 'node:http';
import { html, nothingThere, plain } from './door-replies.ts';
import type { Reply } from './door-replies.ts';
import { pageFile } from './page-files.ts';

/** @param index the name of the page in its folder */
export async function pageReply(
  folder: string,
  index: string,
  request: IncomingMessage,
  urlPath: string,
): Promise<Reply> {
  const file = await pageFile(folder, urlPath === '/' ? `/${index}` : urlPath);
  if (file !== null) {
    const caching = file.keep ? 'private, max-age=31536000, immutable' : 'no-store';
    return { status: 200, type: file.type, body: file.body, headers: { 'cache-control': caching } };
  }
  const isNavigation = request.headers['sec-fetch-mode'] === 'navigate' && !/[.%\\]/u.test(urlPath);
  const page = isNavigation ? await pageFile(folder, `/${index}`) : null;
  return page === null ? plain(404, nothingThere) : html(page.body);
}

/** Put together and not resolved, so that a target such as `//elsewhere/` stays a path of this door. */
export function addressOf(target: string, here: string): URL | null {
  const address = `http://${here}${target}`;
  return target.startsWith('/') && URL.canParse(address) ? new URL(address) : null;
}
