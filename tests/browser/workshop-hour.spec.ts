/**
 * The instructor's hour: a whole deck from nothing, every section of the workshop, by keyboard, taps and three pastes.
 * The deck is invented. What the hands do is counted and turned into minutes at a stated pace; reading, measuring and
 * thinking are not in it. Then the deck is drilled.
 */
import { expect, type Locator, type Page, test } from '@playwright/test';
import { loadDeck } from '../../src/content/load.ts';
import { deckFile } from '../../src/content/schema.ts';
import { factsOf } from '../../src/core/questions/facts.ts';
import { frame, type Hand, writeUnit } from './hand.ts';
import { answerOnce, goOn, rowsOf } from './practice.ts';

/** Assumed: 40 words a minute of five letters each, and a second and a half for each tap. */
const KEYS_A_MINUTE = 40 * 5;
const SECONDS_A_TAP = 1.5;

const minutesOf = (keys: number, taps: number) => keys / KEYS_A_MINUTE + (taps * SECONDS_A_TAP) / 60;

const NAMES = {
  B1: 'forward brake',
  B2: 'intermediate brake',
  B3: 'low-reverse brake',
  C1: 'high clutch',
  C2: 'direct clutch',
};

const BODIES = [
  'pump cover',
  'front sun with the forward hub',
  'front carrier',
  'middle carrier with the front ring',
  'middle ring',
  'direct drum',
  'rear sun',
  'output shaft',
  'rear cover',
];

/** A pack as the shop keeps it in a sheet. */
const PACK = [
  'stack,element,floor,floorAt,plate,kind,thickness,identical,feature,towards',
  'B2,B2,piston in the rear wall,rear,piston,piston,,,,',
  'B2,,,,spring,return-spring,,,,',
  'B2,,,,steel-1,steel,"2,00",steel,,',
  'B2,,,,friction-1,friction,"1,60",friction,,',
  'B2,,,,steel-2,steel,"2,00",steel,,',
  'B2,,,,friction-2,friction,"1,60",friction,,',
  'B2,,,,steel-3,steel,"2,00",steel,,',
  'B2,,,,friction-3,friction,"1,60",friction,,',
  'B2,,,,backing,backing,"5,00",,bevel,opening',
  'B2,,,,ring,snap-ring,"1,60",,,',
].join('\n');

const STRIP: readonly (readonly [text: string, turned: string, waits?: string])[] = [
  ['Hang the unit in the fixture, converter up.', 'Lower the unit out of the fixture.'],
  ['Draw the converter off straight.', 'Set the converter on until it has dropped three times.', 'It must not tip the unit over.'],
  ['Read the end play and write it down.', '', 'The dial stands on the pump, which the converter covers.'],
  ['Undo the pump bolts.', 'Put the pump bolts in crosswise.', 'With the pump loose there is nothing left to read.'],
  ['Draw the pump out evenly.', 'Lower the pump in on guide pins.', 'It is bolted down.'],
  ['Lift the washer W1 off the pump.', 'Lay the chosen washer W1 on, tabs into the pump.', 'It lies behind the pump.'],
  ['Take the snap ring of the forward pack out.', 'Put the snap ring of the forward pack in.', 'The front sun covers it until the washer is off.'],
  ['Lift the plates of the forward pack out.', 'Lay the plates of the forward pack in.', 'The ring holds them in.'],
  ['Lift the front carrier out.', 'Lower the front carrier in.', 'The plates sit on its hub.'],
]; // biome-ignore format: a table reads across

const CODES = [
  'P0720 The output speed signal is missing.',
  'P0731 Range 1 is commanded and the speeds show another ratio.',
  'P0751 Solenoid SA does not let the forward brake go.',
];

