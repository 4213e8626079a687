/** `penside weather` as a shell runs it: set up, fetched, kept, shown offline; every request ends on this machine. */
import { execFile } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { us } from '../../../cli/weather/services.ts';
import { type Answering, type ForecastServer, json, raw, serve } from '../../helpers/forecast-server.ts';
import { programPath, type Run } from '../../helpers/program.ts';
import { usGridFor, usPoint } from '../../helpers/recorded-forecasts.ts';

let folder = '';
let file = '';
let server: ForecastServer | undefined;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
  file = join(folder, 'flock.jsonl');
});
afterEach(async () => {
  await server?.close();
  server = undefined;
  rmSync(folder, { recursive: true, force: true });
});

/** Put before the program: whatever host it asks, the server of this test is asked. */
const preload = (port: number): string =>
  `--import=data:text/javascript,${encodeURIComponent(
    `const real = fetch; globalThis.fetch = (url, init) => { const { host, pathname, search } = new URL(url); const headers = new Headers(init.headers); headers.set('x-host', host); return real('http://127.0.0.1:${port}' + pathname + search, { ...init, headers }); };`,
  )}`;

/** Without a server any request would fail at once: port 9 of this machine throws everything away. */
const penside = (args: readonly string[], now = '2026-05-14T07:12:00-04:00'): Promise<Run> =>
  new Promise((done) => {
    const env = {
      PATH: process.env.PATH ?? '',
      HOME: folder,
      XDG_CACHE_HOME: folder,
      PENSIDE_FILE: file,
      PENSIDE_BY: 'Nell',
      PENSIDE_NOW: now,
      NODE_OPTIONS: preload(server?.port ?? 9),
    };
    execFile(process.execPath, [programPath, ...args], { env }, (error, out, err) => {
      done({ out, err, exit: error === null ? 0 : Number(error.code) });
    });
  });

const service = async (...answers: readonly Answering[]): Promise<void> => {
  await server?.close();
  server = await serve(...answers);
};
const whole = [json(usPoint), json(usGridFor(0, 72))] as const;
const switchOn = async (): Promise<void> => {
  await penside(['weather', 'at', '44.1', '-73.2']);
  await penside(['weather', 'on']);
};
const lines = (): readonly string[] => readFileSync(file, 'utf8').trim().split('\n');

const today = 'Today: night low 39 °F, high 61 °F, rain 0.12 in, wind 11 mph and humidity 60%.';
const fetched = 'Fetched Thursday 14 May at 07:12.';

describe('setting it up', () => {
  test('a place west of Greenwich needs no quotes, and is one entry', async () => {
    const run = await penside(['weather', 'at', '44.1', '-73.2']);
    expect(run).toEqual({
      out: [
        'Written: Place by degrees north and east: 44.1 -73.2.',
        'Nothing leaves this machine.',
        'Say "forecast on" to have it fetched.',
        '',
      ].join('\n'),
      err: '',
      exit: 0,
    });
    expect(lines().map((line) => JSON.parse(line).value)).toEqual(['44.1 -73.2']);
  });

  test('until it is switched on nobody is asked, and that is no failure', async () => {
    await service(...whole);
    const run = await penside(['weather']);
    expect([run, server?.asked]).toEqual([
      {
        out: 'No forecast is on record for today or later.\n',
        err: 'Forecasts are not fetched.\nSay "forecast on" to switch that on.\n',
        exit: 0,
      },
      [],
    ]);
  });

  test('switching it on says what leaves the machine', async () => {
    await penside(['weather', 'at', '52.1 5.3']);
    const { out, exit } = await penside(['weather', 'on']);
    expect([out.replaceAll('\n', ' '), exit]).toEqual([
      'Written: Fetching of forecasts: yes. Only the coordinates 52.1 5.3 leave this machine, to Open-Meteo (api.open-meteo.com; free for non-commercial use, under CC BY 4.0). Say "get the forecast" to fetch it; "forecast off" ends it. ',
      0,
    ]);
  });

  test.each([[['weather', 'maybe']], [['weather', 'at', 'home']]])('%j is wrong use', async (args) => {
    expect(await penside(args)).toEqual({
      out: '',
      err: 'weather wants nothing, on, off, or a place as: penside weather at 44.1 -73.2\n',
      exit: 64,
    });
    expect(existsSync(file)).toBe(false);
  });
});

