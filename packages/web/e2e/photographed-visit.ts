import { createHash } from 'node:crypto';
import { protocolHeader, protocolVersion } from '@combside/contract/version';
import { sampleBodies } from '@combside/record/acceptance/golden-bodies';
import { seal } from '@combside/record/chain';
import type { Proposal } from '@combside/record/entry';
import { newIdentifier } from '@combside/record/identifier';
import type { APIRequestContext } from '@playwright/test';
import { ecdsa, ecdsaSha256, publicKeyText, webChance, webHasher } from '../src/device/keys/web-ports.ts';
import { dayBefore, now } from './day.ts';

const clock = { now };
const visitedOn = dayBefore(29);

interface PhotographedVisit {
  readonly visit: string;
  readonly apiary: string;
  readonly colony: string;
  /** In the order of the files. */
  readonly hashes: readonly string[];
}

/**
 * A visit of Ines to Hazel Bank with these photographs of the combs of colony 1, sealed, sent and uploaded as a phone does
 * it: for journeys that begin at the office.
 *
 * @param phone signed in as nobody yet
 */
export async function photographedVisit(
  phone: APIRequestContext,
  address: string,
  files: readonly Buffer[],
): Promise<PhotographedVisit> {
  const said = { origin: address, [protocolHeader]: String(protocolVersion) };
  const ask = async (path: string, message: unknown, headers: Readonly<Record<string, string>> = {}) => {
    const answer = await phone.post(path, { data: message, headers: { ...said, ...headers } });
    if (!answer.ok()) throw new Error(`${path}: ${answer.status()} ${await answer.text()}`);
    return answer;
  };
  const get = async (path: string) => (await phone.get(path)).json();
  await ask('/api/auth/sign-in/email', { email: 'ines@quillmoor.example', password: 'quillmoor-comb-7' });
  const { person } = await get('/api/me');
  const [{ apiary }] = (await get('/api/apiaries?search=Hazel%20Bank')).apiaries;
  const [{ colony }] = (await get(`/api/apiaries/${apiary}`)).colonies.filter(
    (one: { label: string }) => one.label === '1',
  );

  const newId = () => newIdentifier(clock, webChance);
  const [device, visit] = [newId(), newId()];
  const pair = await crypto.subtle.generateKey(ecdsa, false, ['sign', 'verify']);
  const signer = {
    publicKey: await publicKeyText(pair.publicKey),
    sign: async (bytes: Uint8Array) =>
      new Uint8Array(await crypto.subtle.sign(ecdsaSha256, pair.privateKey, bytes as BufferSource)),
  };
  const photographs = files.map((file, n) => ({
    hash: createHash('sha256').update(file).digest('hex'),
    mediaType: 'image/jpeg',
    bytes: file.length,
    takenAt: `${visitedOn}T08:30:0${n}.000Z`,
    caption: '',
  }));
  const proposal = (kind: string, version: number, type: string, id: string, body: object): Proposal => ({
    kind,
    version,
    about: { type, id },
    body,
    replaces: [],
  });
  const bodyOf = (sample: string) => sampleBodies[sample]?.body as object;
  const hours = { startedAt: `${visitedOn}T08:00:00.000Z`, endedAt: `${visitedOn}T09:00:00.000Z` };
  const { kept } = await seal(
    { hasher: webHasher, signer, chance: webChance, clock },
    { device, by: person, head: null, clock: null },
    [
      proposal('device', 1, 'device', device, {
        publicKey: signer.publicKey,
        person,
        predecessor: null,
        name: 'phone of a journey',
      }),
      proposal('visit', 1, 'visit', visit, { ...bodyOf('visit.1'), ...hours, apiary, inspector: person, leftOpen: [] }),
      proposal('examination', 2, 'colony', colony, {
        ...bodyOf('examination.2'),
        visit,
        apiary,
        observedAt: `${visitedOn}T08:40:00.000Z`,
        photographs,
      }),
    ],
  );
  const pushed = await (await ask('/api/push', { entries: kept.map(({ entry }) => entry) })).json();
  const refused = pushed.results.filter((one: { outcome: string }) => one.outcome !== 'received');
  if (refused.length > 0) throw new Error(`the office refused: ${JSON.stringify(refused)}`);

  const base64 = (text: string) => Buffer.from(text).toString('base64');
  for (const [n, file] of files.entries()) {
    const { hash = '', mediaType = '' } = photographs[n] ?? {};
    const begun = await ask('/api/uploads', undefined, {
      'tus-resumable': '1.0.0',
      'upload-length': String(file.length),
      'upload-metadata': `hash ${base64(hash)},mediaType ${base64(mediaType)}`,
    });
    const sent = await phone.patch(begun.headers().location ?? '', {
      data: file,
      headers: {
        ...said,
        'tus-resumable': '1.0.0',
        'upload-offset': '0',
        'content-type': 'application/offset+octet-stream',
      },
    });
    if (!sent.ok()) throw new Error(`upload: ${sent.status()} ${await sent.text()}`);
  }
  return { visit, apiary, colony, hashes: photographs.map(({ hash }) => hash) };
}