const CAUTIONS: readonly (readonly [hazard: string, text: string, attach: readonly RegExp[]])[] = [
  ['it moves in a test', 'Unplugged it still drives in D. Chock the wheels and hold the brakes.', [/^lever position D/, /^solenoid SA/, /^solenoid SE/]],
  ['lift', 'Lock the fixture before you let go, and keep out from under the unit.', [/^step Hang the unit/]],
  ['springs under load', 'The return spring of the forward pack is loaded. Use the press.', [/^step Take the snap ring/]],
  ['hot fluid', 'Let the fluid cool before the pan comes off.', [/^fluid/]],
]; // biome-ignore format: a table reads across

async function nameElements(page: Page, hand: Hand) {
  await hand.tap(page.getByRole('button', { name: '5, C2' }));
  await hand.go('Gear train');
  for (const [id, name] of Object.entries(NAMES))
    await hand.type(frame(page, `Element ${id}`).getByLabel('What the shop calls it'), name);
  const b1 = frame(page, 'Element B1');
  await hand.tap(b1.getByText('What its torque comes from'));
  for (const [label, value] of [['Piston, outer', '150'], ['Piston, inner', '110'], ['Return spring', '900'], ['Friction plates', '4'], ['Lining, outer', '142'], ['Lining, inner', '118'], ['Coefficient of friction', '0.13'], ['Most pressure', '1000']] as const)
    await hand.type(b1.getByLabel(label, { exact: true }), value); // biome-ignore format: a table reads across
}

async function writeOil(page: Page, hand: Hand) {
  await hand.go('Solenoids');
  await hand.tap(page.getByRole('button', { name: 'Add one each for B1, B2, B3, C1, and C2' }));
  await hand.pick(page.getByLabel('All of them are'), 'pressure follows current');
  for (const [id, shows] of [['SA', 'full'], ['SB', 'no'], ['SC', 'no'], ['SD', 'no'], ['SE', 'full']])
    await hand.tap(frame(page, `Solenoid ${id}`).getByRole('radio', { name: `${shows} pressure` })); // biome-ignore format: pairs read across

  await hand.go('Lever');
  await hand.tap(page.getByRole('radio', { name: 'a valve that opens and cuts oil' }));
  await hand.tap(page.getByRole('button', { name: 'Add P, R, N and D' }));
  for (const [position, open] of [['R', ['B3', 'C2']], ['N', ['B3']], ['D', Object.keys(NAMES)]] as const) {
    const feeds = frame(page, `Position ${position}`).getByRole('group', { name: 'Feeds that its valve leaves open' });
    for (const id of open) await hand.tap(feeds.getByRole('checkbox', { name: id }));
  } // biome-ignore format: pairs read across

  await hand.go('Sensors, valves');
  for (const [id, name, teeth] of [['input-speed', 'input speed sensor', '40'], ['output-speed', 'output speed sensor', '48']] as const) {
    await hand.tap(page.getByRole('button', { name: 'Add a speed sensor' }));
    const sensor = frame(page, `Sensor ${id}`);
    await hand.type(sensor.getByLabel('What the shop calls it'), name);
    await hand.type(sensor.getByLabel('Pulses a turn'), teeth);
  } // biome-ignore format: pairs read across
  await hand.tap(page.getByRole('button', { name: 'Add an interlock' }));
  const interlock = frame(page, 'Interlock X1');
  for (const id of ['B1', 'C1'])
    await hand.tap(
      interlock
        .getByRole('group', { name: 'While all of these have pressure' })
        .getByRole('checkbox', { name: id }),
    );
  await hand.tap(
    interlock.getByRole('group', { name: 'none comes to' }).getByRole('checkbox', { name: 'C2' }),
  );
  await hand.type(page.getByLabel('Rows', { exact: true }), '2');
  await hand.type(page.getByLabel('Columns', { exact: true }), '3');
  await hand.type(page.getByLabel('Seen how'), 'from below, pan off, front to the left');
  for (const [row, column, id] of [[1, 1, 'SA'], [1, 2, 'SB'], [1, 3, 'SC'], [2, 1, 'SD'], [2, 3, 'SE']] as const)
    await hand.pick(page.getByLabel(`Row ${row}, column ${column}`), id); // biome-ignore format: a table reads across
}

