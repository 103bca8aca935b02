import { existsSync } from 'node:fs';
import { chmod, mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import pg from 'pg';
import type { TestProject } from 'vitest/node';
import { type Cluster, startCluster } from '../cluster.ts';
import { openDatabase } from '../database.ts';

/** A PostgreSQL the store is tested on: its socket, or the written reason why it is left out. */
export interface TestCluster {
  readonly name: string;
  readonly socketFolder: string | null;
  readonly user: string;
  readonly skipped: string | null;
}

declare module 'vitest' {
  export interface ProvidedContext {
    readonly clusters: readonly TestCluster[];
  }
}

/** Every database of a test is copied from this one, which has the migrations. */
export const templateName = 'combside_template';

const debianFolder = '/usr/lib/postgresql';

/**
 * Runs before the server's tests: starts the embedded PostgreSQL, and Debian's where the machine has one, each in a
 * folder of its own that is removed afterwards.
 */
export default async function startClusters(project: TestProject): Promise<() => Promise<void>> {
  const folder = await mkdtemp(join(tmpdir(), 'combside-test-'));
  // As root the clusters run as another user, who must be able to pass.
  await chmod(folder, 0o755);
  const running: Cluster[] = [];
  const start = async (name: string, binaries?: string): Promise<TestCluster> => {
    const place = join(folder, name.replaceAll(/[^a-z0-9]/gi, ''), 'postgres');
    const cluster = await startCluster({ folder: place, forgetful: true, ...(binaries ? { binaries } : {}) });
    running.push(cluster);
    const template = await openDatabase({ cluster, name: templateName }, 1);
    await template.close();
    const version = await versionOf(cluster);
    return { name: `${name} ${version}`, socketFolder: cluster.socketFolder, user: cluster.user, skipped: null };
  };
  const clusters = [await start('embedded')];
  const debian = await debianBinaries();
  clusters.push(
    debian
      ? await start('debian', debian)
      : {
          name: 'debian',
          socketFolder: null,
          user: '',
          skipped: `no PostgreSQL below ${debianFolder} on this machine; the embedded one was tested`,
        },
  );
  project.provide('clusters', clusters);
  for (const { name, skipped } of clusters) {
    console.log(skipped === null ? `store tests run on PostgreSQL: ${name}` : `store tests skip ${name}: ${skipped}`);
  }
  return async () => {
    // The tests' own processes may need a moment to let go.
    for (const cluster of running) {
      for (let look = 0; look < 50 && (await cluster.stop()) !== 'stopped'; look += 1) await pause(200);
    }
    await rm(folder, { recursive: true, force: true });
  };
}

async function debianBinaries(): Promise<string | undefined> {
  const versions = existsSync(debianFolder) ? await readdir(debianFolder) : [];
  const newest = versions.filter((name) => /^\d+$/.test(name)).sort((a, b) => Number(b) - Number(a))[0];
  const folder = newest && join(debianFolder, newest, 'bin');
  return folder && existsSync(join(folder, 'initdb')) ? folder : undefined;
}

async function versionOf(cluster: Cluster): Promise<string> {
  const client = new pg.Client({ host: cluster.socketFolder, user: cluster.user, database: 'postgres' });
  await client.connect();
  const found = await client.query<{ server_version: string }>('show server_version');
  await client.end();
  return found.rows[0]?.server_version.split(' ')[0] ?? '';
}
