// The address under which the desktop shows its page, `regang://app/`: a scheme of its own with a real
// origin, so that the policy's 'self' means this page and nothing else on the machine.
import { protocol } from 'electron';
import { pageFile } from '../core/host/page-files.ts';
import { pageHeaders } from '../core/host/page-policy.ts';

const scheme = 'regang';
const host = 'app';
export const pageAddress = `${scheme}://${host}/`;

/** Before `ready`, and only once. */
export function registerPageScheme(): void {
  protocol.registerSchemesAsPrivileged([
    { scheme, privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
}

/** Whether an address is one of the page's own. Parsed, since its text can stand inside any other address. */
export function isPageAddress(address: string): boolean {
  if (!URL.canParse(address)) return false;
  const url = new URL(address);
  return url.protocol === `${scheme}:` && url.host === host;
}

export function servePage(folder: string): void {
  protocol.handle(scheme, async (request) => {
    const url = new URL(request.url);
    const urlPath = url.pathname === '/' ? '/index.html' : url.pathname;
    const file =
      isPageAddress(request.url) && request.method === 'GET' ? await pageFile(folder, urlPath) : null;
    if (file === null)
      return new Response('There is no such address.', { status: 404, headers: { ...pageHeaders } });
    return new Response(new Uint8Array(file.body), {
      headers: { ...pageHeaders, 'content-type': file.type },
    });
  });
}