async function writeWires(page: Page, hand: Hand) {
  await hand.go('Wires');
  for (const [index, name] of ['solenoid feed', 'sensor feed'].entries()) {
    await hand.tap(page.getByRole('button', { name: 'Add a supply' }));
    await hand.type(frame(page, `Supply feed-${index + 1}`).getByLabel('What the shop calls it'), name);
  }
  await hand.tap(page.getByRole('button', { name: /^Add a winding for SA/ }));
  const first = frame(page, 'Winding of SA');
  await hand.type(first.getByLabel('At 20 °C, least', { exact: true }), '5.0');
  await hand.type(first.getByLabel('At 20 °C, most', { exact: true }), '5.6');
  await hand.pick(first.getByLabel('Hangs on the supply'), 'solenoid feed');
  await hand.pick(first.getByLabel('The controller switches'), 'the ground side');
  await hand.tap(page.getByRole('button', { name: 'The empty ones are like the first of their kind' }));
  await hand.tap(page.getByRole('button', { name: /^Add input speed sensor and output speed sensor/ }));
  const hall = frame(page, 'Sensor input speed sensor');
  await hand.pick(hall.getByLabel('Is a'), /^Hall/);
  await hand.pick(hall.getByLabel('Hangs on the supply'), 'sensor feed');
  const coil = frame(page, 'Sensor output speed sensor');
  await hand.pick(coil.getByLabel('Is a'), /^coil/);
  await hand.type(coil.getByLabel('At 20 °C, least', { exact: true }), '560');
  await hand.type(coil.getByLabel('At 20 °C, most', { exact: true }), '680');
  await hand.tap(page.getByRole('button', { name: 'Add a temperature sensor' }));
  const heat = frame(page, 'Temperature sensor heat-1');
  await hand.type(heat.getByLabel('What the shop calls it'), 'fluid temperature sensor');
  await hand.pick(heat.getByLabel('As it gets hotter its resistance'), 'falls');
  await hand.tap(heat.getByRole('button', { name: 'Add a point' }));
  for (const [number, at, low, high] of [['1', '20', '2350', '2650'], ['2', '80', '298', '342']] as const) {
    const point = heat.getByRole('group', { name: `Point ${number}` });
    await hand.type(point.getByLabel('At', { exact: true }), at);
    await hand.type(point.getByLabel('Least there', { exact: true }), low);
    await hand.type(point.getByLabel('Most there', { exact: true }), high);
  } // biome-ignore format: a table reads across
  await hand.tap(page.getByRole('button', { name: 'Add a connector' }));
  const plug = frame(page, 'Connector case');
  await hand.tap(plug.getByRole('radio', { name: 'on the unit' }));
  await hand.type(plug.getByLabel('Rows', { exact: true }), '2');
  await hand.type(plug.getByLabel('Columns', { exact: true }), '6');
  await hand.tap(plug.getByRole('button', { name: 'Number 12 pins, row by row' }));
  const serves = [/solenoid feed/, /solenoid SA/, /solenoid SB/, /solenoid SC/, /solenoid SD/, /solenoid SE/, /sensor feed/, /input speed/, /output speed/, /fluid temp/, 'ground', 'nothing']; // biome-ignore format: a list reads across
  for (const [index, what] of serves.entries())
    await hand.pick(plug.getByLabel(`Pin ${index + 1} serves`), what);
}

