/** Who is let in at the door of `serve`, and what is never written over. */
import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { doorAnswer } from '../../src/shell/server/door.ts';

const KEY = 'k'.repeat(32);
const folder = mkdtempSync(join(tmpdir(), 'door-'));
writeFileSync(join(folder, 'otter-r1.md'), '---\nreviewOn: 2026-12-15\n---\n');
writeFileSync(join(folder, 'otter-r2.md'), '---\nreviewOn: 2027-01-12\n---\n');
writeFileSync(join(folder, 'otter-r1.log.csv'), 'date\r\n');
writeFileSync(join(folder, 'secret.txt'), 'no');
symlinkSync(join(folder, 'secret.txt'), join(folder, 'link-r1.md'));

const own = { host: '127.0.0.1:8000', origin: 'http://127.0.0.1:8000', 'x-loadleaf-key': KEY };
const asked = (
  method: string,
  inside: string,
  headers: Parameters<typeof doorAnswer>[0]['headers'] = own,
  sent = '',
) => doorAnswer({ method, headers }, inside, Buffer.from(sent), { folder, key: KEY });
const hashOf = (text: string) => createHash('sha256').update(text).digest('hex');

describe('whoever comes to the door', () => {
  it.each([
    ['without a key', { ...own, 'x-loadleaf-key': undefined }],
    ['with another key', { ...own, 'x-loadleaf-key': 'x'.repeat(32) }],
    ['with the beginning of the key', { ...own, 'x-loadleaf-key': 'k' }],
    ['from a page elsewhere', { ...own, origin: 'https://elsewhere.example' }],
    ['from another port of this machine', { ...own, origin: 'http://127.0.0.1:9000' }],
    ['from a page without an origin', { ...own, origin: 'null' }],
    ['by way of another site', { ...own, 'sec-fetch-site': 'cross-site' }],
  ])('is refused %s', (_, headers) => {
    expect(asked('GET', 'consults', headers).status).toBe(403);
    expect(asked('PUT', 'consults/new-r1.md', headers, 'x').status).toBe(403);
  });

  it('is told the consults and logs of the folder', () => {
    expect(JSON.parse(asked('GET', 'consults').body)).toEqual([
      'otter-r1.log.csv',
      'otter-r1.md',
      'otter-r2.md',
    ]);
    expect(asked('GET', 'consults/otter-r1.log.csv')).toMatchObject({ status: 200, body: 'date\r\n' });
  });

  it.each([
    'consults/secret.txt',
    'consults/..%2Fsecret.txt',
    'consults/link-r1.md',
    'consults/otter.csv',
    'consults/%ZZ',
    'elsewhere',
  ])('gets nothing but consults and logs: %s', (inside) => {
    expect(asked('GET', inside).status).toBeGreaterThanOrEqual(400);
  });
});

describe('writing', () => {
  const put = (name: string, text: string, known: string) =>
    asked('PUT', `consults/${name}`, { ...own, 'if-match': known }, text);

  it('makes a new file once; whoever comes second is told what stands there', () => {
    expect(put('heron-r1.md', 'one', 'none').status).toBe(204);
    expect(put('heron-r1.md', 'two', 'none')).toMatchObject({ status: 412, body: 'one' });
    expect(put('heron-r1.md', 'two', hashOf('zero'))).toMatchObject({ status: 412, body: 'one' });
    expect(put('heron-r1.md', 'two', hashOf('one')).status).toBe(204);
    expect(readFileSync(join(folder, 'heron-r1.md'), 'utf8')).toBe('two');
  });

  it('never goes through a link, and takes no more than a consult has', () => {
    expect(put('link-r1.md', 'x', 'none').status).toBe(409);
    expect(readFileSync(join(folder, 'secret.txt'), 'utf8')).toBe('no');
    expect(put('otter-r9.md', 'x'.repeat(300_000), 'none').status).toBe(413);
  });
});