describe('fetching it', () => {
  test('shows the days in full with attribution, writes them, and keeps them for their owner alone', async () => {
    await switchOn();
    await service(...whole);
    const run = await penside(['weather']);
    const shown = run.out.split('\n');
    expect([shown[0], shown[1], shown.includes(fetched), run.err, run.exit]).toEqual([
      'The weather on record up to Saturday 16 May.',
      today,
      true,
      '',
      0,
    ]);
    expect(run.out.replaceAll('\n', ' ')).toContain(
      'Forecast of the U.S. National Weather Service, https://www.weather.gov; its hours are gathered into days here.',
    );
    expect(
      lines()
        .slice(2)
        .map((line) => JSON.parse(line).on),
    ).toEqual(['2026-05-14', '2026-05-15', '2026-05-16']);
    expect(statSync(join(folder, 'penside', 'forecast.json')).mode & 0o777).toBe(0o600);
  });

  test('while the last one is fresh nobody is asked, unless with --now', async () => {
    await switchOn();
    await service(...whole);
    await penside(['weather']);
    await service(...whole);
    await penside(['weather'], '2026-05-14T09:00:00-04:00');
    expect(server?.asked).toEqual([]);
    await penside(['weather', '--now'], '2026-05-14T09:00:00-04:00');
    expect(server?.asked.length).toBe(2);
  });

  test('a second flock of the same place gets what is kept', async () => {
    await switchOn();
    await service(...whole);
    await penside(['weather']);
    file = join(folder, 'other.jsonl');
    await switchOn();
    await service(raw(500, 'text/plain', ''));
    expect((await penside(['weather'])).out.split('\n')[1]).toBe(today);
  });

  test('as data it has each value with its unit and when it was fetched', async () => {
    await switchOn();
    await service(...whole);
    const { out, exit } = await penside(['weather', '--json']);
    const told = JSON.parse(out);
    expect([Object.keys(told), told.on, told.place, told.fetched, told.failed, exit]).toEqual([
      ['on', 'place', 'fetched', 'attribution', 'failed', 'days'],
      true,
      { latitude: 44.1, longitude: -73.2 },
      '2026-05-14T07:12:00-04:00',
      null,
      0,
    ]);
    expect(told.attribution).toBe(us.attribution);
    expect(told.days[2]).toEqual({
      on: '2026-05-16',
      low: null,
      high: { value: 60.8, unit: 'F', fetched: told.fetched },
      rain: null,
      wind: null,
      humidity: null,
    });
  });
});

describe('offline', () => {
  test('says what failed and what to do, and shows what is on record', async () => {
    await switchOn();
    await service(...whole);
    await penside(['weather']);
    await server?.close();
    server = undefined;
    const run = await penside(['weather', '--now']);
    expect([run.out.split('\n')[1], run.err.replaceAll('\n', ' '), run.exit]).toEqual([
      today,
      'No forecast came from the National Weather Service of the United States: there is no way to it, as without a network. Answers go on with what is on record. Try again later; a low typed in, as "low of 38 tonight", does as well. ',
      1,
    ]);
  });

  test('a network that wants a login is named as such', async () => {
    await switchOn();
    await service(raw(200, 'text/html', '<title>Welcome</title>'));
    const { err, exit } = await penside(['weather']);
    expect([err.replaceAll('\n', ' '), exit]).toEqual([
      'No forecast came from the National Weather Service of the United States: a page came back in place of a forecast, as from a network that wants a login. Answers go on with what is on record. Open any page in a browser, log in to the network, and try again. ',
      1,
    ]);
  });

  test('a question asks nobody, and is answered as ever', async () => {
    await switchOn();
    await service(...whole);
    const run = await penside(['how many birds do I have']);
    expect([run.err, server?.asked]).toEqual(['', []]);
  });

  test('a cache folder that cannot be written is no hindrance', async () => {
    // There from the beginning: the first run already would make the folder.
    writeFileSync(join(folder, 'penside'), 'a file where a folder should be');
    await switchOn();
    await service(...whole);
    expect((await penside(['weather'])).out.split('\n')[1]).toBe(today);
  });
});