/** Which end first, then the two bodies on its sides; then what tells its faces. */
async function addSeat(
  page: Page,
  hand: Hand,
  number: number,
  fields: { from: RegExp; between: readonly [string, string]; kind: string; seen?: string; hidden?: string },
): Promise<Locator> {
  await hand.tap(page.getByRole('group', { name: 'Which end of the unit do you look from?' }).first().getByRole('radio', { name: fields.from })); // biome-ignore format: one tap
  for (const body of fields.between)
    await hand.tap(page.getByRole('button', { name: new RegExp(`${body}$`) }));
  const seat = frame(page, `Seat T${number}`);
  await hand.pick(seat.getByLabel('What it is'), fields.kind);
  if (fields.seen) await hand.type(seat.getByLabel(/^What tells it/), fields.seen);
  if (fields.hidden) await hand.type(seat.getByLabel('What tells that one'), fields.hidden);
  return seat;
}

async function writeLine(page: Page, hand: Hand) {
  await hand.go('Bearings and seals');
  await hand.type(page.getByLabel('Bodies on the line, from front to rear'), BODIES.join('\n'));
  await hand.tap(page.getByRole('button', { name: 'Add these 9 lines' }));
  const washer = await addSeat(page, hand, 1, { from: /the front/, between: ['pump cover', 'front sun with the forward hub'], kind: 'thrust washer', seen: 'three tabs', hidden: 'oil grooves, no tabs' }); // biome-ignore format: a record reads across
  await hand.tap(washer.getByText('Size, and what comes of a mistake'));
  await hand.type(washer.getByLabel('Inner diameter', { exact: true }), '46');
  await hand.type(washer.getByLabel('Outer diameter', { exact: true }), '70');
  await hand.type(washer.getByLabel('Thickness', { exact: true }), '1,80');
  await hand.tap(washer.getByRole('radio', { name: 'it does not go in' }));
  await hand.type(washer.getByLabel('And then'), 'The tabs find no pockets and the washer lies crooked.');
  const bearing = await addSeat(page, hand, 2, { from: /the front/, between: ['front sun with the forward hub', 'front carrier'], kind: 'thrust bearing', seen: 'closed race, blued', hidden: 'needles seen' }); // biome-ignore format: a record reads across
  await hand.pick(bearing.getByLabel('Closed race on'), 'the face before your eye');
  const rear = await addSeat(page, hand, 3, { from: /the rear/, between: ['direct drum', 'rear sun'], kind: 'thrust bearing', seen: 'needles seen', hidden: 'closed race, plain' }); // biome-ignore format: a record reads across
  await hand.pick(rear.getByLabel('Closed race on'), 'the face turned away');
  await addSeat(page, hand, 4, { from: /the rear/, between: ['rear sun', 'output shaft'], kind: 'thrust washer', seen: 'copper side', hidden: 'steel side' }); // biome-ignore format: a record reads across
  const seal = await addSeat(page, hand, 5, { from: /the rear/, between: ['output shaft', 'rear cover'], kind: 'lip seal', seen: 'metal shell', hidden: 'garter spring in the lip' }); // biome-ignore format: a record reads across
  await hand.pick(seal.getByLabel('Lip looks out of'), 'the face turned away');
  await hand.pick(seal.getByLabel('Pressure comes from'), 'the face turned away');
}

async function writePacks(page: Page, hand: Hand) {
  await hand.go('Packs');
  await hand.tap(page.getByRole('button', { name: 'Add a pack' }));
  const pack = frame(page, 'Pack B1');
  await hand.type(pack.getByLabel('Counting starts from'), 'piston in the pump cover');
  await hand.tap(pack.getByRole('radio', { name: 'the front' }));
  await hand.tap(pack.getByRole('button', { name: 'Add four of each' }));
  await hand.tap(pack.getByRole('button', { name: 'Add: backing plate' }));
  for (const [plate, thickness] of [['steel-1', '1,80'], ['friction-1', '1,60']] as const) {
    const one = pack.getByRole('group', { name: `Plate ${plate}`, exact: true });
    await hand.type(one.getByLabel('Thickness', { exact: true }), thickness);
    await hand.tap(one.getByText('Which way it looks, name, where from'));
    await hand.tap(one.getByRole('button', { name: 'All of its kind are as thick' }));
  } // biome-ignore format: pairs read across
  await hand.type(pack.getByRole('group', { name: 'Plate backing-1' }).getByLabel('Thickness', { exact: true }), '6,00'); // biome-ignore format: one field
  await expect(pack.getByRole('img').first()).toBeVisible();
  await hand.type(pack.getByLabel('Room from piston stop to ring groove', { exact: true }), '20,90');
  await hand.paste(page.getByLabel('Paste packs from a spreadsheet', { exact: true }), PACK);
  await hand.tap(page.getByRole('button', { name: 'Take this in' }));
}

