import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type TestHouse, testHouse, testPeople } from '../acceptance/test-house.ts';
import { openAccounts } from './accounts.ts';

let house: TestHouse;
beforeAll(async () => {
  house = await testHouse(5);
});
afterAll(() => house.tearDown());

const signIn = (email: string, password: string, headers: Record<string, string> = {}) =>
  house.app.request('/api/auth/sign-in/email', {
    method: 'POST',
    headers: { 'content-type': 'application/json', ...headers },
    body: JSON.stringify({ email, password }),
  });

describe('accounts', () => {
  test('the session cookie is out of reach of scripts and of other pages; signing out ends it', async () => {
    const answer = await signIn(testPeople.north.email, 'a long enough password');
    expect(answer.status).toBe(200);
    const [cookie = ''] = answer.headers.getSetCookie();
    expect(cookie).toMatch(/^combside\.session_token=[^;]+;/);
    expect(cookie.toLowerCase()).toContain('httponly');
    expect(cookie.toLowerCase()).toContain('samesite=strict');
    const headers = { cookie: cookie.split(';')[0] ?? '' };
    expect((await house.app.request('/api/me', { headers })).status).toBe(200);
    const out = await house.app.request('http://127.0.0.1/api/auth/sign-out', {
      method: 'POST',
      headers: { ...headers, origin: 'http://127.0.0.1', 'content-type': 'application/json' },
      body: '{}',
    });
    expect(out.status).toBe(200);
    expect((await house.app.request('/api/me', { headers })).status).toBe(401);
  });

  test('a forged or borrowed cookie is nobody', async () => {
    for (const cookie of ['combside.session_token=x.y', 'combside.session_token=', `better-auth.session_token=x`]) {
      expect((await house.app.request('/api/me', { headers: { cookie } })).status).toBe(401);
    }
  });

  test('over https the cookie is marked secure, and named so', async () => {
    const accounts = await openAccounts({
      database: house.database,
      secret: 'x'.repeat(40),
      address: 'https://office.example',
    });
    const answer = await accounts.handle(
      new Request('https://office.example/api/auth/sign-in/email', {
        method: 'POST',
        headers: { 'content-type': 'application/json', 'x-combside-address': '10.0.0.9' },
        body: JSON.stringify({ email: testPeople.south.email, password: 'a long enough password' }),
      }),
    );
    expect(answer.headers.getSetCookie()[0]).toMatch(/^__Secure-combside\.session_token=.*; Secure/);
  });

  test('nobody makes an account for himself, and an inspector makes none for others', async () => {
    const body = JSON.stringify({ email: 'new@office.example', password: 'a long enough password', name: 'New' });
    const post = (path: string, headers: Record<string, string> = {}) =>
      house.app.request(`http://127.0.0.1${path}`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', ...headers },
        body,
      });
    expect((await post('/api/auth/sign-up/email')).status).toBeGreaterThanOrEqual(400);
    expect((await post('/api/auth/admin/create-user')).status).toBeGreaterThanOrEqual(400);
    const nell = await house.signIn(testPeople.north);
    const tried = await post('/api/auth/admin/create-user', {
      cookie: nell.headers.cookie ?? '',
      origin: 'http://127.0.0.1',
    });
    expect(tried.status).toBe(404);
    const { rows } = await house.database.pool.query(
      `select count(*)::int as count from accounts."user" where email = 'new@office.example'`,
    );
    expect(rows).toEqual([{ count: 0 }]);
  });

  test('a person no longer active is nobody at once', async () => {
    const sander = await house.signIn(testPeople.south);
    expect((await sander.get('/api/me')).status).toBe(200);
    await house.database.pool.query('update combside.people set active = false where person = $1', [
      testPeople.south.person,
    ]);
    expect((await sander.get('/api/me')).status).toBe(401);
  });

  test('another page cannot act for who is signed in', async () => {
    const otto = await house.signIn(testPeople.office);
    for (const origin of ['https://elsewhere.example', 'null', 'http://127.0.0.1.elsewhere.example']) {
      const answer = await house.app.request('http://127.0.0.1/api/pull', {
        method: 'POST',
        headers: { ...otto.headers, origin },
        body: '{}',
      });
      expect([origin, answer.status]).toEqual([origin, 403]);
    }
  });

  test('guessing is stopped after a few tries, whatever address the client claims', async () => {
    const tries: number[] = [];
    for (let attempt = 0; attempt < 8; attempt += 1) {
      const claimed = { 'x-forwarded-for': `10.0.0.${attempt}`, 'x-combside-address': `10.1.0.${attempt}` };
      tries.push((await signIn(testPeople.office.email, 'a wrong password', claimed)).status);
    }
    expect(tries.slice(-3)).toEqual([429, 429, 429]);
    expect(new Set(tries)).toEqual(new Set([401, 429]));
  });

  test('accounts stand in a schema of their own', async () => {
    const { rows } = await house.database.pool.query<{ schema: string; tables: number }>(
      `select table_schema as schema, count(*)::int as tables from information_schema.tables
       where table_schema not in ('pg_catalog', 'information_schema') group by 1 order by 1`,
    );
    expect(rows.map((row) => row.schema)).toEqual(['accounts', 'combside']);
  });
});
