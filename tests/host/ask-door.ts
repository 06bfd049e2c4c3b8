// Speaks to a door over bare HTTP, where every header can be wrong.
import { request as httpRequest } from 'node:http';
import type { IncomingHttpHeaders } from 'node:http';

export interface Got {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

export interface Asked {
  readonly method: string;
  readonly target: string;
  readonly headers: Record<string, string>;
  readonly body?: string;
}

export function askDoor(port: number, { method, target, headers, body }: Asked): Promise<Got> {
  return new Promise((resolve, reject) => {
    const request = httpRequest(
      { host: '127.0.0.1', port, method, path: target, headers, agent: false },
      (response) => {
        let text = '';
        response.setEncoding('utf8');
        response.on('data', (chunk: string) => (text += chunk));
        response.on('end', () =>
          resolve({ status: response.statusCode ?? 0, headers: response.headers, body: text }),
        );
      },
    );
    request.once('error', reject);
    request.end(body);
  });
}