async function writeFits(page: Page, hand: Hand) {
  await hand.go('Fits');
  await hand.tap(page.getByRole('button', { name: 'Add a fit' }));
  const fit = frame(page, 'Fit fit-1');
  await hand.type(fit.getByLabel('What the shop calls it'), 'front end play');
  await hand.pick(fit.getByLabel('What is measured'), 'end play');
  await hand.type(fit.getByLabel('Where it is measured'), 'at the forward hub, pump bolted down');
  await hand.pick(fit.getByLabel('How', { exact: true }), 'with a known part in');
  await hand.pick(fit.getByLabel('With', { exact: true }), 'a dial');
  await hand.type(fit.getByLabel('Least play', { exact: true }), '0,20');
  await hand.type(fit.getByLabel('Most play', { exact: true }), '0,45');
  await hand.type(
    fit.getByLabel('Selective parts'),
    'W-150 1,50\nW-165 1,65\nW-180 1,80\nW-195 1,95\nW-210 2,10',
  );
  await hand.tap(fit.getByRole('button', { name: 'Add these 5 lines' }));
  await hand.tap(fit.getByRole('button', { name: 'Add a case' }));
  const one = fit.getByRole('group', { name: 'Case 1' });
  await hand.pick(one.getByLabel('Part that was in'), /W-180/);
  await hand.type(one.getByLabel('Play read', { exact: true }), '0,68');
  await hand.pick(one.getByLabel('Part put in then'), /W-210/);
  await hand.type(one.getByLabel('Play it gave', { exact: true }), '0,38');
  await expect(one.getByText('By this case a thicker part gives less play.')).toBeVisible();
  await hand.tap(one.getByRole('button', { name: 'Take it from the case' }));
  await hand.tap(fit.getByText('Aim, spread, what part it is'));
  await hand.pick(fit.getByLabel('The part chosen is the seat'), /T1/);
}

async function writeSteps(page: Page, hand: Hand) {
  await hand.go('Work in steps');
  await hand.tap(page.getByRole('button', { name: 'Add work in steps' }));
  const work = frame(page, 'Work strip-1');
  await hand.type(work.getByLabel('What the shop calls it').first(), 'stripping the front end');
  const lines = STRIP.map(([text, turned]) => (turned ? `${text} / ${turned}` : text)).join('\n');
  await hand.type(work.getByLabel('Steps, in the order you took it apart'), lines);
  await hand.tap(work.getByRole('button', { name: 'Add these 9 lines' }));
  for (const [index, [text, , waits]] of STRIP.entries()) {
    if (!waits) continue;
    const step = work.getByRole('group', { name: `${index + 1}. ${text}` });
    await hand.tap(step.getByRole('button', { name: 'It must wait for another step' }));
    await hand.type(step.getByLabel('Because'), waits);
  }
  for (const [index, hazard] of [[0, 'lift'], [6, 'springs under load']] as const) {
    const step = work.getByRole('group', { name: `${index + 1}. ${STRIP[index]![0]}` });
    await hand.tap(step.getByText('Tool, torque, dangers, where from'));
    await hand.tap(step.getByRole('checkbox', { name: hazard }));
  } // biome-ignore format: pairs read across
  await hand.tap(work.getByRole('group', { name: 'Done only when taking apart' }).getByRole('checkbox', { name: STRIP[2]![0] })); // biome-ignore format: one tap
  await hand.type(work.getByLabel(/^Why only then/), 'It tells how much wear the old washer took up.');
  await hand.tap(work.getByText('Checks that are possible only for a while'));
  await hand.tap(work.getByRole('button', { name: 'Add a check' }));
  const check = work.getByRole('group', { name: 'Check 1' });
  await hand.type(check.getByLabel('What is checked'), 'Front end play, by the dial.');
  await hand.pick(check.getByLabel('While it'), 'is taken apart');
  await hand.pick(check.getByLabel('Measures the fit'), 'front end play');
  await hand.tap(check.getByRole('group', { name: 'Possible once these are done' }).getByRole('checkbox', { name: /converter off/ })); // biome-ignore format: one tap
  await hand.tap(check.getByRole('group', { name: 'Closed by any of these' }).getByRole('checkbox', { name: /Undo the pump bolts/ })); // biome-ignore format: one tap
}

async function writeService(page: Page, hand: Hand) {
  await hand.go('Fluid, torques, weights');
  await hand.tap(page.getByRole('button', { name: 'Add a fluid' }));
  const fluid = frame(page, 'Fluid fluid-1');
  await hand.type(fluid.getByLabel('What it must be'), 'thin fluid of the approval on the filler label');
  await hand.type(fluid.getByLabel('Fill after a rebuild', { exact: true }), '8,9');
  await hand.type(fluid.getByLabel('Fill after draining', { exact: true }), '4,6');
  await hand.type(fluid.getByLabel('Level checked from', { exact: true }), '35');
  await hand.type(fluid.getByLabel('to', { exact: true }), '45');
  await hand.type(page.getByLabel('Torques, a line each'), 'pan bolts 11 Nm x14\npump bolts 24 x9\ndrain plug 22\nrear cover bolts 27 x8'); // biome-ignore format: one field
  await hand.tap(page.getByRole('button', { name: 'Add these 4 lines' }));
  await hand.tap(page.getByRole('button', { name: 'Add a weight' }));
  const weight = frame(page, 'Weight weight-1');
  await hand.type(weight.getByLabel('What it is'), 'unit without converter');
  await hand.type(weight.getByLabel('Weighs', { exact: true }), '76');

  await hand.go('Trouble codes');
  await hand.type(page.getByLabel('Codes, a line each'), CODES.join('\n'));
  await hand.tap(page.getByRole('button', { name: 'Add these 3 lines' }));
  for (const [id, kind, watches] of [['P0720', 'a circuit', /output speed sensor/], ['P0731', 'a wrong ratio', /range 1$/], ['P0751', 'stays on', /solenoid SA/]] as const) {
    const code = frame(page, id);
    await hand.pick(code.getByLabel('Kind of fault'), kind);
    await hand.tap(code.getByRole('checkbox', { name: watches }));
  } // biome-ignore format: a table reads across

  await hand.go('Other names');
  for (const [index, [of, names]] of [[/^element B3/, 'low brake\nreverse band'], [/^element C2/, 'coupling pack'], [/^seat T1/, 'pump washer']].entries()) {
    await hand.tap(page.getByRole('button', { name: 'Add other names' }));
    const alias = frame(page, `Other names ${index + 1}`);
    await hand.pick(alias.getByLabel('Of', { exact: true }), of as RegExp);
    await hand.type(alias.getByLabel('Names, a line each'), names as string);
  } // biome-ignore format: a table reads across
}

async function writeCautions(page: Page, hand: Hand) {
  await hand.go('Cautions');
  for (const [index, [hazard, text, attach]] of CAUTIONS.entries()) {
    await hand.tap(page.getByRole('button', { name: 'Add a caution' }));
    const caution = frame(page, `${index + 1}. `);
    await hand.pick(caution.getByLabel('Danger'), hazard);
    await hand.type(caution.getByLabel('What to do, or keep from'), text);
    for (const what of attach) await hand.pick(caution.getByLabel('Attach it to'), what);
    await hand.tap(caution.getByRole('button', { name: 'Ines Okafor looked it over today' }));
  }
}

test('a whole deck in under an hour, and drilled', async ({ page, context }, info) => {
  test.setTimeout(180_000);
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  const hand = await writeUnit(page);
  await hand.go('Apply chart');
  await nameElements(page, hand);
  await hand.go('Unit and sources');
  await hand.type(page.getByLabel('Your name'), 'Ines Okafor');
  await hand.tap(page.getByRole('button', { name: 'Add a source' }));
  await hand.type(page.getByLabel('What it is', { exact: true }), 'Stripped on the bench for the class');
  await writeOil(page, hand);
  await writeWires(page, hand);
  await writeLine(page, hand);
  await writePacks(page, hand);
  await writeFits(page, hand);
  await writeSteps(page, hand);
  await writeService(page, hand);
  await writeCautions(page, hand);

  await test.step('one cell is in doubt; the rest of the chart was checked, and where it is from is said', async () => {
    await hand.go('Apply chart');
    await expect(
      page.getByRole('heading', { name: 'Not sure yet: their rows are never asked' }),
    ).toBeVisible();
    await hand.tap(page.getByText('All 10 of these: where from, who checked'));
    await hand.pick(page.getByLabel('All of these come from'), 'Stripped on the bench for the class');
    await hand.tap(page.getByRole('button', { name: 'Ines Okafor checked all of these today' }));
  });

  await test.step('it passes every check', async () => {
    await hand.go('Hand out');
    const findings = page.locator('.findings');
    await expect(findings).toContainText('The deck is whole and nothing in it contradicts itself.');
    await hand.tap(page.getByRole('button', { name: 'Put it among the decks here' }));
    await expect(page.getByText('Heron 7, revision 1, is among the decks.')).toBeVisible();
  });
  const decks = await rowsOf<{ id: string; text: string }>(page, 'decks');
  const loaded = loadDeck(decks.find(({ id }) => id === 'heron-7')!.text);
  if (!loaded.ok) throw new Error('a published deck does not load');
  const { deck, unit, warnings } = loaded.value;
  expect(warnings.map(({ rule, place }) => `${rule} ${place.pointer}`)).toEqual([]);
  // No part that a deck can hold is missing.
  const said = Object.keys(deckFile.shape).filter(
    (part) => !['$schema', 'language', 'variantOf'].includes(part),
  );
  expect(Object.keys(deck).sort()).toEqual(said.sort());
  const families = new Set(factsOf(unit).flatMap((fact) => fact.families));
  const counts = { keys: hand.keys, taps: hand.taps, pasted: hand.pasted };
  const minutes = minutesOf(hand.keys, hand.taps);
  const allTyped = minutesOf(hand.keys + hand.pasted, hand.taps);
  const effort = `${counts.keys} keys, ${counts.taps} taps, ${counts.pasted} letters pasted: ${Math.round(minutes)} min of hands at 40 words a minute and 1.5 s a tap (${Math.round(allTyped)} with the pasted sheets typed too); ${factsOf(unit).length} facts, ${families.size} kinds of question`;
  console.log(effort);
  info.annotations.push({ type: 'effort', description: effort });
  expect(allTyped).toBeLessThan(60);

  await test.step('and it is drilled', async () => {
    await page.getByRole('button', { name: 'Try its questions' }).click();
    await expect(page.getByRole('heading', { name: 'Try any question' })).toBeVisible();
    await page.goto('/#/');
    await page.getByRole('button', { name: 'Start' }).click();
    let asked = 0;
    while (!(await page.getByRole('heading', { name: 'Done for now' }).isVisible())) {
      await answerOnce(page, asked % 3 !== 2);
      await goOn(page);
      asked++;
    }
    expect(asked).toBeGreaterThan(4);
  });
  expect(complaints).toEqual([]);
});
